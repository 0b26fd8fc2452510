/** Finding an edge of paper or a printed line between two places, pixel profile by pixel profile. */
import { legendre, type OnSide, type Side } from './curl-side';
import type { Grey } from './grey';

/** What is looked for: where light paper ends, where dark paper ends, or the middle of a printed line. */
export type SideMark = 'light-ends' | 'dark-ends' | 'line';

export interface SideSearch {
  readonly mark: SideMark;
  /** How far to either side of the side as it is taken so far the mark may lie, in pixels. */
  readonly reach: number;
  /** How many pixels the light is averaged over to each side of an edge; a printed line may be about as wide. */
  readonly soft: number;
  /** How many places are looked at. */
  readonly stations: number;
}

/** A place along a side where the mark was looked for, and how much lighter or darker it is there (0 to 1). */
export interface FoundOnSide extends OnSide {
  readonly contrast: number;
}

/** Samples a pixel, along a profile. */
const FINE = 2;

/** What a slip of one pixel from one place to the next costs, as contrast. */
const SLIP = 0.02;

/** How far, in samples, the way may slip from one place to the next. */
const MOST_SLIP = 4;

/** The light at a place, between pixel centres by two straight mixes; beyond the picture as at its edge. */
export function lightAt({ width, height, data }: Grey, x: number, y: number): number {
  const px = Math.min(Math.max(x - 0.5, 0), width - 1);
  const py = Math.min(Math.max(y - 0.5, 0), height - 1);
  const [x0, y0] = [px | 0, py | 0];
  const [fx, fy] = [px - x0, py - y0];
  const at = y0 * width + x0;
  const right = x0 < width - 1 ? 1 : 0;
  const below = y0 < height - 1 ? width : 0;
  const upper = (data[at] as number) * (1 - fx) + (data[at + right] as number) * fx;
  const lower = (data[at + below] as number) * (1 - fx) + (data[at + below + right] as number) * fx;
  return upper * (1 - fy) + lower * fy;
}

/**
 * Follows the mark along a side as it is taken so far (clockwise round the page as it is seen: inside to the right of the
 * way): the smoothest way of most contrast, by dynamic programming, then each place to part of a pixel. Places are told
 * from the straight line between the ends of the side.
 */
export function foundAlong(grey: Grey, side: Side, search: SideSearch): FoundOnSide[] {
  const { stations, reach, soft, mark } = search;
  const length = Math.hypot(side.to.x - side.from.x, side.to.y - side.from.y);
  const spread = Math.min(4, (length / stations) * 0.5);
  // Nearer to a corner the other side disturbs.
  const clear = Math.min((3 * soft + spread + 2) / length, 0.1);
  if (length < 12 * soft) return [];
  const half = Math.max(1, Math.round(soft * FINE));
  const tail = mark === 'line' ? 2 * half : half;
  const count = 2 * Math.ceil(reach * FINE) + 1;
  const along = Array.from({ length: stations }, (_, k) => clear + ((1 - 2 * clear) * (k + 0.5)) / stations);
  const bows = along.map((share) =>
    legendre(share, side.bow.length).reduce((sum, each, k) => sum + each * (side.bow[k] as number), 0),
  );
  const profiles = along.map((share, k) => {
    return profile(grey, side, { share, bow: bows[k] as number, samples: count + 2 * tail, spread });
  });
  const contrasts = profiles.map((line) => contrastAlong(line, count, half, mark));
  const ways = smoothestWay(contrasts, count);
  return along.map((share, k) => {
    const at = ways[k] as number;
    const line = contrasts[k] as Float32Array;
    const fine = mark === 'line' ? darkMiddle(profiles[k] as Float32Array, at, half) : peak(line, at);
    const contrast = line[at] as number;
    const off = (bows[k] as number) + (fine - (count - 1) / 2) / FINE;
    return { along: share, off, weight: Math.max(contrast, 0), contrast };
  });
}

/** The light across the side at a share of the way, from inside to outside, averaged a little along the side. */
function profile(
  grey: Grey,
  { from, to }: Side,
  at: { readonly share: number; readonly bow: number; readonly samples: number; readonly spread: number },
): Float32Array {
  const { share, bow, samples, spread } = at;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const line = new Float32Array(samples);
  const middle = (samples - 1) / 2;
  const rows = spread > 1 ? [-spread, -spread / 2, 0, spread / 2, spread] : [0];
  for (const row of rows) {
    const x = from.x + (to.x - from.x) * share + ux * row;
    const y = from.y + (to.y - from.y) * share + uy * row;
    for (let k = 0; k < samples; k++) {
      const off = bow + (k - middle) / FINE;
      line[k] = (line[k] as number) + lightAt(grey, x + uy * off, y - ux * off) / rows.length;
    }
  }
  return line;
}

function contrastAlong(line: Float32Array, count: number, half: number, mark: SideMark): Float32Array {
  const sums = new Float64Array(line.length + 1);
  for (let k = 0; k < line.length; k++) sums[k + 1] = (sums[k] as number) + (line[k] as number);
  const mean = (from: number, to: number) => ((sums[to] as number) - (sums[from] as number)) / (to - from);
  return Float32Array.from({ length: count }, (_, k) => {
    if (mark !== 'line') {
      // The sample itself belongs to both halves.
      const step = mean(k, k + half + 1) - mean(k + half, k + 2 * half + 1);
      return mark === 'light-ends' ? step : -step;
    }
    const at = k + 2 * half;
    const core = Math.max(1, half >> 1);
    const middle = mean(at - core + 1, at + core);
    return Math.min(mean(at - 2 * half, at - half + 1), mean(at + half, at + 2 * half + 1)) - middle;
  });
}

/** For each place the sample on the way of most contrast and least slipping. */
function smoothestWay(contrasts: readonly Float32Array[], count: number): number[] {
  let best = Float64Array.from(contrasts[0] as Float32Array);
  const froms: Int32Array[] = [new Int32Array(count)];
  for (let k = 1; k < contrasts.length; k++) {
    const line = contrasts[k] as Float32Array;
    const next = new Float64Array(count);
    const from = new Int32Array(count);
    for (let at = 0; at < count; at++) {
      let most = Number.NEGATIVE_INFINITY;
      const last = Math.min(count - 1, at + MOST_SLIP);
      for (let before = Math.max(0, at - MOST_SLIP); before <= last; before++) {
        const value = (best[before] as number) - (SLIP * Math.abs(at - before)) / FINE;
        if (value > most) {
          most = value;
          from[at] = before;
        }
      }
      next[at] = most + (line[at] as number);
    }
    best = next;
    froms.push(from);
  }
  let at = best.reduce((top, value, k) => (value > (best[top] as number) ? k : top), 0);
  const way = new Array<number>(contrasts.length);
  for (let k = contrasts.length - 1; k >= 0; k--) {
    way[k] = at;
    at = (froms[k] as Int32Array)[at] as number;
  }
  return way;
}

/** The top of a parabola through a sample and its neighbours, after climbing to the local top. */
function peak(line: Float32Array, from: number): number {
  let at = from;
  while (at > 0 && (line[at - 1] as number) > (line[at] as number)) at--;
  while (at < line.length - 1 && (line[at + 1] as number) > (line[at] as number)) at++;
  const [a, b, c] = [line[at - 1] ?? line[at], line[at], line[at + 1] ?? line[at]] as [number, number, number];
  const bend = a - 2 * b + c;
  return bend < 0 ? at + Math.min(Math.max((a - c) / (2 * bend), -0.5), 0.5) : at;
}

/** The middle of what is darker than the paper to both sides. */
function darkMiddle(line: Float32Array, at: number, half: number): number {
  const centre = at + 2 * half;
  const [left, right] = [line[centre - 2 * half] as number, line[centre + 2 * half] as number];
  let [mass, moment] = [0, 0];
  for (let k = -2 * half; k <= 2 * half; k++) {
    const paper = left + ((right - left) * (k + 2 * half)) / (4 * half);
    const dark = Math.max(paper - (line[centre + k] as number) - 0.02, 0);
    mass += dark;
    moment += dark * k;
  }
  return mass > 0 ? at + moment / mass : at;
}
