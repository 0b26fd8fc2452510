/**
 * The no-fit area of two shapes: all the moves of the second at which it overlaps the first.
 *
 * It is the sum of the first and the second turned by half (Minkowski), and for shapes with hollows the union of those
 * sums over their convex parts: exact but for the grid of the clipping. Moves on its boundary only touch.
 */
import { FillRule, unionD } from 'clipper2-ts';
import { rotationAbout, transformPoint } from '../geometry/affine';
import { distanceToChord } from '../geometry/flatten';
import type { Point } from '../geometry/point';
import type { Ring } from '../geometry/polygon';

/** Where two shapes do not fit: bounded by rings (holes run the other way), and as the convex sums it was made of. */
export interface NoFit {
  readonly rings: readonly Ring[];
  readonly parts: readonly Ring[];
}

/**
 * Clipping works on a decimal grid no finer than this share of the size of the sums, and at most ten times as coarse: for
 * sums of 2 m, a hundred-thousandth of a millimetre. Products of two such coordinates keep within a number's digits.
 */
const GRID_SHARE = 2 ** -29;

/** The angle of the second try, in radians: no multiple of anything a drafter would draw. */
const ODD_ANGLE = 0.7331;

/**
 * The no-fit area of a shape that stays and one that moves, each given as its convex parts (clockwise to the eye). A
 * move `(dx, dy)` is the point `{ x: dx, y: dy }`. The union is held against the parts it was made of and worked out
 * anew, turned, if it does not agree with them; the parts are given with it so that a caller can judge for itself.
 */
export function noFit(stays: readonly Ring[], moves: readonly Ring[]): NoFit {
  const turned = moves.map((part) => part.map(({ x, y }) => ({ x: -x, y: -y })));
  const parts = stays.flatMap((a) => turned.map((b) => convexSum(a, b)));
  const [only] = parts;
  if (parts.length === 1 && only) return { rings: [only], parts };
  const size = parts.flat().reduce((most, { x, y }) => Math.max(most, Math.abs(x), Math.abs(y)), 0);
  const decimals = Math.max(0, Math.min(8, Math.floor(-Math.log10(size * GRID_SHARE))));
  const rings = unionD(parts as Point[][], [], FillRule.NonZero, decimals);
  if (agrees(rings, parts, size)) return { rings, parts };
  const about = rotationAbout({ x: 0, y: 0 }, ODD_ANGLE);
  const back = rotationAbout({ x: 0, y: 0 }, -ODD_ANGLE);
  const slanted = parts.map((part) => part.map((point) => transformPoint(about, point)));
  const again = unionD(slanted, [], FillRule.NonZero, decimals);
  return { rings: again.map((ring) => ring.map((point) => transformPoint(back, point))), parts };
}

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

/** No corner of the boundary lies inside a part, and no corner of a part outside the boundary. */
function agrees(rings: readonly Ring[], parts: readonly Ring[], size: number): boolean {
  const slack = 40 * size * GRID_SHARE;
  const corners = rings.flat();
  if (parts.some((part) => corners.some((corner) => depthInConvex(part, corner) > slack))) return false;
  return parts.every((part) => part.every((corner) => isInOrOn(rings, corner, slack)));
}

function isInOrOn(rings: readonly Ring[], point: Point, slack: number): boolean {
  let inside = false;
  for (const ring of rings) {
    for (let i = 0; i < ring.length; i++) {
      const a = ring[i] as Point;
      const b = ring[(i + 1) % ring.length] as Point;
      if (distanceToChord(point, a, b) <= slack) return true;
      if (a.y <= point.y === b.y <= point.y) continue;
      if (a.x + ((point.y - a.y) / (b.y - a.y)) * (b.x - a.x) > point.x) inside = !inside;
    }
  }
  return inside;
}
