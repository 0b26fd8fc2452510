import type { Point } from './point';

/** A straight stretch. Kept apart from cubics so that a straight edge stays exactly straight. */
export interface Line {
  readonly kind: 'line';
  readonly p0: Point;
  readonly p1: Point;
}

/** A cubic Bézier stretch: from `p0` to `p3`, leaving towards `p1` and arriving from `p2`. */
export interface Cubic {
  readonly kind: 'cubic';
  readonly p0: Point;
  readonly p1: Point;
  readonly p2: Point;
  readonly p3: Point;
}

/** One stretch of a path. */
export type Segment = Line | Cubic;

/**
 * A run of stretches, each beginning exactly where the one before ends. It is closed when the last ends where the
 * first begins. Never empty where a function asks for a path.
 */
export type Path = readonly Segment[];

/** A straight stretch from `p0` to `p1`. */
export function line(p0: Point, p1: Point): Line {
  return { kind: 'line', p0, p1 };
}

/** A cubic stretch from its four points. */
export function cubic(p0: Point, p1: Point, p2: Point, p3: Point): Cubic {
  return { kind: 'cubic', p0, p1, p2, p3 };
}

/** Where a stretch begins. */
export function segmentStart(segment: Segment): Point {
  return segment.p0;
}

/** Where a stretch ends. */
export function segmentEnd(segment: Segment): Point {
  return segment.kind === 'line' ? segment.p1 : segment.p3;
}
