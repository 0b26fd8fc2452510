import type { EdgeRef } from './seam';

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
