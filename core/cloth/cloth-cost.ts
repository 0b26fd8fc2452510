/** What cloth costs, in money or in coupons, by the yard or the metre. */
import { MM_PER_INCH, MM_PER_METRE, MM_PER_YARD } from '../units/inch';

/** A price for a length of one width. The unit (pounds, coupons, points) is the caller's. */
export interface ClothPrice {
  readonly each: number;
  readonly per: 'yard' | 'metre';
}

/** What a length costs. */
export function clothCost(length: number, { each, per }: ClothPrice): number {
  return (length / (per === 'yard' ? MM_PER_YARD : MM_PER_METRE)) * each;
}

/** Kinds of cloth that clothes rationing told apart. */
export type RationedCloth = 'woollen' | 'other';

/** Inches of width for which a yard took one coupon. */
const INCHES_PER_COUPON: Readonly<Record<RationedCloth, number>> = { woollen: 12, other: 18 };

/**
 * Clothing coupons for a yard of cloth of this width, to the nearest half, as in the United Kingdom from June 1941. Known
 * points: woollen 36 in wide 3 (The Times, 3 June 1941); other 36 in wide 2 (from memory); other 44 in wide 2 1/2 (a
 * 1940s booklet quoted second hand). Other widths follow in proportion and are an estimate.
 */
export function couponsPerYard(width: number, cloth: RationedCloth): number {
  return Math.round((2 * width) / MM_PER_INCH / INCHES_PER_COUPON[cloth]) / 2;
}
