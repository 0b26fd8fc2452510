import { nearestOnPath, pathAtLength, pathLength } from '../geometry/path';
import type { Path } from '../geometry/segment';
import { carriedFullness } from './fullness';
import { outlineOf } from './outline';
import type { CornerFinish, Edge, EdgeShape, Piece } from './piece';
import { splitEdge } from './split-edge';
import { edgeIndex, withCorner } from './with-piece';

/** A corner is not put nearer than this to another (mm): they could not be told apart under a finger. */
export const NEAR_CORNER = 1;

/**
 * The piece with an edge cut in two, `along` mm from its start: a new corner there, the line where it was, and the marks
 * shared out to the two halves. The half after the corner is a new edge of the same kind. The same piece when the place
 * is at a corner already.
 */
export function insertCorner(piece: Piece, edgeId: string, along: number, newId: () => string): Piece {
  const path = outlineOf(piece).edges[edgeIndex(piece, edgeId)];
  if (!path || along < NEAR_CORNER || along > pathLength(path) - NEAR_CORNER) return piece;
  return splitEdge(piece, edgeId, along, { cornerId: newId(), edgeId: newId() });
}

/**
 * The piece without a corner: the edges before and after it become one, curved when either was, and the marks of both
 * lie on it, as near as can be to where they were. A fold does not grow over an edge that was none. A piece keeps at
 * least three corners; with fewer it stays as it is.
 */
export function removeCorner(piece: Piece, cornerId: string): Piece {
  const index = piece.corners.findIndex((corner) => corner.id === cornerId);
  if (index < 0 || piece.corners.length <= 3) return piece;
  const count = piece.edges.length;
  const before = piece.edges[(index + count - 1) % count];
  const after = piece.edges[index];
  if (!before || !after) return piece;
  const joined = joinedEdge(before, after);
  const bare: Piece = {
    ...piece,
    corners: piece.corners.toSpliced(index, 1),
    edges: piece.edges.map((edge) => (edge.id === before.id ? joined : edge)).toSpliced(index, 1),
  };
  const path = outlineOf(bare).edges[edgeIndex(bare, joined.id)];
  if (!path) return piece;
  const moved = <Mark extends { readonly edgeId: string; readonly along: number }>(mark: Mark): Mark => {
    if (mark.edgeId !== before.id && mark.edgeId !== after.id) return mark;
    return { ...mark, edgeId: joined.id, along: sameSpot(piece, mark, path) };
  };
  const fullness = piece.fullness?.map((one) => {
    if (one.edgeId !== before.id && one.edgeId !== after.id) return one;
    const spot = (along: number) => sameSpot(piece, { edgeId: one.edgeId, along }, path);
    return { ...carriedFullness(one, spot), edgeId: joined.id };
  });
  return {
    ...bare,
    darts: piece.darts.map(moved),
    notches: piece.notches.map(moved),
    ...(fullness && { fullness }),
  };
}

/** Where a mark of the piece comes to lie along another path. */
function sameSpot(piece: Piece, mark: { readonly edgeId: string; readonly along: number }, path: Path): number {
  const old = outlineOf(piece).edges[edgeIndex(piece, mark.edgeId)];
  return old ? nearestOnPath(path, pathAtLength(old, mark.along).point).along : mark.along;
}

function joinedEdge(before: Edge, after: Edge): Edge {
  const kind = before.role === 'fold' ? after : before;
  const { stated: _, ...unstated } = kind;
  return { ...unstated, id: before.id, shape: joinedShape(before.shape, after.shape) };
}

function joinedShape(before: EdgeShape, after: EdgeShape): EdgeShape {
  if (before.kind === 'straight' && after.kind === 'straight') return before;
  return {
    kind: 'curve',
    through: [...(before.kind === 'curve' ? before.through : []), ...(after.kind === 'curve' ? after.through : [])],
    leaves: before.kind === 'curve' ? before.leaves : 'free',
    meets: after.kind === 'curve' ? after.meets : 'free',
  };
}

/** The piece with a corner's finish chosen, or left to the program with `undefined`. */
export function setCornerFinish(piece: Piece, cornerId: string, finish: CornerFinish | undefined): Piece {
  return withCorner(piece, cornerId, (corner) => {
    if (corner.finish === finish) return corner;
    const { finish: _, ...bare } = corner;
    return finish === undefined ? bare : { ...bare, finish };
  });
}
