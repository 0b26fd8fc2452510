import type { Garment } from '../garment/garment';
import { putNotch } from '../garment/mark-edits';
import { isOwnMirror, type Seam } from '../garment/seam';
import { withPiece } from '../garment/with-piece';
import { drawnPlace, type SeamNotch, type SeamSide } from './seam-sides';
import { walkOfSeam } from './seam-walk';
import { easedShare } from './walk';

/** A notch within this of its place (mm) is at it, and two of them are one. */
const SAME_NOTCH = 1e-3;

/**
 * The garment with the notches of one side of a seam put across to the other: each gets a partner where it meets that side
 * when sewn, the ease spread evenly. A partner the walk already knows is moved; other notches stay. A notch beyond the
 * end of a shorter side gets none. The same garment when all of them meet, or for an edge sewn to its own mirror image.
 */
export function matchNotches(
  garment: Garment,
  seam: Seam,
  { from, newId }: { readonly from: 'one' | 'other'; readonly newId: () => string },
): Garment {
  const walk = isOwnMirror(seam) ? undefined : walkOfSeam(garment, seam);
  if (!walk) return garment;
  const share = easedShare(walk.one.length, seam.ease / walk.repeats);
  const target = from === 'one' ? walk.other : walk.one;
  return walk[from].notches.reduce((so, notch) => {
    const along = from === 'one' ? notch.along * share : notch.along / share;
    if (!(along <= target.length)) return so;
    const partner = walk.meetings.find((meeting) => meeting[from] === notch)?.[from === 'one' ? 'other' : 'one'];
    return placed(so, target, along, notch, partner, newId);
  }, garment);
}

function placed(
  garment: Garment,
  target: SeamSide,
  along: number,
  notch: SeamNotch,
  partner: SeamNotch | undefined,
  newId: () => string,
): Garment {
  if (partner && Math.abs(partner.along - along) <= SAME_NOTCH) return garment;
  const stretch = target.stretches.find(({ from, length }) => along <= from + length);
  if (!stretch) return garment;
  const { pieceId, edgeId } = stretch;
  const drawn = drawnPlace(stretch, along);
  return withPiece(garment, pieceId, (piece) => {
    const isThere = piece.notches.some(
      (each) => each.edgeId === edgeId && each.count === notch.count && Math.abs(each.along - drawn) <= SAME_NOTCH,
    );
    if (isThere) return piece;
    const isKept = partner?.pieceId === pieceId;
    return putNotch(piece, { id: isKept ? partner.id : newId(), edgeId, along: drawn, count: notch.count });
  });
}
