import type { Point } from '../geometry/point';
import type { QuadCorners } from '../geometry/rectangle-aspect';

/** The leftmost and rightmost pixel of a set in each row; a row without any has `left` beyond `right`. */
export interface RowEnds {
  readonly left: Int32Array;
  readonly right: Int32Array;
}

/** The convex hull of a set of pixels, their outer edges included, clockwise to the eye (A. M. Andrew's chains). */
export function hullOfRows({ left, right }: RowEnds): Point[] {
  const points: Point[] = [];
  for (let y = 0; y < left.length; y++) {
    const [from, to] = [left[y] as number, right[y] as number];
    if (from > to) continue;
    for (const row of [y, y + 1]) points.push({ x: from, y: row }, { x: to + 1, y: row });
  }
  points.sort((a, b) => a.x - b.x || a.y - b.y);
  const chain = (list: readonly Point[]) => {
    const kept: Point[] = [];
    for (const p of list) {
      while (kept.length > 1 && doubleArea(kept.at(-2) as Point, kept.at(-1) as Point, p) <= 0) kept.pop();
      kept.push(p);
    }
    return kept.slice(0, -1);
  };
  return [...chain(points), ...chain([...points].reverse())];
}

/** More corners than this are thinned first: the largest quadrilateral changes by less than a pixel. */
const MOST_CORNERS = 56;

/**
 * The largest quadrilateral with its corners on a convex ring: for each two opposite corners, the farthest on each side.
 * Its corners stay those of the page where sides bow out or in. `undefined` for fewer than four corners.
 */
export function largestQuad(hull: readonly Point[]): QuadCorners | undefined {
  const ring = thinned(hull);
  if (ring.length < 4) return undefined;
  let most = 0;
  let found: QuadCorners | undefined;
  for (let i = 0; i < ring.length; i++) {
    for (let k = i + 2; k < ring.length; k++) {
      const [a, c] = [ring[i] as Point, ring[k] as Point];
      const b = farthest(ring, i + 1, k, a, c);
      const d = farthest(ring, k + 1, ring.length + i, a, c);
      if (!b || !d) continue;
      const area = b.area + d.area;
      if (area > most) {
        most = area;
        found = [a, b.point, c, d.point];
      }
    }
  }
  return found && fromTopLeft(found);
}

function farthest(ring: readonly Point[], from: number, to: number, a: Point, c: Point) {
  let found: { readonly point: Point; readonly area: number } | undefined;
  for (let k = from; k < to; k++) {
    const point = ring[k % ring.length] as Point;
    const area = Math.abs(doubleArea(a, c, point));
    if (!found || area > found.area) found = { point, area };
  }
  return found;
}

/** Drops, again and again, the corner whose loss costs the least area. */
function thinned(hull: readonly Point[]): Point[] {
  const ring = [...hull];
  while (ring.length > MOST_CORNERS) {
    let least = 0;
    let area = Number.POSITIVE_INFINITY;
    for (let k = 0; k < ring.length; k++) {
      const own = Math.abs(doubleArea(ring.at(k - 1) as Point, ring[k] as Point, ring[(k + 1) % ring.length] as Point));
      if (own < area) [least, area] = [k, own];
    }
    ring.splice(least, 1);
  }
  return ring;
}

/** The same four corners clockwise to the eye from the one nearest the top left. */
export function fromTopLeft(corners: QuadCorners): QuadCorners {
  const [a, b, c] = corners;
  const ring = doubleArea(a, b, c) > 0 ? corners : ([...corners].reverse() as unknown as QuadCorners);
  const first = ring.reduce((top, p, k) => (p.x + p.y < (ring[top] as Point).x + (ring[top] as Point).y ? k : top), 0);
  return [0, 1, 2, 3].map((k) => ring[(first + k) % 4]) as unknown as QuadCorners;
}

/** Twice the signed area of a triangle: positive when it goes clockwise to the eye. */
export function doubleArea(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}
