import type { Point } from '../geometry/point';

/** Whether a place lies inside a ring of corners, by the number of sides to its right. */
export function isInside(ring: readonly Point[], { x, y }: Point): boolean {
  let inside = false;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    const [a, b] = [ring[i] as Point, ring[j] as Point];
    if (a.y > y !== b.y > y && x < ((b.x - a.x) * (y - a.y)) / (b.y - a.y) + a.x) inside = !inside;
  }
  return inside;
}
