import { endTangent, startTangent } from '../geometry/path';
import { quarterTurn, scaleVector, type TablePoint, type Vector, vectorBetween } from '../geometry/point';
import { line, type Path } from '../geometry/segment';
import { splineThrough } from '../geometry/spline';
import type { Edge, EndRule, Piece } from './piece';

/** The stitch line of a piece: one path for each edge, in the order of the edges, and all of them joined. */
export interface Outline {
  readonly edges: readonly Path[];
  readonly whole: Path;
  /**
   * Whether every edge could be worked out. Where one could not, which is a fault of this program, its points are joined by
   * straight lines, so that the piece shows what is known of it and no other piece suffers.
   */
  readonly isWorkedOut: boolean;
}

const remembered = new WeakMap<Piece, Outline>();

/** What the path of an edge was last worked out from. An edge that a drag leaves as it was keeps its very path. */
interface KnownEdge {
  readonly start: TablePoint;
  readonly end: TablePoint;
  readonly leaving: Vector | undefined;
  readonly arriving: Vector | undefined;
  readonly path: Path;
}

const rememberedEdges = new WeakMap<Edge, KnownEdge>();

/**
 * The stitch line of a piece. Remembered for as long as the piece itself is, so asking again costs nothing; a changed
 * piece is another piece and is worked out anew.
 */
export function outlineOf(piece: Piece): Outline {
  const known = remembered.get(piece);
  if (known) return known;
  let isWorkedOut = true;
  const edges = piece.edges.map((_, index) => {
    try {
      return edgePath(piece, index);
    } catch {
      isWorkedOut = false;
      return pointToPoint(piece, index);
    }
  });
  const outline = { edges, whole: edges.flat(), isWorkedOut };
  remembered.set(piece, outline);
  return outline;
}

function pointToPoint(piece: Piece, index: number): Path {
  const { shape } = edgeAt(piece, index);
  const { start, end } = edgeEnds(piece, index);
  const points = [start, ...(shape.kind === 'curve' ? shape.through : []), end];
  return points.slice(1).map((to, at) => line(points[at] ?? start, to));
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
  const { shape } = edge;
  const isCurve = shape.kind === 'curve';
  const leaving = isCurve ? ruledDirection(piece, index, shape.leaves, 'start') : undefined;
  const arriving = isCurve ? ruledDirection(piece, index, shape.meets, 'end') : undefined;
  const known = rememberedEdges.get(edge);
  if (
    known &&
    isSame(known.start, start) &&
    isSame(known.end, end) &&
    isSameDirection(known.leaving, leaving) &&
    isSameDirection(known.arriving, arriving)
  ) {
    return known.path;
  }
  const path = isCurve ? curvePath([start, ...shape.through, end], leaving, arriving) : [line(start, end)];
  rememberedEdges.set(edge, { start, end, leaving, arriving, path });
  return path;
}

function curvePath(points: readonly TablePoint[], leaving: Vector | undefined, arriving: Vector | undefined): Path {
  const directions: (Vector | undefined)[] = points.map(() => undefined);
  directions[0] = leaving;
  directions[points.length - 1] = arriving;
  return splineThrough(points, { directions });
}

function isSame(one: TablePoint, other: TablePoint): boolean {
  return one.x === other.x && one.y === other.y;
}

function isSameDirection(one: Vector | undefined, other: Vector | undefined): boolean {
  return one === other || (one?.dx === other?.dx && one?.dy === other?.dy);
}

/**
 * The direction in which an edge runs at one of its ends when nothing rules that end. A rule always asks for this own
 * direction of the neighbour, so two edges that rule each other cannot chase one another.
 */
function ownDirection(piece: Piece, index: number, which: 'start' | 'end'): Vector {
  const edge = edgeAt(piece, index);
  const { start, end } = edgeEnds(piece, index);
  if (edge.shape.kind === 'straight') return vectorBetween(start, end);
  const path = splineThrough([start, ...edge.shape.through, end]);
  return which === 'start' ? startTangent(path) : endTangent(path);
}

/** The direction a rule asks for at one end, on the side of the edge's own chord; `undefined` leaves the end free. */
function ruledDirection(piece: Piece, index: number, rule: EndRule, which: 'start' | 'end'): Vector | undefined {
  if (rule === 'free') return undefined;
  const neighbour =
    which === 'start'
      ? ownDirection(piece, neighbourIndex(piece, index, -1), 'end')
      : ownDirection(piece, neighbourIndex(piece, index, 1), 'start');
  if (rule === 'in-line') return neighbour;
  const { start, end } = edgeEnds(piece, index);
  const chord = vectorBetween(start, end);
  const square = quarterTurn(neighbour);
  return square.dx * chord.dx + square.dy * chord.dy < 0 ? scaleVector(square, -1) : square;
}

function edgeAt(piece: Piece, index: number): Edge {
  const edge = piece.edges[index];
  if (!edge) throw new Error(`piece ${piece.id} has no edge ${index}`);
  return edge;
}
