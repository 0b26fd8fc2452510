/**
 * Where paths meet: every crossing, touch and stretch in common.
 *
 * Places nearer together than SAME_POINT along both paths are one place. Paths that come within a millionth of a
 * millimetre meet (`TOUCHING`).
 *
 * Limit: of two curves that share a stretch, further crossings between that same pair of stretches are not looked for.
 */
import { boxesMeet } from './bounds';
import { TOUCHING } from './cubic-crossings';
import { segmentAt, segmentBounds } from './cubic-curve';
import { isClosed } from './path';
import { type Point, SAME_POINT } from './point';
import type { Path, Segment } from './segment';
import { partLength, segmentLength } from './segment-length';
import { type SegmentMeeting, segmentMeetings } from './segment-meetings';

/**
 * A place where two paths cross, or where they touch: run in the same direction. `alongA` and `alongB` are lengths from
 * the start of each path.
 */
export interface MeetingPlace {
  readonly kind: 'crossing' | 'touching';
  readonly point: Point;
  readonly alongA: number;
  readonly alongB: number;
}

/** A stretch both paths share. `fromA < toA`; `fromB > toB` when the second runs it the other way. */
export interface Overlap {
  readonly kind: 'overlap';
  readonly fromA: number;
  readonly toA: number;
  readonly fromB: number;
  readonly toB: number;
}

/** What two paths have in common. */
export type Meeting = MeetingPlace | Overlap;

/**
 * All meetings of two paths, in order along the first. An end that rests on the other path counts, with the kind told
 * by the directions there; so does a corner. Ends of an overlap are not named again as places.
 */
export function intersectPaths(a: Path, b: Path): Meeting[] {
  const boxes = b.map(segmentBounds);
  const lengthsA = startsOf(a);
  const lengthsB = a === b ? lengthsA : startsOf(b);
  const places: MeetingPlace[] = [];
  const overlaps: Overlap[] = [];
  a.forEach((one, i) => {
    const box = segmentBounds(one);
    b.forEach((other, j) => {
      if (!boxesMeet(box, boxes[j] as typeof box, TOUCHING)) return;
      for (const meeting of segmentMeetings(one, other)) {
        record(meeting, one, lengthsA[i] as number, other, lengthsB[j] as number, places, overlaps);
      }
    });
  });
  const joined = joinedOverlaps(overlaps);
  const roundA = isClosed(a) ? lengthsA[a.length] : undefined;
  const roundB = isClosed(b) ? lengthsB[b.length] : undefined;
  const single: MeetingPlace[] = [];
  // Crossings first: at a joint one stretch may be seen to touch where the other crosses.
  for (const place of places.sort((p, q) => p.alongA - q.alongA || p.alongB - q.alongB)) {
    const known = single.some(
      (other) => isSameLength(place.alongA, other.alongA, roundA) && isSameLength(place.alongB, other.alongB, roundB),
    );
    if (!known && !joined.some((overlap) => liesOn(overlap, place))) single.push(place);
  }
  return [...single, ...joined].sort((p, q) => startOf(p) - startOf(q));
}

function record(
  meeting: SegmentMeeting,
  one: Segment,
  beforeA: number,
  other: Segment,
  beforeB: number,
  places: MeetingPlace[],
  overlaps: Overlap[],
): void {
  const alongA = (t: number) => beforeA + partLength(one, 0, t);
  const alongB = (t: number) => beforeB + partLength(other, 0, t);
  if (meeting.kind === 'place') {
    places.push({
      kind: meeting.touching ? 'touching' : 'crossing',
      point: segmentAt(one, meeting.ta),
      alongA: alongA(meeting.ta),
      alongB: alongB(meeting.tb),
    });
    return;
  }
  const { from, to } = meeting;
  overlaps.push({
    kind: 'overlap',
    fromA: alongA(from.ta),
    toA: alongA(to.ta),
    fromB: alongB(from.tb),
    toB: alongB(to.tb),
  });
}

/** Overlaps that follow on from one another along both paths, as one. */
function joinedOverlaps(overlaps: Overlap[]): Overlap[] {
  const joined: Overlap[] = [];
  for (const overlap of overlaps.sort((p, q) => p.fromA - q.fromA)) {
    const at = joined.findIndex(
      (other) =>
        isSameLength(other.toA, overlap.fromA) &&
        isSameLength(other.toB, overlap.fromB) &&
        other.toB > other.fromB === overlap.toB > overlap.fromB,
    );
    const before = joined[at];
    if (before) joined[at] = { ...before, toA: overlap.toA, toB: overlap.toB };
    else joined.push(overlap);
  }
  return joined;
}

function liesOn(overlap: Overlap, { alongA, alongB }: MeetingPlace): boolean {
  const lowB = Math.min(overlap.fromB, overlap.toB);
  const highB = Math.max(overlap.fromB, overlap.toB);
  return (
    alongA >= overlap.fromA - SAME_POINT &&
    alongA <= overlap.toA + SAME_POINT &&
    alongB >= lowB - SAME_POINT &&
    alongB <= highB + SAME_POINT
  );
}

/** Whether two lengths along a path are one place; on a closed path `round` long, its end is its start. */
function isSameLength(a: number, b: number, round?: number): boolean {
  const apart = Math.abs(a - b);
  return apart <= SAME_POINT || (round !== undefined && Math.abs(round - apart) <= SAME_POINT);
}

function startOf(meeting: Meeting): number {
  return meeting.kind === 'overlap' ? meeting.fromA : meeting.alongA;
}

/** The length before each stretch, and at the end the whole. */
function startsOf(path: Path): number[] {
  const starts = [0];
  for (const segment of path) starts.push((starts[starts.length - 1] as number) + segmentLength(segment));
  return starts;
}
