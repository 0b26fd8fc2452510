import { create } from 'zustand';
import { useGarment } from '../state/garment-store';
import type { Trying } from './change';

interface ReshapeState {
  /** The change being tried; nothing of it belongs to the garment yet. */
  readonly trying: Trying | undefined;
}

export const useReshape = create<ReshapeState>(() => ({ trying: undefined }));

/** Shows a change, or shows it with other numbers. */
export function tryChange(trying: Trying | undefined): void {
  useReshape.setState({ trying });
}

/** Puts the change away; the garment stays as it is. */
export function leaveChange(): void {
  tryChange(undefined);
}

// Another garment is another job.
useGarment.subscribe((now, before) => {
  if (now.garment?.id !== before.garment?.id) leaveChange();
});
