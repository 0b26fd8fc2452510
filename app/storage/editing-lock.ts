import { useGarment } from '../state/garment-store';
import { storageWords as words } from '../words/storage';

/** How long a window that is just being closed or reloaded is waited for. */
const PATIENCE_MS = 700;

/** Gives back the right to change the garment before. */
let letGo: (() => void) | undefined;

/**
 * Asks for the right to change a garment: one window at a time has it, and gives it up when it takes another garment or
 * closes. `from: 'another-window'` takes it from the window that has it, which from then on only looks. A browser that
 * knows no locks lets every window change.
 */
export async function holdForEditing(
  garmentId: string,
  { from }: { readonly from: 'nobody' | 'another-window' } = { from: 'nobody' },
): Promise<'here' | 'elsewhere'> {
  letGo?.();
  letGo = undefined;
  const locks = globalThis.navigator?.locks;
  if (!locks) return 'here';
  if (from === 'another-window') return (await granted(locks, garmentId, { steal: true })) ? 'here' : 'elsewhere';
  // Whether it is free is asked before and after: on a slow machine the wait alone ends before the browser has answered.
  const isHere =
    (await granted(locks, garmentId, { ifAvailable: true })) ||
    (await granted(locks, garmentId, { signal: AbortSignal.timeout(PATIENCE_MS) })) ||
    (await granted(locks, garmentId, { ifAvailable: true }));
  return isHere ? 'here' : 'elsewhere';
}

/** Asks for a lock and holds it until `letGo`; whether it was given. */
function granted(locks: LockManager, garmentId: string, options: LockOptions): Promise<boolean> {
  return new Promise((answer) => {
    let isHeld = false;
    locks
      .request(`inchsquare garment ${garmentId}`, options, (lock) => {
        isHeld = lock !== null;
        answer(isHeld);
        if (!isHeld) return undefined;
        return new Promise<void>((done) => {
          letGo = done;
        });
      })
      .catch(() => {
        // Nobody let go in time, or another window has taken it from this one.
        answer(false);
        if (isHeld && useGarment.getState().garment?.id === garmentId) onlyLook();
      });
  });
}

/** From now on the garment on the table can only be looked at in this window, and says so. */
export function onlyLook(): void {
  useGarment.getState().setEditing('elsewhere');
  useGarment.getState().setSaving('failed', words.openElsewhere);
}
