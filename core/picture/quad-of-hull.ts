/** Four corners for a convex outline: a page seen aslant, perhaps bowed, with a corner folded or a line sticking out. */
import { cross, distance, type Point, vectorBetween } from '../geometry/point';
import { ringArea } from '../geometry/polygon';
import type { QuadCorners } from '../geometry/rectangle-aspect';

/** As many corners of the outline as all sets of four are looked through for: 1,820 sets. */
const MOST_CORNERS = 16;

/** The largest quadrilateral with its corners on a convex outline (clockwise); `undefined` with fewer than four corners. */
export function largestQuadIn(hull: readonly Point[]): QuadCorners | undefined {
  const ring = withoutFlattest(hull, MOST_CORNERS);
  let best: QuadCorners | undefined;
  let most = 0;
  for (let a = 0; a < ring.length; a++) {
    for (let b = a + 1; b < ring.length; b++) {
      for (let c = b + 1; c < ring.length; c++) {
        for (let d = c + 1; d < ring.length; d++) {
          const quad: QuadCorners = [ring[a] as Point, ring[b] as Point, ring[c] as Point, ring[d] as Point];
          const area = Math.abs(cross(vectorBetween(quad[0], quad[2]), vectorBetween(quad[1], quad[3])));
          if (area > most) [best, most] = [quad, area];
        }
      }
    }
  }
  return best && topLeftFirst(best);
}

/**
 * The quadrilateral round a convex outline (clockwise) that comes of lengthening sides until four are left, each time
 * where the least area is added: right where a corner is missing. `undefined` when no four sides close.
 */
export function leastQuadRound(hull: readonly Point[]): QuadCorners | undefined {
  const ring = withoutFlattest(hull, MOST_CORNERS).slice();
  while (ring.length > 4) {
    let best: { readonly at: number; readonly point: Point; readonly added: number } | undefined;
    for (let i = 0; i < ring.length; i++) {
      const [a, b, c, d] = [0, 1, 2, 3].map((k) => ring[(i + k) % ring.length]) as [Point, Point, Point, Point];
      const point = meetingBeyond(a, b, c, d);
      if (!point) continue;
      const added = Math.abs(ringArea([b, point, c]));
      if (!best || added < best.added) best = { at: i, point, added };
    }
    if (!best) return undefined;
    const [b, c] = [(best.at + 1) % ring.length, (best.at + 2) % ring.length];
    ring[b] = best.point;
    ring.splice(c, 1);
  }
  return ring.length === 4 ? topLeftFirst(ring as unknown as QuadCorners) : undefined;
}

/** Where the line a to b, gone on, meets the line d to c, gone on; `undefined` when they run apart. */
function meetingBeyond(a: Point, b: Point, c: Point, d: Point): Point | undefined {
  const [one, other] = [vectorBetween(a, b), vectorBetween(d, c)];
  const turn = cross(one, other);
  if (Math.abs(turn) < 1e-9) return undefined;
  const t = cross(vectorBetween(b, c), other) / turn;
  const s = cross(vectorBetween(b, c), one) / turn;
  return t >= 0 && s >= 0 ? { x: b.x + one.dx * t, y: b.y + one.dy * t } : undefined;
}

/** The outline with its flattest corners left out until `most` are left. */
function withoutFlattest(hull: readonly Point[], most: number): readonly Point[] {
  const ring = hull.slice();
  while (ring.length > most) {
    let flattest = 0;
    let least = Infinity;
    for (let i = 0; i < ring.length; i++) {
      const [a, b, c] = [ring[(i + ring.length - 1) % ring.length], ring[i], ring[(i + 1) % ring.length]] as Point[];
      const area = Math.abs(ringArea([a as Point, b as Point, c as Point]));
      if (area < least) [flattest, least] = [i, area];
    }
    ring.splice(flattest, 1);
  }
  return ring;
}

/** Clockwise corners begun with the top left one: the one whose two sides lie nearest to rightwards and upwards. */
export function topLeftFirst(quad: QuadCorners): QuadCorners {
  let [first, most] = [0, -Infinity];
  for (let i = 0; i < 4; i++) {
    const [before, here, after] = [quad[(i + 3) % 4], quad[i], quad[(i + 1) % 4]] as unknown as [Point, Point, Point];
    const rightwards = (after.x - here.x) / (distance(here, after) || 1);
    const upwards = (before.y - here.y) / (distance(here, before) || 1);
    if (rightwards + upwards > most) [first, most] = [i, rightwards + upwards];
  }
  return [0, 1, 2, 3].map((k) => quad[(first + k) % 4]) as unknown as QuadCorners;
}
