/**
 * What it costs to go from pixel to pixel: little on ink, much on bare paper, and little too in the gaps of a dashed,
 * dotted or broken line. Worked out in tiles, each when it is first needed.
 *
 * Ink is what is darker than its surroundings, so shadows and toned paper count as paper. Gaps are bridged by looking
 * along sixteen directions for ink before and behind.
 */
import type { GreyPicture } from './grey-picture';

/** The costs of one picture. Lines should be some 2 to 4 pixels wide on it: take a smaller copy for wider ones. */
export interface InkCosts {
  readonly picture: GreyPicture;
  readonly cost: Uint8Array;
  readonly tilesAcross: number;
  /** Which tiles are worked out: 1 is done. */
  readonly done: Uint8Array;
}

/** The cost of a pixel of ink and of bare paper. */
export const ON_INK = 2;
export const ON_PAPER = 60;

/** Tiles are this many pixels a side, as a power of 2. */
export const TILE_BITS = 6;
const TILE = 1 << TILE_BITS;

/** The surroundings a pixel is compared with: this many pixels each way, several times the width of a line. */
const AROUND = 9;

/** How far along a direction ink is looked for, each way: three dashes of an ordinary dashed line. */
const ALONG = 16;

const DIRECTIONS = 16;

/** The share by which a pixel must be darker than its surroundings to be ink at all, and to be surely ink. */
const FAINT = 0.05;
const SURE = 0.25;

/** The share of a direction that is ink: below the first there is no line in it, above the second surely. */
const SCATTERED = 0.22;
const LINED_UP = 0.42;

/** How good a gap in a line is, where ink itself is 1: so much worse that no corner is cut short across bare paper. */
const GAP = 0.7;

/** Room round a tile: what its costs depend on. */
const HALO = ALONG + AROUND;
const WIDE = TILE + 2 * HALO;
const INNER = TILE + 2 * ALONG;

/** Costs for a picture, none of them worked out yet. */
export function inkCosts(picture: GreyPicture): InkCosts {
  const tilesAcross = Math.ceil(picture.width / TILE);
  const done = new Uint8Array(tilesAcross * Math.ceil(picture.height / TILE));
  return { picture, cost: new Uint8Array(picture.width * picture.height), tilesAcross, done };
}

/** Sees to it that the costs of the tile with this index are worked out. */
export function needTile(costs: InkCosts, tile: number): void {
  if (costs.done[tile]) return;
  costs.done[tile] = 1;
  const { picture, cost, tilesAcross } = costs;
  const left = (tile % tilesAcross) << TILE_BITS;
  const top = Math.floor(tile / tilesAcross) << TILE_BITS;
  const ink = inkRound(picture, left, top);
  const lined = linedUp(ink);
  const right = Math.min(picture.width, left + TILE);
  const bottom = Math.min(picture.height, top + TILE);
  for (let y = top; y < bottom; y++) {
    for (let x = left; x < right; x++) {
      const own = ink[(y - top + ALONG) * INNER + x - left + ALONG] as number;
      const gap = GAP * (lined[((y - top) >> 1) * HALF_TILE + ((x - left) >> 1)] as number);
      const lack = 1 - Math.max(own, gap);
      cost[y * picture.width + x] = ON_INK + (ON_PAPER - ON_INK) * lack * lack + 0.5;
    }
  }
}

/** How surely each pixel of the tile and {@link ALONG} round it is ink, 0 to 1. */
function inkRound({ width, height, data }: GreyPicture, left: number, top: number): Float32Array {
  const grey = new Int32Array(WIDE * WIDE);
  for (let j = 0; j < WIDE; j++) {
    const row = Math.min(Math.max(top + j - HALO, 0), height - 1) * width;
    for (let i = 0; i < WIDE; i++) {
      grey[j * WIDE + i] = data[row + Math.min(Math.max(left + i - HALO, 0), width - 1)] as number;
    }
  }
  // Sums of columns, then of rows, moved on pixel by pixel.
  const columns = new Int32Array(WIDE);
  for (let j = 0; j < 2 * AROUND; j++) for (let i = 0; i < WIDE; i++) add(columns, i, grey[j * WIDE + i] as number);
  const ink = new Float32Array(INNER * INNER);
  const pixels = (2 * AROUND + 1) ** 2;
  for (let j = 0; j < INNER; j++) {
    for (let i = 0; i < WIDE; i++) {
      add(columns, i, grey[(j + 2 * AROUND) * WIDE + i] as number);
      if (j > 0) add(columns, i, -(grey[(j - 1) * WIDE + i] as number));
    }
    let sum = 0;
    for (let i = 0; i < 2 * AROUND; i++) sum += columns[i] as number;
    for (let i = 0; i < INNER; i++) {
      sum += columns[i + 2 * AROUND] as number;
      if (i > 0) sum -= columns[i - 1] as number;
      const mean = sum / pixels;
      const darker = (mean - (grey[(j + AROUND) * WIDE + i + AROUND] as number)) / (mean + 1);
      ink[j * INNER + i] = Math.min(1, Math.max(0, (darker - FAINT) / (SURE - FAINT)));
    }
  }
  return ink;
}

function add(sums: Int32Array, at: number, value: number): void {
  sums[at] = (sums[at] as number) + value;
}

/** The tile and its room, and the look along a direction, in pixels twice as large: gaps need not be finer. */
const HALF_TILE = TILE / 2;
const HALF_INNER = INNER / 2;
const HALF_ALONG = ALONG / 2;

/** For each two by two pixels of the tile, how surely they lie on a line: the best share of ink along any direction, 0 to 1. */
function linedUp(ink: Float32Array): Float32Array {
  const best = new Float32Array(HALF_TILE * HALF_TILE);
  const half = halfAsFine(ink);
  if (!half) return best;
  const share = 1 / (2 * HALF_ALONG + 1);
  for (let k = 0; k < DIRECTIONS; k++) {
    const angle = (k * Math.PI) / DIRECTIONS;
    const isLevel = Math.abs(Math.cos(angle)) >= Math.abs(Math.sin(angle));
    const slope = isLevel ? Math.tan(angle) : 1 / Math.tan(angle);
    const [ahead, aside] = isLevel ? [1, HALF_INNER] : [HALF_INNER, 1];
    const [aheadOut, asideOut] = isLevel ? [1, HALF_TILE] : [HALF_TILE, 1];
    const shifts = Int32Array.from({ length: HALF_INNER }, (_, x) => Math.round(slope * (x - HALF_INNER / 2)));
    const spread = Math.ceil((Math.abs(slope) * HALF_INNER) / 2) + 1;
    for (let line = HALF_ALONG - spread; line < HALF_ALONG + HALF_TILE + spread; line++) {
      let sum = 0;
      for (let x = 0; x < HALF_INNER; x++) {
        const y = line + (shifts[x] as number);
        if (y >= 0 && y < HALF_INNER) sum += half[y * aside + x * ahead] as number;
        const gone = x - 2 * HALF_ALONG - 1;
        if (gone >= 0) {
          const was = line + (shifts[gone] as number);
          if (was >= 0 && was < HALF_INNER) sum -= half[was * aside + gone * ahead] as number;
        }
        const middle = x - HALF_ALONG;
        if (middle < HALF_ALONG) continue;
        const out = line + (shifts[middle] as number) - HALF_ALONG;
        if (out < 0 || out >= HALF_TILE) continue;
        const at = (middle - HALF_ALONG) * aheadOut + out * asideOut;
        if (sum > (best[at] as number)) best[at] = sum;
      }
    }
  }
  for (let i = 0; i < best.length; i++) {
    best[i] = Math.min(1, Math.max(0, ((best[i] as number) * share - SCATTERED) / (LINED_UP - SCATTERED)));
  }
  return best;
}

/** The ink with two by two pixels as one, the surest of them; `undefined` where there is none at all. */
function halfAsFine(ink: Float32Array): Float32Array | undefined {
  const half = new Float32Array(HALF_INNER * HALF_INNER);
  let most = 0;
  for (let y = 0; y < HALF_INNER; y++) {
    for (let x = 0; x < HALF_INNER; x++) {
      const p = 2 * y * INNER + 2 * x;
      const upper = Math.max(ink[p] as number, ink[p + 1] as number);
      const lower = Math.max(ink[p + INNER] as number, ink[p + INNER + 1] as number);
      half[y * HALF_INNER + x] = Math.max(upper, lower);
      most = Math.max(most, upper, lower);
    }
  }
  return most > 0 ? half : undefined;
}
