import { boxOfPoints, commonBox } from '../geometry/bounds';
import { cross, type Point, vectorBetween } from '../geometry/point';
import { placeInRing, type Ring } from '../geometry/polygon';

/**
 * Whether two rings have area in common: sides that cross, or one ring inside the other. For rings that keep clear of one
 * another by more than rounding, or overlap by more; whoever must know exactly clips their areas.
 */
export function ringsOverlap(a: Ring, b: Ring): boolean {
  const [boxA, boxB] = [boxOfPoints(a), boxOfPoints(b)];
  const box = boxA && boxB && commonBox(boxA, boxB);
  if (!box) return false;
  const near = (ring: Ring) =>
    ring.flatMap((from, i) => {
      const to = ring[(i + 1) % ring.length] as Point;
      const isOff =
        Math.max(from.x, to.x) < box.minX ||
        Math.min(from.x, to.x) > box.maxX ||
        Math.max(from.y, to.y) < box.minY ||
        Math.min(from.y, to.y) > box.maxY;
      return isOff ? [] : [{ from, to }];
    });
  const others = near(b);
  if (near(a).some((side) => others.some((other) => sidesCross(side, other)))) return true;
  const [cornerA, cornerB] = [a[0], b[0]];
  return (
    (cornerA !== undefined && placeInRing(b, cornerA) === 'inside') ||
    (cornerB !== undefined && placeInRing(a, cornerB) === 'inside')
  );
}

interface Side {
  readonly from: Point;
  readonly to: Point;
}

function sidesCross({ from: a, to: b }: Side, { from: c, to: d }: Side): boolean {
  if (Math.max(a.x, b.x) < Math.min(c.x, d.x) || Math.max(c.x, d.x) < Math.min(a.x, b.x)) return false;
  if (Math.max(a.y, b.y) < Math.min(c.y, d.y) || Math.max(c.y, d.y) < Math.min(a.y, b.y)) return false;
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

function side(a: Point, b: Point, at: Point): number {
  return cross(vectorBetween(a, b), vectorBetween(a, at));
}
