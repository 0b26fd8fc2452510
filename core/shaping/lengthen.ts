import { neighbourIndex, outlineOf } from '../garment/outline';
import type { Dart, Notch, Piece } from '../garment/piece';
import { edgeIndex } from '../garment/with-piece';
import { endTangent, nearestOnPath, pathAtLength, pathLength, signedArea, startTangent } from '../geometry/path';
import {
  dot,
  move,
  type Point,
  quarterTurn,
  scaleVector,
  type TablePoint,
  unit,
  type Vector,
  vectorBetween,
} from '../geometry/point';
import { selfCrossings } from '../geometry/self-crossing';
import { carryMarks } from './carry-marks';

/** A straight line across a piece; what lies to the right of its way (below it, drawn from left to right) moves. */
export interface LineAcross {
  readonly from: TablePoint;
  readonly to: TablePoint;
  /** The way (of length 1) in which what lies below moves; square to the line unless said. */
  readonly way?: Vector;
}

export interface NotLengthened {
  readonly kind: 'not-lengthened';
  /** `in-the-way`: a corner or point lies in the strip that shortening would fold away. */
  readonly why: 'no-line' | 'in-the-way' | 'no-hem' | 'crosses';
}

/**
 * The piece cut along a line and moved apart by `by` mm, or for less than 0 folded; edges that cross the
 * line run straight or smoothly over the gap. Shortened by what it was lengthened at the same line it is as it was.
 */
export function lengthenAcross(piece: Piece, line: LineAcross, by: number): Piece | NotLengthened {
  const along = unit(vectorBetween(line.from, line.to));
  if (!along) return { kind: 'not-lengthened', why: 'no-line' };
  const square = quarterTurn(along);
  const way = line.way ?? square;
  const below = (point: Point) => dot(vectorBetween(line.from, point), square);
  const points = piece.corners
    .map(({ at }) => at)
    .concat(piece.edges.flatMap(({ shape }) => (shape.kind === 'curve' ? shape.through : [])));
  const isInFold = (point: Point) => below(point) > 0 && below(point) <= -by * dot(way, square);
  if (points.some(isInFold)) return { kind: 'not-lengthened', why: 'in-the-way' };
  const moved = (point: Point): Point => (below(point) > 0 ? move(point, way, by) : point);
  const { grain } = piece;
  const shaped: Piece = {
    ...piece,
    corners: piece.corners.map((corner) => ({ ...corner, at: moved(corner.at) })),
    edges: piece.edges.map((edge) =>
      edge.shape.kind === 'curve'
        ? { ...edge, shape: { ...edge.shape, through: edge.shape.through.map(moved) } }
        : edge,
    ),
    darts: piece.darts.map((dart) => ({ ...dart, point: moved(dart.point) })),
    labels: piece.labels.map((label) => ({ ...label, at: moved(label.at) })),
    ...(grain ? { grain: { from: moved(grain.from), to: moved(grain.to) } } : {}),
  };
  return checked(withMarksBelow(piece, shaped, (point) => below(point) > 0));
}

/** Marks below the line keep their distance from the end of their edge that lies below it. */
function withMarksBelow(before: Piece, after: Piece, isBelow: (point: Point) => boolean): Piece {
  const [old, now] = [outlineOf(before), outlineOf(after)];
  return before.edges.reduce((marked, { id }, index) => {
    const [path, led] = [old.edges[index], now.edges[index]];
    const end = before.corners[(index + 1) % before.corners.length];
    if (!path || !led || !end) return marked;
    const more = pathLength(led) - pathLength(path);
    const endIsBelow = isBelow(end.at);
    return carryMarks(marked, id, (along) => {
      const markIsBelow = isBelow(pathAtLength(path, along).point);
      return markIsBelow === endIsBelow && endIsBelow !== isBelow(before.corners[index]?.at ?? end.at)
        ? along + more
        : along;
    });
  }, after);
}

/**
 * The piece with its hem moved out by `by` mm all along (in, for less than 0): its sides run on in their own direction, or
 * are cut off, and a curved hem keeps its form. For circular pieces, which are lengthened at the lower edge only (Butterick,
 * The New Dressmaker, 1921).
 */
export function lengthenAtHem(piece: Piece, by: number): Piece | NotLengthened {
  const hems = piece.edges.flatMap(({ role }, index) => (role === 'hem' ? [index] : []));
  if (hems.length === 0) return { kind: 'not-lengthened', why: 'no-hem' };
  const outline = outlineOf(piece);
  const outward = signedArea(outline.whole) > 0 ? -1 : 1;
  const moves = new Map<number, Vector>();
  let shaped = piece;
  for (const index of hems) {
    const hem = outline.edges[index];
    if (!hem) continue;
    const start = hemEndMove(piece, index, 'start', outward);
    const end = hemEndMove(piece, index, 'end', outward);
    moves.set(index, start);
    moves.set((index + 1) % piece.corners.length, end);
    shaped = withSideRunOn(withSideRunOn(shaped, index, 'start', start, by), index, 'end', end, by);
    shaped = withThrough(shaped, index, (point) => {
      const { along } = nearestOnPath(hem, point);
      const share = along / pathLength(hem);
      const blend = unit({
        dx: start.dx * (1 - share) + end.dx * share,
        dy: start.dy * (1 - share) + end.dy * share,
      });
      return blend ? move(point, blend, by) : point;
    });
  }
  const corners = piece.corners.map((corner, index) => {
    const way = moves.get(index);
    return way ? { ...corner, at: move(corner.at, way, by) } : corner;
  });
  return checked(withMarksFromTop(piece, { ...shaped, corners }, by));
}

/** The direction in which one end of a hem moves: on along the side there, or square to the hem between two hem edges. */
function hemEndMove(piece: Piece, index: number, which: 'start' | 'end', outward: 1 | -1): Vector {
  const { edges } = outlineOf(piece);
  const beside = neighbourIndex(piece, index, which === 'start' ? -1 : 1);
  const [hem, side] = [edges[index] ?? [], edges[beside] ?? []];
  if (piece.edges[beside]?.role !== 'hem') {
    return which === 'start' ? endTangent(side) : scaleVector(startTangent(side), -1);
  }
  const joint = which === 'start' ? [endTangent(side), startTangent(hem)] : [endTangent(hem), startTangent(side)];
  const [one, two] = joint;
  const mean = unit({ dx: (one?.dx ?? 0) + (two?.dx ?? 0), dy: (one?.dy ?? 0) + (two?.dy ?? 0) });
  return scaleVector(quarterTurn(mean ?? startTangent(hem)), outward);
}

/** A point of a side nearer to its new end than this (mm) gives way to it. */
const GIVES_WAY = 1;

/**
 * A curved side keeps its course when its end at the hem moves on: it still passes its old corner where it is made
 * longer, and loses the points that are cut off where it is made shorter.
 */
function withSideRunOn(piece: Piece, index: number, which: 'start' | 'end', way: Vector, by: number): Piece {
  const side = neighbourIndex(piece, index, which === 'start' ? -1 : 1);
  const corner = piece.corners[which === 'start' ? index : (index + 1) % piece.corners.length];
  const edge = piece.edges[side];
  if (!corner || edge?.shape.kind !== 'curve' || edge.role === 'hem' || by === 0) return piece;
  const { through } = edge.shape;
  const end = move(corner.at, way, by);
  const kept = through.filter((point) => dot(vectorBetween(end, point), way) < -GIVES_WAY);
  const longer = which === 'start' ? [...through, corner.at] : [corner.at, ...through];
  return {
    ...piece,
    edges: piece.edges.with(side, { ...edge, shape: { ...edge.shape, through: by > 0 ? longer : kept } }),
  };
}

function withThrough(piece: Piece, index: number, map: (point: TablePoint) => TablePoint): Piece {
  const edges = piece.edges.map((edge, i) =>
    i === index && edge.shape.kind === 'curve'
      ? { ...edge, shape: { ...edge.shape, through: edge.shape.through.map(map) } }
      : edge,
  );
  return { ...piece, edges };
}

/** Marks on the hem keep their proportion; those on a side that begins at the hem keep their distance from its top. */
function withMarksFromTop(before: Piece, after: Piece, by: number): Piece {
  const lengths = (piece: Piece) => outlineOf(piece).edges.map((path) => pathLength(path));
  const [old, now] = [lengths(before), lengths(after)];
  const carried = <Mark extends Dart | Notch>(mark: Mark): number => {
    const index = edgeIndex(before, mark.edgeId);
    const [was, is] = [old[index] ?? 0, now[index] ?? 0];
    if (before.edges[index]?.role === 'hem') return was > 0 ? (mark.along * is) / was : mark.along;
    const beginsAtHem = before.edges[neighbourIndex(before, index, -1)]?.role === 'hem';
    return beginsAtHem ? mark.along + by : mark.along;
  };
  return {
    ...after,
    darts: after.darts.map((dart) => ({ ...dart, along: carried(dart) })),
    notches: after.notches.map((notch) => ({ ...notch, along: carried(notch) })),
  };
}

function checked(piece: Piece): Piece | NotLengthened {
  return selfCrossings(outlineOf(piece).whole).length > 0 ? { kind: 'not-lengthened', why: 'crosses' } : piece;
}
