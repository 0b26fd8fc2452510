import { nearestOnPath, pathAtLength, pathLength } from '../geometry/path';
import type { TablePoint } from '../geometry/point';
import { outlineOf } from './outline';
import type { EndRule, Piece } from './piece';
import { edgeIndex, withEdge } from './with-piece';

/** The piece with an edge made straight; the points it passed are forgotten. */
export function straighten(piece: Piece, edgeId: string): Piece {
  return withEdge(piece, edgeId, (edge) =>
    edge.shape.kind === 'straight' ? edge : { ...edge, shape: { kind: 'straight' } },
  );
}

/** The piece with a straight edge made ready to curve, by a point at its middle that can be moved. */
export function curveEdge(piece: Piece, edgeId: string): Piece {
  const path = outlineOf(piece).edges[edgeIndex(piece, edgeId)];
  if (!path) return piece;
  const middle = pathAtLength(path, pathLength(path) / 2).point;
  return withEdge(piece, edgeId, (edge) =>
    edge.shape.kind === 'curve'
      ? edge
      : { ...edge, shape: { kind: 'curve', through: [middle], leaves: 'free', meets: 'free' } },
  );
}

/**
 * The piece with one more point on an edge, in its place along the edge's present run; a straight edge becomes curved.
 * Also says which number the new point has.
 */
export function addThrough(piece: Piece, edgeId: string, at: TablePoint): { piece: Piece; index: number } | undefined {
  const path = outlineOf(piece).edges[edgeIndex(piece, edgeId)];
  const edge = piece.edges[edgeIndex(piece, edgeId)];
  if (!path || !edge) return undefined;
  if (edge.shape.kind === 'straight') {
    const shape = { kind: 'curve', through: [at], leaves: 'free', meets: 'free' } as const;
    return { piece: withEdge(piece, edgeId, (before) => ({ ...before, shape })), index: 0 };
  }
  const { through } = edge.shape;
  const along = nearestOnPath(path, at).along;
  const index = through.filter((point) => nearestOnPath(path, point).along < along).length;
  const shape = { ...edge.shape, through: [...through.slice(0, index), at, ...through.slice(index)] };
  return { piece: withEdge(piece, edgeId, (before) => ({ ...before, shape })), index };
}

/** The piece without one of the points a curve passes; the last one gone leaves a straight edge. */
export function removeThrough(piece: Piece, edgeId: string, index: number): Piece {
  return withEdge(piece, edgeId, (edge) => {
    if (edge.shape.kind !== 'curve' || edge.shape.through[index] === undefined) return edge;
    const through = edge.shape.through.toSpliced(index, 1);
    const bows = edge.shape.leaves !== 'free' || edge.shape.meets !== 'free';
    return { ...edge, shape: through.length === 0 && !bows ? { kind: 'straight' } : { ...edge.shape, through } };
  });
}

/** The piece with a curved edge standing otherwise at its start (`leaves`) or its end (`meets`). */
export function setEndRule(piece: Piece, edgeId: string, end: 'leaves' | 'meets', rule: EndRule): Piece {
  return withEdge(piece, edgeId, (edge) => {
    if (edge.shape.kind !== 'curve' || edge.shape[end] === rule) return edge;
    return { ...edge, shape: { ...edge.shape, [end]: rule } };
  });
}
