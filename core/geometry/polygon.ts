/** Rings of straight sides: area, inside or outside, convex or not, and whether a ring crosses itself. */
import { boxesMeet } from './bounds';
import { TOUCHING } from './cubic-crossings';
import { segmentBounds } from './cubic-curve';
import { distanceToChord } from './flatten';
import { isSamePoint, type Point, SAME_POINT } from './point';
import { type Line, line } from './segment';
import { segmentMeetings } from './segment-meetings';

/** A closed run of straight sides by its corners, the first not repeated at the end. */
export type Ring = readonly Point[];

/** Where a ring comes to one place twice, and the two sides that meet there (side i leads away from corner i). */
export interface RingCrossing {
  readonly point: Point;
  readonly sides: readonly [number, number];
}

/** The area inside a ring, positive when it runs clockwise to the eye; 0 for fewer than three corners. */
export function ringArea(ring: Ring): number {
  const origin = ring[0];
  if (!origin) return 0;
  let twice = 0;
  for (let i = 0; i < ring.length; i++) {
    const a = ring[i] as Point;
    const b = ring[(i + 1) % ring.length] as Point;
    twice += (a.x - origin.x) * (b.y - origin.y) - (b.x - origin.x) * (a.y - origin.y);
  }
  return twice / 2;
}

/** The length round a ring. */
export function ringLength(ring: Ring): number {
  return ring.reduce((sum, a, i) => {
    const b = ring[(i + 1) % ring.length] as Point;
    return sum + Math.hypot(b.x - a.x, b.y - a.y);
  }, 0);
}

/**
 * Whether a point lies inside a ring, on its boundary (within SAME_POINT) or outside. A part the ring goes round more
 * than once is inside; so is one it goes round the other way.
 */
export function placeInRing(ring: Ring, point: Point): 'inside' | 'boundary' | 'outside' {
  let winding = 0;
  for (let i = 0; i < ring.length; i++) {
    const a = ring[i] as Point;
    const b = ring[(i + 1) % ring.length] as Point;
    if (distanceToChord(point, a, b) <= SAME_POINT) return 'boundary';
    if (a.y <= point.y === b.y <= point.y) continue;
    const side = (b.x - a.x) * (point.y - a.y) - (point.x - a.x) * (b.y - a.y);
    if (b.y > a.y && side > 0) winding++;
    else if (b.y < a.y && side < 0) winding--;
  }
  return winding !== 0 ? 'inside' : 'outside';
}

/** Whether a ring turns one way only, once round; corners in line with their neighbours do not matter. */
export function isConvexRing(ring: Ring): boolean {
  const corners = ring.filter((point, i) => !isSamePoint(point, ring[(i + 1) % ring.length] as Point));
  if (corners.length < 3) return false;
  let sides = 0;
  let total = 0;
  corners.forEach((b, i) => {
    const a = corners[(i + corners.length - 1) % corners.length] as Point;
    const c = corners[(i + 1) % corners.length] as Point;
    const cross = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
    const turn = Math.atan2(cross, (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y));
    if (Math.abs(turn) > 1e-12) sides |= turn > 0 ? 1 : 2;
    total += turn;
  });
  return sides !== 3 && Math.abs(Math.abs(total) - 2 * Math.PI) < 1e-6;
}

/**
 * A place where a ring crosses or touches itself, or runs back along itself; `undefined` for a simple ring. Looked for
 * from left to right, so that of many crossings one of the leftmost is given.
 */
export function ringCrossing(ring: Ring): RingCrossing | undefined {
  const corners = ring.map((point, index) => ({ point, index }));
  const distinct = corners.filter(
    ({ point }, i) => !isSamePoint(point, (corners[(i + 1) % corners.length] as (typeof corners)[0]).point),
  );
  const sides = distinct.map(({ point, index }, order) => {
    const side = line(point, (distinct[(order + 1) % distinct.length] as (typeof distinct)[0]).point);
    return { side, index, order, box: segmentBounds(side) };
  });
  const sorted = sides.slice().sort((a, b) => a.box.minX - b.box.minX);
  let open: typeof sides = [];
  for (const one of sorted) {
    open = open.filter(({ box }) => box.maxX >= one.box.minX - TOUCHING);
    for (const other of open) {
      if (!boxesMeet(one.box, other.box, TOUCHING)) continue;
      const [first, second] = one.order < other.order ? [one, other] : [other, one];
      const point = meetingOfSides(first.side, second.side, second.order - first.order, sides.length);
      if (point) return { point, sides: [first.index, second.index] };
    }
    open.push(one);
  }
  return undefined;
}

/** Where two sides meet besides the corner neighbours share. */
function meetingOfSides(first: Line, second: Line, apart: number, count: number): Point | undefined {
  for (const meeting of segmentMeetings(first, second)) {
    if (meeting.kind === 'stretch') return pointOn(first, (meeting.from.ta + meeting.to.ta) / 2);
    const point = pointOn(first, meeting.ta);
    const shared =
      (apart === 1 && isSamePoint(point, first.p1)) || (apart === count - 1 && isSamePoint(point, first.p0));
    if (!shared) return point;
  }
  return undefined;
}

function pointOn({ p0, p1 }: Line, t: number): Point {
  return { x: p0.x * (1 - t) + p1.x * t, y: p0.y * (1 - t) + p1.y * t };
}
