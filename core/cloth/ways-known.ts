/**
 * What a search for one piece's place has found out about the ways clear of its neighbours: for each neighbour the lines it
 * would have to reach. From them it is told without looking where the overlaps would count least.
 */

/** Lines known for a piece. Of one neighbour they stand together; mutable and in plain numbers, for it is filled a hundred thousand times a second. */
export interface WaysKnown {
  count: number;
  /** The neighbour, and what an overlap with it counts. */
  readonly other: Int32Array;
  readonly weight: Float64Array;
  /** The way clear of it, of length 1, and how far along that way from the origin it is clear. */
  readonly wayX: Float64Array;
  readonly wayY: Float64Array;
  readonly end: Float64Array;
  /** Places to aim at, by number. */
  readonly aims: { count: number; readonly x: Float64Array; readonly y: Float64Array };
  /** Room for a way just found. */
  readonly found: Float64Array;
}

/** So many lines are known at most; then the first is forgotten. */
const MOST = 12;

/** Room for every two of them, each by itself with up to three lines along and three across to keep to, and one more. */
const AIMS = (MOST * (MOST - 1)) / 2 + 7 * MOST + 1;

/** Ways and depths less apart than this are the same, as a share of what they measure. */
const SAME = 1e-9;

/** No ways known. */
export function noWays(): WaysKnown {
  const numbers = () => new Float64Array(MOST + 1);
  return {
    count: 0,
    other: new Int32Array(MOST + 1),
    weight: numbers(),
    wayX: numbers(),
    wayY: numbers(),
    end: numbers(),
    found: new Float64Array(2),
    aims: { count: 0, x: new Float64Array(AIMS), y: new Float64Array(AIMS) },
  };
}

/** How far a place lies from line `k`: more than 0 before it. */
export function offWay({ wayX, wayY, end }: WaysKnown, k: number, x: number, y: number): number {
  return (end[k] as number) - (wayX[k] as number) * x - (wayY[k] as number) * y;
}

/** Notes that at (x, y) it is `depth` along a way to be clear of a neighbour; lines of it that promised less are forgotten. */
export function noteWay(
  ways: WaysKnown,
  other: number,
  weight: number,
  wayX: number,
  wayY: number,
  x: number,
  y: number,
  depth: number,
): void {
  let at = ways.count;
  for (let k = ways.count - 1; k >= 0; k--) {
    if (ways.other[k] !== other) continue;
    at = k;
    const off = offWay(ways, k, x, y);
    if (off < depth * (1 - SAME)) moveLines(ways, k, -1);
    else if (
      off < depth * (1 + SAME) &&
      Math.abs((ways.wayX[k] as number) * wayY - (ways.wayY[k] as number) * wayX) < SAME
    )
      return;
  }
  if (ways.count === MOST) {
    moveLines(ways, 0, -1);
    at = Math.max(0, at - 1);
  }
  moveLines(ways, at, 1);
  ways.other[at] = other;
  ways.weight[at] = weight;
  ways.wayX[at] = wayX;
  ways.wayY[at] = wayY;
  ways.end[at] = wayX * x + wayY * y + depth;
}

/** Closes the gap where line `at` was, or makes room for one there. */
function moveLines(ways: WaysKnown, at: number, by: 1 | -1): void {
  if (by === 1) for (let k = ways.count; k > at; k--) copyLine(ways, k - 1, k);
  else for (let k = at + 1; k < ways.count; k++) copyLine(ways, k, k - 1);
  ways.count += by;
}

function copyLine({ other, weight, wayX, wayY, end }: WaysKnown, from: number, to: number): void {
  other[to] = other[from] as number;
  weight[to] = weight[from] as number;
  wayX[to] = wayX[from] as number;
  wayY[to] = wayY[from] as number;
  end[to] = end[from] as number;
}

/** How much overlaps would count at (x, y) by the lines known; `enough` or more once that is reached. */
export function reckonedDepth(ways: WaysKnown, x: number, y: number, enough: number): number {
  const { other, weight, count } = ways;
  let sum = 0;
  for (let k = 0; k < count && sum < enough; ) {
    const one = other[k] as number;
    const counts = weight[k] as number;
    let least = offWay(ways, k, x, y);
    for (k++; k < count && other[k] === one; k++) least = Math.min(least, offWay(ways, k, x, y));
    if (least > 0) sum += counts * least;
  }
  return sum;
}
