import type { Garment } from './garment';
import type { Corner, Edge, Piece } from './piece';
import { seamsFollow } from './seam-edits';

/** The garment with one piece changed. Whatever did not change stays the same object, the garment itself included. */
export function withPiece(garment: Garment, pieceId: string, change: (piece: Piece) => Piece): Garment {
  const pieces = withOne(garment.pieces, pieceId, change);
  return pieces === garment.pieces ? garment : seamsFollow(garment, { ...garment, pieces });
}

/** The piece with one edge changed. */
export function withEdge(piece: Piece, edgeId: string, change: (edge: Edge) => Edge): Piece {
  const edges = withOne(piece.edges, edgeId, change);
  return edges === piece.edges ? piece : { ...piece, edges };
}

/** The piece with one corner changed. */
export function withCorner(piece: Piece, cornerId: string, change: (corner: Corner) => Corner): Piece {
  const corners = withOne(piece.corners, cornerId, change);
  return corners === piece.corners ? piece : { ...piece, corners };
}

/** The list with the one of that id changed; the same list when there is no such one or it stays as it is. */
export function withOne<Item extends { readonly id: string }>(
  items: readonly Item[],
  id: string,
  change: (item: Item) => Item,
): readonly Item[] {
  const index = items.findIndex((item) => item.id === id);
  const before = items[index];
  if (!before) return items;
  const after = change(before);
  return after === before ? items : items.with(index, after);
}

/** The list without the one of that id; the same list when there is no such one. */
export function withoutOne<Item extends { readonly id: string }>(items: readonly Item[], id: string): readonly Item[] {
  const left = items.filter((item) => item.id !== id);
  return left.length === items.length ? items : left;
}

/** The piece of that id. */
export function pieceOf(garment: Garment, pieceId: string): Piece | undefined {
  return garment.pieces.find((piece) => piece.id === pieceId);
}

/** The place of an edge in its piece, or -1. */
export function edgeIndex(piece: Piece, edgeId: string): number {
  return piece.edges.findIndex((edge) => edge.id === edgeId);
}
