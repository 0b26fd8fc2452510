/**
 * One stretch by itself: where it is, which way it goes, how it bends, how long it is.
 *
 * See: the Bernstein form and de Casteljau's subdivision (G. Farin, Curves and Surfaces for CAGD).
 */
import type { Box } from './bounds';
import { between, type Point, type Vector } from './point';
import { polynomialRoots } from './polynomial';
import { type Cubic, cubic, line, type Segment } from './segment';

/** Handles shorter than this share of the stretch's size count as having no length: rounding size, with room. */
const NO_HANDLE = 1e-9;

/** The place at `t`, 0 at the start and 1 at the end, both exact. */
export function segmentAt(segment: Segment, t: number): Point {
  if (segment.kind === 'line') {
    const { p0, p1 } = segment;
    return { x: p0.x * (1 - t) + p1.x * t, y: p0.y * (1 - t) + p1.y * t };
  }
  const { p0, p1, p2, p3 } = segment;
  const s = 1 - t;
  const b0 = s * s * s;
  const b1 = 3 * s * s * t;
  const b2 = 3 * s * t * t;
  const b3 = t * t * t;
  return {
    x: b0 * p0.x + b1 * p1.x + b2 * p2.x + b3 * p3.x,
    y: b0 * p0.y + b1 * p1.y + b2 * p2.y + b3 * p3.y,
  };
}

/** The derivative by `t`: the direction of travel, as long as the speed. May be zero at a cusp or a missing handle. */
export function segmentDerivative(segment: Segment, t: number): Vector {
  if (segment.kind === 'line') {
    return { dx: segment.p1.x - segment.p0.x, dy: segment.p1.y - segment.p0.y };
  }
  const { p0, p1, p2, p3 } = segment;
  const s = 1 - t;
  const b0 = 3 * s * s;
  const b1 = 6 * s * t;
  const b2 = 3 * t * t;
  return {
    dx: b0 * (p1.x - p0.x) + b1 * (p2.x - p1.x) + b2 * (p3.x - p2.x),
    dy: b0 * (p1.y - p0.y) + b1 * (p2.y - p1.y) + b2 * (p3.y - p2.y),
  };
}

/** The second derivative by `t`; zero for a line. */
export function segmentSecondDerivative(segment: Segment, t: number): Vector {
  if (segment.kind === 'line') return { dx: 0, dy: 0 };
  const { p0, p1, p2, p3 } = segment;
  const s = 6 * (1 - t);
  const u = 6 * t;
  return {
    dx: s * (p0.x - 2 * p1.x + p2.x) + u * (p1.x - 2 * p2.x + p3.x),
    dy: s * (p0.y - 2 * p1.y + p2.y) + u * (p1.y - 2 * p2.y + p3.y),
  };
}

/**
 * The signed curvature at `t`, 1 over the radius: positive where the path turns clockwise to the eye.
 * 0 for a line and where the curve has no speed (a cusp), which has no curvature to give.
 */
export function segmentCurvature(segment: Segment, t: number): number {
  if (segment.kind === 'line') return 0;
  const d1 = segmentDerivative(segment, t);
  const d2 = segmentSecondDerivative(segment, t);
  const speed = Math.hypot(d1.dx, d1.dy);
  if (speed <= NO_HANDLE * segmentSize(segment)) return 0;
  // Divided one speed at a time, so that a very small or very large curve neither under- nor overflows.
  const curvature = ((d1.dx / speed) * (d2.dy / speed) - (d1.dy / speed) * (d2.dx / speed)) / speed;
  return Number.isFinite(curvature) ? curvature : 0;
}

/**
 * The unit direction of travel at `t`, also where a handle has no length and at a cusp, where it is the direction in
 * which the curve goes on (at the very end, the one in which it arrives). `undefined` for a stretch that stays put.
 */
export function segmentTangent(segment: Segment, t: number): Vector | undefined {
  const size = segmentSize(segment);
  if (!(size > 0)) return undefined;
  const least = NO_HANDLE * size;
  const d = segmentDerivative(segment, t);
  if (segment.kind === 'line' || Math.hypot(d.dx, d.dy) > least) return direction(d.dx, d.dy);
  if (t >= 1) return arriving(segment, least);
  return leaving(t <= 0 ? segment : (splitSegment(segment, t)[1] as Cubic), least) ?? arriving(segment, least);
}

/** The two parts before and after `t`, of the same kind; they meet exactly. */
export function splitSegment(segment: Segment, t: number): readonly [Segment, Segment] {
  if (segment.kind === 'line') {
    const middle = segmentAt(segment, t);
    return [line(segment.p0, middle), line(middle, segment.p1)];
  }
  const { p0, p1, p2, p3 } = segment;
  const a = between(p0, p1, t);
  const b = between(p1, p2, t);
  const c = between(p2, p3, t);
  const ab = between(a, b, t);
  const bc = between(b, c, t);
  const middle = between(ab, bc, t);
  return [cubic(p0, a, ab, middle), cubic(middle, bc, c, p3)];
}

/** The part from `from` to `to` (0 ≤ from ≤ to ≤ 1), of the same kind. Ends at 0 and 1 stay exact. */
export function partOfSegment(segment: Segment, from: number, to: number): Segment {
  const head = to >= 1 ? segment : splitSegment(segment, to)[0];
  if (from <= 0) return head;
  return splitSegment(head, to > 0 ? Math.min(1, from / Math.min(1, to)) : 0)[1];
}

/** The same stretch travelled the other way. */
export function reverseSegment(segment: Segment): Segment {
  return segment.kind === 'line' ? line(segment.p1, segment.p0) : cubic(segment.p3, segment.p2, segment.p1, segment.p0);
}

/** The smallest box round the stretch itself (not its handles), from the exact turning points across and down. */
export function segmentBounds(segment: Segment): Box {
  const start = segment.p0;
  const end = segment.kind === 'line' ? segment.p1 : segment.p3;
  let minX = Math.min(start.x, end.x);
  let maxX = Math.max(start.x, end.x);
  let minY = Math.min(start.y, end.y);
  let maxY = Math.max(start.y, end.y);
  if (segment.kind === 'cubic') {
    const { p0, p1, p2, p3 } = segment;
    if (Math.min(p1.x, p2.x) < minX || Math.max(p1.x, p2.x) > maxX) {
      for (const t of turningPoints(p0.x, p1.x, p2.x, p3.x)) {
        const { x } = segmentAt(segment, t);
        minX = Math.min(minX, x);
        maxX = Math.max(maxX, x);
      }
    }
    if (Math.min(p1.y, p2.y) < minY || Math.max(p1.y, p2.y) > maxY) {
      for (const t of turningPoints(p0.y, p1.y, p2.y, p3.y)) {
        const { y } = segmentAt(segment, t);
        minY = Math.min(minY, y);
        maxY = Math.max(maxY, y);
      }
    }
  }
  return { minX, minY, maxX, maxY };
}

/** The largest reach across or down from the start to any of the stretch's points; 0 when it stays put. */
export function segmentSize(segment: Segment): number {
  const { p0, p1 } = segment;
  const reach = Math.max(Math.abs(p1.x - p0.x), Math.abs(p1.y - p0.y));
  if (segment.kind === 'line') return reach;
  const { p2, p3 } = segment;
  return Math.max(reach, Math.abs(p2.x - p0.x), Math.abs(p2.y - p0.y), Math.abs(p3.x - p0.x), Math.abs(p3.y - p0.y));
}

/** Where one coordinate of a cubic turns back: the roots of its derivative, a quadratic. */
function turningPoints(c0: number, c1: number, c2: number, c3: number): number[] {
  const a = c1 - c0;
  const b = c2 - c1;
  const c = c3 - c2;
  return polynomialRoots([a, 2 * (b - a), a - 2 * b + c]);
}

/** The direction in which a cubic leaves its start: towards the first of its other points that is not there too. */
function leaving({ p0, p1, p2, p3 }: Cubic, least: number): Vector | undefined {
  return pointing(p0, [p1, p2, p3], least);
}

/** The direction in which a cubic arrives at its end. */
function arriving({ p0, p1, p2, p3 }: Cubic, least: number): Vector | undefined {
  const back = pointing(p3, [p2, p1, p0], least);
  return back && { dx: -back.dx, dy: -back.dy };
}

function pointing(from: Point, candidates: readonly Point[], least: number): Vector | undefined {
  for (const to of candidates) {
    const dx = to.x - from.x;
    const dy = to.y - from.y;
    if (Math.hypot(dx, dy) > least) return direction(dx, dy);
  }
  return undefined;
}

function direction(dx: number, dy: number): Vector {
  const length = Math.hypot(dx, dy);
  return { dx: dx / length, dy: dy / length };
}
