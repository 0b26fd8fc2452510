import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { netAlong, takenUp } from '../garment/taken-up';
import { pathLength } from '../geometry/path';

/** The length of an edge along its stitch line; `undefined` when the piece has no such edge. */
export function edgeLength(piece: Piece, edgeId: string): number | undefined {
  const index = piece.edges.findIndex(({ id }) => id === edgeId);
  const path = outlineOf(piece).edges[index];
  return path && pathLength(path);
}

/** The length of an edge as it is sewn: its stitch line less what darts, pleats and gathers take up on it. */
export function netEdgeLength(piece: Piece, edgeId: string): number | undefined {
  const length = edgeLength(piece, edgeId);
  return length === undefined ? undefined : netAlong(takenUp(piece, edgeId, length), length);
}

/** What is taken up on an edge, and lengths along it once that is sewn. */
export { netAlong, takenUp as dartMouths } from '../garment/taken-up';
