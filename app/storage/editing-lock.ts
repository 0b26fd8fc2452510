import { useGarment } from '../state/garment-store';
import { storageWords as words } from '../words/storage';

/** How long a window that is just being closed or reloaded is waited for. */
const PATIENCE_MS = 700;

/** What gives back the right to change a garment, by the id of every garment this window has it for. */
const held = new Map<string, () => void>();

/**
 * Asks for the right to change a garment: one window at a time has it, and has it until it lets go or closes.
 * `from: 'another-window'` takes it from the window that has it, which from then on only looks. A browser that knows no
 * locks lets every window change.
 */
export async function holdForEditing(
  garmentId: string,
  { from }: { readonly from: 'nobody' | 'another-window' } = { from: 'nobody' },
): Promise<'here' | 'elsewhere'> {
  const locks = globalThis.navigator?.locks;
  if (!locks || held.has(garmentId)) return 'here';
  if (from === 'another-window') return (await granted(locks, garmentId, { steal: true })) ? 'here' : 'elsewhere';
  // Whether it is free is asked before and after: on a slow machine the wait alone ends before the browser has answered.
  const isHere =
    (await granted(locks, garmentId, { ifAvailable: true })) ||
    (await granted(locks, garmentId, { signal: AbortSignal.timeout(PATIENCE_MS) })) ||
    (await granted(locks, garmentId, { ifAvailable: true }));
  return isHere ? 'here' : 'elsewhere';
}

/** Gives back the right to change every garment but the one on the table. */
export function letGoOfOthers(): void {
  const onTable = useGarment.getState().garment?.id;
  for (const [garmentId, letGo] of held) {
    if (garmentId === onTable) continue;
    held.delete(garmentId);
    letGo();
  }
}

/** Whether another window has the right to change a garment. A browser that knows no locks cannot say. */
export async function isHeldElsewhere(garmentId: string): Promise<boolean> {
  if (held.has(garmentId)) return false;
  const known = await globalThis.navigator?.locks?.query();
  return known?.held?.some(({ name }) => name === lockName(garmentId)) ?? false;
}

function lockName(garmentId: string): string {
  return `inchsquare garment ${garmentId}`;
}

/** Asks for a lock and holds it until it is let go of; whether it was given. */
function granted(locks: LockManager, garmentId: string, options: LockOptions): Promise<boolean> {
  return new Promise((answer) => {
    let isHeld = false;
    locks
      .request(lockName(garmentId), options, (lock) => {
        isHeld = lock !== null;
        answer(isHeld);
        if (!isHeld) return undefined;
        return new Promise<void>((letGo) => held.set(garmentId, letGo));
      })
      .catch(() => {
        // Nobody let go in time, or another window has taken it from this one.
        answer(false);
        if (!isHeld) return;
        held.delete(garmentId);
        if (useGarment.getState().garment?.id === garmentId) onlyLook();
      });
  });
}

/** From now on the garment on the table can only be looked at in this window, and says so. */
export function onlyLook(): void {
  useGarment.getState().setEditing('elsewhere');
  useGarment.getState().setSaving('failed', words.openElsewhere);
}
