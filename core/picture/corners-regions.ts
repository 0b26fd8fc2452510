/** Parts of a picture that may end at the sides of something rectangular, as the hulls of their pixels. */
import type { Point } from '../geometry/point';
import { hullOfRows, type RowEnds } from './corners-hull';
import type { Grey } from './grey';

/** Of how many pixels the steepest so many shares are taken for walls. */
const WALL_SHARES = [0.82, 0.9, 0.96];

/** Nothing flatter than this (a change of light over two pixels) is a wall, however even the picture. */
const LEAST_WALL = 0.015;

/** Darker than the mean about it by this share is ink. */
const INK = 0.88;

/**
 * Hulls of what is fenced in by steep changes of light, and of what hangs together in ink: the page on the table, the
 * printed frame on the page. A part counts when its box is at least `least` of the picture's, across and down. The picture
 * should be small, a few hundred pixels a side.
 */
export function hullsIn(grey: Grey, least: number): Point[][] {
  const calm = calmed(calmed(grey));
  const hulls: Point[][] = [];
  const steep = steepness(calm);
  for (const share of WALL_SHARES) {
    const wall = Math.max(shareOf(steep, share), LEAST_WALL);
    hulls.push(...fencedHulls(steep, wall, calm, least));
  }
  hulls.push(...partsOf(inkOf(calm), calm, 'corners too', least).parts.map(({ ends }) => hullOfRows(ends)));
  return hulls;
}

/** Each pixel mixed with its neighbours by 1, 2, 1 across and down. */
export function calmed({ width, height, data }: Grey): Grey {
  const mixed = new Float32Array(data.length);
  const out = new Float32Array(data.length);
  for (let y = 0; y < height; y++) {
    const row = y * width;
    for (let x = 0; x < width; x++) {
      const left = data[row + (x > 0 ? x - 1 : x)] as number;
      const right = data[row + (x < width - 1 ? x + 1 : x)] as number;
      mixed[row + x] = (left + 2 * (data[row + x] as number) + right) / 4;
    }
  }
  for (let y = 0; y < height; y++) {
    const [above, own, below] = [Math.max(y - 1, 0) * width, y * width, Math.min(y + 1, height - 1) * width];
    for (let x = 0; x < width; x++) {
      out[own + x] = ((mixed[above + x] as number) + 2 * (mixed[own + x] as number) + (mixed[below + x] as number)) / 4;
    }
  }
  return { width, height, data: out };
}

function steepness({ width, height, data }: Grey): Float32Array {
  const steep = new Float32Array(data.length);
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const at = y * width + x;
      const dx = (data[at + 1] as number) - (data[at - 1] as number);
      const dy = (data[at + width] as number) - (data[at - width] as number);
      steep[at] = Math.sqrt(dx * dx + dy * dy);
    }
  }
  return steep;
}

function shareOf(values: Float32Array, share: number): number {
  const some = new Float32Array(Math.min(values.length, 20000));
  for (let k = 0; k < some.length; k++) some[k] = values[Math.floor((k * values.length) / some.length)] as number;
  some.sort();
  return some[Math.floor((some.length - 1) * share)] as number;
}

/** The hulls of open parts between walls, and of all that such a part has wholly inside it. */
function fencedHulls(steep: Float32Array, wall: number, size: Grey, least: number): Point[][] {
  const mask = new Uint8Array(steep.length);
  for (let at = 0; at < mask.length; at++) mask[at] = (steep[at] as number) < wall ? 1 : 0;
  const { parts, labels } = partsOf(mask, size, 'sides only', least);
  const hulls: Point[][] = [];
  for (const { label, ends } of parts) {
    hulls.push(hullOfRows(ends));
    for (let at = 0; at < mask.length; at++) mask[at] = labels[at] === label ? 0 : 1;
    for (const inner of partsOf(mask, size, 'corners too', least).parts) {
      if (!inner.touchesEdge) hulls.push(hullOfRows(inner.ends));
    }
  }
  return hulls;
}

interface Part {
  readonly label: number;
  readonly ends: RowEnds;
  readonly touchesEdge: boolean;
}

/** Large parts of a mask that hang together, and of which part each pixel is. */
function partsOf(
  mask: Uint8Array,
  { width, height }: { readonly width: number; readonly height: number },
  over: 'sides only' | 'corners too',
  least: number,
): { readonly parts: Part[]; readonly labels: Int32Array } {
  const labels = new Int32Array(mask.length);
  const stack = new Int32Array(mask.length);
  const [left, right] = [new Int32Array(height).fill(width), new Int32Array(height).fill(-1)];
  const parts: Part[] = [];
  let label = 0;
  let size = 0;
  const take = (x: number, y: number) => {
    const at = y * width + x;
    if (mask[at] === 0 || labels[at] !== 0) return;
    labels[at] = label;
    stack[size++] = at;
  };
  for (let start = 0; start < mask.length; start++) {
    if (mask[start] === 0 || labels[start] !== 0) continue;
    label++;
    take(start % width, Math.floor(start / width));
    let [minX, maxX, minY, maxY] = [width, 0, height, 0];
    while (size > 0) {
      const at = stack[--size] as number;
      const y = (at / width) | 0;
      const x = at - y * width;
      if (x < (left[y] as number)) left[y] = x;
      if (x > (right[y] as number)) right[y] = x;
      if (x < minX) minX = x;
      if (x > maxX) maxX = x;
      if (y < minY) minY = y;
      if (y > maxY) maxY = y;
      const [notFirst, notLast] = [x > 0, x < width - 1];
      if (notFirst) take(x - 1, y);
      if (notLast) take(x + 1, y);
      for (let beside = y - 1; beside <= y + 1; beside += 2) {
        if (beside < 0 || beside >= height) continue;
        take(x, beside);
        if (over === 'sides only') continue;
        if (notFirst) take(x - 1, beside);
        if (notLast) take(x + 1, beside);
      }
    }
    if (maxX - minX >= width * least && maxY - minY >= height * least) {
      const touchesEdge = minX === 0 || minY === 0 || maxX === width - 1 || maxY === height - 1;
      parts.push({ label, ends: { left: left.slice(), right: right.slice() }, touchesEdge });
    }
    left.fill(width, minY, maxY + 1);
    right.fill(-1, minY, maxY + 1);
  }
  return { parts, labels };
}

/** What is darker than the mean of the square about it, a twentieth of the picture each way. */
function inkOf({ width, height, data }: Grey): Uint8Array {
  const sums = new Float64Array((width + 1) * (height + 1));
  for (let y = 0; y < height; y++) {
    let row = 0;
    for (let x = 0; x < width; x++) {
      row += data[y * width + x] as number;
      sums[(y + 1) * (width + 1) + x + 1] = (sums[y * (width + 1) + x + 1] as number) + row;
    }
  }
  const reach = Math.max(3, Math.round(Math.max(width, height) / 40));
  const ink = new Uint8Array(data.length);
  for (let y = 0; y < height; y++) {
    const [y0, y1] = [Math.max(0, y - reach), Math.min(height, y + reach + 1)];
    for (let x = 0; x < width; x++) {
      const [x0, x1] = [Math.max(0, x - reach), Math.min(width, x + reach + 1)];
      const sum =
        (sums[y1 * (width + 1) + x1] as number) -
        (sums[y0 * (width + 1) + x1] as number) -
        (sums[y1 * (width + 1) + x0] as number) +
        (sums[y0 * (width + 1) + x0] as number);
      if ((data[y * width + x] as number) < (INK * sum) / ((x1 - x0) * (y1 - y0))) ink[y * width + x] = 1;
    }
  }
  return ink;
}
