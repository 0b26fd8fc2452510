import type { Pleat } from '../garment/fullness';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { takenUp } from '../garment/taken-up';
import { edgeIndex } from '../garment/with-piece';
import { pathLength } from '../geometry/path';
import { MOST_SLASHES, type NotSlashed, type SlashesWish, slash } from './slashes';

/** What laying pleats comes to (mm): evenly, all alike. */
export interface PleatSums {
  /** All that is laid away. */
  readonly laidAway: number;
  /** What each pleat takes of the edge, and half of that, the depth of its fold. */
  readonly takes: number;
  readonly depth: number;
  /** From pleat to pleat on the flat cloth, and what shows of each when laid. */
  readonly spacing: number;
  readonly visible: number;
  /** Whether a pleat reaches under the next one: knife pleats deeper than what shows lie in three layers and more. */
  readonly overlapping: boolean;
}

/** Far more than any skirt has. */
const MOST_PLEATS = 999;

/** How pleats are put on an edge, evenly over a stretch (all of the edge unless said). */
export interface PleatsWish {
  readonly edgeId: string;
  readonly from?: number;
  readonly to?: number;
  readonly pleats: number;
  /** The depth of each fold, or the length the stretch is to come to (mm). */
  readonly by: { readonly kind: 'depth'; readonly depth: number } | { readonly kind: 'into'; readonly into: number };
  readonly laid: Pleat['laid'];
  readonly newId: () => string;
}

export interface NotPleated {
  readonly kind: 'not-pleated';
  /** `not-longer`: nothing is left to lay away, or more is laid away than there is. */
  readonly why: 'no-such-stretch' | 'no-pleats' | 'not-longer' | 'in-the-way';
}

/**
 * The sums of `cut` mm laid in so many pleats to come to `into`: each takes (cut - into) / pleats, twice its depth (common
 * practice). `undefined` where there is nothing to lay away or no pleat to lay it in.
 */
export function pleatSums(wish: {
  readonly cut: number;
  readonly into: number;
  readonly pleats: number;
}): PleatSums | undefined {
  const { cut, into, pleats } = wish;
  if (!(Number.isInteger(pleats) && pleats >= 1 && into > 0 && cut > into)) return undefined;
  const takes = (cut - into) / pleats;
  const visible = into / pleats;
  return {
    laidAway: cut - into,
    takes,
    depth: takes / 2,
    spacing: cut / pleats,
    visible,
    overlapping: takes / 2 > visible,
  };
}

/** The piece with pleats marked on an edge that is wide enough already: half a space before the first and after the last. */
export function pleatEdge(piece: Piece, wish: PleatsWish): Piece | NotPleated {
  const { edgeId, from = 0, to, pleats, by, laid, newId } = wish;
  const path = outlineOf(piece).edges[edgeIndex(piece, edgeId)];
  const length = path ? pathLength(path) : 0;
  const end = to ?? length;
  if (!(from >= 0 && end > from && end <= length)) return { kind: 'not-pleated', why: 'no-such-stretch' };
  if (!(Number.isInteger(pleats) && pleats >= 1 && pleats <= MOST_PLEATS))
    return { kind: 'not-pleated', why: 'no-pleats' };
  const cut = end - from;
  const sums = pleatSums({ cut, into: by.kind === 'into' ? by.into : cut - 2 * by.depth * pleats, pleats });
  if (!sums) return { kind: 'not-pleated', why: 'not-longer' };
  const { takes, spacing } = sums;
  const laidOut = Array.from({ length: pleats }, (_, i): Pleat => {
    const start = from + spacing * (i + 0.5) - takes / 2;
    return { kind: 'pleat', id: newId(), edgeId, from: start, takes, laid };
  });
  const taken = takenUp(piece, edgeId, length);
  const inTheWay = laidOut.some((one) => taken.some((each) => each.from < one.from + takes && each.to > one.from));
  if (inTheWay) return { kind: 'not-pleated', why: 'in-the-way' };
  return { ...piece, fullness: [...(piece.fullness ?? []), ...laidOut] };
}

/**
 * The piece widened by so many pleats of a depth, and the pleats marked where the width was let in: the opened edge is
 * sewn as long as before. Evenly spaced, half a space at each end; `hinge: 'far'` tapers them to nothing at the other edge.
 */
export function addPleats(
  piece: Piece,
  wish: Omit<SlashesWish, 'by' | 'places'> & Pick<PleatsWish, 'laid' | 'newId' | 'pleats'> & { readonly depth: number },
): Piece | NotSlashed | NotPleated {
  const { open, far, hinge, pleats, depth, laid, newId } = wish;
  const path = outlineOf(piece).edges[edgeIndex(piece, open)];
  if (!path) return { kind: 'not-slashed', why: 'no-such-place' };
  if (!(Number.isInteger(pleats) && pleats >= 1)) return { kind: 'not-pleated', why: 'no-pleats' };
  if (pleats > MOST_SLASHES) return { kind: 'not-slashed', why: 'too-many' };
  const spacing = pathLength(path) / pleats;
  const places = Array.from({ length: pleats }, (_, i) => ({ open: spacing * (i + 0.5) }));
  const widened = slash(piece, { open, far, hinge, places, by: { kind: 'length', total: 2 * depth * pleats } });
  if ('why' in widened) return widened;
  return pleatEdge(widened, { edgeId: open, pleats, by: { kind: 'depth', depth }, laid, newId });
}
