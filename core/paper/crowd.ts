import type { Point } from '../geometry/point';
import { sortedPlaces } from '../geometry/sorted-places';

/** The side of the squares that places are sorted into (mm): about as far as is asked after. */
const SIDE = 10;

/** How many of some places are nearer to a place than `room` (mm). */
export type Crowd = (place: Point, room: number) => number;

export function crowdOf(places: readonly Point[]): Crowd {
  const sorted = sortedPlaces(places, SIDE);
  return ({ x, y }, room) => {
    let count = 0;
    sorted.eachIn({ minX: x - room, minY: y - room, maxX: x + room, maxY: y + room }, (one) => {
      if ((one.x - x) ** 2 + (one.y - y) ** 2 < room * room) count += 1;
    });
    return count;
  };
}
