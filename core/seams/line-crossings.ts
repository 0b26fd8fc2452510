/**
 * A quick look for crossings among runs of straight lines, such as flattened stitch and cut lines.
 *
 * All lines are swept from left to right, so that only those side by side are compared. Lines that share an end do not
 * count, nor does a line that ends on another: an end within `touch` of the other line is on it.
 */
import type { Point } from '../geometry/point';

/** One run of straight lines, and what it belongs to. */
export interface Run {
  readonly points: readonly Point[];
  readonly owner: number;
}

/** A place where two runs (or one run itself) cross. */
export interface LineCrossing {
  readonly one: number;
  readonly other: number;
  readonly at: Point;
}

/** What is looked for. */
export interface CrossingSearch {
  /** Whether a pair of owners matters. */
  readonly counts: (one: number, other: number) => boolean;
  /** How far beyond a line an end must come to cross it, in mm. */
  readonly touch: number;
  /** Enough, when so many are found. */
  readonly most: number;
}

/** All lines in flat lists, for this is on the way of every drag: line i runs from (x0, y0) to (x1, y1). */
interface Lines {
  readonly x0: Float64Array;
  readonly y0: Float64Array;
  readonly x1: Float64Array;
  readonly y1: Float64Array;
  readonly owner: Int32Array;
  readonly count: number;
}

/** The crossings of runs with one another and with themselves, from left to right. */
export function lineCrossings(runs: readonly Run[], { counts, touch, most }: CrossingSearch): LineCrossing[] {
  const lines = linesOf(runs);
  const { x0, y0, x1, y1, owner, count } = lines;
  const order = new Uint32Array(count);
  const left = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    order[i] = i;
    left[i] = Math.min(x0[i] as number, x1[i] as number);
  }
  order.sort((i, j) => (left[i] as number) - (left[j] as number));
  const found: LineCrossing[] = [];
  const active: number[] = [];
  for (const i of order) {
    const from = left[i] as number;
    const low = Math.min(y0[i] as number, y1[i] as number);
    const high = Math.max(y0[i] as number, y1[i] as number);
    let kept = 0;
    for (const j of active) {
      if (Math.max(x0[j] as number, x1[j] as number) < from) continue;
      active[kept++] = j;
      if (Math.max(y0[j] as number, y1[j] as number) < low || Math.min(y0[j] as number, y1[j] as number) > high)
        continue;
      const one = owner[j] as number;
      const other = owner[i] as number;
      const at = counts(one, other) ? crossingOf(lines, j, i, touch) : undefined;
      if (at) found.push({ one, other, at });
      if (found.length >= most) return found;
    }
    active.length = kept;
    active.push(i);
  }
  return found;
}

function linesOf(runs: readonly Run[]): Lines {
  const room = runs.reduce((sum, { points }) => sum + Math.max(0, points.length - 1), 0);
  const [x0, y0, x1, y1] = [0, 0, 0, 0].map(() => new Float64Array(room)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const owners = new Int32Array(room);
  let count = 0;
  for (const { points, owner } of runs) {
    for (let k = 1; k < points.length; k++) {
      const from = points[k - 1] as Point;
      const to = points[k] as Point;
      if (from.x === to.x && from.y === to.y) continue;
      x0[count] = from.x;
      y0[count] = from.y;
      x1[count] = to.x;
      y1[count] = to.y;
      owners[count++] = owner;
    }
  }
  return { x0, y0, x1, y1, owner: owners, count };
}

function crossingOf({ x0, y0, x1, y1 }: Lines, i: number, j: number, touch: number): Point | undefined {
  const ax = x0[i] as number;
  const ay = y0[i] as number;
  const bx = x1[i] as number;
  const by = y1[i] as number;
  const cx = x0[j] as number;
  const cy = y0[j] as number;
  const dx = x1[j] as number;
  const dy = y1[j] as number;
  if ((ax === cx && ay === cy) || (ax === dx && ay === dy) || (bx === cx && by === cy) || (bx === dx && by === dy)) {
    return undefined;
  }
  const c = side(ax, ay, bx, by, cx, cy);
  const d = side(ax, ay, bx, by, dx, dy);
  if (!isAcross(c, d, touch)) return undefined;
  if (!isAcross(side(cx, cy, dx, dy, ax, ay), side(cx, cy, dx, dy, bx, by), touch)) return undefined;
  const share = c / (c - d);
  return { x: cx + (dx - cx) * share, y: cy + (dy - cy) * share };
}

function isAcross(one: number, other: number, touch: number): boolean {
  return (one > touch && other < -touch) || (one < -touch && other > touch);
}

/** How far a point lies to one side of the line from a to b. */
function side(ax: number, ay: number, bx: number, by: number, x: number, y: number): number {
  const dx = bx - ax;
  const dy = by - ay;
  return ((x - ax) * dy - (y - ay) * dx) / Math.sqrt(dx * dx + dy * dy);
}
