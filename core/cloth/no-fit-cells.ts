/**
 * A no-fit area in plain numbers, and how deep a move lies in it. Of an area's many sides only a few can be nearest to a
 * given move: the box round it is parted into cells, and what matters in a cell is worked out when it is first asked for.
 * The answer is the same to the last digit as with all sides.
 */
import { boxOfPoints } from '../geometry/bounds';
import type { Point } from '../geometry/point';
import type { Ring } from '../geometry/polygon';

/** A no-fit area: its box, and six numbers a side: start, run, one over the length squared (of a convex area: over the
 * length), and the y of its end, for start and run would not give it to the last digit. */
export interface PackedNoFit {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
  readonly sides: Float64Array;
  readonly count: number;
  /** 1 where the area is convex: then its sides' lines alone tell a depth. */
  readonly convex: 0 | 1;
  /** Cells to a unit along and across. */
  readonly perX: number;
  readonly perY: number;
  /** For each cell where its entry in `lists` begins, or {@link UNKNOWN} or {@link OUTSIDE}. */
  readonly cells: Int32Array;
  /**
   * Of each cell: how many sides may be nearest, how many a ray to the right may cross, and whether it crosses an odd
   * number of others; then those sides, by where they begin in `sides`.
   */
  lists: Int32Array;
  /** How much of `lists` is in use. */
  used: number;
}

/** Numbers a side takes in {@link PackedNoFit}. */
export const SIDE = 6;

/** Cells in a row and in a column. */
const CELLS = 10;

/** Numbers that the lists of an area have room for at first. */
const FIRST_ROOM = 256;

const UNKNOWN = -1;
const OUTSIDE = -2;

/** A cell reaches beyond itself by this share: what rounding may put into its neighbour. */
const ROUNDING = 1e-9;

/** Nearer to a side than a ten-millionth of its length, the way to it is lost in rounding. */
const NEAR_SQ = 1e-14;

/** Packs the rings of a no-fit area. */
export function packedNoFit(rings: readonly Ring[], convex: 0 | 1): PackedNoFit {
  const sides: number[] = [];
  for (const ring of rings) {
    for (let i = 0; i < ring.length; i++) {
      const a = ring[i] as Point;
      const b = ring[(i + 1) % ring.length] as Point;
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const lengthSq = dx * dx + dy * dy;
      if (lengthSq > 0) sides.push(a.x, a.y, dx, dy, convex ? 1 / Math.sqrt(lengthSq) : 1 / lengthSq, b.y);
    }
  }
  const box = boxOfPoints(rings.flat()) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  const { minX, minY, maxX, maxY } = box;
  return {
    ...{ minX, minY, maxX, maxY, sides: Float64Array.from(sides), count: sides.length / SIDE, convex },
    // A little less, so that no move inside the box is beyond the last cell.
    perX: (CELLS * (1 - ROUNDING)) / (maxX - minX),
    perY: (CELLS * (1 - ROUNDING)) / (maxY - minY),
    cells: new Int32Array(CELLS * CELLS).fill(UNKNOWN),
    lists: new Int32Array(FIRST_ROOM),
    used: 0,
  };
}

/**
 * How deep a move lies in a no-fit area: the shortest way out of it; 0 outside. Where it is inside, the direction of that
 * way, of length 1, is put into `way`.
 */
export function depthIn(area: PackedNoFit, dx: number, dy: number, way?: Float64Array): number {
  if (dx <= area.minX || dx >= area.maxX || dy <= area.minY || dy >= area.maxY) return 0;
  const column = ((dx - area.minX) * area.perX) | 0;
  const row = ((dy - area.minY) * area.perY) | 0;
  let from = area.cells[row * CELLS + column] as number;
  if (from === UNKNOWN) from = learn(area, column, row);
  if (from === OUTSIDE) return 0;
  const { sides, lists } = area;
  const nearest = from + 3 + (lists[from] as number);
  let least = Number.POSITIVE_INFINITY;
  let side = 0;
  if (area.convex) {
    for (let n = from + 3; n < nearest; n++) {
      const k = lists[n] as number;
      const off = offLine(sides, k, dx, dy);
      if (off <= 0) return 0;
      if (off >= least) continue;
      least = off;
      side = k;
    }
    if (way) noteOutward(sides, side, way);
    return least;
  }
  let inside = lists[from + 2] === 1;
  const end = nearest + (lists[from + 1] as number);
  for (let n = nearest; n < end; n++) if (isCrossed(sides, lists[n] as number, dx, dy)) inside = !inside;
  if (!inside) return 0;
  for (let n = from + 3; n < nearest; n++) {
    const k = lists[n] as number;
    const offSq = offSideSq(sides, k, dx, dy);
    if (offSq >= least) continue;
    least = offSq;
    side = k;
  }
  const depth = Math.sqrt(least);
  if (way) noteWayTo(sides, side, dx, dy, depth, way);
  return depth;
}

/** Puts into `way` the direction square to a side, outwards: what is inside lies to the right of every side. */
function noteOutward(sides: Float64Array, k: number, way: Float64Array): void {
  const runX = sides[k + 2] as number;
  const runY = sides[k + 3] as number;
  const length = Math.hypot(runX, runY);
  way[0] = runY / length;
  way[1] = -runX / length;
}

/** Puts into `way` the direction from a place to the nearest of a side; square to the side where that is too near to tell. */
function noteWayTo(sides: Float64Array, k: number, dx: number, dy: number, depth: number, way: Float64Array): void {
  const fromX = dx - (sides[k] as number);
  const fromY = dy - (sides[k + 1] as number);
  const runX = sides[k + 2] as number;
  const runY = sides[k + 3] as number;
  const t = Math.min(Math.max((fromX * runX + fromY * runY) * (sides[k + 4] as number), 0), 1);
  if (depth * depth * (sides[k + 4] as number) < NEAR_SQ) noteOutward(sides, k, way);
  else {
    way[0] = (t * runX - fromX) / depth;
    way[1] = (t * runY - fromY) / depth;
  }
}

/** Whether a ray to the right crosses a side. */
function isCrossed(sides: Float64Array, k: number, dx: number, dy: number): boolean {
  const startY = sides[k + 1] as number;
  // Neighbours must judge the corner they share by the very same number, or a move level with it slips through.
  if (startY <= dy === (sides[k + 5] as number) <= dy) return false;
  return (sides[k] as number) - dx + ((dy - startY) / (sides[k + 3] as number)) * (sides[k + 2] as number) > 0;
}

/** How far a place is from a side, squared. */
function offSideSq(sides: Float64Array, k: number, dx: number, dy: number): number {
  const fromX = dx - (sides[k] as number);
  const fromY = dy - (sides[k + 1] as number);
  const runX = sides[k + 2] as number;
  const runY = sides[k + 3] as number;
  let t = (fromX * runX + fromY * runY) * (sides[k + 4] as number);
  if (t < 0) t = 0;
  else if (t > 1) t = 1;
  const offX = fromX - t * runX;
  const offY = fromY - t * runY;
  return offX * offX + offY * offY;
}

/** Works out what matters in a cell, and where its entry begins. */
function learn(area: PackedNoFit, column: number, row: number): number {
  const { sides, convex } = area;
  const end = area.count * SIDE;
  const slack = ROUNDING * (area.maxX - area.minX + area.maxY - area.minY);
  const halfX = 0.5 / area.perX + slack;
  const halfY = 0.5 / area.perY + slack;
  const x = area.minX + (column + 0.5) / area.perX;
  const y = area.minY + (row + 0.5) / area.perY;
  const reach = Math.hypot(halfX, halfY);
  const offs: number[] = [];
  let least = Number.POSITIVE_INFINITY;
  let inside = false;
  for (let k = 0; k < end; k += SIDE) {
    const off = convex ? offLine(sides, k, x, y) : Math.sqrt(offSideSq(sides, k, x, y));
    offs.push(off);
    if (off < least) least = off;
    if (!convex && isCrossed(sides, k, x, y)) inside = !inside;
  }
  const cell = row * CELLS + column;
  if (convex ? least < -reach : !inside && least > reach) {
    area.cells[cell] = OUTSIDE;
    return OUTSIDE;
  }
  const near: number[] = [];
  const crossed: number[] = [];
  let odd = !convex && inside && least > reach;
  const isBorder = !convex && least <= reach;
  for (let k = 0; k < end; k += SIDE) {
    if ((offs[k / SIDE] as number) <= least + 2 * reach) near.push(k);
    if (!isBorder) continue;
    const how = crossing(sides, k, { left: x - halfX, right: x + halfX, top: y - halfY, bottom: y + halfY });
    if (how === 'always') odd = !odd;
    else if (how === 'depends') crossed.push(k);
  }
  const from = area.used;
  const entry = [near.length, crossed.length, odd ? 1 : 0, ...near, ...crossed];
  area.used += entry.length;
  if (area.used > area.lists.length) {
    const larger = new Int32Array(2 * area.used);
    larger.set(area.lists);
    area.lists = larger;
  }
  area.lists.set(entry, from);
  area.cells[cell] = from;
  return from;
}

/** How far a place lies inside a convex area's side, were it a line. */
function offLine(sides: Float64Array, k: number, x: number, y: number): number {
  const fromX = x - (sides[k] as number);
  const fromY = y - (sides[k + 1] as number);
  return ((sides[k + 2] as number) * fromY - (sides[k + 3] as number) * fromX) * (sides[k + 4] as number);
}

/** Whether rays to the right from all over a cell cross a side. */
function crossing(
  sides: Float64Array,
  k: number,
  cell: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number },
): 'always' | 'never' | 'depends' {
  const [startX, startY, runX, runY] = [0, 1, 2, 3].map((n) => sides[k + n]) as [number, number, number, number];
  const endY = sides[k + 5] as number;
  const endX = startX + runX;
  if (Math.max(startY, endY) < cell.top || Math.min(startY, endY) > cell.bottom) return 'never';
  if (Math.max(startX, endX) < cell.left) return 'never';
  if (Math.min(startY, endY) > cell.top || Math.max(startY, endY) < cell.bottom) return 'depends';
  const atTop = startX + ((cell.top - startY) / runY) * runX;
  const atBottom = startX + ((cell.bottom - startY) / runY) * runX;
  if (Math.min(atTop, atBottom) > cell.right) return 'always';
  return Math.max(atTop, atBottom) < cell.left ? 'never' : 'depends';
}
