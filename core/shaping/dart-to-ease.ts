import type { Garment } from '../garment/garment';
import { removeMark } from '../garment/mark-edits';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { isSameEdge, type SeamEdge } from '../garment/seam';
import { netAlong, takenUp } from '../garment/taken-up';
import { edgeIndex, pieceOf, withPiece } from '../garment/with-piece';
import { pathLength } from '../geometry/path';

/** The stretch over which the width of a dart is drawn up instead. */
export interface EasedStretch {
  /** The id of the gathers. */
  readonly id: string;
  readonly from: number;
  readonly to: number;
}

export interface DartNotEased {
  readonly kind: 'dart-not-eased';
  /** `no-room`: what lies free in the stretch is not longer than what is to be drawn up. */
  readonly why: 'no-dart' | 'no-such-stretch' | 'no-room';
}

/** The piece without a dart, its width drawn up over a stretch of the same edge: the edge is sewn as long as before. */
export function dartToGathers(piece: Piece, dartId: string, { id, from, to }: EasedStretch): Piece | DartNotEased {
  const dart = piece.darts.find((each) => each.id === dartId);
  const path = dart && outlineOf(piece).edges[edgeIndex(piece, dart.edgeId)];
  if (!dart || !path) return { kind: 'dart-not-eased', why: 'no-dart' };
  const length = pathLength(path);
  if (!(from >= 0 && to > from && to <= length)) return { kind: 'dart-not-eased', why: 'no-such-stretch' };
  const sewn = (one: Piece) => takenUp(one, dart.edgeId, length);
  const without = removeMark(piece, dartId);
  const intake = netAlong(sewn(without), length) - netAlong(sewn(piece), length);
  const free = netAlong(sewn(without), to) - netAlong(sewn(without), from);
  if (!(free > intake)) return { kind: 'dart-not-eased', why: 'no-room' };
  const gathers = { kind: 'gathers', id, edgeId: dart.edgeId, from, to, into: free - intake } as const;
  return { ...without, fullness: [...(without.fullness ?? []), gathers] };
}

/**
 * The garment without a dart, its width left as ease in every seam its edge is in: the edge is sewn longer and the seam
 * means it to be. The same garment where the piece has no such dart.
 */
export function dartToSeamEase(garment: Garment, pieceId: string, dartId: string): Garment {
  const piece = pieceOf(garment, pieceId);
  const dart = piece?.darts.find(({ id }) => id === dartId);
  const path = piece && dart && outlineOf(piece).edges[edgeIndex(piece, dart.edgeId)];
  if (!piece || !dart || !path) return garment;
  const length = pathLength(path);
  const sewn = (one: Piece) => netAlong(takenUp(one, dart.edgeId, length), length);
  const without = removeMark(piece, dartId);
  const more = sewn(without) - sewn(piece);
  const times = (side: readonly SeamEdge[]) =>
    side.reduce((sum, edge) => (isSameEdge(edge, { pieceId, edgeId: dart.edgeId }) ? sum + (edge.times ?? 1) : sum), 0);
  const seams = garment.seams?.map((seam) => {
    const by = more * (times(seam.one) - times(seam.other));
    return by === 0 ? seam : { ...seam, ease: seam.ease + by };
  });
  const changed = withPiece(garment, pieceId, () => without);
  return seams ? { ...changed, seams } : changed;
}
