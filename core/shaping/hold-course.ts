import { pathAtLength, pathLength } from '../geometry/path';
import type { Point } from '../geometry/point';
import type { Path } from '../geometry/segment';

/** A place of an edge, with how far along it lies (mm). */
export interface PlaceAlong {
  readonly point: Point;
  readonly along: number;
}

/**
 * Points pin an edge to its old course, this far (mm) from where a change of it ends: close first, so that it goes on in
 * the old direction, then wider.
 */
const PINS = [0, 15, 50, 150] as const;

/** A point of an edge nearer than this to its neighbours (mm) would make it wriggle: half an inch. */
export const NEAR = 12.7;

/** No point is set nearer than this to another where an edge is to lie smooth (mm): an inch. */
export const APART = 25.4;

/** The points of an edge that lie on its course, in order along it. */
export function placesOf(path: Path, places: readonly number[]): PlaceAlong[] {
  return places.map((along) => ({ point: pathAtLength(path, along).point, along }));
}

/**
 * Points that keep a course as it is from `from` on to its end, `kept` among them: those already on it come first, pins
 * are set only where there is room.
 */
export function heldFrom(path: Path, from: number, kept: readonly PlaceAlong[]): PlaceAlong[] {
  const total = pathLength(path);
  const pins = placesOf(
    path,
    PINS.map((more) => from + more),
  ).filter(({ along }) => along < total - NEAR && kept.every((other) => Math.abs(other.along - along) > NEAR));
  return [...pins, ...kept].sort((a, b) => a.along - b.along);
}
