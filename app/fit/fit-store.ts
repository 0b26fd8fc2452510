import { create } from 'zustand';
import type { EasedCloth, EasedGarment } from '../../core/fit/ease';
import { useGarment } from '../state/garment-store';

interface FitState {
  /** The ring looked at; the first where it is not there. */
  readonly ringId: string | undefined;
  /** What the eases suggested are for. */
  readonly kind: EasedGarment;
  readonly cloth: EasedCloth;
}

const atFirst: FitState = { ringId: undefined, kind: 'skirt', cloth: 'straight' };

/** What she is looking at in this room; nothing of it belongs to the garment. */
export const useFit = create<FitState>(() => atFirst);

// Another garment is another job.
useGarment.subscribe((now, before) => {
  if (now.garment?.id !== before.garment?.id) useFit.setState(atFirst);
});
