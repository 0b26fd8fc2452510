import { cutPieces } from '../garment/cut-pieces';
import type { FindingBase } from '../garment/finding';
import type { Garment } from '../garment/garment';
import { neighbourIndex } from '../garment/outline';
import type { Piece } from '../garment/piece';
import type { EdgeRef } from '../garment/seam';
import { edgeIndex } from '../garment/with-piece';
import { cornerAngle } from '../seams/corner-angle';

/** A corner of a piece where the waist ends, and the waist edge that ends there. */
export interface WaistCorner extends EdgeRef {
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

/** The waist does not run on smoothly where it is joined; `off` (radians) more than 0 is a peak, less a notch. */
export type WaistFinding = FindingBase & {
  readonly kind: 'waist-peak';
  readonly off: number;
  /** The piece it is joined to; its own where it is joined to its mirror image. */
  readonly otherPieceId: string;
};

/** Every join of the waist in a garment, across folds and its seams, that is off by more than {@link JOIN_TOLERANCE}. */
export function waistFindings({ pieces, seams = [] }: Garment): WaistFinding[] {
  const worn = cutPieces({ pieces });
  const pairs = seams.flatMap(({ one, other }) => {
    const [a, b] = [one[0], other[0]];
    // Only where one edge is sewn to one do their corners meet for certain.
    return a && b && one.length === 1 && other.length === 1 ? [{ one: a, other: b }] : [];
  });
  return waistJoins(worn, pairs).flatMap(({ one, other, off }): WaistFinding[] => {
    if (Math.abs(off) <= JOIN_TOLERANCE) return [];
    const place = { kind: 'edge', pieceId: one.pieceId, edgeId: one.edgeId } as const;
    return [{ kind: 'waist-peak', weight: 'warn', place, off, otherPieceId: other.pieceId }];
  });
}

/**
 * How smoothly the waist runs on across folds and across the seams given as pairs, with the pieces joined flat. Pairs of
 * which either edge does not end at a waist are passed over.
 */
export function waistJoins(
  pieces: readonly Piece[],
  pairs: readonly { readonly one: EdgeRef; readonly other: EdgeRef }[],
): WaistJoin[] {
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
    const waist = piece.edges[neighbourIndex(piece, index, step)];
    if (waist?.role !== 'waist') continue;
    const cornerIndex = step < 0 ? index : (index + 1) % piece.corners.length;
    const cornerId = piece.corners[cornerIndex]?.id;
    if (cornerId) return { pieceId, edgeId: waist.id, cornerId, angle: cornerAngle(piece, cornerIndex) };
  }
  return undefined;
}
