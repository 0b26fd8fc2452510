/** The cut line round a corner that juts out, where it is not simply mitred. */
import { arcOfCircle } from '../geometry/arc';
import { between, distance, dot, move, type Point, scaleVector, unit, vectorBetween } from '../geometry/point';
import { cubic, type Path } from '../geometry/segment';
import type { CornerPlace } from './corner-place';

/** How far a rounded corner may be off its circle, in mm. */
const ROUND_ACCURACY = 0.005;

/**
 * The two ends of the cut that takes off a mitre square to the line from the corner to its tip, `reach` from the corner.
 * Neither lies behind the end of its edge.
 */
export function bluntPoints(
  { at, arriving, leaving }: CornerPlace,
  end: Point,
  tip: Point,
  start: Point,
  reach: number,
): readonly [Point, Point] {
  const towards = unit(vectorBetween(at, tip)) ?? arriving;
  const on = (from: Point, along: { dx: number; dy: number }) =>
    Math.max(0, (reach - dot(vectorBetween(at, from), towards)) / dot(along, towards));
  const back = scaleVector(leaving, -1);
  return [move(end, arriving, on(end, arriving)), move(start, back, on(start, back))];
}

/**
 * A round corner: an arc about the corner where both allowances are equal, else a curve that leaves and arrives along
 * both cut lines and has the same share of its handles.
 */
export function roundedEnd(
  { at, turn, outward }: CornerPlace,
  widthBefore: number,
  widthAfter: number,
  end: Point,
  tip: Point,
  start: Point,
): Path {
  if (Math.abs(widthBefore - widthAfter) <= 1e-9) {
    const arc = arcOfCircle(at, end, turn * outward, ROUND_ACCURACY);
    const last = arc[arc.length - 1];
    if (last) arc[arc.length - 1] = cubic(last.p0, last.p1, last.p2, start);
    return widthBefore > 0 ? arc : [];
  }
  const share = ((4 / 3) * Math.tan(turn / 4)) / Math.tan(turn / 2);
  return [cubic(end, between(end, tip, share), between(start, tip, share), start)];
}

/**
 * A corner where the allowance of each edge is carried on by the narrower allowance and ended square to its own edge.
 * Up to a right angle inside that is two squares, one over the other; from there on it is the mitre. Where unequal
 * allowances leave only one of them reaching its end, the mitre too.
 */
export function squaredPoints(
  { at, arriving, leaving }: CornerPlace,
  carried: number,
  end: Point,
  tip: Point,
  start: Point,
): readonly Point[] {
  const room = carried * (1 + 1e-9);
  if (distance(end, tip) <= room || distance(tip, start) <= room) return [tip];
  const halfSum = unit({ dx: arriving.dx - leaving.dx, dy: arriving.dy - leaving.dy }) ?? arriving;
  const inner = move(at, halfSum, carried / dot(halfSum, arriving));
  return [move(end, arriving, carried), inner, move(start, leaving, -carried)];
}
