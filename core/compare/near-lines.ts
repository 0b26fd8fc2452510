import type { Point } from '../geometry/point';

/** A place on a row of straight lines, on the line that ends at the point of that index; how far off it is in mm. */
export interface NearLine {
  readonly point: Point;
  readonly distance: number;
  readonly index: number;
}

/** The place of a row of straight lines that lies nearest to a point. */
export function nearestOnLines(points: readonly Point[], { x, y }: Point): NearLine {
  let [least, bestX, bestY, index] = [Infinity, x, y, 1];
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const length = dx * dx + dy * dy;
    const t = length > 0 ? Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / length)) : 0;
    const [atX, atY] = [a.x + t * dx, a.y + t * dy];
    const off = (atX - x) ** 2 + (atY - y) ** 2;
    if (off < least) [least, bestX, bestY, index] = [off, atX, atY, i];
  }
  return { point: { x: bestX, y: bestY }, distance: Math.sqrt(least), index };
}
