import type { Point, Vector } from './point';
import { cubic, line, type Path, type Segment } from './segment';

/**
 * A map that keeps straight lines straight and parallel lines parallel: x' = a x + c y + e, y' = b x + d y + f.
 * The order of the six numbers is that of the canvas and of PDF.
 */
export interface Affine {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

/** The map that leaves everything where it is. */
export const IDENTITY: Affine = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

/** Moves every place by `by`. */
export function translation(by: Vector): Affine {
  return { a: 1, b: 0, c: 0, d: 1, e: by.dx, f: by.dy };
}

/** Turns about `centre` by `angle`, clockwise to the eye for positive angles. */
export function rotationAbout(centre: Point, angle: number): Affine {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return keepingStill({ a: cos, b: sin, c: -sin, d: cos, e: 0, f: 0 }, centre);
}

/** Stretches across by `across` and down by `down`, keeping `about` (the origin unless said) still. */
export function scaling(across: number, down: number, about: Point = { x: 0, y: 0 }): Affine {
  return keepingStill({ a: across, b: 0, c: 0, d: down, e: 0, f: 0 }, about);
}

/** Mirrors in the line through `from` and `to`; `undefined` when they are exactly one place. */
export function reflectionIn(from: Point, to: Point): Affine | undefined {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (!(length > 0)) return undefined;
  const ux = (to.x - from.x) / length;
  const uy = (to.y - from.y) / length;
  return keepingStill({ a: ux * ux - uy * uy, b: 2 * ux * uy, c: 2 * ux * uy, d: uy * uy - ux * ux, e: 0, f: 0 }, from);
}

/** The map that does `first` and then `second`. */
export function composeAffine(second: Affine, first: Affine): Affine {
  return {
    a: second.a * first.a + second.c * first.b,
    b: second.b * first.a + second.d * first.b,
    c: second.a * first.c + second.c * first.d,
    d: second.b * first.c + second.d * first.d,
    e: second.a * first.e + second.c * first.f + second.e,
    f: second.b * first.e + second.d * first.f + second.f,
  };
}

/** How many times an area grows, negative when the map mirrors. */
export function areaFactor(map: Affine): number {
  return map.a * map.d - map.b * map.c;
}

/** The map that undoes `map`; `undefined` when it flattens the plane to a line or a point. */
export function invertAffine(map: Affine): Affine | undefined {
  // Each column is brought to length about 1 first, so that very large and very small maps invert alike.
  const across = Math.hypot(map.a, map.b);
  const down = Math.hypot(map.c, map.d);
  if (!(across > 0 && down > 0)) return undefined;
  const a = map.a / across;
  const b = map.b / across;
  const c = map.c / down;
  const d = map.d / down;
  const sine = a * d - b * c;
  if (Math.abs(sine) < FLATTENED) return undefined;
  const ia = d / sine / across;
  const ib = -b / sine / down;
  const ic = -c / sine / across;
  const id = a / sine / down;
  const inverse = { a: ia, b: ib, c: ic, d: id, e: -(ia * map.e + ic * map.f), f: -(ib * map.e + id * map.f) };
  return Object.values(inverse).every(Number.isFinite) ? inverse : undefined;
}

/** The sine of the angle between the images of the two axes below which a map counts as flattening: rounding size. */
const FLATTENED = 1e-13;

/** Where `map` takes a place. */
export function transformPoint(map: Affine, point: Point): Point {
  return { x: map.a * point.x + map.c * point.y + map.e, y: map.b * point.x + map.d * point.y + map.f };
}

/** What `map` makes of a move: the shift part has no say in it. */
export function transformVector(map: Affine, vector: Vector): Vector {
  return { dx: map.a * vector.dx + map.c * vector.dy, dy: map.b * vector.dx + map.d * vector.dy };
}

/** A stretch mapped point by point, which is exact for lines and cubics alike. */
export function transformSegment(map: Affine, segment: Segment): Segment {
  return segment.kind === 'line'
    ? line(transformPoint(map, segment.p0), transformPoint(map, segment.p1))
    : cubic(
        transformPoint(map, segment.p0),
        transformPoint(map, segment.p1),
        transformPoint(map, segment.p2),
        transformPoint(map, segment.p3),
      );
}

/** A path mapped stretch by stretch; joins stay exact because equal points have equal images. */
export function transformPath(map: Affine, path: Path): Path {
  return path.map((segment) => transformSegment(map, segment));
}

/** `map` with its shift chosen so that `still` does not move. */
function keepingStill(map: Affine, still: Point): Affine {
  return {
    ...map,
    e: still.x - (map.a * still.x + map.c * still.y),
    f: still.y - (map.b * still.x + map.d * still.y),
  };
}
