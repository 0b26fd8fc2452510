import type { Point, Vector } from '../geometry/point';
import type { Grey } from './grey';

/** The grey at a place between pixel centres; beyond the edge, that of the nearest pixel. */
export function greyAt({ width, height, data }: Grey, { x, y }: Point): number {
  const cx = Math.min(Math.max(x - 0.5, 0), width - 1);
  const cy = Math.min(Math.max(y - 0.5, 0), height - 1);
  const [x0, y0] = [cx | 0, cy | 0];
  const at = y0 * width + x0;
  const right = x0 < width - 1 ? 1 : 0;
  const below = y0 < height - 1 ? width : 0;
  const [fx, fy] = [cx - x0, cy - y0];
  const top = (data[at] as number) * (1 - fx) + (data[at + right] as number) * fx;
  const bottom = (data[at + below] as number) * (1 - fx) + (data[at + below + right] as number) * fx;
  return top * (1 - fy) + bottom * fy;
}

/** A line as it is cut across: where its middle lies off the place looked at, how wide and how dark it is. */
export interface InkAcross {
  /** From the place along the cut, in pixels. */
  readonly off: number;
  /** Where it is at least half as dark as its middle, in pixels; infinite where it runs out of the cut. */
  readonly width: number;
  /** The paper beside it less the line, 0 to 1. */
  readonly depth: number;
}

const STEP = 0.5;

/** Fainter than this is paper. */
const LEAST_DEPTH = 0.06;

/**
 * The line that a cut through `place` meets, going `half` pixels each way in the direction `cut` (of length 1); the one
 * nearest the place of several. `undefined` where there is none.
 */
export function inkAcross(grey: Grey, place: Point, cut: Vector, half: number): InkAcross | undefined {
  const middle = Math.round(half / STEP);
  const count = 2 * middle + 1;
  const seen = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const u = (i - middle) * STEP;
    seen[i] = greyAt(grey, { x: place.x + cut.dx * u, y: place.y + cut.dy * u });
  }
  // What is dark depends on the paper of either side, so that a shadow over the page is no line.
  const before = Math.max(...seen.subarray(0, middle + 1));
  const after = Math.max(...seen.subarray(middle));
  const darkness = (i: number) => before + ((after - before) * i) / (count - 1) - (seen[i] as number);
  let peak = middle;
  let best = 0;
  for (let i = 1; i < count - 1; i++) {
    const here = darkness(i) * (1 - (0.6 * Math.abs(i - middle)) / middle);
    if (here > best) {
      best = here;
      peak = i;
    }
  }
  const depth = darkness(peak);
  if (depth < LEAST_DEPTH) return undefined;
  const limit = depth / 2;
  let first = peak;
  while (first > 0 && darkness(first - 1) > limit) first -= 1;
  let last = peak;
  while (last < count - 1 && darkness(last + 1) > limit) last += 1;
  if (first === 0 || last === count - 1) return { off: (peak - middle) * STEP, width: Number.POSITIVE_INFINITY, depth };
  const from = first - share(darkness(first), darkness(first - 1), limit);
  const to = last + share(darkness(last), darkness(last + 1), limit);
  return { off: ((from + to) / 2 - middle) * STEP, width: (to - from) * STEP, depth };
}

/** How far from the inner towards the outer sample the limit is passed. */
function share(inner: number, outer: number, limit: number): number {
  return inner > outer ? (inner - limit) / (inner - outer) : 0;
}
