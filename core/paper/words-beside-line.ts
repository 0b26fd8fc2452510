import type { Placed } from '../drawing/drawing';
import { readable } from '../drawing/edge-words';
import { pathAtLength, pathLength } from '../geometry/path';
import { angleOf, between, dot, move, type Point, scaleVector, unit, vectorBetween } from '../geometry/point';
import type { Path } from '../geometry/segment';
import type { FreeRoom } from './free-room';

/** Places along a line that are tried lie this far apart (mm), and words off it by one of these, in their sizes. */
const TRY_EVERY = 5;
const OFF = [0.95, 1.7, 2.5] as const;

export interface Beside {
  readonly path: Path;
  /** To which side of the line, seen the way it runs: 1 where y grows on a line that runs to the right. */
  readonly side: 1 | -1;
  /** The share of its length where the words had best stand. */
  readonly best: number;
  readonly size: number;
}

/**
 * Where words of a width run along a line, beside it: as near to the best place as they stand free, on one page.
 * `undefined` where there is no such place.
 */
export function wordsBesideLine(room: FreeRoom, width: number, { path, side, best, size }: Beside): Placed | undefined {
  const length = pathLength(path, 0.1);
  const [from, to] = [width / 2, length - width / 2];
  if (to < from) return undefined;
  const middle = Math.min(to, Math.max(from, best * length));
  const count = Math.ceil((to - from) / TRY_EVERY);
  const places = [middle, ...Array.from({ length: count + 1 }, (_, k) => Math.min(to, from + k * TRY_EVERY))];
  places.sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle));
  for (const off of OFF) {
    for (const along of places) {
      const at = (by: number) => pathAtLength(path, along + by).point;
      const placed = besideChord([at(-width / 2), at(0), at(width / 2)], side, { off: off * size, size });
      if (placed && room.isFree(placed, width)) return placed;
    }
  }
  return undefined;
}

/** Words along a piece of line, told by its ends and its middle, clear of it where it bows towards them. */
function besideChord(
  [start, middle, end]: readonly [Point, Point, Point],
  side: 1 | -1,
  { off, size }: { readonly off: number; readonly size: number },
): Placed | undefined {
  const along = unit(vectorBetween(start, end));
  if (!along) return undefined;
  const into = scaleVector({ dx: -along.dy, dy: along.dx }, side);
  const bows = Math.max(0, dot(vectorBetween(start, middle), into));
  return { at: move(between(start, end, 0.5), into, bows + off), size, angle: readable(angleOf(along)) };
}
