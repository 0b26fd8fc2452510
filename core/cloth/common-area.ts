import { cross, type Point, vectorBetween } from '../geometry/point';
import { type Ring, ringArea } from '../geometry/polygon';
import { convexParts } from './convex-parts';

/**
 * The area two simple rings have in common, worked out on no grid: convex parts of the one are cut along the sides of
 * convex parts of the other. Where long sides touch aslant a grid of any width makes a sliver, and this does not.
 */
export function commonArea(a: Ring, b: Ring): number {
  return commonOfParts(convexParts(a), convexParts(b));
}

/** The same where the convex parts of both are known. */
export function commonOfParts(parts: readonly Ring[], others: readonly Ring[]): number {
  let sum = 0;
  for (const part of parts) for (const other of others) sum += Math.abs(ringArea(cutAlong(part, other)));
  return sum;
}

/** What of a convex ring lies within another, both clockwise to the eye. */
function cutAlong(ring: Ring, sides: Ring): Ring {
  let left = ring;
  for (let i = 0; i < sides.length && left.length > 2; i++) {
    left = beside(left, sides[i] as Point, sides[(i + 1) % sides.length] as Point);
  }
  return left;
}

/** What of a convex ring lies on the inner side of the line from a to b. */
function beside(ring: Ring, a: Point, b: Point): Ring {
  const along = vectorBetween(a, b);
  const offs = ring.map((point) => cross(along, vectorBetween(a, point)));
  return ring.flatMap((point, i) => {
    const next = (i + 1) % ring.length;
    const [off, nextOff] = [offs[i] as number, offs[next] as number];
    const kept = off >= 0 ? [point] : [];
    if (off >= 0 === nextOff >= 0) return kept;
    const to = ring[next] as Point;
    const t = off / (off - nextOff);
    return [...kept, { x: point.x + t * (to.x - point.x), y: point.y + t * (to.y - point.y) }];
  });
}
