import type { Piece } from '../garment/piece';
import { inches } from '../units/inch';
import { type BodiceEase, type BodiceMeasures, bodice, type NoBodice } from './bodice';
import { type BodiceOpening, bodicePieces } from './bodice-pieces';
import type { DraftOptions } from './draft-names';
import type { DraftQuestion } from './draft-question';
import { goredSkirtPieces, type NoGore } from './gored-skirt';
import { laidBeside } from './lay-beside';

/** A bodice and a skirt of equal gores in one. Body measures and lengths in mm; `length` and `hipDepth` from the waist. */
export interface SlipSizes extends BodiceMeasures, BodiceOpening {
  readonly hip: number;
  readonly hipDepth: number;
  readonly length: number;
  readonly hem: number;
  readonly gores: number;
  readonly ease: BodiceEase & { readonly hip: number };
  /** Where the two are joined: at the waist, or below the bust, where `underbust` is the girth. */
  readonly joined: { readonly at: 'waist' } | { readonly at: 'underbust'; readonly underbust: number };
}

export interface Slip {
  readonly kind: 'slip';
  readonly pieces: readonly Piece[];
  readonly questions: readonly DraftQuestion[];
}

/** The underbust lies 3 in below the bust point (common practice). */
const UNDERBUST_BELOW = inches(3);

/**
 * A slip: the bodice block to where it is joined, and under it a skirt of equal gores as wide at its top as the bodice is
 * at its foot once its darts are sewn. Joined below the bust, the bodice ends there with the underbust as its waist, and
 * the skirt hangs past the waist to the hip.
 */
export function slip(sizes: SlipSizes, options: DraftOptions): Slip | NoBodice | NoGore {
  const { joined, ease, hip, hem, gores } = sizes;
  const raised = joined.at === 'waist' ? 0 : sizes.frontWaistLength - sizes.bustDepth - UNDERBUST_BELOW;
  if (!(raised >= 0)) return { kind: 'no-bodice', why: 'bust-below-waist' };
  const girth = joined.at === 'waist' ? sizes.waist : joined.underbust;
  const drafted = bodice({ ...sizes, waist: girth }, ease, raised);
  if (drafted.kind === 'no-bodice') return drafted;
  const top = girth + ease.waist;
  const skirt = goredSkirtPieces(
    { waist: top, hip: hip + ease.hip, hipDepth: sizes.hipDepth + raised, hem, length: sizes.length + raised, gores },
    { newId: options.newId, name: options.nameOf('gore'), seamName: options.nameOf('gore-seam') },
  );
  if (!Array.isArray(skirt)) return skirt;
  return {
    kind: 'slip',
    pieces: laidBeside([...bodicePieces(drafted, sizes, options), ...skirt]),
    questions: drafted.questions,
  };
}
