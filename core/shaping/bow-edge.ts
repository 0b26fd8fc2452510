import { edgeEnds, outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { edgeIndex, withEdge } from '../garment/with-piece';
import { pathLength } from '../geometry/path';
import { dot, move, type Point, quarterTurn, unit, vectorBetween } from '../geometry/point';
import { rootBetween } from './root';

/** An edge is bowed at most so many times as far as it was. */
const FURTHEST = 3;

/** The share of the bow is found to this much: a hundred-thousandth of a mm on a bow of 100 mm. */
const FOUND = 1e-7;

/**
 * The piece with a curved edge bowed more or less, its corners where they are, until it is `length` mm long: all its points
 * stand off the straight line between the corners by one and the same share of what they did, so it stays as smooth as it
 * was. The same piece where the edge is straight or no such bow gives that length.
 */
export function bowToLength(piece: Piece, edgeId: string, length: number): Piece {
  const index = edgeIndex(piece, edgeId);
  const shape = piece.edges[index]?.shape;
  if (shape?.kind !== 'curve') return piece;
  const { start, end } = edgeEnds(piece, index);
  const along = unit(vectorBetween(start, end));
  if (!along) return piece;
  const across = quarterTurn(along);
  const bowed = (share: number) => {
    const to = (point: Point) => move(point, across, (share - 1) * dot(vectorBetween(start, point), across));
    return withEdge(piece, edgeId, (edge) => ({ ...edge, shape: { ...shape, through: shape.through.map(to) } }));
  };
  const off = (share: number) => pathLength(outlineOf(bowed(share)).edges[index] ?? []) - length;
  const share = rootBetween(off, 1, 0, FOUND) ?? rootBetween(off, 1, FURTHEST, FOUND);
  return share === undefined ? piece : bowed(share);
}
