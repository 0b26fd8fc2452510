/**
 * Smooth curves through points: Hobby's spline, the curve METAFONT and MetaPost draw for `a .. b .. c`.
 *
 * At every point the direction is chosen so that a linear stand-in for curvature (the mock curvature) is the same
 * before and after; that is one tridiagonal system. Moving a point shifts the directions further along by about
 * 0.27 times less at each point passed, so a drag stays local.
 *
 * See: J. D. Hobby, Smooth, Easy to Compute Interpolating Splines, Discrete & Computational Geometry 1 (1986);
 * D. E. Knuth, METAFONT: The Program, parts 274-300. Tension and curl are the usual 1 throughout.
 *
 * Limits: points close together ask for the direction of their chord, so a point dragged round a near neighbour
 * swings the curve with it; nearer than SAME_POINT they count as one. At an exact turning back the loop is laid to the
 * clockwise side.
 */
import { isSamePoint, type Point, turnBetween, type Vector, vectorBetween } from './point';
import { type Cubic, cubic } from './segment';
import { solveCyclic, solveTridiagonal, type Tridiagonal } from './tridiagonal';

/** What may be asked of a spline besides its points. */
export interface SplineOptions {
  /** A direction of travel (any length) for any of the points, by index; where missing or zero the curve is free. */
  readonly directions?: readonly (Vector | undefined)[];
}

/** The longest arm of a curve, in chords: beyond it the formula runs off to infinity where a curve turns right back. */
const LONGEST_ARM = 4;

/**
 * The open spline through the points, one cubic from each to the next; none for fewer than two points. It passes
 * through every point (points within SAME_POINT of the one before count as one, and their cubic has no length) and its
 * direction never jumps. Ends without a direction bend like the end of a circle (curl 1); two free points give a straight
 * cubic.
 */
export function splineThrough(points: readonly Point[], options: SplineOptions = {}): Cubic[] {
  const knots = distinctKnots(points, options.directions ?? [], false);
  return withStandstills(points.length - 1, knots, openCurves(knots));
}

/**
 * The closed spline through the points, one cubic from each to the next and one from the last back to the first; none
 * for an empty list. As {@link splineThrough} otherwise.
 */
export function closedSplineThrough(points: readonly Point[], options: SplineOptions = {}): Cubic[] {
  const knots = distinctKnots(points, options.directions ?? [], true);
  return withStandstills(points.length, knots, closedCurves(knots));
}

/** A point of the spline with all the given points that coincide with it: indexes `first` to `last`. */
interface Knot {
  readonly at: Point;
  readonly first: number;
  last: number;
  direction: Vector | undefined;
}

/** The points without repeats. The last knot of an open spline sits on the last point, so that ends are exact. */
function distinctKnots(points: readonly Point[], directions: readonly (Vector | undefined)[], closed: boolean): Knot[] {
  const knots: Knot[] = [];
  points.forEach((at, index) => {
    const given = directions[index];
    const direction = given && (given.dx !== 0 || given.dy !== 0) ? given : undefined;
    const before = knots[knots.length - 1];
    if (before && isSamePoint(before.at, at)) {
      before.last = index;
      before.direction ??= direction;
    } else knots.push({ at, first: index, last: index, direction });
  });
  const [start, end, end2] = [knots[0], knots[knots.length - 1], points[points.length - 1]];
  if (!start || !end || !end2) return knots;
  if (!closed) {
    if (end !== start) knots[knots.length - 1] = { ...end, at: end2 };
  } else if (end !== start && isSamePoint(end.at, start.at)) {
    start.direction ??= end.direction;
    knots.pop();
  }
  return knots;
}

/** The curves put back beside the points they belong to, with a cubic of no length where points coincide. */
function withStandstills(count: number, knots: readonly Knot[], curves: readonly Cubic[]): Cubic[] {
  const all: Cubic[] = [];
  for (let index = 0, k = 0; index < count; index++) {
    while (k + 1 < knots.length && (knots[k + 1] as Knot).first <= index) k++;
    const knot = knots[k] as Knot;
    const curve = curves[k];
    if (index === knot.last && curve) all.push(curve);
    else {
      // Past the last knot come only points that coincide with the first one of a closed curve.
      const { at } = index > knot.last ? (knots[0] as Knot) : knot;
      all.push(cubic(at, at, at, at));
    }
  }
  return all;
}

/** The open curve through distinct knots, in runs from one given direction to the next. */
function openCurves(knots: readonly Knot[]): Cubic[] {
  const curves: Cubic[] = [];
  let from = 0;
  for (let k = 1; k < knots.length; k++) {
    if (k < knots.length - 1 && !(knots[k] as Knot).direction) continue;
    curves.push(...runOfCurves(knots.slice(from, k + 1)));
    from = k;
  }
  return curves;
}

/** The closed curve: begun at a knot with a given direction if there is one, all round at once if there is none. */
function closedCurves(knots: readonly Knot[]): Cubic[] {
  const count = knots.length;
  if (count < 2) return [];
  const start = knots.findIndex((knot) => knot.direction);
  if (start >= 0) {
    const curves = openCurves([...knots.slice(start), ...knots.slice(0, start + 1)]);
    return [...curves.slice(count - start), ...curves.slice(0, count - start)];
  }
  const chords = knots.map((knot, k) => vectorBetween(knot.at, (knots[(k + 1) % count] as Knot).at));
  const turns = chords.map((chord, k) => turnBetween(chords[(k + count - 1) % count] as Vector, chord));
  const system: Tridiagonal = { below: [], diagonal: [], above: [], right: [] };
  for (let k = 0; k < count; k++) {
    const turnAfter = turns[(k + 1) % count] as number;
    mockCurvatureRow(
      system,
      chords[(k + count - 1) % count] as Vector,
      chords[k] as Vector,
      turns[k] as number,
      turnAfter,
    );
  }
  const leaving = solveCyclic(system);
  return knots.map((knot, k) => {
    const next = (k + 1) % count;
    const arriving = -(turns[next] as number) - (leaving[next] as number);
    return armed(knot.at, (knots[next] as Knot).at, leaving[k] as number, arriving);
  });
}

/** The curves of a run whose inner knots are all free. */
function runOfCurves(knots: readonly Knot[]): Cubic[] {
  const last = knots.length - 1;
  const [start, end] = [knots[0] as Knot, knots[last] as Knot];
  const chords = knots.slice(1).map((knot, k) => vectorBetween((knots[k] as Knot).at, knot.at));
  // The turn at each knot from chord to chord; there is none at the ends.
  const turns = knots.map((_, k) =>
    k > 0 && k < last ? turnBetween(chords[k - 1] as Vector, chords[k] as Vector) : 0,
  );
  const [firstChord, lastChord] = [chords[0] as Vector, chords[last - 1] as Vector];
  if (last === 1 && !start.direction && !end.direction) return [armed(start.at, end.at, 0, 0)];

  // Unknown: the angle from each chord to the direction in which the curve leaves its knot.
  const system: Tridiagonal = { below: [0], diagonal: [1], above: [], right: [] };
  system.above.push(start.direction ? 0 : 1);
  system.right.push(start.direction ? turnBetween(firstChord, start.direction) : -(turns[1] as number));
  for (let k = 1; k < last; k++) {
    mockCurvatureRow(system, chords[k - 1] as Vector, chords[k] as Vector, turns[k] as number, turns[k + 1] as number);
  }
  system.below.push(end.direction ? 0 : 1);
  system.diagonal.push(1);
  system.above.push(0);
  system.right.push(end.direction ? turnBetween(lastChord, end.direction) : 0);

  const leaving = solveTridiagonal(system);
  return chords.map((_, k) => {
    const arriving = -(turns[k + 1] as number) - (leaving[k + 1] as number);
    return armed((knots[k] as Knot).at, (knots[k + 1] as Knot).at, leaving[k] as number, arriving);
  });
}

/** The row that makes mock curvature equal before and after a knot, scaled so that its largest weight is about 1. */
function mockCurvatureRow(system: Tridiagonal, before: Vector, after: Vector, turn: number, turnAfter: number): void {
  const lengthBefore = Math.hypot(before.dx, before.dy);
  const lengthAfter = Math.hypot(after.dx, after.dy);
  const weightBefore = lengthAfter / (lengthBefore + lengthAfter);
  const weightAfter = lengthBefore / (lengthBefore + lengthAfter);
  system.below.push(weightBefore);
  system.diagonal.push(2);
  system.above.push(weightAfter);
  system.right.push(-2 * weightBefore * turn - weightAfter * turnAfter);
}

/** The cubic that leaves its chord by `leaving` (clockwise) and meets it by `arriving` (anticlockwise). */
function armed(from: Point, to: Point, leaving: number, arriving: number): Cubic {
  const { dx, dy } = vectorBetween(from, to);
  const sinL = Math.sin(leaving);
  const cosL = Math.cos(leaving);
  const sinA = Math.sin(arriving);
  const cosA = Math.cos(arriving);
  const out = armLength(sinL, cosL, sinA, cosA);
  const back = armLength(sinA, cosA, sinL, cosL);
  return cubic(
    from,
    { x: from.x + (dx * cosL - dy * sinL) * out, y: from.y + (dx * sinL + dy * cosL) * out },
    { x: to.x - (dx * cosA + dy * sinA) * back, y: to.y - (dy * cosA - dx * sinA) * back },
    to,
  );
}

/** Hobby's velocity: the length of an arm in chords, chosen to come near circles and ellipses; 1/3 for a straight run. */
function armLength(sinA: number, cosA: number, sinB: number, cosB: number): number {
  const above = 2 + Math.SQRT2 * (sinA - sinB / 16) * (sinB - sinA / 16) * (cosA - cosB);
  const below = 3 * (1 + ((Math.sqrt(5) - 1) / 2) * cosA + ((3 - Math.sqrt(5)) / 2) * cosB);
  return below * LONGEST_ARM > above ? above / below : LONGEST_ARM;
}
