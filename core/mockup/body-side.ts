import type { Garment } from '../garment/garment';
import type { PinnedChange } from '../garment/mockup';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import type { EdgeRef } from '../garment/seam';
import { edgeIndex, pieceOf } from '../garment/with-piece';
import { pathLength } from '../geometry/path';

/** An edge that a change is carried to. `mirrored`: it is drawn the other way round, so its places count from its end. */
export interface EdgeTarget extends EdgeRef {
  readonly mirrored: boolean;
}

/** Pieces cut for both sides of the body, where a change is meant for one only. */
export interface SidesTogether {
  readonly kind: 'sides-together';
  readonly pieceIds: readonly string[];
}

/** Twin edges of one opened piece differ by no more than this (mm). */
const ALIKE = 0.1;

/**
 * The edges that a change of one edge is carried to: that edge, where its piece is cut for both sides; its twin on the
 * other side as well, or instead, where the sides are drawn apart. `base` is the garment of the version it was pinned on.
 */
export function edgesOnSide(
  garment: Garment,
  edge: EdgeRef,
  side: PinnedChange['side'],
  base: Garment | undefined,
): readonly EdgeTarget[] | SidesTogether {
  const piece = pieceOf(garment, edge.pieceId);
  const index = piece ? edgeIndex(piece, edge.edgeId) : -1;
  if (!piece || index < 0) return [];
  const own: EdgeTarget = { pieceId: piece.id, edgeId: edge.edgeId, mirrored: false };
  const pieces = piecesOnSide(garment, [piece.id], side);
  if ('kind' in pieces) return pieces;
  if (side === 'both' && isOpened(piece, base)) {
    const twin = mirroredEdge(piece, index);
    return twin === undefined ? [own] : [own, { pieceId: piece.id, edgeId: twin, mirrored: true }];
  }
  return pieces.map((one) => ({ pieceId: one.id, edgeId: one.edges[index]?.id ?? '', mirrored: false }));
}

/** The pieces that a change of some pieces is carried to, by the side of the body it is meant for. */
export function piecesOnSide(
  garment: Garment,
  pieceIds: readonly string[],
  side: PinnedChange['side'],
): readonly Piece[] | SidesTogether {
  const pieces = pieceIds.flatMap((id) => pieceOf(garment, id) ?? []);
  const twinned = pieces.flatMap((piece) => (piece.side ? [piece, ...(twinOf(garment, piece) ?? [])] : [piece]));
  const once = twinned.filter((piece, at) => twinned.indexOf(piece) === at);
  if (side === 'both') return once;
  const together = pieces.filter(({ cut }) => cut.how !== 'single').map(({ id }) => id);
  if (together.length > 0) return { kind: 'sides-together', pieceIds: together };
  return once.filter((piece) => piece.side === undefined || piece.side === side);
}

/** Whether a piece was on the fold when it was pinned and is one whole piece now. */
export function isOpened(piece: Piece, base: Garment | undefined): boolean {
  const was = base && pieceOf(base, piece.id);
  return was?.cut.how === 'fold' && piece.cut.how === 'single';
}

/** The piece drawn for the other side of the body, where there is one with the same edges in the same order. */
function twinOf(garment: Garment, piece: Piece): readonly Piece[] | undefined {
  const kin = garment.pieces.filter(
    (other) =>
      other.side !== undefined &&
      other.side !== piece.side &&
      other.edges.length === piece.edges.length &&
      other.edges.every(({ name, role }, i) => name === piece.edges[i]?.name && role === piece.edges[i]?.role),
  );
  const round = (one: Piece) => pathLength(outlineOf(one).whole);
  const off = (other: Piece) => Math.abs(round(other) - round(piece));
  const nearest = kin.toSorted((a, b) => off(a) - off(b))[0];
  return nearest && [nearest];
}

/** On a piece opened at its fold the edges of the second half follow those of the first, mirrored and in turn. */
function mirroredEdge(piece: Piece, index: number): string | undefined {
  const at = piece.edges.length - 1 - index;
  const [edge, twin] = [piece.edges[index], piece.edges[at]];
  const [path, other] = [outlineOf(piece).edges[index], outlineOf(piece).edges[at]];
  if (!edge || !twin || !path || !other || at === index) return undefined;
  const isTwin = twin.name === edge.name && twin.role === edge.role;
  return isTwin && Math.abs(pathLength(path) - pathLength(other)) <= ALIKE ? twin.id : undefined;
}
