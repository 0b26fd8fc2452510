import type { Box } from './bounds';
import type { Point } from './point';

/** Places sorted into squares once, so that only those in the squares about a box are looked at. */
export interface SortedPlaces {
  /** Does something with each place in or on a box. */
  readonly eachIn: (box: Box, visit: (place: Point) => void) => void;
}

/** Sorts places into squares of a side (mm) about as long as the boxes that will be asked after. */
export function sortedPlaces(places: Iterable<Point>, side: number): SortedPlaces {
  const rows = new Map<number, Map<number, Point[]>>();
  for (const place of places) {
    const [row, column] = [Math.floor(place.y / side), Math.floor(place.x / side)];
    const columns = rows.get(row) ?? new Map<number, Point[]>();
    if (columns.size === 0) rows.set(row, columns);
    const there = columns.get(column);
    if (there) there.push(place);
    else columns.set(column, [place]);
  }
  return {
    eachIn({ minX, minY, maxX, maxY }, visit) {
      for (let row = Math.floor(minY / side); row <= Math.floor(maxY / side); row++) {
        const columns = rows.get(row);
        if (!columns) continue;
        for (let column = Math.floor(minX / side); column <= Math.floor(maxX / side); column++) {
          for (const one of columns.get(column) ?? []) {
            if (one.x >= minX && one.x <= maxX && one.y >= minY && one.y <= maxY) visit(one);
          }
        }
      }
    },
  };
}
