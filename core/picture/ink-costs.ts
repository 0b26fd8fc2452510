import { distance, type Point } from '../geometry/point';
import { type Grey, halved } from './grey';
import { gapsBridged } from './ink-gaps';

/** What it costs to go over each pixel of a picture: {@link ON_INK} along the middle of a line, {@link OFF_INK} on bare paper. */
export interface InkCosts {
  readonly width: number;
  readonly height: number;
  readonly cost: Uint8Array;
}

export const ON_INK = 2;

/** Bare paper costs twelve times as much as a line: enough for a way to keep to a winding line. */
export const OFF_INK = 24;

/** What costs no more than this is surely ink. */
const SURELY_INK = 6;

/** The gaps of a dashed line: little enough for a way to keep to it for the length of a page beside a solid line. */
const OVER_A_GAP = 5;

/**
 * How much a ridge counts at each halving of the picture. A broad line and a row of dots are ridges only when seen small;
 * a fine line must not lose to the smear that is left of it there.
 */
const WEIGHTS = [1, 0.85, 0.65];

/** A ridge weaker than this is the grain of the paper or the noise of the camera (grey to the pixel squared). */
const NOISE = 0.045;

/** A line is as dark as a line gets when it comes to this share of the darkest close by. */
const FULL = 0.6;

/** The side of the squares in which the darkest line close by is looked for, in pixels. */
const BLOCK = 16;

/**
 * What it costs to go along the ink. A line is where the grey bends most across it: the larger eigenvalue of its second
 * derivatives, at three sizes, weighed against the strongest in the neighbourhood, so that a pale line in a shadow
 * counts as much as a black one in the light.
 *
 * See: T. Lindeberg, Edge Detection and Ridge Detection with Automatic Scale Selection, IJCV 30 (1998);
 * E. N. Mortensen & W. A. Barrett, Intelligent Scissors for Image Composition, SIGGRAPH 1995.
 */
export function inkCosts(grey: Grey, onProgress?: (share: number) => void): InkCosts {
  const { width, height } = grey;
  const strength = ridges(grey);
  onProgress?.(0.3);
  let small = grey;
  for (let size = 1; size < WEIGHTS.length; size++) {
    small = halved(small);
    const weight = WEIGHTS[size] as number;
    takeStronger(strength, width, height, { ...small, data: ridges(small) }, 2 ** size, weight);
    onProgress?.(0.3 + 0.15 * size);
  }
  const around = strongestAround(strength, width, height);
  const cost = new Uint8Array(width * height);
  const lookUp = costTable();
  for (let y = 0; y < height; y++) {
    const sy = place((y + 0.5) / BLOCK - 0.5, around.height);
    for (let x = 0; x < width; x++) {
      const at = y * width + x;
      const here = strength[at] as number;
      if (here < NOISE * 0.3) {
        cost[at] = OFF_INK;
        continue;
      }
      const share = Math.min(1, here / (FULL * mixed(around, place((x + 0.5) / BLOCK - 0.5, around.width), sy)));
      cost[at] = lookUp[(share * 255) | 0] as number;
    }
  }
  onProgress?.(0.9);
  const bridged = gapsBridged(cost, { width, height, ink: SURELY_INK, over: OVER_A_GAP });
  onProgress?.(1);
  return { width, height, cost: bridged };
}

/** How far each side of a run its ink is taken for paper, and how far from the spared places it is left, in pixels. */
const BESIDE = 4;
const SPARED = 9;

/**
 * The costs with the ink along a run of places taken for paper, but near the places that are spared: a line that has been
 * followed once is not followed back. The places of the run must be about a pixel apart.
 */
export function costsBeside(costs: InkCosts, run: readonly Point[], spared: readonly Point[]): InkCosts {
  const { width, height } = costs;
  const cost = costs.cost.slice();
  for (const place of run) {
    if (spared.some((other) => distance(other, place) < SPARED)) continue;
    for (let y = Math.max(0, Math.floor(place.y - BESIDE)); y <= Math.min(height - 1, place.y + BESIDE); y++) {
      const [first, last] = [Math.max(0, Math.floor(place.x - BESIDE)), Math.min(width - 1, place.x + BESIDE)];
      for (let x = first; x <= last; x++) cost[y * width + x] = OFF_INK;
    }
  }
  return { width, height, cost };
}

function costTable(): Uint8Array {
  return Uint8Array.from({ length: 256 }, (_, i) => Math.round(ON_INK + (OFF_INK - ON_INK) * (1 - i / 255) ** 2));
}

/** How strongly each pixel lies on a dark ridge, after a light blur (sigma 1): the larger eigenvalue of the Hessian. */
function ridges(grey: Grey): Float32Array {
  const { width, height } = grey;
  const soft = blurred(blurred(grey.data, width, height), width, height);
  const strength = new Float32Array(width * height);
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const at = y * width + x;
      const here = 2 * (soft[at] as number);
      const xx = (soft[at - 1] as number) + (soft[at + 1] as number) - here;
      const yy = (soft[at - width] as number) + (soft[at + width] as number) - here;
      const half = (xx - yy) / 2;
      const mean = (xx + yy) / 2;
      if (mean + Math.abs(half) <= 0 && mean <= -NOISE) continue;
      const xy =
        ((soft[at - width - 1] as number) +
          (soft[at + width + 1] as number) -
          (soft[at - width + 1] as number) -
          (soft[at + width - 1] as number)) /
        4;
      const most = mean + Math.sqrt(half * half + xy * xy);
      if (most > 0) strength[at] = most;
    }
  }
  return strength;
}

/** The binomial blur (1 2 1) both ways: a variance of half a pixel. The outermost pixels stay as they are. */
function blurred(from: Float32Array, width: number, height: number): Float32Array {
  const across = from.slice();
  for (let y = 0; y < height; y++) {
    for (let at = y * width + 1, end = (y + 1) * width - 1; at < end; at++) {
      across[at] = ((from[at - 1] as number) + 2 * (from[at] as number) + (from[at + 1] as number)) / 4;
    }
  }
  const both = across.slice();
  for (let at = width, end = width * (height - 1); at < end; at++) {
    both[at] = ((across[at - width] as number) + 2 * (across[at] as number) + (across[at + width] as number)) / 4;
  }
  return both;
}

/** Raises each strength to what a smaller copy of the picture makes of that place, where it is more. */
function takeStronger(
  strength: Float32Array,
  width: number,
  height: number,
  small: Grey,
  times: number,
  weight: number,
): void {
  for (let y = 0; y < height; y++) {
    const sy = place((y + 0.5) / times - 0.5, small.height);
    for (let x = 0; x < width; x++) {
      const other = weight * mixed(small, place((x + 0.5) / times - 0.5, small.width), sy);
      const at = y * width + x;
      if (other > (strength[at] as number)) strength[at] = other;
    }
  }
}

/** The strongest ridge in each square and the eight round it, never below what noise makes. */
function strongestAround(strength: Float32Array, width: number, height: number): Grey {
  const [across, down] = [Math.ceil(width / BLOCK), Math.ceil(height / BLOCK)];
  const most = new Float32Array(across * down).fill(NOISE);
  for (let y = 0; y < height; y++) {
    const row = Math.floor(y / BLOCK) * across;
    for (let x = 0; x < width; x++) {
      const block = row + ((x / BLOCK) | 0);
      const here = strength[y * width + x] as number;
      if (here > (most[block] as number)) most[block] = here;
    }
  }
  const data = most.slice();
  for (let y = 0; y < down; y++) {
    for (let x = 0; x < across; x++) {
      for (let v = Math.max(0, y - 1); v <= Math.min(down - 1, y + 1); v++) {
        for (let u = Math.max(0, x - 1); u <= Math.min(across - 1, x + 1); u++) {
          data[y * across + x] = Math.max(data[y * across + x] as number, most[v * across + u] as number);
        }
      }
    }
  }
  return { width: across, height: down, data };
}

function place(wanted: number, size: number): number {
  return wanted < 0 ? 0 : Math.min(wanted, size - 1);
}

function mixed({ width, height, data }: Grey, x: number, y: number): number {
  const [x0, y0] = [x | 0, y | 0];
  const right = x0 < width - 1 ? 1 : 0;
  const below = y0 < height - 1 ? width : 0;
  const [fx, fy] = [x - x0, y - y0];
  const at = y0 * width + x0;
  const top = (data[at] as number) * (1 - fx) + (data[at + right] as number) * fx;
  const bottom = (data[at + below] as number) * (1 - fx) + (data[at + below + right] as number) * fx;
  return top * (1 - fy) + bottom * fy;
}
