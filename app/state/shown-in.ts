import type { ShownIn } from '../../core/units/inch';
import { useGarment } from './garment-store';

/** The unit of the garment on the table; the one usual here where none lies on it. */
export function useShownIn(): ShownIn {
  return useGarment((state) => state.garment?.shownIn) ?? usualUnit();
}

/** Inches where people cut in inches, centimetres elsewhere. */
export function usualUnit(): ShownIn {
  return /^en-(us|gb|ca|au|nz|ie)/i.test(navigator.language) || navigator.language === 'en' ? 'in' : 'cm';
}
