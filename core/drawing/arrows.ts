import {
  distance,
  isSamePoint,
  move,
  type Point,
  scaleVector,
  turnVector,
  unit,
  vectorBetween,
} from '../geometry/point';
import { line } from '../geometry/segment';
import type { LineKind, Stroke } from './drawing';

/** How far the barbs of an arrow head stand off its line, in radians: 25 degrees. */
const BARB = (25 * Math.PI) / 180;

/** The length of a barb in mm, but never more than a third of the arrow. */
const BARB_LENGTH = 6;

/** A straight arrow with a head at `to`, or at both ends; nothing for an arrow without length. */
export function arrow(kind: LineKind, from: Point, to: Point, heads: 'one' | 'both'): Stroke[] {
  if (isSamePoint(from, to)) return [];
  const strokes = [stroke(kind, from, to), ...head(kind, from, to)];
  return heads === 'both' ? [...strokes, ...head(kind, to, from)] : strokes;
}

/** One straight stroke. */
export function stroke(kind: LineKind, from: Point, to: Point): Stroke {
  return { kind: 'stroke', line: kind, path: [line(from, to)] };
}

/** The two barbs at `to` of an arrow that comes from `from`, as one stroke. */
export function head(kind: LineKind, from: Point, to: Point): Stroke[] {
  const along = unit(vectorBetween(to, from));
  if (!along) return [];
  const barb = scaleVector(along, Math.min(BARB_LENGTH, distance(from, to) / 3));
  const [left, right] = [move(to, turnVector(barb, BARB)), move(to, turnVector(barb, -BARB))];
  return [{ kind: 'stroke', line: kind, path: [line(left, to), line(to, right)] }];
}
