import type { Garment } from '../../core/garment/garment';
import { outlineOf } from '../../core/garment/outline';
import type { EdgeRef } from '../../core/garment/seam';
import { edgeIndex, pieceOf } from '../../core/garment/with-piece';
import { flattenPath } from '../../core/geometry/flatten';
import { pathAtLength, pathLength, signedArea } from '../../core/geometry/path';
import { cross, dot, quarterTurn, scaleVector, vectorBetween } from '../../core/geometry/point';
import type { Path } from '../../core/geometry/segment';

/** The run of an edge. */
export function pathOf(garment: Garment, { pieceId, edgeId }: EdgeRef): Path {
  const piece = pieceOf(garment, pieceId);
  return (piece && outlineOf(piece).edges[edgeIndex(piece, edgeId)]) ?? [];
}

export function lengthOf(garment: Garment, edge: EdgeRef): number {
  return pathLength(pathOf(garment, edge));
}

/**
 * How far into the piece an edge lies from its old line, `along` mm from the old edge's start, square to the old line:
 * where the square meets the new line flattened to a thousandth. Beyond an end, where it meets the first or last stretch.
 */
export function movedIn(before: Garment, after: Garment, edge: EdgeRef, along: number): number {
  const piece = pieceOf(before, edge.pieceId);
  if (!piece) throw new Error('no such piece');
  const { point, tangent } = pathAtLength(pathOf(before, edge), along);
  const inward = scaleVector(quarterTurn(tangent), signedArea(outlineOf(piece).whole) > 0 ? 1 : -1);
  const line = flattenPath(pathOf(after, edge), 0.001);
  const aheads = line.map((place) => dot(vectorBetween(point, place), tangent));
  const at = aheads.findIndex((ahead, i) => i > 0 && (aheads[i - 1] ?? 0) <= 0 && ahead >= 0);
  const i = at >= 1 ? at : (aheads[0] ?? 0) > 0 ? 1 : line.length - 1;
  const [a, b] = [line[i - 1], line[i]];
  if (!a || !b) throw new Error('no such edge');
  const run = vectorBetween(a, b);
  const far = -cross(run, vectorBetween(point, a)) / cross(run, inward);
  return -far;
}
