import type { Point } from '../geometry/point';

/** The place of a row of straight lines that lies nearest to a point, and how far off it is (mm). */
export function nearestOnLines(
  points: readonly Point[],
  { x, y }: Point,
): { readonly point: Point; readonly distance: number } {
  let [least, bestX, bestY] = [Infinity, x, y];
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const length = dx * dx + dy * dy;
    const t = length > 0 ? Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / length)) : 0;
    const [atX, atY] = [a.x + t * dx, a.y + t * dy];
    const off = (atX - x) ** 2 + (atY - y) ** 2;
    if (off < least) [least, bestX, bestY] = [off, atX, atY];
  }
  return { point: { x: bestX, y: bestY }, distance: Math.sqrt(least) };
}
