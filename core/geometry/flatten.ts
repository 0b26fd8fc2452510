import { splitSegment } from './cubic-curve';
import type { Point } from './point';
import type { Cubic, Path } from './segment';

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
    else flattenCubic(segment, Math.max(tolerance, 0) / 0.75, points, 0);
  }
  return points;
}

function flattenCubic(curve: Cubic, reach: number, points: Point[], depth: number): void {
  const { p0, p1, p2, p3 } = curve;
  if (depth >= DEEPEST || (distanceToChord(p1, p0, p3) <= reach && distanceToChord(p2, p0, p3) <= reach)) {
    points.push(p3);
    return;
  }
  const [head, tail] = splitSegment(curve, 0.5) as readonly [Cubic, Cubic];
  flattenCubic(head, reach, points, depth + 1);
  flattenCubic(tail, reach, points, depth + 1);
}

/** How far a point is from the straight stretch between `from` and `to`. */
export function distanceToChord(point: Point, from: Point, to: Point): number {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const px = point.x - from.x;
  const py = point.y - from.y;
  const lengthSq = dx * dx + dy * dy;
  const t = lengthSq > 0 ? Math.min(1, Math.max(0, (px * dx + py * dy) / lengthSq)) : 0;
  return Math.hypot(px - dx * t, py - dy * t);
}
