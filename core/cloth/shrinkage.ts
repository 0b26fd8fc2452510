import type { Ring } from '../geometry/polygon';

/** The shares of its length and width that cloth loses in the wash, 0 and up but less than 1. */
export interface Shrinkage {
  readonly along: number;
  readonly across: number;
}

/** What must be bought so that so much is left after washing: 1 yd that loses 1/20 is bought as 1 1/19. */
export function beforeShrinking(length: number, share: number): number {
  return length / (1 - share);
}

/** A cloth's width or length after washing. */
export function afterShrinking(length: number, share: number): number {
  return length * (1 - share);
}

/**
 * An outline (grain along x) made larger for cloth that is cut first and washed later, so that it comes out as drawn. For
 * a piece laid on the cross or the bias the grain of the outline is not the cloth's: there cloth is washed first.
 */
export function grownForShrinking(outline: Ring, { along, across }: Shrinkage): Ring {
  return outline.map(({ x, y }) => ({ x: beforeShrinking(x, along), y: beforeShrinking(y, across) }));
}
