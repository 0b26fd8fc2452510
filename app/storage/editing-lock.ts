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
  const options = from === 'nobody' ? { signal: AbortSignal.timeout(PATIENCE_MS) } : { steal: true };
  return new Promise((answer) => {
    locks
      .request(`inchsquare garment ${garmentId}`, options, () => {
        answer('here');
        return new Promise<void>((done) => {
          letGo = done;
        });
      })
      .catch(() => {
        // Nobody let go in time, or another window has taken it from this one.
        answer('elsewhere');
        if (useGarment.getState().garment?.id === garmentId) onlyLook();
      });
  });
}

/** From now on the garment on the table can only be looked at in this window, and says so. */
export function onlyLook(): void {
  useGarment.getState().setEditing('elsewhere');
  useGarment.getState().setSaving('failed', words.openElsewhere);
}
