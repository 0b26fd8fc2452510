import { MM_PER_INCH } from '../units/inch';
import { couponsPerYard, type RationedCloth } from './cloth-cost';

/** What a ready-made garment took, in coupons, to set beside the cloth. */
export interface ReadyMade {
  readonly garment:
    | 'slip'
    | 'undergarment'
    | 'skirt'
    | 'dress-wool'
    | 'dress-other'
    | 'nightdress'
    | 'blouse'
    | 'apron';
  readonly woman: number;
  readonly girl: number;
}

/**
 * Clothing coupons, United Kingdom, June 1941: The Times, 3 June 1941, as transcribed in print since; the petticoat's 4 is
 * confirmed by a second, local source.
 */
export const READY_MADE_1941: readonly ReadyMade[] = [
  { garment: 'slip', woman: 4, girl: 3 },
  { garment: 'undergarment', woman: 3, girl: 2 },
  { garment: 'skirt', woman: 7, girl: 5 },
  { garment: 'dress-wool', woman: 11, girl: 8 },
  { garment: 'dress-other', woman: 7, girl: 5 },
  { garment: 'nightdress', woman: 6, girl: 5 },
  { garment: 'blouse', woman: 5, girl: 3 },
  { garment: 'apron', woman: 3, girl: 2 },
];

/** How well a figure of the ration per yard is known: printed then, or worked out from the widths that were. */
export type RationKnown = 'printed' | 'remembered' | 'estimate';

/** Coupons for a yard of cloth of a width, and how well that is known: see {@link couponsPerYard}. */
export function rationPerYard(
  width: number,
  cloth: RationedCloth,
): { readonly each: number; readonly known: RationKnown } {
  const whole = Math.round(width / MM_PER_INCH);
  const known =
    cloth === 'woollen' && whole === 36
      ? 'printed'
      : cloth === 'other' && (whole === 36 || whole === 44)
        ? 'remembered'
        : 'estimate';
  return { each: couponsPerYard(width, cloth), known };
}
