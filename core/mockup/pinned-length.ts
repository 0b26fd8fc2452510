import type { Garment } from '../garment/garment';
import type { PinnedWhat } from '../garment/mockup';
import type { Piece } from '../garment/piece';
import { withPiece } from '../garment/with-piece';
import { seamSides } from '../seams/seam-sides';
import { lengthenAtHem } from '../shaping/lengthen';
import { lengthenRing, type RingNotLengthened } from '../shaping/lengthen-garment';
import { keptTrue } from './keep-true';
import { hemEnd } from './pinned-edge';

/** A garment pinned longer or shorter. */
export type PinnedLength = Extract<PinnedWhat, { readonly kind: 'length' }>;

/** The sides of a seam may come to differ by this much more before a corner gives (mm). */
const HARMLESS = 0.5;

/** The garment with these pieces longer or shorter at their hems, or across at a depth below the waist, seams kept true. */
export function lengthCarried(
  garment: Garment,
  pieces: readonly Piece[],
  at: PinnedLength['at'],
  by: number,
): Garment | RingNotLengthened {
  const made = at.kind === 'hem' ? atHems(garment, pieces, by) : acrossRing(garment, pieces, at.depth, by);
  if ('why' in made) return made;
  return (garment.seams ?? []).reduce((so, seam) => {
    const sides = seamSides(so, seam);
    const touches = [...seam.one, ...seam.other].some(({ pieceId }) => pieces.some(({ id }) => id === pieceId));
    return sides && touches ? keptTrue(garment, so, seam, { end: hemEnd(sides), harmless: HARMLESS }) : so;
  }, made);
}

function acrossRing(garment: Garment, pieces: readonly Piece[], depth: number, by: number) {
  return lengthenRing(garment, { members: pieces.map(({ id }) => ({ pieceId: id })) }, { depth, by });
}

/** Pieces without a hem, such as a band, stay as they are. */
function atHems(garment: Garment, pieces: readonly Piece[], by: number): Garment | RingNotLengthened {
  const hemmed = pieces.filter(({ edges }) => edges.some(({ role }) => role === 'hem'));
  if (hemmed.length === 0) return { kind: 'ring-not-lengthened', why: 'no-hem' };
  let changed = garment;
  for (const piece of hemmed) {
    const made = lengthenAtHem(piece, by);
    if ('why' in made) return { kind: 'ring-not-lengthened', why: made.why, pieceId: piece.id };
    changed = withPiece(changed, piece.id, () => made);
  }
  return changed;
}
