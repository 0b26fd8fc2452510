import { endTangent, startTangent } from '../geometry/path';
import { quarterTurn, scaleVector, type TablePoint, type Vector, vectorBetween } from '../geometry/point';
import { line, type Path } from '../geometry/segment';
import { splineThrough } from '../geometry/spline';
import type { Edge, EndRule, Piece } from './piece';

/** The stitch line of a piece: one path for each edge, in the order of the edges, and all of them joined. */
export interface Outline {
  readonly edges: readonly Path[];
  readonly whole: Path;
}

const remembered = new WeakMap<Piece, Outline>();

/**
 * The stitch line of a piece. Remembered for as long as the piece itself is, so asking again costs nothing; a changed
 * piece is another piece and is worked out anew.
 */
export function outlineOf(piece: Piece): Outline {
  const known = remembered.get(piece);
  if (known) return known;
  const edges = piece.edges.map((_, index) => edgePath(piece, index));
  const outline = { edges, whole: edges.flat() };
  remembered.set(piece, outline);
  return outline;
}

/** The number of the edge before (`-1`) or after (`+1`) edge `index`, going round. */
export function neighbourIndex(piece: Piece, index: number, step: -1 | 1): number {
  const count = piece.edges.length;
  return (index + step + count) % count;
}

/** The two corners between which edge `index` runs. */
export function edgeEnds(piece: Piece, index: number): { readonly start: TablePoint; readonly end: TablePoint } {
  const start = piece.corners[index]?.at;
  const end = piece.corners[(index + 1) % piece.corners.length]?.at;
  if (!start || !end) throw new Error(`piece ${piece.id} has no edge ${index}`);
  return { start, end };
}

/** The path of edge `index`, with its ends as its rules ask. */
function edgePath(piece: Piece, index: number): Path {
  const edge = edgeAt(piece, index);
  const { start, end } = edgeEnds(piece, index);
  if (edge.shape.kind === 'straight') return [line(start, end)];
  const before = ownDirection(piece, neighbourIndex(piece, index, -1), 'end');
  const after = ownDirection(piece, neighbourIndex(piece, index, 1), 'start');
  const points = [start, ...edge.shape.through, end];
  const directions: (Vector | undefined)[] = points.map(() => undefined);
  const chord = vectorBetween(start, end);
  directions[0] = ruledDirection(edge.shape.leaves, before, chord);
  directions[points.length - 1] = ruledDirection(edge.shape.meets, after, chord);
  return splineThrough(points, { directions });
}

/**
 * The direction in which an edge runs at one of its ends when nothing rules that end. A rule always asks for this own
 * direction of the neighbour, so two edges that rule each other cannot chase one another.
 */
function ownDirection(piece: Piece, index: number, which: 'start' | 'end'): Vector | undefined {
  const edge = edgeAt(piece, index);
  const { start, end } = edgeEnds(piece, index);
  if (edge.shape.kind === 'straight') return vectorBetween(start, end);
  const path = splineThrough([start, ...edge.shape.through, end]);
  return which === 'start' ? startTangent(path) : endTangent(path);
}

/** The direction a rule asks for, on the side of the edge's own chord; `undefined` leaves the end free. */
function ruledDirection(rule: EndRule, neighbour: Vector | undefined, chord: Vector): Vector | undefined {
  if (rule === 'free' || !neighbour) return undefined;
  if (rule === 'in-line') return neighbour;
  const square = quarterTurn(neighbour);
  return square.dx * chord.dx + square.dy * chord.dy < 0 ? scaleVector(square, -1) : square;
}

function edgeAt(piece: Piece, index: number): Edge {
  const edge = piece.edges[index];
  if (!edge) throw new Error(`piece ${piece.id} has no edge ${index}`);
  return edge;
}
