/**
 * Following a printed line from one place to another: the way that costs least, found by Dijkstra's method from the
 * first place outwards (R. Dial's buckets, Algorithm 360, CACM 12, 1969; E. Mortensen & W. Barrett, Intelligent
 * Scissors for Image Composition, SIGGRAPH 1995, on following edges so). What was found is kept, so that each further
 * place costs only what was not yet gone over.
 */
import type { PhotoPoint } from '../geometry/point';
import { type InkCosts, needTile, ON_PAPER, TILE_BITS } from './ink-cost';

/** All ways from one place, as far as they were gone. Grows with use. */
export interface InkTree {
  readonly costs: InkCosts;
  readonly from: PhotoPoint;
  /** The cost of the way to each pixel plus 1; 0 where none is known. */
  readonly dearness: Int32Array;
  /** By which of the eight steps each pixel was reached, plus 1; plus {@link SETTLED} when no cheaper way can come. */
  readonly cameBy: Uint8Array;
  readonly buckets: number[][];
  /** How much the ways now looked at cost. */
  level: number;
  waiting: number;
}

/** A way along the ink: pixel centres from the first place to the last; or not found within the work allowed. */
export type InkWay = { readonly kind: 'way'; readonly run: readonly PhotoPoint[] } | { readonly kind: 'not-yet' };

const SETTLED = 16;

/** The steps to the eight neighbours, and what they count: about 5 to 7 as 1 to the root of 2. */
const ACROSS = [1, 1, 0, -1, -1, -1, 0, 1] as const;
const DOWN = [0, 1, 1, 1, 0, -1, -1, -1] as const;
const LENGTH = [5, 7, 5, 7, 5, 7, 5, 7] as const;

/** More buckets than the dearest step costs, a power of 2. */
const BUCKETS = 512;

/** The tree of ways from a place of the picture the costs belong to; nothing is gone over yet. */
export function inkTree(costs: InkCosts, from: PhotoPoint): InkTree {
  const { width, height } = costs.picture;
  const size = width * height;
  const tree: InkTree = {
    costs,
    from,
    dearness: new Int32Array(size),
    cameBy: new Uint8Array(size),
    buckets: Array.from({ length: BUCKETS }, () => []),
    level: 0,
    waiting: 1,
  };
  const start = pixelAt(costs, from);
  tree.dearness[start] = 1;
  tree.buckets[0]?.push(start);
  return tree;
}

/**
 * The cheapest way from the tree's first place to `to`, looking at no more than `mostPixels` new pixels; `not-yet` when
 * that is not enough: ask again, and it goes on from there. Places outside the picture count as its edge.
 */
export function wayTo(tree: InkTree, to: PhotoPoint, options: { readonly mostPixels: number }): InkWay {
  const goal = pixelAt(tree.costs, to);
  if (!isSettled(tree, goal)) goOn(tree, goal, options.mostPixels);
  if (!isSettled(tree, goal)) return { kind: 'not-yet' };
  const { width } = tree.costs.picture;
  const run: PhotoPoint[] = [];
  for (let at = goal; ; ) {
    const y = Math.floor(at / width);
    run.push({ x: at - y * width + 0.5, y: y + 0.5 });
    const step = ((tree.cameBy[at] as number) & (SETTLED - 1)) - 1;
    if (step < 0) break;
    at -= (DOWN[step] as number) * width + (ACROSS[step] as number);
  }
  return { kind: 'way', run: run.reverse() };
}

function isSettled(tree: InkTree, at: number): boolean {
  return ((tree.cameBy[at] as number) & SETTLED) !== 0;
}

/** Settles pixel after pixel, cheapest first, until `goal` is or `most` are. */
function goOn(tree: InkTree, goal: number, most: number): void {
  const { costs, dearness, cameBy, buckets } = tree;
  const { cost, picture, tilesAcross, done } = costs;
  const { width, height } = picture;
  for (let left = most; left > 0 && tree.waiting > 0; ) {
    const bucket = buckets[tree.level & (BUCKETS - 1)] as number[];
    const at = bucket.pop();
    if (at === undefined) {
      tree.level++;
      continue;
    }
    tree.waiting--;
    if ((cameBy[at] as number) & SETTLED) continue;
    cameBy[at] = (cameBy[at] as number) | SETTLED;
    left--;
    const y = (at / width) | 0;
    const x = at - y * width;
    for (let step = 0; step < 8; step++) {
      const nx = x + (ACROSS[step] as number);
      const ny = y + (DOWN[step] as number);
      if (nx < 0 || ny < 0 || nx >= width || ny >= height) continue;
      const next = ny * width + nx;
      if ((cameBy[next] as number) & SETTLED) continue;
      const tile = (ny >> TILE_BITS) * tilesAcross + (nx >> TILE_BITS);
      if (!done[tile]) needTile(costs, tile);
      const dear = tree.level + (LENGTH[step] as number) * (cost[next] as number);
      const known = dearness[next] as number;
      if (known !== 0 && known <= dear + 1) continue;
      dearness[next] = dear + 1;
      cameBy[next] = step + 1;
      (buckets[dear & (BUCKETS - 1)] as number[]).push(next);
      tree.waiting++;
    }
    if (at === goal) return;
  }
}

/**
 * The pixel of ink nearest to a place, a little further off where the ink is surer; `undefined` where none lies within
 * `withinPx`.
 */
export function inkNear(
  costs: InkCosts,
  { x, y }: PhotoPoint,
  options: { readonly withinPx: number },
): PhotoPoint | undefined {
  const { picture, cost, tilesAcross } = costs;
  const reach = options.withinPx;
  let best: PhotoPoint | undefined;
  let least = ON_PAPER / 2;
  for (let j = Math.max(0, Math.floor(y - reach)); j < Math.min(picture.height, y + reach); j++) {
    for (let i = Math.max(0, Math.floor(x - reach)); i < Math.min(picture.width, x + reach); i++) {
      const off = Math.hypot(i + 0.5 - x, j + 0.5 - y);
      if (off > reach) continue;
      needTile(costs, (j >> TILE_BITS) * tilesAcross + (i >> TILE_BITS));
      const dear = (cost[j * picture.width + i] as number) + (off / reach) * (ON_PAPER / 4);
      if (dear < least) {
        least = dear;
        best = { x: i + 0.5, y: j + 0.5 };
      }
    }
  }
  return best;
}

function pixelAt({ picture }: InkCosts, { x, y }: PhotoPoint): number {
  const i = Math.min(Math.max(Math.floor(x), 0), picture.width - 1);
  const j = Math.min(Math.max(Math.floor(y), 0), picture.height - 1);
  return j * picture.width + i;
}
