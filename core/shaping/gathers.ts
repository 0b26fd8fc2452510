import { putFullness } from '../garment/mark-edits';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { netAlong, takenUp } from '../garment/taken-up';
import { edgeIndex } from '../garment/with-piece';
import { pathLength } from '../geometry/path';
import { type NotSlashed, type SlashesWish, slash } from './slashes';

/** What gathering comes to: how much is drawn up (mm), and how many times the sewn length the cloth is. */
export interface GatherSums {
  readonly takes: number;
  readonly ratio: number;
}

/** A stretch of an edge (all of it unless said) to be drawn up to a length (mm). */
export interface GathersWish {
  readonly id: string;
  readonly edgeId: string;
  readonly from?: number;
  readonly to?: number;
  readonly into: number;
}

export interface NotGathered {
  readonly kind: 'not-gathered';
  /** `not-longer`: the stretch, its darts and pleats closed, is no longer than what it is to be drawn up to. */
  readonly why: 'no-such-stretch' | 'not-longer';
}

/** The sums of `cut` mm drawn up into `into`; `undefined` where there is nothing to draw up, or nothing to draw it into. */
export function gatherSums({ cut, into }: { readonly cut: number; readonly into: number }): GatherSums | undefined {
  return into > 0 && cut > into ? { takes: cut - into, ratio: cut / into } : undefined;
}

/** The piece with gathers marked on an edge that is wide enough already; its outline stays. */
export function gatherEdge(piece: Piece, { id, edgeId, from = 0, to, into }: GathersWish): Piece | NotGathered {
  const path = outlineOf(piece).edges[edgeIndex(piece, edgeId)];
  const length = path ? pathLength(path) : 0;
  const end = to ?? length;
  if (!(from >= 0 && end > from && end <= length)) return { kind: 'not-gathered', why: 'no-such-stretch' };
  const others = takenUp({ ...piece, fullness: (piece.fullness ?? []).filter((one) => one.id !== id) }, edgeId, length);
  const free = netAlong(others, end) - netAlong(others, from);
  if (!(into > 0 && free > into)) return { kind: 'not-gathered', why: 'not-longer' };
  return putFullness(piece, { kind: 'gathers', id, edgeId, from, to: end, into });
}

/** The piece widened by slashes and what was added drawn up again: the opened edge is sewn as long as before. */
export function addGathers(
  piece: Piece,
  wish: Omit<SlashesWish, 'by'> & { readonly id: string; readonly more: number },
): Piece | NotSlashed | NotGathered {
  const path = outlineOf(piece).edges[edgeIndex(piece, wish.open)];
  if (!path) return { kind: 'not-slashed', why: 'no-such-place' };
  const length = pathLength(path);
  const into = netAlong(takenUp(piece, wish.open, length), length);
  const widened = slash(piece, { ...wish, by: { kind: 'length', total: wish.more } });
  return 'why' in widened ? widened : gatherEdge(widened, { id: wish.id, edgeId: wish.open, into });
}
