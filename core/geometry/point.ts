/**
 * Points, vectors and the few sums on them that everything else stands on.
 *
 * y points down, as on paper read from the top. Angles are radians and grow from +x towards +y, which is
 * clockwise to the eye. Lengths are whatever the place of the point says: millimetres on the table and on a page,
 * pixels in a photo.
 */

/** A place. Adding two places means nothing; their difference is a {@link Vector}. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A move from one place to another. */
export interface Vector {
  readonly dx: number;
  readonly dy: number;
}

/** A place in a stored picture, pixels from its top left corner. */
export type PhotoPoint = Point & { readonly place?: 'photo' };

/** A place on the drafting table, where pieces lie at full size, in millimetres. */
export type TablePoint = Point & { readonly place?: 'table' };

/** Two places nearer than this are one place: a ten-thousandth of a millimetre, far below any tool or printer. */
export const SAME_POINT = 1e-4;

/** The move that leads from `from` to `to`. */
export function vectorBetween(from: Point, to: Point): Vector {
  return { dx: to.x - from.x, dy: to.y - from.y };
}

/** The place reached from `point` by `vector`, taken `times` over (1 unless said). */
export function move(point: Point, vector: Vector, times = 1): Point {
  return { x: point.x + vector.dx * times, y: point.y + vector.dy * times };
}

/** The straight distance between two places. */
export function distance(a: Point, b: Point): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** The place a share `t` of the way from `a` (0) to `b` (1); beyond them for `t` outside that range. */
export function between(a: Point, b: Point, t: number): Point {
  return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
}

/** Whether two places are one place, within {@link SAME_POINT}. */
export function isSamePoint(a: Point, b: Point): boolean {
  return distance(a, b) <= SAME_POINT;
}

/** The length of a vector. */
export function vectorLength(v: Vector): number {
  return Math.hypot(v.dx, v.dy);
}

/** The vector of length 1 in the direction of `v`; `undefined` when `v` has no length. */
export function unit(v: Vector): Vector | undefined {
  const length = Math.hypot(v.dx, v.dy);
  return length > 0 ? { dx: v.dx / length, dy: v.dy / length } : undefined;
}

/** `v` made `factor` times as long. */
export function scaleVector(v: Vector, factor: number): Vector {
  return { dx: v.dx * factor, dy: v.dy * factor };
}

/** `v` turned a quarter turn clockwise to the eye: (1, 0) becomes (0, 1). */
export function quarterTurn(v: Vector): Vector {
  return { dx: -v.dy, dy: v.dx };
}

/** `v` turned by `angle`, clockwise to the eye for positive angles. */
export function turnVector(v: Vector, angle: number): Vector {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return { dx: v.dx * cos - v.dy * sin, dy: v.dx * sin + v.dy * cos };
}

/** How far `a` reaches along `b`, times the length of `b`. */
export function dot(a: Vector, b: Vector): number {
  return a.dx * b.dx + a.dy * b.dy;
}

/** Twice the signed area between `a` and `b`: positive when `b` lies clockwise of `a` to the eye. */
export function cross(a: Vector, b: Vector): number {
  return a.dx * b.dy - a.dy * b.dx;
}

/** The direction of `v`, from +x towards +y, in (-π, π]; 0 for a vector without length. */
export function angleOf(v: Vector): number {
  return v.dx === 0 && v.dy === 0 ? 0 : Math.atan2(v.dy, v.dx);
}

/** The signed turn from `from` to `to`, in (-π, π], positive clockwise to the eye; 0 if either has no length. */
export function turnBetween(from: Vector, to: Vector): number {
  const c = cross(from, to);
  const d = dot(from, to);
  return c === 0 && d === 0 ? 0 : Math.atan2(c, d);
}
