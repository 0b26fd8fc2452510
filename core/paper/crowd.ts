import type { Point } from '../geometry/point';

/** The side of the squares that places are sorted into (mm): about as far as is asked after. */
const SIDE = 10;

/** How many of some places are nearer to a place than `room` (mm). */
export type Crowd = (place: Point, room: number) => number;

/** Sorts places into squares once, so that only those in the squares about a place are looked at. */
export function crowdOf(places: readonly Point[]): Crowd {
  const rows = new Map<number, Map<number, Point[]>>();
  for (const place of places) {
    const [row, column] = [Math.floor(place.y / SIDE), Math.floor(place.x / SIDE)];
    const columns = rows.get(row) ?? new Map<number, Point[]>();
    if (columns.size === 0) rows.set(row, columns);
    const there = columns.get(column);
    if (there) there.push(place);
    else columns.set(column, [place]);
  }
  return ({ x, y }, room) => {
    let count = 0;
    for (let row = Math.floor((y - room) / SIDE); row <= Math.floor((y + room) / SIDE); row++) {
      const columns = rows.get(row);
      if (!columns) continue;
      for (let column = Math.floor((x - room) / SIDE); column <= Math.floor((x + room) / SIDE); column++) {
        for (const one of columns.get(column) ?? []) {
          if ((one.x - x) ** 2 + (one.y - y) ** 2 < room * room) count += 1;
        }
      }
    }
    return count;
  };
}
