/** Where two stretches meet: crossings, touches, ends that rest on the other, and stretches in common. */
import { type Box, boxesMeet, distanceToBox } from './bounds';
import { cubicCrossings, type ParameterPair, TOUCHING } from './cubic-crossings';
import { segmentAt, segmentBounds, segmentTangent } from './cubic-curve';
import { nearestOnSegment } from './nearest-point';
import { cross, distance, isSamePoint, type Point } from './point';
import { polynomialAt, polynomialDerivative, polynomialRoots } from './polynomial';
import type { Cubic, Line, Segment } from './segment';

/** What two stretches have in common: single places, or one stretch from `from` to `to`. */
export type SegmentMeeting =
  | ({ readonly kind: 'place' } & ParameterPair)
  | { readonly kind: 'stretch'; readonly from: ParameterPair; readonly to: ParameterPair };

/** The sine of the angle below which two directions count as the same where an end rests on the other stretch. */
const SAME_DIRECTION = 1e-5;

/** Places between two shared ends that must be shared too: two different cubics have at most nine in common. */
const PROOFS = 9;

/**
 * All places where the stretches meet within `TOUCHING`, in order along `a`; a touch and the crossings it cannot be told
 * from count once. When they share a stretch only that stretch is given.
 */
export function segmentMeetings(a: Segment, b: Segment): SegmentMeeting[] {
  const boxA = segmentBounds(a);
  const boxB = segmentBounds(b);
  if (!boxesMeet(boxA, boxB, TOUCHING)) return [];
  const ends = restingEnds(a, boxA, b, boxB);
  const shared = sharedStretch(a, b, ends);
  if (shared) return [shared];
  const places = ends.slice();
  for (const place of crossings(a, b)) {
    if (!places.some((known) => isSamePlace(a, b, known, place))) places.push(place);
  }
  return places.sort((one, other) => one.ta - other.ta).map((place) => ({ kind: 'place', ...place }));
}

function crossings(a: Segment, b: Segment): ParameterPair[] {
  if (a.kind === 'cubic' && b.kind === 'cubic') return cubicCrossings(a, b);
  if (a.kind === 'line') return b.kind === 'line' ? lineCrossing(a, b) : lineCubicCrossings(a, b);
  return lineCubicCrossings(b as Line, a as Cubic).map(({ ta, tb, touching }) => ({ ta: tb, tb: ta, touching }));
}

/** The ends of each stretch that rest on the other, each place once. */
function restingEnds(a: Segment, boxA: Box, b: Segment, boxB: Box): ParameterPair[] {
  const places: ParameterPair[] = [];
  const add = (ta: number, tb: number, off: number) => {
    if (off > TOUCHING) return;
    const place = { ta, tb, touching: runsAlike(a, ta, b, tb) };
    if (!places.some((known) => isSamePlace(a, b, known, place))) places.push(place);
  };
  for (const ta of [0, 1]) {
    const end = segmentAt(a, ta);
    if (distanceToBox(boxB, end) > TOUCHING) continue;
    const near = nearestOnSegment(b, end);
    add(ta, near.t, near.distance);
  }
  for (const tb of [0, 1]) {
    const end = segmentAt(b, tb);
    if (distanceToBox(boxA, end) > TOUCHING) continue;
    const near = nearestOnSegment(a, end);
    add(near.t, tb, near.distance);
  }
  return places.sort((one, other) => one.ta - other.ta);
}

/** The stretch both share, proved by places between the ends that rest on one another. */
function sharedStretch(a: Segment, b: Segment, ends: readonly ParameterPair[]): SegmentMeeting | undefined {
  const from = ends[0];
  const to = ends[ends.length - 1];
  if (!from || !to || isSamePoint(segmentAt(a, from.ta), segmentAt(a, to.ta))) return undefined;
  for (let i = 1; i <= PROOFS; i++) {
    const point = segmentAt(a, from.ta + ((to.ta - from.ta) * i) / (PROOFS + 1));
    if (nearestOnSegment(b, point).distance > TOUCHING) return undefined;
  }
  return { kind: 'stretch', from, to };
}

function lineCrossing(a: Line, b: Line): ParameterPair[] {
  const along = { dx: a.p1.x - a.p0.x, dy: a.p1.y - a.p0.y };
  const beside = { dx: b.p1.x - b.p0.x, dy: b.p1.y - b.p0.y };
  const between = { dx: b.p0.x - a.p0.x, dy: b.p0.y - a.p0.y };
  const turn = cross(along, beside);
  const ta = cross(between, beside) / turn;
  const tb = cross(between, along) / turn;
  return ta >= 0 && ta <= 1 && tb >= 0 && tb <= 1 ? [{ ta, tb, touching: false }] : [];
}

/** The distance of the cubic from the line is a cubic in t: its roots cross, its turning points may touch. */
function lineCubicCrossings(a: Line, b: Cubic): ParameterPair[] {
  const length = distance(a.p0, a.p1);
  if (!(length > 0)) return [];
  const ux = (a.p1.x - a.p0.x) / length;
  const uy = (a.p1.y - a.p0.y) / length;
  const off = ({ x, y }: Point) => (y - a.p0.y) * ux - (x - a.p0.x) * uy;
  const [d0, d1, d2, d3] = [off(b.p0), off(b.p1), off(b.p2), off(b.p3)];
  const side = [d0, 3 * (d1 - d0), 3 * (d2 - 2 * d1 + d0), d3 - 3 * d2 + 3 * d1 - d0];
  const places: ParameterPair[] = [];
  const add = (tb: number, touching: boolean) => {
    const { x, y } = segmentAt(b, tb);
    const reach = (x - a.p0.x) * ux + (y - a.p0.y) * uy;
    if (reach >= 0 && reach <= length) places.push({ ta: reach / length, tb, touching });
  };
  const touches = polynomialRoots(polynomialDerivative(side)).filter(
    (t) => Math.abs(polynomialAt(side, t)) <= TOUCHING,
  );
  for (const t of touches) add(t, true);
  for (const t of polynomialRoots(side)) {
    const absorbed = touches.some((touch) => Math.abs(polynomialAt(side, (t + touch) / 2)) <= TOUCHING);
    if (!absorbed) add(t, false);
  }
  return places;
}

function isSamePlace(a: Segment, b: Segment, one: ParameterPair, other: ParameterPair): boolean {
  // Middles are compared as well, so that a loop which comes back to the same place keeps both visits.
  return (
    isSamePoint(segmentAt(a, one.ta), segmentAt(a, other.ta)) &&
    isSamePoint(segmentAt(b, one.tb), segmentAt(b, other.tb)) &&
    isSamePoint(segmentAt(a, one.ta), segmentAt(a, (one.ta + other.ta) / 2)) &&
    isSamePoint(segmentAt(b, one.tb), segmentAt(b, (one.tb + other.tb) / 2))
  );
}

function runsAlike(a: Segment, ta: number, b: Segment, tb: number): boolean {
  const [one, other] = [segmentTangent(a, ta), segmentTangent(b, tb)];
  return one !== undefined && other !== undefined && Math.abs(cross(one, other)) < SAME_DIRECTION;
}
