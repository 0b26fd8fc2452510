/**
 * A picture made easier to read: light and shadow evened out, contrast, black and white. Each gives a new picture; the
 * one handed in stays as it is.
 */
import { boxBlurred } from './box-blur';
import type { GreyPicture } from './grey-picture';

/** The grey that bare paper gets once the light is even. */
export const PAPER = 240;

/** The share of a block's pixels that is darker than its paper: ink, lettering and noise may fill three quarters of it. */
const PAPER_RANK = 0.75;

/** Where a block is this much darker than its lightest neighbour it is a filled area, not a shadow: shadows have soft edges. */
const FILLED = 0.5;

/**
 * The picture divided by the light that falls on its paper, so that bare paper is everywhere about {@link PAPER}. The
 * light is read from blocks of `blockPx` a side, which must be wider than any line of ink; black areas wider than
 * three blocks come out grey.
 */
export function evenLight(picture: GreyPicture, options: { readonly blockPx: number }): GreyPicture {
  const { width, height, data } = picture;
  const block = Math.max(2, Math.round(options.blockPx));
  const light = lightOf(picture, block);
  const even = new Uint8Array(width * height);
  const { width: across, height: down, data: levels } = light;
  for (let y = 0; y < height; y++) {
    const cy = Math.min(Math.max((y + 0.5) / block - 0.5, 0), down - 1);
    const y0 = Math.min(cy | 0, Math.max(0, down - 2));
    const fy = cy - y0;
    const [rowA, rowB] = [y0 * across, Math.min(y0 + 1, down - 1) * across];
    for (let x = 0; x < width; x++) {
      const cx = Math.min(Math.max((x + 0.5) / block - 0.5, 0), across - 1);
      const x0 = Math.min(cx | 0, Math.max(0, across - 2));
      const x1 = Math.min(x0 + 1, across - 1);
      const fx = cx - x0;
      const top = (levels[rowA + x0] as number) * (1 - fx) + (levels[rowA + x1] as number) * fx;
      const bottom = (levels[rowB + x0] as number) * (1 - fx) + (levels[rowB + x1] as number) * fx;
      const paper = Math.max(1, top + (bottom - top) * fy);
      even[y * width + x] = Math.min(255, ((data[y * width + x] as number) * PAPER) / paper + 0.5);
    }
  }
  return { width, height, data: even };
}

/** The grey of the paper in each block: what only a quarter of its pixels outshine, seen together with its neighbours. */
function lightOf({ width, height, data }: GreyPicture, block: number): GreyPicture {
  const [across, down] = [Math.max(1, Math.ceil(width / block)), Math.max(1, Math.ceil(height / block))];
  const ranked = new Uint8Array(across * down);
  const counts = new Int32Array(256);
  for (let by = 0; by < down; by++) {
    for (let bx = 0; bx < across; bx++) {
      counts.fill(0);
      const [right, bottom] = [Math.min(width, (bx + 1) * block), Math.min(height, (by + 1) * block)];
      let left = 0;
      for (let y = by * block; y < bottom; y++) {
        for (let x = bx * block; x < right; x++, left++) {
          const level = data[y * width + x] as number;
          counts[level] = (counts[level] as number) + 1;
        }
      }
      left *= PAPER_RANK;
      let level = 0;
      for (; level < 255 && left > (counts[level] as number); level++) left -= counts[level] as number;
      ranked[by * across + bx] = level;
    }
  }
  const lit = new Uint8Array(ranked.length);
  for (let by = 0; by < down; by++) {
    for (let bx = 0; bx < across; bx++) {
      let lightest = 0;
      for (let y = Math.max(0, by - 1); y <= Math.min(down - 1, by + 1); y++) {
        for (let x = Math.max(0, bx - 1); x <= Math.min(across - 1, bx + 1); x++) {
          lightest = Math.max(lightest, ranked[y * across + x] as number);
        }
      }
      const own = ranked[by * across + bx] as number;
      lit[by * across + bx] = own < FILLED * lightest ? lightest : own;
    }
  }
  return boxBlurred({ width: across, height: down, data: lit }, 1);
}

/** The levels between which nearly all of the picture lies, by the shares of its pixels left out at each end. */
export function levelsOf(
  { data }: GreyPicture,
  leftOut: { readonly dark: number; readonly light: number },
): { readonly black: number; readonly white: number } {
  const counts = new Int32Array(256);
  for (let i = 0; i < data.length; i++) counts[data[i] as number] = (counts[data[i] as number] as number) + 1;
  let black = 0;
  for (let left = data.length * leftOut.dark; black < 255 && left >= (counts[black] as number); black++)
    left -= counts[black] as number;
  let white = 255;
  for (let left = data.length * leftOut.light; white > 0 && left >= (counts[white] as number); white--)
    left -= counts[white] as number;
  return { black, white: Math.max(white, black) };
}

/** The picture with `black` taken down to 0 and `white` up to 255, evenly in between; a flat picture stays as it is. */
export function withContrast(
  { width, height, data }: GreyPicture,
  { black, white }: { readonly black: number; readonly white: number },
): GreyPicture {
  if (white <= black) return { width, height, data: data.slice() };
  const table = new Uint8ClampedArray(256);
  for (let level = 0; level < 256; level++) table[level] = ((level - black) * 255) / (white - black);
  return { width, height, data: data.map((level) => table[level] as number) };
}

/**
 * The picture in black (0) and white (255): black is what is darker than the mean of its surroundings, `windowPx` a
 * side, by more than `darkerBy` (a share of that mean, 0 to 1). See: D. Bradley & G. Roth, Adaptive Thresholding using
 * the Integral Image, Journal of Graphics Tools 12 (2007). Filled areas wider than the window come out hollow.
 */
export function blackAndWhite(
  picture: GreyPicture,
  options: { readonly windowPx: number; readonly darkerBy: number },
): GreyPicture {
  const mean = boxBlurred(picture, Math.max(1, Math.round(options.windowPx / 2))).data;
  const { width, height, data } = picture;
  const keep = 1 - options.darkerBy;
  const ink = new Uint8Array(data.length);
  for (let i = 0; i < ink.length; i++) ink[i] = (data[i] as number) < (mean[i] as number) * keep ? 0 : 255;
  return { width, height, data: ink };
}
