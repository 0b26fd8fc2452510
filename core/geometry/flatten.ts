import type { Point } from './point';
import type { Path } from './segment';

/** Halvings of one curve at most: 2¹⁶ chords, so that an accuracy below rounding still ends. */
const DEEPEST = 16;

/**
 * The path as corners joined by straight lines, none of it further than `tolerance` from the path, nor any of the path
 * from it. Starts at the path's start and ends at its end; a closed path repeats its first point at the end.
 *
 * Proof of the bound: distance to a chord is a convex function of place, so on a cubic it is at most
 * 3t(1-t) ≤ 3/4 of the larger distance of the two inner control points.
 */
export function flattenPath(path: Path, tolerance: number): Point[] {
  const first = path[0];
  if (first === undefined) return [];
  const points: Point[] = [first.p0];
  for (const segment of path) {
    if (segment.kind === 'line') points.push(segment.p1);
    else {
      const { p0, p1, p2, p3 } = segment;
      flattenCubic(p0.x, p0.y, p1.x, p1.y, p2.x, p2.y, p3.x, p3.y, Math.max(tolerance, 0) / 0.75, points, 0);
    }
  }
  return points;
}

/** In bare numbers, for this is on the way of every drag: the ends of halves are made only where they are kept. */
function flattenCubic(
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  x3: number,
  y3: number,
  reach: number,
  points: Point[],
  depth: number,
): void {
  // Asked so that what is no number ends here, too.
  const bends = offChord(x1, y1, x0, y0, x3, y3) > reach || offChord(x2, y2, x0, y0, x3, y3) > reach;
  if (depth >= DEEPEST || !bends) {
    points.push({ x: x3, y: y3 });
    return;
  }
  const ax = (x0 + x1) / 2;
  const ay = (y0 + y1) / 2;
  const bx = (x1 + x2) / 2;
  const by = (y1 + y2) / 2;
  const cx = (x2 + x3) / 2;
  const cy = (y2 + y3) / 2;
  const abx = (ax + bx) / 2;
  const aby = (ay + by) / 2;
  const bcx = (bx + cx) / 2;
  const bcy = (by + cy) / 2;
  const x = (abx + bcx) / 2;
  const y = (aby + bcy) / 2;
  flattenCubic(x0, y0, ax, ay, abx, aby, x, y, reach, points, depth + 1);
  flattenCubic(x, y, bcx, bcy, cx, cy, x3, y3, reach, points, depth + 1);
}

/** How far a point is from the straight stretch between `from` and `to`. */
export function distanceToChord(point: Point, from: Point, to: Point): number {
  return offChord(point.x, point.y, from.x, from.y, to.x, to.y);
}

function offChord(x: number, y: number, fromX: number, fromY: number, toX: number, toY: number): number {
  const dx = toX - fromX;
  const dy = toY - fromY;
  const px = x - fromX;
  const py = y - fromY;
  const lengthSq = dx * dx + dy * dy;
  const t = lengthSq > 0 ? Math.min(1, Math.max(0, (px * dx + py * dy) / lengthSq)) : 0;
  const offX = px - dx * t;
  const offY = py - dy * t;
  return Math.sqrt(offX * offX + offY * offY);
}
