/**
 * A piece whose edges are made as long as is printed, all at once: the corners move as little as they can for it (the least
 * squares of their moves, by Newton's steps of least length), curves keep their form between their corners, and folds keep
 * their direction.
 */
import { edgeEnds, outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { edgeIndex } from '../garment/with-piece';
import { transformPoint } from '../geometry/affine';
import { pathLength } from '../geometry/path';
import { dot, move, type TablePoint, unit, type Vector, vectorBetween } from '../geometry/point';
import { bestSimilarity } from '../geometry/similarity';
import { leastSquares } from '../picture/page-solve';
import { scaleMarks } from './carry-marks';

/** An edge and how long it is to be (mm). */
export interface EdgeFigure {
  readonly edgeId: string;
  readonly length: number;
}

export interface NotPulled {
  readonly kind: 'not-pulled';
  /** The edges, of so many lengths, do not close to a piece near the drawing. */
  readonly why: 'do-not-close';
}

/** Lengths are met to this many mm. */
const MET = 0.001;
const MOST_STEPS = 60;

/** No step moves a corner further than this share of the longest edge, so that a far figure is come to by the near way. */
const LONGEST_STEP = 0.2;

/** The piece with edges of these lengths; the same piece when it has them already. */
export function pullToFigures(piece: Piece, figures: readonly EdgeFigure[]): Piece | NotPulled {
  const wanted = figures.flatMap(({ edgeId, length }) => {
    const index = edgeIndex(piece, edgeId);
    return index >= 0 && length > 0 ? [{ index, length }] : [];
  });
  const folds = piece.edges.flatMap(({ role }, index) => (role === 'fold' ? [index] : []));
  let moves: Vector[] = piece.corners.map(() => ({ dx: 0, dy: 0 }));
  let pulled = piece;
  for (let step = 0; step < MOST_STEPS; step++) {
    const off = wanted.map(({ index, length }) => length - lengthOf(pulled, index));
    if (off.every((each) => Math.abs(each) <= MET)) return pulled === piece ? piece : withMarks(piece, pulled);
    const by = leastMove(
      pulled,
      wanted.map(({ index }, k) => ({ index, grow: off[k] ?? 0 })),
      folds,
      piece,
    );
    if (!by) break;
    moves = moves.map((before, k) => ({ dx: before.dx + (by[k]?.dx ?? 0), dy: before.dy + (by[k]?.dy ?? 0) }));
    pulled = movedCorners(piece, moves);
  }
  return { kind: 'not-pulled', why: 'do-not-close' };
}

/** The least moves of all corners that lengthen edges by so much and keep folds in their direction. */
function leastMove(
  piece: Piece,
  growing: readonly { readonly index: number; readonly grow: number }[],
  folds: readonly number[],
  first: Piece,
): Vector[] | undefined {
  const count = piece.corners.length;
  const rows: { readonly row: Float64Array; readonly right: number }[] = [];
  const add = (index: number, by: Vector, right: number) => {
    const row = new Float64Array(2 * count);
    const next = (index + 1) % count;
    row[2 * index] = -by.dx;
    row[2 * index + 1] = -by.dy;
    row[2 * next] = by.dx;
    row[2 * next + 1] = by.dy;
    rows.push({ row, right });
  };
  let longest = 0;
  for (const { index, grow } of growing) {
    const { start, end } = edgeEnds(piece, index);
    const chord = vectorBetween(start, end);
    const along = unit(chord);
    if (!along) return undefined;
    const size = Math.hypot(chord.dx, chord.dy);
    longest = Math.max(longest, size);
    // A curve grows with its chord.
    add(index, along, (grow * size) / lengthOf(piece, index));
  }
  for (const index of folds) {
    const { start, end } = edgeEnds(first, index);
    const along = unit(vectorBetween(start, end));
    const now = edgeEnds(piece, index);
    if (!along) continue;
    const square = { dx: -along.dy, dy: along.dx };
    add(index, square, -dot(vectorBetween(now.start, now.end), square));
  }
  // The least move that meets m equations J x = r is Jᵀ (J Jᵀ)⁻¹ r.
  const products = rows.map(({ row, right }) => ({
    row: rows.map((other) => row.reduce((sum, each, k) => sum + each * (other.row[k] as number), 0)),
    right,
    weight: 1,
  }));
  const shares = leastSquares(products, rows.length, 1e-12);
  if (!shares) return undefined;
  const flat = Array.from({ length: 2 * count }, (_, k) =>
    rows.reduce((sum, { row }, i) => sum + (row[k] as number) * (shares[i] as number), 0),
  );
  const far = Math.max(...flat.map(Math.abs));
  const brake = far > LONGEST_STEP * longest ? (LONGEST_STEP * longest) / far : 1;
  return piece.corners.map((_, k) => ({ dx: brake * (flat[2 * k] ?? 0), dy: brake * (flat[2 * k + 1] ?? 0) }));
}

/** The piece with its corners moved, the points of each curve carried with the chord between its corners. */
function movedCorners(piece: Piece, moves: readonly Vector[]): Piece {
  const corners = piece.corners.map((corner, k) => ({
    ...corner,
    at: move(corner.at, moves[k] as Vector) as TablePoint,
  }));
  const edges = piece.edges.map((edge, index) => {
    if (edge.shape.kind === 'straight') return edge;
    const { start, end } = edgeEnds(piece, index);
    const [from, to] = [corners[index]?.at ?? start, corners[(index + 1) % corners.length]?.at ?? end];
    const ends = [
      { from: start, to: from },
      { from: end, to },
    ];
    const map = bestSimilarity(ends, 'free');
    const through = map ? edge.shape.through.map((point) => transformPoint(map, point)) : edge.shape.through;
    return { ...edge, shape: { ...edge.shape, through } };
  });
  return { ...piece, corners, edges };
}

function withMarks(before: Piece, after: Piece): Piece {
  return before.edges.reduce(
    (piece, { id }, index) => scaleMarks(piece, id, lengthOf(before, index), lengthOf(after, index)),
    after,
  );
}

function lengthOf(piece: Piece, index: number): number {
  return pathLength(outlineOf(piece).edges[index] ?? []);
}
