import { isSamePoint, type TablePoint } from '../geometry/point';
import type { Piece } from './piece';
import { withCorner, withEdge } from './with-piece';

/** The piece with a corner at another place. */
export function moveCorner(piece: Piece, cornerId: string, to: TablePoint): Piece {
  return withCorner(piece, cornerId, (corner) => (isSamePoint(corner.at, to) ? corner : { ...corner, at: to }));
}

/** The piece with the point number `index` that a curved edge passes through at another place. */
export function moveThrough(piece: Piece, edgeId: string, index: number, to: TablePoint): Piece {
  return withEdge(piece, edgeId, (edge) => {
    if (edge.shape.kind !== 'curve') return edge;
    const before = edge.shape.through[index];
    if (!before || isSamePoint(before, to)) return edge;
    return { ...edge, shape: { ...edge.shape, through: edge.shape.through.with(index, to) } };
  });
}
