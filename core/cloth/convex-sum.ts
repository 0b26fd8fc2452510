/** The sum (Minkowski) of convex shapes, and how deep a point lies in one: what tells of overlaps without any clipping. */
import type { Point } from '../geometry/point';
import type { Ring } from '../geometry/polygon';

/** The sum of two convex rings that run the same way: their sides in the order of their directions. */
export function convexSum(a: Ring, b: Ring): Point[] {
  const p = fromTop(a);
  const q = fromTop(b);
  const sum: Point[] = [];
  let i = 0;
  let j = 0;
  while (i < p.length || j < q.length) {
    const p0 = p[i % p.length] as Point;
    const q0 = q[j % q.length] as Point;
    const p1 = p[(i + 1) % p.length] as Point;
    const q1 = q[(j + 1) % q.length] as Point;
    sum.push({ x: p0.x + q0.x, y: p0.y + q0.y });
    const side = (p1.x - p0.x) * (q1.y - q0.y) - (p1.y - p0.y) * (q1.x - q0.x);
    const stepP = i < p.length && (j >= q.length || side >= 0);
    const stepQ = j < q.length && (i >= p.length || side <= 0);
    if (stepP) i++;
    if (stepQ) j++;
  }
  return sum;
}

/** The ring from its topmost corner on, of equally high ones the rightmost: there a clockwise ring begins to fall. */
function fromTop(ring: Ring): Ring {
  let top = 0;
  ring.forEach(({ x, y }, index) => {
    const best = ring[top] as Point;
    if (y < best.y || (y === best.y && x > best.x)) top = index;
  });
  return [...ring.slice(top), ...ring.slice(0, top)];
}

/** How deep a point lies in a convex ring that runs clockwise to the eye; less than 0 outside. */
export function depthInConvex(ring: Ring, point: Point): number {
  let depth = Number.POSITIVE_INFINITY;
  for (let i = 0; i < ring.length; i++) {
    const a = ring[i] as Point;
    const b = ring[(i + 1) % ring.length] as Point;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    if (length === 0) continue;
    depth = Math.min(depth, ((b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x)) / length);
  }
  return depth;
}
