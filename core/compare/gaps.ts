import { segmentAt } from '../geometry/cubic-curve';
import { flattenPath } from '../geometry/flatten';
import { endTangent, isClosed, nearestOnPath, pathEnd, pathStart, startTangent } from '../geometry/path';
import { cross, distance, dot, type Point, vectorBetween } from '../geometry/point';
import { placeInRing, type Ring, ringArea } from '../geometry/polygon';
import type { Path, Segment } from '../geometry/segment';
import { type NearLine, nearestOnLines } from './near-lines';

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

/** What is nearer than this (mm) lies on one another. */
const TOGETHER = 1e-4;

/** Of gaps as wide as one another to rounding (mm) the first is meant. */
const ROUNDING = 1e-9;

/** Beyond the end of an edge, a place further along it than beside it is no gap: there one edge is only the longer. */
const MORE_ALONG = Math.SQRT1_2;

/** A ring as fine as {@link gapsBetween} needs it. */
export function ringOf(whole: Path): Ring {
  return flattenPath(whole, FLATNESS);
}

/** The widest gaps between two lines of two pieces, both ways: a corner of either may be the furthest from the other. */
export function gapsBetween(lower: Looked, upper: Looked): Gaps {
  const there = furthest(upper.run, lower);
  const back = furthest(lower.run, upper);
  const turned = (gap: Gap | undefined) => gap && { width: gap.width, from: gap.to, to: gap.from };
  return { out: wider(turned(there.outside), back.inside), in: wider(turned(there.inside), back.outside) };
}

/** The wider of two gaps. */
export function wider(one: Gap | undefined, other: Gap | undefined): Gap | undefined {
  return !one || (other && other.width > one.width) ? other : one;
}

/**
 * How far a place lies beside a line: square to it where it lies past an end. `undefined` where it lies past an end more
 * than beside. A closed line has no end.
 */
function besideBy(line: Path, place: Point, near: Point): number | undefined {
  const off = distance(near, place);
  if (isClosed(line)) return off;
  const [start, end] = [distance(near, pathStart(line)), distance(near, pathEnd(line))];
  if (Math.min(start, end) > TOGETHER) return off;
  const along = start < end ? startTangent(line) : endTangent(line);
  const by = vectorBetween(near, place);
  return Math.abs(dot(along, by)) <= MORE_ALONG * off ? Math.abs(cross(along, by)) : undefined;
}

type Side = 'inside' | 'outside';
type Furthest = Readonly<Record<Side, Gap | undefined>>;

interface Found {
  readonly width: number;
  readonly segment: Segment;
  readonly t: number;
  readonly step: number;
}

/** The places of a line furthest from another on either side of it, and from there to its nearest place. */
function furthest(run: Path, from: Looked): Furthest {
  const lines = flattenPath(from.run, FLATNESS);
  const sideOf = isClosed(from.run) ? (place: Point) => sideOfRing(from.ring, place) : sideOfLines(lines, from.ring);
  const best: { -readonly [K in Side]?: Found } = {};
  for (const segment of run) {
    const count = Math.max(2, Math.ceil(roughLength(segment) / LOOK_EVERY));
    for (let i = 0; i <= count; i++) {
      const t = i / count;
      const place = segmentAt(segment, t);
      const near = nearestOnLines(lines, place);
      if (near.distance <= Math.max(TOGETHER, Math.min(best.inside?.width ?? 0, best.outside?.width ?? 0))) continue;
      const width = besideBy(from.run, place, near.point) ?? 0;
      const side = sideOf(place, near);
      if (width > (best[side]?.width ?? 0) + ROUNDING) best[side] = { width, segment, t, step: 1 / count };
    }
  }
  const closely = (side: Side) =>
    best[side] && closelyAt(best[side], from.run, (place) => sideOf(place, nearestOnLines(lines, place)) === side);
  return { inside: closely('inside'), outside: closely('outside') };
}

function sideOfRing(ring: Ring, place: Point): Side {
  return placeInRing(ring, place) === 'outside' ? 'outside' : 'inside';
}

/** The side of an edge, whatever other edges of its piece lie beyond its ends: the piece lies on one hand all along it. */
function sideOfLines(lines: readonly Point[], ring: Ring): (place: Point, near: NearLine) => Side {
  const hand = Math.sign(ringArea(ring));
  return (place, { point, index }) => {
    const along = vectorBetween(lines[index - 1] as Point, lines[index] as Point);
    return cross(along, vectorBetween(point, place)) * hand > 0 ? 'inside' : 'outside';
  };
}

/** The widest place near one that was found, with its true distance. */
function closelyAt({ segment, t, step }: Found, other: Path, isHere: (place: Point) => boolean): Gap | undefined {
  const at = (share: number): Gap => {
    const from = segmentAt(segment, share);
    const near = nearestOnPath(other, from);
    return { width: besideBy(other, from, near.point) ?? 0, from, to: near.point };
  };
  let [best, bestAt] = [at(t), t];
  for (let by = step / 2; by > CLOSER; by /= 2) {
    for (const share of [bestAt - by, bestAt + by]) {
      if (share < 0 || share > 1) continue;
      const gap = at(share);
      if (gap.width > best.width + ROUNDING && isHere(gap.from)) [best, bestAt] = [gap, share];
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
