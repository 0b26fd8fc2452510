import { segmentAt, segmentTangent } from '../geometry/cubic-curve';
import { nearestOnPath, pathLength } from '../geometry/path';
import { cross, distance, type Point, turnBetween, vectorBetween } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { APART, type PlaceAlong, placesOf } from './hold-course';

/** A place so near to the course lies on it (mm). */
const ON_IT = 0.05;

/** Where the old points lie further apart than this (mm), one more between keeps the new curve to them: eight inches. */
const FAR_APART = 203.2;

/** A straight edge has passed where it touched once it must turn back by this much (radians): a third of a degree. */
const TURNED_BACK = 0.006;

/** Places of each segment at which its direction is looked at. */
const LOOKED_AT = 24;

/**
 * The points that bring a line from a place beside its old course back on to it and keep it there, without a bump: as with a
 * yardstick laid from the place along the old course, it runs straight to where the course takes up its direction, or
 * comes nearest to that; on a straight course that is its far end. `own` are the points the course passes.
 */
export function backOnCourse(course: Path, place: Point, own: readonly PlaceAlong[]): PlaceAlong[] {
  const total = pathLength(course);
  const nearest = nearestOnPath(course, place);
  const joint = nearest.distance < ON_IT ? nearest.along : jointAlong(course, place, nearest.along);
  const isClear = ({ along }: PlaceAlong) => along > nearest.along + APART && along < total - APART;
  const kept = own.filter((point) => isClear(point) && point.along > joint + APART);
  const stops = [joint, ...kept.map(({ along }) => along), total];
  const between = stops.slice(1).flatMap((next, i) => evenlyBetween(stops[i] ?? 0, next));
  const held = placesOf(course, [joint, ...between]).filter(isClear);
  return [...held, ...kept].sort((a, b) => a.along - b.along);
}

/** Places between two, as few as leave them no further apart than {@link FAR_APART}. */
function evenlyBetween(from: number, to: number): number[] {
  const parts = Math.ceil((to - from) / FAR_APART);
  return Array.from({ length: Math.max(0, parts - 1) }, (_, i) => from + ((to - from) * (i + 1)) / parts);
}

/**
 * How far along the course, past `from`, a straight edge from the place touches it; where it does not, the place at which
 * the direction to it differs least from the course's own.
 */
function jointAlong(course: Path, place: Point, from: number): number {
  const beyond = placesBeyond(course, from).filter(({ at }) => distance(at, place) >= APART);
  const [first] = beyond;
  if (!first) return pathLength(course);
  // The edge turns about the place as it follows the course outwards; where it has to turn back, it touched.
  const way = vectorBetween(place, first.at);
  const outwards = Math.sign(cross(way, first.tangent));
  let touches = { turn: 0, at: first.at };
  let nearest = { turn: Number.POSITIVE_INFINITY, at: first.at };
  for (const { at, tangent } of beyond) {
    const turn = outwards * turnBetween(way, vectorBetween(place, at));
    if (turn >= touches.turn) touches = { turn, at };
    else if (turn < touches.turn - TURNED_BACK) return nearestOnPath(course, touches.at).along;
    const off = Math.abs(turnBetween(vectorBetween(place, at), tangent));
    if (off < nearest.turn) nearest = { turn: off, at };
  }
  return nearestOnPath(course, nearest.at).along;
}

/** Places along the course past `from`, its end among them, with its direction there. */
function placesBeyond(course: Path, from: number) {
  const shares = Array.from({ length: LOOKED_AT }, (_, i) => (i + 1) / LOOKED_AT);
  const places = course.flatMap((segment) =>
    shares.flatMap((t) => {
      const tangent = segmentTangent(segment, t);
      return tangent ? [{ at: segmentAt(segment, t), tangent }] : [];
    }),
  );
  const first = places.findIndex(({ at }) => nearestOnPath(course, at).along > from);
  return first < 0 ? [] : places.slice(first);
}
