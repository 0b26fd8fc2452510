import { segmentAt } from './cubic-curve';
import { distance, type Point } from './point';
import { polynomialRoots } from './polynomial';
import type { Cubic, Line, Segment } from './segment';

/** The place on a stretch nearest to some point, and how far off it is. */
export interface NearestOnSegment {
  readonly point: Point;
  readonly t: number;
  readonly distance: number;
}

/**
 * The place of a stretch nearest to `point`, to rounding: every foot of a perpendicular is found as a root of a quintic
 * and weighed against both ends. Of equally near places the first along the stretch is given.
 */
export function nearestOnSegment(segment: Segment, point: Point): NearestOnSegment {
  const places =
    segment.kind === 'line'
      ? [Math.min(1, Math.max(0, shareAlong(segment, point)))]
      : [0, ...feetOnCubic(segment, point), 1];
  let best: NearestOnSegment | undefined;
  for (const t of places) {
    const at = segmentAt(segment, t);
    const off = distance(at, point);
    if (best === undefined || off < best.distance) best = { point: at, t, distance: off };
  }
  return best as NearestOnSegment;
}

/**
 * Every `t` of a cubic where the line to `point` stands square to the curve, rising. Found from the roots of
 * (B(t) - point) · B'(t), of degree five; ends count only where they are square themselves.
 */
export function feetOnCubic({ p0, p1, p2, p3 }: Cubic, point: Point): number[] {
  const dx = p0.x - point.x;
  const ax = 3 * (p1.x - p0.x);
  const bx = 3 * (p2.x - 2 * p1.x + p0.x);
  const cx = p3.x - 3 * p2.x + 3 * p1.x - p0.x;
  const dy = p0.y - point.y;
  const ay = 3 * (p1.y - p0.y);
  const by = 3 * (p2.y - 2 * p1.y + p0.y);
  const cy = p3.y - 3 * p2.y + 3 * p1.y - p0.y;
  return polynomialRoots([
    dx * ax + dy * ay,
    2 * (dx * bx + dy * by) + ax * ax + ay * ay,
    3 * (dx * cx + dy * cy) + 3 * (ax * bx + ay * by),
    4 * (ax * cx + ay * cy) + 2 * (bx * bx + by * by),
    5 * (bx * cx + by * cy),
    3 * (cx * cx + cy * cy),
  ]);
}

/** How far along a line, as a share of it, a point stands; 0 for a line without length. */
function shareAlong({ p0, p1 }: Line, point: Point): number {
  const dx = p1.x - p0.x;
  const dy = p1.y - p0.y;
  const lengthSq = dx * dx + dy * dy;
  return lengthSq > 0 ? ((point.x - p0.x) * dx + (point.y - p0.y) * dy) / lengthSq : 0;
}
