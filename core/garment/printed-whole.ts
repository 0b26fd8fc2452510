import type { Garment } from './garment';
import type { EdgeRef } from './seam';
import { withOne, withoutOne } from './with-piece';

/**
 * A figure printed on the source for several edges together, such as the hem of the whole skirt, and which she trusts where
 * it clashes with the single figures.
 */
export interface PrintedWhole {
  readonly id: string;
  readonly name: string;
  /** mm */
  readonly length: number;
  readonly edges: readonly EdgeRef[];
  /** Each edge counts as often as it is found in the whole garment; once, as drawn, unless said. */
  readonly counted?: 'in-garment';
  readonly rules: 'unsettled' | 'parts' | 'whole';
}

/** The garment with a figure for several edges added, or the one of the same id replaced. */
export function putWhole(garment: Garment, whole: PrintedWhole): Garment {
  const { wholes = [] } = garment;
  const isKnown = wholes.some(({ id }) => id === whole.id);
  return { ...garment, wholes: isKnown ? withOne(wholes, whole.id, () => whole) : [...wholes, whole] };
}

/** The garment without it; the edges and their own figures stay. */
export function removeWhole(garment: Garment, id: string): Garment {
  const { wholes = [] } = garment;
  const left = withoutOne(wholes, id);
  return left === wholes ? garment : { ...garment, wholes: left };
}
