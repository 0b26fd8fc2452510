import type { Point, Vector } from '../geometry/point';

/** A straight line fitted to places: one point of it and its direction, of length 1. */
export interface FittedLine {
  readonly through: Point;
  readonly along: Vector;
}

/** The line with the least sum of squared distances from the places; `undefined` for fewer than two. */
export function fittedLine(places: readonly Point[]): FittedLine | undefined {
  if (places.length < 2) return undefined;
  let [x, y] = [0, 0];
  for (const place of places) {
    x += place.x / places.length;
    y += place.y / places.length;
  }
  let [xx, yy, xy] = [0, 0, 0];
  for (const place of places) {
    xx += (place.x - x) ** 2;
    yy += (place.y - y) ** 2;
    xy += (place.x - x) * (place.y - y);
  }
  if (xx + yy === 0) return undefined;
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  return { through: { x, y }, along: { dx: Math.cos(angle), dy: Math.sin(angle) } };
}

/** Lines nearer in direction than about this (the sine of it squared, summed over pairs) do not meet in one place. */
const LEAST_SPREAD = 0.02;

/** The place with the least sum of squared distances from the lines; `undefined` where they are all about parallel. */
export function lineMeeting(lines: readonly FittedLine[]): Point | undefined {
  let [xx, yy, xy, x, y] = [0, 0, 0, 0, 0];
  for (const { through, along } of lines) {
    const [nx, ny] = [-along.dy, along.dx];
    const off = nx * through.x + ny * through.y;
    xx += nx * nx;
    yy += ny * ny;
    xy += nx * ny;
    x += nx * off;
    y += ny * off;
  }
  const det = xx * yy - xy * xy;
  if (det < LEAST_SPREAD) return undefined;
  return { x: (yy * x - xy * y) / det, y: (xx * y - xy * x) / det };
}
