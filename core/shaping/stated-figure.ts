import { edgeEnds, neighbourIndex, outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { edgeIndex, withCorner, withEdge } from '../garment/with-piece';
import { scaling, transformPoint } from '../geometry/affine';
import { pathLength } from '../geometry/path';
import { scaleMarks } from './carry-marks';

/** The length is met to this many mm. */
const MET = 0.001;
const MOST_TRIES = 12;

/**
 * The piece with an edge made as long as stated (mm): one end stays, the other moves along the line between them, and a
 * curve keeps its form. The start stays, unless only the end stands on a fold, which must stay upright. The edge beyond
 * follows to the moved corner; marks keep their proportion. The piece as it was when the edge or the length is nothing.
 */
export function pullEdgeToLength(piece: Piece, edgeId: string, length: number): Piece {
  const index = edgeIndex(piece, edgeId);
  if (index < 0 || !(length > 0)) return piece;
  let pulled = piece;
  // Ends that stand square to a neighbour bend anew at every length, so the last thousandth takes a few tries.
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const now = lengthOf(pulled, index);
    if (now === 0 || Math.abs(now - length) <= MET) break;
    pulled = grown(pulled, index, length / now);
  }
  return pulled === piece ? piece : scaleMarks(pulled, edgeId, lengthOf(piece, index), lengthOf(pulled, index));
}

function grown(piece: Piece, index: number, factor: number): Piece {
  const { start, end } = edgeEnds(piece, index);
  const edge = piece.edges[index];
  const keepsEnd = isFold(piece, index, 1) && !isFold(piece, index, -1);
  const moving = piece.corners[keepsEnd ? index : (index + 1) % piece.corners.length];
  if (!edge || !moving) return piece;
  const map = scaling(factor, factor, keepsEnd ? end : start);
  const moved = withCorner(piece, moving.id, (corner) => ({ ...corner, at: transformPoint(map, corner.at) }));
  if (edge.shape.kind === 'straight') return moved;
  const { shape } = edge;
  const through = shape.through.map((point) => transformPoint(map, point));
  return withEdge(moved, edge.id, (before) => ({ ...before, shape: { ...shape, through } }));
}

function isFold(piece: Piece, index: number, step: -1 | 1): boolean {
  return piece.edges[neighbourIndex(piece, index, step)]?.role === 'fold';
}

function lengthOf(piece: Piece, index: number): number {
  return pathLength(outlineOf(piece).edges[index] ?? []);
}
