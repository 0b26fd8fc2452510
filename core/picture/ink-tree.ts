import type { Point } from '../geometry/point';
import { type InkCosts, OFF_INK } from './ink-costs';

/** The cheapest way from one pixel to every pixel of a window: at each the step that leads to it. */
export interface InkTree {
  /** The window, in pixels of the picture. */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** The pixel it grew from, counted within the window. */
  readonly seed: number;
  readonly step: Uint8Array;
}

/** Steps right, down-right and so on round; the odd ones are slanting. */
const ACROSS = [1, 1, 0, -1, -1, -1, 0, 1] as const;
const DOWN = [0, 1, 1, 1, 0, -1, -1, -1] as const;
const NONE = 255;

/** A step straight on and a slanting one, as whole numbers in about the proportion of 1 to the root of 2. */
const STRAIGHT = 5;
const SLANTING = 7;

/** One more than any step costs, so that a ring of so many buckets holds every pixel that is waiting. */
const BUCKETS = 2 * OFF_INK * SLANTING + 1;

/** How many pixels are settled between two words of progress. */
const TELL_EVERY = 1 << 17;

interface TreeOptions {
  /** How far from the seed the window reaches each way, in pixels. */
  readonly reach: number;
  readonly onProgress?: (share: number) => void;
}

/**
 * Dijkstra's cheapest ways from `seed` to every pixel within reach, settled from a ring of buckets by whole-number cost
 * (R. B. Dial, Algorithm 360, CACM 12, 1969). A seed outside the picture is brought to its nearest pixel.
 */
export function inkTree(costs: InkCosts, seed: Point, { reach, onProgress }: TreeOptions): InkTree {
  const sx = clamp(Math.floor(seed.x), costs.width);
  const sy = clamp(Math.floor(seed.y), costs.height);
  const [left, top] = [Math.max(0, sx - reach), Math.max(0, sy - reach)];
  const width = Math.min(costs.width, sx + reach + 1) - left;
  const height = Math.min(costs.height, sy + reach + 1) - top;
  const cost = windowOf(costs, left, top, width, height);
  const step = new Uint8Array(width * height).fill(NONE);
  const spent = new Uint32Array(width * height).fill(0xffffffff);
  const start = (sy - top) * width + (sx - left);
  spent[start] = 0;
  const buckets = Array.from({ length: BUCKETS }, () => [] as number[]);
  (buckets[0] as number[]).push(start);
  let waiting = 1;
  let settled = 0;
  for (let now = 0; waiting > 0; now++) {
    const bucket = buckets[now % BUCKETS] as number[];
    // What is pushed meanwhile goes to other buckets: no step is free, and none costs a whole round.
    for (let at = bucket.pop(); at !== undefined; at = bucket.pop()) {
      waiting -= 1;
      if ((spent[at] as number) !== now) continue;
      settled += 1;
      if (settled % TELL_EVERY === 0) onProgress?.(settled / spent.length);
      const y = (at / width) | 0;
      const x = at - y * width;
      const here = cost[at] as number;
      for (let way = 0; way < 8; way++) {
        const nx = x + (ACROSS[way] as number);
        const ny = y + (DOWN[way] as number);
        if (nx < 0 || ny < 0 || nx >= width || ny >= height) continue;
        const next = ny * width + nx;
        const total = now + (here + (cost[next] as number)) * (way & 1 ? SLANTING : STRAIGHT);
        if (total >= (spent[next] as number)) continue;
        spent[next] = total;
        step[next] = way;
        (buckets[total % BUCKETS] as number[]).push(next);
        waiting += 1;
      }
    }
  }
  return { left, top, width, height, seed: start, step };
}

function windowOf(costs: InkCosts, left: number, top: number, width: number, height: number): Uint8Array {
  if (width === costs.width) return costs.cost.subarray(top * width, (top + height) * width);
  const cost = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    const from = (y + top) * costs.width + left;
    cost.set(costs.cost.subarray(from, from + width), y * width);
  }
  return cost;
}

function clamp(wanted: number, size: number): number {
  return Math.min(size - 1, Math.max(0, wanted));
}

/** The way from the seed to the pixel at `point`, as the centres of its pixels; `undefined` outside the window. */
export function wayTo(tree: InkTree, point: Point): Point[] | undefined {
  const { left, top, width, height, step } = tree;
  let x = Math.floor(point.x) - left;
  let y = Math.floor(point.y) - top;
  if (!(x >= 0 && y >= 0 && x < width && y < height)) return undefined;
  const way: Point[] = [{ x: left + x + 0.5, y: top + y + 0.5 }];
  for (let at = y * width + x; at !== tree.seed; at = y * width + x) {
    const by = step[at] as number;
    x -= ACROSS[by] as number;
    y -= DOWN[by] as number;
    way.push({ x: left + x + 0.5, y: top + y + 0.5 });
  }
  return way.reverse();
}
