/**
 * A place for one piece bettered: overlaps count by straight lines, so where they count least two of these lines cross. The
 * piece goes from crossing to crossing, by what is known of its neighbours' sides, and learns more of them on the way: the
 * cutting planes of convex programming (Kelley 1960), kept within a reach that shrinks where they promised too much.
 */
import { type LayField, noteOthers } from './lay-field';
import { placeAcross, placeAlong } from './lay-room';
import { type LayShape, noFitOf } from './lay-table';
import { depthIn } from './no-fit-cells';
import { noteAims } from './slide-aims';
import { noteWay, reckonedDepth } from './ways-known';

/** A place for a piece in one of its shapes, and how much its overlaps count there. */
export interface Spot {
  shape: number;
  x: number;
  y: number;
  depth: number;
}

/** So often a place is looked at, and it must promise to be better by this share. */
const LOOKS = 10;
const BETTER = 1e-3;

/** How far a piece goes at once, how far round it neighbours are known, as shares of its smaller side; and what a failure makes of the first. */
const REACH = 0.5;
const KNOWN = 0.75;
const AFTER_FAILURE = 0.5;

/** Betters a place, changing it. */
export function slide(field: LayField, i: number, spot: Spot): void {
  const { table, ways, near } = field;
  const shape = table.shapes[spot.shape] as LayShape;
  const size = Math.min(shape.wide, shape.high);
  const known = KNOWN * size;
  let reach = Math.max(REACH * size, table.repeatX, table.repeatY);
  let [seenX, seenY] = [spot.x, spot.y];
  noteOthers(field, i, spot.shape, seenX, seenY, known, near);
  ways.count = 0;
  spot.depth = depthLearning(field, i, spot.shape, spot.x, spot.y);
  const next: Spot = { ...spot };
  for (let look = 1; look < LOOKS && spot.depth > 0; look++) {
    next.depth = spot.depth * (1 - BETTER);
    if (!aim(field, shape, spot, reach, next)) return;
    if (Math.max(Math.abs(next.x - seenX), Math.abs(next.y - seenY)) > known) {
      [seenX, seenY] = [next.x, next.y];
      noteOthers(field, i, spot.shape, seenX, seenY, known, near);
    }
    const depth = depthLearning(field, i, spot.shape, next.x, next.y);
    if (depth < spot.depth) {
      spot.x = next.x;
      spot.y = next.y;
      spot.depth = depth;
    } else reach *= AFTER_FAILURE;
  }
}

/** Puts into `next` the place within reach where overlaps count least by what is known; whether it counts less than `next` did. */
function aim(field: LayField, shape: LayShape, from: Spot, reach: number, next: Spot): boolean {
  const { ways } = field;
  const { aims } = ways;
  noteAims(field, shape, from.x, from.y, reach);
  let isLess = false;
  for (let k = 0; k < aims.count; k++) {
    const x = placeAlong(field, shape, aims.x[k] as number);
    if (Math.abs(x - from.x) > reach) continue;
    const y = placeAcross(field, shape, aims.y[k] as number);
    if (Math.abs(y - from.y) > reach) continue;
    const depth = reckonedDepth(ways, x, y, next.depth);
    if (depth >= next.depth) continue;
    next.x = x;
    next.y = y;
    next.depth = depth;
    isLess = true;
  }
  return isLess;
}

/** The weighted depth of piece `i` in its neighbours, were it in `shape` at (x, y); the ways clear of them are noted. */
function depthLearning(field: LayField, i: number, shape: number, x: number, y: number): number {
  const { table, near, ways, count } = field;
  let sum = 0;
  for (let k = 0; k < near.count; k++) {
    const j = near.list[k] as number;
    const dx = x - (field.x[j] as number);
    const dy = y - (field.y[j] as number);
    const depth = depthIn(noFitOf(table, field.shape[j] as number, shape), dx, dy, ways.found);
    if (depth <= field.touch) continue;
    const weight = field.weight[i * count + j] as number;
    sum += weight * depth;
    noteWay(ways, j, weight, ways.found[0] as number, ways.found[1] as number, x, y, depth);
  }
  return sum;
}
