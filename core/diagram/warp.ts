import type { Homography } from '../geometry/projective';

/** A picture as rows of red, green, blue and opacity, one byte each. */
export interface Raster {
  readonly pixels: Uint8ClampedArray<ArrayBuffer>;
  readonly width: number;
  readonly height: number;
}

export interface WarpOptions {
  /** From the centre of a pixel of the new picture to a place in the source, both in pixels from the top left corner. */
  readonly toSource: Homography;
  readonly width: number;
  readonly height: number;
  /** Called after each strip of rows with the share done, 0 to 1. */
  readonly onProgress?: (share: number) => void;
}

const STRIP = 128;

/** A picture seen through a projective map, by bilinear interpolation; clear where the source does not reach. */
export function warpRaster(source: Raster, { toSource, width, height, onProgress }: WarpOptions): Raster {
  const pixels = new Uint8ClampedArray(width * height * 4);
  const [a, b, c, d, e, f, g, h, i] = toSource;
  const from = source.pixels;
  const [lastX, lastY] = [source.width - 1, source.height - 1];
  const row = source.width * 4;
  for (let y = 0; y < height; y++) {
    const v = y + 0.5;
    let at = y * width * 4;
    for (let x = 0; x < width; x++, at += 4) {
      const u = x + 0.5;
      const w = g * u + h * v + i;
      const sx = (a * u + b * v + c) / w - 0.5;
      const sy = (d * u + e * v + f) / w - 0.5;
      // Half a pixel beyond the outermost centres is still picture; NaN fails every comparison and stays clear.
      if (!(sx >= -0.5 && sy >= -0.5 && sx <= lastX + 0.5 && sy <= lastY + 0.5)) continue;
      const cx = Math.min(Math.max(sx, 0), lastX);
      const cy = Math.min(Math.max(sy, 0), lastY);
      const x0 = cx | 0;
      const y0 = cy | 0;
      const right = x0 < lastX ? 4 : 0;
      const below = y0 < lastY ? row : 0;
      const fx = cx - x0;
      const fy = cy - y0;
      const p = y0 * row + x0 * 4;
      const w00 = (1 - fx) * (1 - fy);
      const w10 = fx * (1 - fy);
      const w01 = (1 - fx) * fy;
      const w11 = fx * fy;
      for (let channel = 0; channel < 4; channel++) {
        const q = p + channel;
        pixels[at + channel] =
          w00 * (from[q] as number) +
          w10 * (from[q + right] as number) +
          w01 * (from[q + below] as number) +
          w11 * (from[q + below + right] as number);
      }
    }
    if (onProgress && (y + 1) % STRIP === 0) onProgress((y + 1) / height);
  }
  return { pixels, width, height };
}

/** The picture at half the size, each pixel the mean of four; an odd last row or column is left off. */
export function halveRaster({ pixels: from, width, height }: Raster): Raster {
  const [w, h] = [Math.max(1, width >> 1), Math.max(1, height >> 1)];
  const pixels = new Uint8ClampedArray(w * h * 4);
  const row = width * 4;
  const right = width > 1 ? 4 : 0;
  const below = height > 1 ? row : 0;
  for (let y = 0; y < h; y++) {
    for (let x = 0; x < w; x++) {
      const p = 2 * y * row + 2 * x * 4;
      const at = (y * w + x) * 4;
      for (let channel = 0; channel < 4; channel++) {
        const q = p + channel;
        pixels[at + channel] =
          ((from[q] as number) +
            (from[q + right] as number) +
            (from[q + below] as number) +
            (from[q + below + right] as number)) /
          4;
      }
    }
  }
  return { pixels, width: w, height: h };
}
