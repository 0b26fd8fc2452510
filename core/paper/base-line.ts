import type { Piece } from '../garment/piece';
import { distance, type Point, type TablePoint } from '../geometry/point';
import { longestBetweenCorners } from './assembled-totals';
import { letters } from './letters';

/** A straight line between two corners, from which every point of a piece is measured off at right angles. */
export interface BaseLine {
  readonly from: string;
  readonly to: string;
  readonly start: TablePoint;
  readonly end: TablePoint;
  readonly length: number;
  /** To which side, seen from the start, most of the piece lies. */
  readonly side: 'left' | 'right';
}

/** A point by its base line: how far along it from its start, and how far out from there on the side of the piece (mm). */
export interface Offset {
  readonly along: number;
  readonly out: number;
}

/**
 * The line a piece is measured off from: the straight between the ends of the edge she chose; else the longest straight
 * edge, a fold before all others; else the longest straight between two corners.
 */
export function baseLineOf(piece: Piece, edgeId?: string): BaseLine | undefined {
  const ends = piece.edges.map((edge, index) => ({ edge, ...between(piece, index) }));
  const chosen = ends.find(({ edge, length }) => edge.id === edgeId && length > 0);
  const straight = ends.filter(({ edge, length }) => edge.shape.kind === 'straight' && length > 0);
  const folds = straight.filter(({ edge }) => edge.role === 'fold');
  const longest = (folds.length > 0 ? folds : straight).sort((a, b) => b.length - a.length)[0];
  const taken = chosen ?? longest ?? acrossCorners(piece);
  if (!taken) return undefined;
  const { from, to, start, end, length } = taken;
  return { from, to, start, end, length, side: sideOf(piece, start, end) };
}

/** Where a point lies by the base line. */
export function offsetFrom(base: BaseLine, { x, y }: Point): Offset {
  const [dx, dy] = [(base.end.x - base.start.x) / base.length, (base.end.y - base.start.y) / base.length];
  const [px, py] = [x - base.start.x, y - base.start.y];
  const right = dx * py - dy * px;
  return { along: px * dx + py * dy, out: base.side === 'right' ? right : -right };
}

type Ends = Omit<BaseLine, 'side'>;

/** Counted from the corner that comes first. */
function between({ corners }: Piece, index: number): Ends {
  const next = (index + 1) % corners.length;
  const [first, last] = [Math.min(index, next), Math.max(index, next)];
  const [start, end] = [corners[first]?.at ?? { x: 0, y: 0 }, corners[last]?.at ?? { x: 0, y: 0 }];
  return { from: letters(first), to: letters(last), start, end, length: distance(start, end) };
}

function acrossCorners(piece: Piece): Ends | undefined {
  const [first] = longestBetweenCorners(piece);
  if (!first) return undefined;
  const { from, to, fromAt: start, toAt: end, length } = first;
  return { from: letters(from - 1), to: letters(to - 1), start, end, length };
}

/** Which side the middle of the corners lies on; with y down, to the right of the way is positive. */
function sideOf({ corners }: Piece, start: Point, end: Point): BaseLine['side'] {
  const middle = corners.reduce((sum, { at }) => ({ x: sum.x + at.x, y: sum.y + at.y }), { x: 0, y: 0 });
  const [x, y] = [middle.x / corners.length - start.x, middle.y / corners.length - start.y];
  return (end.x - start.x) * y - (end.y - start.y) * x >= 0 ? 'right' : 'left';
}
