/**
 * Truing a seam: its sides made to differ by the ease that is meant and by nothing else.
 * Limit: fullness (gathers, pleats) stays as it is set; only the drawn edges give.
 */
import type { Garment } from '../garment/garment';
import { type EdgeRef, isOwnMirror, isSameEdge, type Seam } from '../garment/seam';
import { pieceOf, withPiece } from '../garment/with-piece';
import { pullEdgeToLength } from '../shaping/stated-figure';
import { edgeLength, netEdgeLength } from './edge-length';
import { edgeToLength, type GivingEnd, type NotMadeToLength } from './edge-to-length';
import { type SeamSide, seamSides } from './seam-sides';
import { totalsOf } from './seam-walk';

/** Which side gives way, and where along the walk: at one of its ends, or in proportion through all of it. */
export interface TrueSeamOptions {
  readonly move: 'one' | 'other' | 'both';
  readonly where: 'at-start' | 'at-end' | 'spread';
}

export interface NotTrued {
  readonly kind: 'not-trued';
  /** `own-mirror`: an edge sewn to its own mirror image always agrees. Otherwise why its edge cannot give. */
  readonly why: 'no-seam' | 'own-mirror' | NotMadeToLength['why'];
  /** The edge that cannot give. */
  readonly edge?: EdgeRef;
}

/** What is left beyond the ease is at most this (mm). */
export const TRUED = 0.01;

/** Pieces whose two edges share a corner move one another's length, so truing may have to be gone over. */
const MOST_ROUNDS = 6;

/**
 * The garment with a seam trued within {@link TRUED}; the same garment when it is already. At an end the corner there moves
 * along its own edge; spread, each edge grows in proportion from the corner that stays. The other side, and the corners
 * that do not give, stay as they are.
 */
export function trueSeam(garment: Garment, seam: Seam, options: TrueSeamOptions): Garment | NotTrued {
  if (isOwnMirror(seam)) return { kind: 'not-trued', why: 'own-mirror' };
  let trued = garment;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const sides = seamSides(trued, seam);
    if (!sides) return { kind: 'not-trued', why: 'no-seam' };
    const off = totalsOf(sides, seam.ease).beyondEase;
    if (Math.abs(off) <= TRUED / 2) return trued;
    const share = options.move === 'both' ? off / 2 : off;
    const first = options.move === 'other' ? trued : lengthened(trued, sides.one, -share, options.where);
    if ('kind' in first) return first;
    const both = options.move === 'one' ? first : lengthened(first, sides.other, share, options.where);
    if ('kind' in both) return both;
    trued = both;
  }
  return { kind: 'not-trued', why: 'not-met' };
}

/** The garment with one side of a seam longer by `by` over all comings of its edges. */
function lengthened(garment: Garment, side: SeamSide, by: number, where: TrueSeamOptions['where']): Garment | NotTrued {
  if (where === 'spread') {
    const total = side.edges.reduce((sum, { ref, times }) => sum + times * netLength(garment, ref), 0);
    if (!(total + by > 0)) return { kind: 'not-trued', why: 'nothing-left' };
    return side.edges.reduce((so, { ref }) => grown(so, ref, (by / total) * netLength(garment, ref)), garment);
  }
  const stretch = where === 'at-start' ? side.stretches[0] : side.stretches.at(-1);
  const piece = stretch && pieceOf(garment, stretch.pieceId);
  if (!stretch || !piece) return { kind: 'not-trued', why: 'no-seam' };
  const times = side.edges.find(({ ref }) => isSameEdge(ref, stretch))?.times ?? 1;
  const end: GivingEnd = (where === 'at-start') === stretch.backwards ? 'end' : 'start';
  const length = (edgeLength(piece, stretch.edgeId) ?? 0) + by / times;
  const made = edgeToLength(piece, stretch.edgeId, { length, end });
  if ('kind' in made) {
    return { kind: 'not-trued', why: made.why, edge: { pieceId: stretch.pieceId, edgeId: stretch.edgeId } };
  }
  return withPiece(garment, piece.id, () => made);
}

function grown(garment: Garment, { pieceId, edgeId }: EdgeRef, by: number): Garment {
  return withPiece(garment, pieceId, (piece) => pullEdgeToLength(piece, edgeId, (edgeLength(piece, edgeId) ?? 0) + by));
}

function netLength(garment: Garment, { pieceId, edgeId }: EdgeRef): number {
  const piece = pieceOf(garment, pieceId);
  return (piece && netEdgeLength(piece, edgeId)) ?? 0;
}
