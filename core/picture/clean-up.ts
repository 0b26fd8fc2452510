/**
 * A photo made easier to read, row by row, without touching what is stored. Each function gives only the rows it is asked
 * for, so that a worker can tell how far it is and be stopped between two calls; together the strips are the picture.
 */
import type { Grey } from './grey';

/** Rows from `from` up to but not including `to`. */
export interface Rows {
  readonly from: number;
  readonly to: number;
}

/** The light that falls on the paper, on a coarse net over the picture. */
export interface PaperLight {
  readonly columns: number;
  readonly rows: number;
  /** How light blank paper is in each square of the net, row by row. */
  readonly data: Float32Array;
}

/** What becomes black and what becomes white. */
export interface Levels {
  readonly black: number;
  readonly white: number;
}

/** So many squares of the net lie along the longer side: finer would follow the ink, coarser would miss a shadow's edge. */
const NET = 48;

/** In a square of the net paper is lighter than this share of the pixels. */
const PAPER = 0.85;

/** Paper is never taken to be darker than this, so that dark margins do not turn to noise. */
const DARKEST = 0.08;

/** The light on the paper all over the picture: a high quantile square by square, ink and gaps smoothed away. */
export function paperLight({ width, height, data }: Grey): PaperLight {
  const size = Math.max(8, Math.ceil(Math.max(width, height) / NET));
  const [columns, rows] = [Math.ceil(width / size), Math.ceil(height / size)];
  const net = new Float32Array(columns * rows);
  const bins = new Uint32Array(256);
  for (let r = 0; r < rows; r++) {
    for (let c = 0; c < columns; c++) {
      bins.fill(0);
      let count = 0;
      for (let y = r * size; y < Math.min((r + 1) * size, height); y++) {
        for (let x = c * size; x < Math.min((c + 1) * size, width); x++, count++) {
          const bin = Math.min(255, Math.max(0, Math.round((data[y * width + x] as number) * 255)));
          bins[bin] = (bins[bin] as number) + 1;
        }
      }
      net[r * columns + c] = quantileOf(bins, count, PAPER);
    }
  }
  return { columns, rows, data: averaged(lightestNear(net, columns, rows), columns, rows) };
}

function quantileOf(bins: Uint32Array, count: number, share: number): number {
  let sum = 0;
  for (let bin = 0; bin < bins.length; bin++) {
    sum += bins[bin] as number;
    if (sum >= share * count) return bin / 255;
  }
  return 1;
}

/** A square full of ink takes the second lightest of its neighbours and itself, if it is much darker than that. */
function lightestNear(net: Float32Array, columns: number, rows: number): Float32Array {
  return overNear(net, columns, rows, (near, own) => {
    const second = near.sort((a, b) => b - a)[1] ?? own;
    return own < 0.85 * second ? second : own;
  });
}

function averaged(net: Float32Array, columns: number, rows: number): Float32Array {
  return overNear(net, columns, rows, (near) => near.reduce((sum, each) => sum + each, 0) / near.length);
}

function overNear(
  net: Float32Array,
  columns: number,
  rows: number,
  make: (near: number[], own: number) => number,
): Float32Array {
  return Float32Array.from(net, (own, at) => {
    const [c, r] = [at % columns, Math.floor(at / columns)];
    const near: number[] = [];
    for (let y = Math.max(0, r - 1); y <= Math.min(rows - 1, r + 1); y++) {
      for (let x = Math.max(0, c - 1); x <= Math.min(columns - 1, c + 1); x++)
        near.push(net[y * columns + x] as number);
    }
    return make(near, own);
  });
}

/** Light and shadow evened out: each pixel against the blank paper about it, so that paper is white everywhere. */
export function evened(grey: Grey, light: PaperLight, rows: Rows = allRows(grey)): Grey {
  const { width, height, data } = grey;
  const out = new Float32Array(width * (rows.to - rows.from));
  const at = (value: number, whole: number, count: number) => {
    const place = Math.min(Math.max(((value + 0.5) / whole) * count - 0.5, 0), count - 1);
    const low = Math.min(Math.floor(place), Math.max(0, count - 2));
    return { low, high: Math.min(low + 1, count - 1), part: place - low };
  };
  // The last square of the net may stick out beyond the picture; its middle is taken where it would lie.
  const size = Math.max(8, Math.ceil(Math.max(width, height) / NET));
  const across = Array.from({ length: width }, (_, x) => at(x, light.columns * size, light.columns));
  for (let y = rows.from; y < rows.to; y++) {
    const down = at(Math.min(y, height - 1), light.rows * size, light.rows);
    for (let x = 0; x < width; x++) {
      const { low, high, part } = across[x] as (typeof across)[number];
      const mix = (row: number) => {
        const [a, b] = [
          light.data[row * light.columns + low] as number,
          light.data[row * light.columns + high] as number,
        ];
        return a + (b - a) * part;
      };
      const [upper, lower] = [mix(down.low), mix(down.high)];
      const paper = Math.max(upper + (lower - upper) * down.part, DARKEST);
      out[(y - rows.from) * width + x] = Math.min((data[y * width + x] as number) / paper, 1);
    }
  }
  return { width, height: rows.to - rows.from, data: out };
}

/** Shares of the pixels that are left darker than black and lighter than white. */
const INK_SHARE = 0.005;
const PAPER_SHARE = 0.6;

/** Levels that make ink black and paper white, as the picture's own light is shared out; at least a tenth apart. */
export function levelsOf({ data }: Grey): Levels {
  const bins = new Uint32Array(256);
  for (const value of data) {
    const bin = Math.min(255, Math.max(0, Math.round(value * 255)));
    bins[bin] = (bins[bin] as number) + 1;
  }
  const [black, white] = [quantileOf(bins, data.length, INK_SHARE), quantileOf(bins, data.length, PAPER_SHARE)];
  const middle = (black + white) / 2;
  return white - black >= 0.1 ? { black, white } : { black: middle - 0.05, white: middle + 0.05 };
}

/** More contrast: black at one level and white at the other, evenly between. */
export function contrasted(grey: Grey, { black, white }: Levels, rows: Rows = allRows(grey)): Grey {
  const { width, data } = grey;
  const span = Math.max(white - black, 1e-6);
  const out = data.slice(rows.from * width, rows.to * width);
  for (let i = 0; i < out.length; i++) out[i] = Math.min(Math.max(((out[i] as number) - black) / span, 0), 1);
  return { width, height: rows.to - rows.from, data: out };
}

export interface BlackAndWhite {
  /** Half the side of the square about each pixel, in pixels; a few times as wide as a line. */
  readonly reach: number;
  /** How much darker than its square ink must be: 0.2 to 0.5 (the paper of 2000 takes 0.5, for type). */
  readonly strictness: number;
}

/** The spread of light that counts as full, of 0 to 1: 128 of 256 in the paper. */
const FULL_SPREAD = 0.5;

/**
 * Black and white by a threshold of its own for each pixel, m (1 + k (s / R − 1)) from the mean m and the spread s of the
 * square about it. See: J. Sauvola & M. Pietikäinen, Adaptive document image binarization, Pattern Recognition 33 (2000).
 * The sums slide down and along, so that the reach costs nothing.
 */
export function blackAndWhite(grey: Grey, { reach, strictness }: BlackAndWhite, rows: Rows = allRows(grey)): Grey {
  const { width, height, data } = grey;
  const out = new Float32Array(width * (rows.to - rows.from));
  const [sums, squares] = [new Float64Array(width), new Float64Array(width)];
  const add = (y: number, sign: 1 | -1) => {
    for (let x = 0; x < width; x++) {
      const value = data[y * width + x] as number;
      sums[x] = (sums[x] as number) + sign * value;
      squares[x] = (squares[x] as number) + sign * value * value;
    }
  };
  for (let y = Math.max(0, rows.from - reach); y < Math.min(height, rows.from + reach); y++) add(y, 1);
  for (let y = rows.from; y < rows.to; y++) {
    if (y + reach < height) add(y + reach, 1);
    if (y - reach - 1 >= 0 && y > rows.from) add(y - reach - 1, -1);
    const tall = Math.min(height - 1, y + reach) - Math.max(0, y - reach) + 1;
    let [sum, square] = [0, 0];
    for (let x = 0; x < Math.min(width, reach); x++) {
      sum += sums[x] as number;
      square += squares[x] as number;
    }
    for (let x = 0; x < width; x++) {
      if (x + reach < width) {
        sum += sums[x + reach] as number;
        square += squares[x + reach] as number;
      }
      if (x - reach - 1 >= 0) {
        sum -= sums[x - reach - 1] as number;
        square -= squares[x - reach - 1] as number;
      }
      const count = tall * (Math.min(width - 1, x + reach) - Math.max(0, x - reach) + 1);
      const mean = sum / count;
      const spread = Math.sqrt(Math.max(square / count - mean * mean, 0));
      const threshold = mean * (1 + strictness * (spread / FULL_SPREAD - 1));
      out[(y - rows.from) * width + x] = (data[y * width + x] as number) < threshold ? 0 : 1;
    }
  }
  return { width, height: rows.to - rows.from, data: out };
}

function allRows({ height }: Grey): Rows {
  return { from: 0, to: height };
}
