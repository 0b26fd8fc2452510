import { neighbourIndex } from '../garment/outline';
import type { Piece } from '../garment/piece';
import type { EdgeRef } from '../garment/seam';
import { edgeIndex } from '../garment/with-piece';
import { cornerAngle } from '../seams/corner-angle';
import type { SeamPair } from '../seams/seam-pairs';

/** A corner of a piece where the waist ends. */
export interface WaistCorner {
  readonly pieceId: string;
  readonly cornerId: string;
  /** The angle inside the piece, radians. */
  readonly angle: number;
}

/** Two waist corners sewn together, or one on a fold with its own mirror image. */
export interface WaistJoin {
  readonly one: WaistCorner;
  readonly other: WaistCorner;
  /** How far both angles together are from a straight line (radians): more is a peak at the join, less a notch. */
  readonly off: number;
}

/** Paired corners should come to 180 degrees within this (common practice: 2 degrees). */
export const JOIN_TOLERANCE = (2 * Math.PI) / 180;

/**
 * How smoothly the waist runs on across folds and across the seams given as pairs, with the pieces joined flat. Pairs of
 * which either edge does not end at a waist are passed over.
 */
export function waistJoins(pieces: readonly Piece[], pairs: readonly SeamPair[]): WaistJoin[] {
  const folds = pieces.flatMap((piece) =>
    piece.edges.flatMap(({ id, role }) => {
      const corner = role === 'fold' ? waistCornerOf(pieces, { pieceId: piece.id, edgeId: id }) : undefined;
      return corner ? [joinOf(corner, corner)] : [];
    }),
  );
  const seams = pairs.flatMap(({ one, other }) => {
    const [a, b] = [waistCornerOf(pieces, one), waistCornerOf(pieces, other)];
    return a && b ? [joinOf(a, b)] : [];
  });
  return [...folds, ...seams];
}

function joinOf(one: WaistCorner, other: WaistCorner): WaistJoin {
  return { one, other, off: one.angle + other.angle - Math.PI };
}

function waistCornerOf(pieces: readonly Piece[], { pieceId, edgeId }: EdgeRef): WaistCorner | undefined {
  const piece = pieces.find(({ id }) => id === pieceId);
  const index = piece ? edgeIndex(piece, edgeId) : -1;
  if (!piece || index < 0) return undefined;
  for (const step of [-1, 1] as const) {
    if (piece.edges[neighbourIndex(piece, index, step)]?.role !== 'waist') continue;
    const cornerIndex = step < 0 ? index : (index + 1) % piece.corners.length;
    const cornerId = piece.corners[cornerIndex]?.id;
    if (cornerId) return { pieceId, cornerId, angle: cornerAngle(piece, cornerIndex) };
  }
  return undefined;
}
