import { segmentAt } from '../geometry/cubic-curve';
import { flattenPath } from '../geometry/flatten';
import { endTangent, isClosed, nearestOnPath, pathEnd, pathStart, startTangent } from '../geometry/path';
import { distance, dot, type Point, vectorBetween } from '../geometry/point';
import { placeInRing, type Ring } from '../geometry/polygon';
import type { Path, Segment } from '../geometry/segment';
import { nearestOnLines } from './near-lines';

/** A gap between two lines: how wide (mm), from where on the lower to where on the upper. */
export interface Gap {
  readonly width: number;
  readonly from: Point;
  readonly to: Point;
}

/** The widest gap where the upper piece lies outside the lower, and where it lies inside; `undefined` where it never does. */
export interface Gaps {
  readonly out: Gap | undefined;
  readonly in: Gap | undefined;
}

/** A line that is looked at, the whole outline of a piece or one edge, and the ring of that piece, which says what is outside. */
interface Looked {
  readonly run: Path;
  readonly ring: Ring;
}

/** How finely a ring is followed, to tell inside from outside and to find where a gap is about the widest (mm). */
const FLATNESS = 0.02;

/** Lines are looked at this often (mm); the widest places then more closely, to a hundred-thousandth of a stretch. */
const LOOK_EVERY = 4;
const CLOSER = 1e-5;

/** What is nearer than this (mm) lies on one another; what is this near to a ring, followed so finely, lies on it. */
const TOGETHER = 1e-4;
const ON_RING = 2 * FLATNESS;

/** Beyond the end of an edge, a place more along it than beside it is no gap: there one edge is only the longer. */
const MORE_ALONG = Math.SQRT1_2;

/** A ring as fine as {@link gapsBetween} needs it. */
export function ringOf(whole: Path): Ring {
  return flattenPath(whole, FLATNESS);
}

/** The widest gaps between two lines of two pieces, both ways: a corner of either may be the furthest from the other. */
export function gapsBetween(lower: Looked, upper: Looked): Gaps {
  const there = widest(upper.run, lower.run, (place) => (liesWithin(lower.ring, place) ? 'in' : 'out'));
  const back = widest(lower.run, upper.run, (place) => (liesWithin(upper.ring, place) ? 'out' : 'in'));
  const turned = (gap: Gap | undefined) => gap && { width: gap.width, from: gap.to, to: gap.from };
  return { out: wider(turned(there.out), back.out), in: wider(turned(there.in), back.in) };
}

/** The wider of two gaps. */
export function wider(one: Gap | undefined, other: Gap | undefined): Gap | undefined {
  return !one || (other && other.width > one.width) ? other : one;
}

/** What lies on the ring is still within: an edge that became shorter ends there. */
function liesWithin(ring: Ring, place: Point): boolean {
  return (
    placeInRing(ring, place) !== 'outside' || nearestOnLines([...ring, ring[0] as Point], place).distance <= ON_RING
  );
}

/** Whether a place lies beside a line, or past its end in the same direction. A closed line has no end. */
function isBeside(line: Path, place: Point, near: Point): boolean {
  if (isClosed(line)) return true;
  const [start, end] = [distance(near, pathStart(line)), distance(near, pathEnd(line))];
  if (Math.min(start, end) > TOGETHER) return true;
  const along = start < end ? startTangent(line) : endTangent(line);
  return Math.abs(dot(along, vectorBetween(near, place))) <= MORE_ALONG * distance(near, place);
}

interface Found {
  readonly gap: Gap;
  readonly segment: Segment;
  readonly t: number;
  readonly step: number;
}

/** The places of a line furthest from another, on either side of it. */
function widest(run: Path, other: Path, sideOf: (place: Point) => 'in' | 'out'): Gaps {
  const lines = flattenPath(other, FLATNESS);
  const best: { in?: Found; out?: Found } = {};
  for (const segment of run) {
    const count = Math.max(2, Math.ceil(roughLength(segment) / LOOK_EVERY));
    for (let i = 0; i <= count; i++) {
      const t = i / count;
      const place = segmentAt(segment, t);
      const { distance: off, point: near } = nearestOnLines(lines, place);
      if (off <= TOGETHER) continue;
      const least = Math.min(best.in?.gap.width ?? 0, best.out?.gap.width ?? 0);
      if (off <= least || !isBeside(other, place, near)) continue;
      const side = sideOf(place);
      if (off <= (best[side]?.gap.width ?? 0)) continue;
      best[side] = { gap: { width: off, from: place, to: place }, segment, t, step: 1 / count };
    }
  }
  const closely = (side: 'in' | 'out') => {
    const found = best[side];
    return found && closelyAt(found, other, (place) => sideOf(place) === side);
  };
  return { in: closely('in'), out: closely('out') };
}

/** The widest place near one that was found, with its true distance. */
function closelyAt({ segment, t, step }: Found, other: Path, isHere: (place: Point) => boolean): Gap | undefined {
  const at = (share: number): Gap => {
    const from = segmentAt(segment, share);
    const near = nearestOnPath(other, from);
    return { width: near.distance, from, to: near.point };
  };
  let [best, bestAt] = [at(t), t];
  for (let by = step / 2; by > CLOSER; by /= 2) {
    for (const share of [bestAt - by, bestAt + by]) {
      if (share < 0 || share > 1) continue;
      const gap = at(share);
      if (gap.width > best.width && isBeside(other, gap.from, gap.to) && isHere(gap.from))
        [best, bestAt] = [gap, share];
    }
  }
  return best.width > TOGETHER ? best : undefined;
}

/** At least the length of a stretch: that of the lines through its controls. */
function roughLength(segment: Segment): number {
  if (segment.kind === 'line') return distance(segment.p0, segment.p1);
  const { p0, p1, p2, p3 } = segment;
  return distance(p0, p1) + distance(p1, p2) + distance(p2, p3);
}
