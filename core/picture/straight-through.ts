import type { Point, Vector } from '../geometry/point';

/** A straight line through points. */
export interface StraightLine {
  /** The middle of the points. */
  readonly at: Point;
  /** Along the line, length 1; which of the two ways is not said. */
  readonly along: Vector;
}

/** The straight line nearest to the points, by least squares of their distances from it; `undefined` for fewer than two. */
export function straightThrough(points: readonly Point[]): StraightLine | undefined {
  if (points.length < 2) return undefined;
  let [x, y] = [0, 0];
  for (const point of points) {
    x += point.x / points.length;
    y += point.y / points.length;
  }
  let [xx, xy, yy] = [0, 0, 0];
  for (const point of points) {
    xx += (point.x - x) ** 2;
    xy += (point.x - x) * (point.y - y);
    yy += (point.y - y) ** 2;
  }
  if (!(xx + yy > 0)) return undefined;
  const angle = 0.5 * Math.atan2(2 * xy, xx - yy);
  return { at: { x, y }, along: { dx: Math.cos(angle), dy: Math.sin(angle) } };
}

/** The place nearest to all the lines, by least squares of the distances; `undefined` where they are all about parallel. */
export function nearestToLines(lines: readonly StraightLine[]): Point | undefined {
  let [xx, xy, yy, rx, ry] = [0, 0, 0, 0, 0];
  for (const { at, along } of lines) {
    const [nx, ny] = [-along.dy, along.dx];
    const off = nx * at.x + ny * at.y;
    xx += nx * nx;
    xy += nx * ny;
    yy += ny * ny;
    rx += nx * off;
    ry += ny * off;
  }
  const determinant = xx * yy - xy * xy;
  // Two lines 10 degrees apart leave 0.03 of the 1 that a right angle does.
  if (!(determinant > 0.03)) return undefined;
  return { x: (rx * yy - ry * xy) / determinant, y: (xx * ry - xy * rx) / determinant };
}
