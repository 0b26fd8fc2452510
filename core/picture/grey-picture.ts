/**
 * A picture as rows of grey levels, and smaller copies of it.
 *
 * Places in a picture are {@link PhotoPoint}s: the pixel in column i and row j covers i to i + 1 and j to j + 1, so its
 * centre lies at (i + 0.5, j + 0.5).
 */

/** Rows of grey levels, 0 black to 255 white. */
export interface GreyPicture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

/** The luma of a colour, Rec. ITU-R BT.601-7 (0.299, 0.587, 0.114), in 256ths. */
const [RED, GREEN, BLUE] = [77, 150, 29];

/** The grey levels of a picture of red, green, blue and opacity, laid on white paper where it is clear. */
export function greyFromRgba(picture: {
  readonly pixels: Uint8Array | Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}): GreyPicture {
  const { pixels, width, height } = picture;
  const data = new Uint8Array(width * height);
  for (let i = 0, p = 0; i < data.length; i++, p += 4) {
    const luma = RED * (pixels[p] as number) + GREEN * (pixels[p + 1] as number) + BLUE * (pixels[p + 2] as number);
    const opacity = pixels[p + 3] as number;
    data[i] = opacity === 255 ? luma >> 8 : 255 + ((luma / 256 - 255) * opacity) / 255;
  }
  return { width, height, data };
}

/** The picture at half the size, each pixel the mean of four; an odd last row or column is left off. */
export function halved({ width, height, data }: GreyPicture): GreyPicture {
  const [w, h] = [Math.max(1, width >> 1), Math.max(1, height >> 1)];
  const half = new Uint8Array(w * h);
  const right = width > 1 ? 1 : 0;
  const below = height > 1 ? width : 0;
  for (let y = 0; y < h; y++) {
    let p = 2 * y * width;
    let at = y * w;
    for (let x = 0; x < w; x++, p += 2, at++) {
      const sum =
        (data[p] as number) +
        (data[p + right] as number) +
        (data[p + below] as number) +
        (data[p + below + right] as number);
      half[at] = (sum + 2) >> 2;
    }
  }
  return { width: w, height: h, data: half };
}

/** The picture and its halves, quarters and so on, for as long as the longer side is above `longestPx`. */
export function pyramidOf(picture: GreyPicture, options: { readonly longestPx: number }): readonly GreyPicture[] {
  const levels = [picture];
  for (let last = picture; Math.max(last.width, last.height) > Math.max(1, options.longestPx); ) {
    last = halved(last);
    levels.push(last);
  }
  return levels;
}

/** The grey level at a place, between the four nearest pixel centres; beyond the edge, that of the nearest pixel. */
export function greyAt({ width, height, data }: GreyPicture, x: number, y: number): number {
  const cx = Math.min(Math.max(x - 0.5, 0), width - 1);
  const cy = Math.min(Math.max(y - 0.5, 0), height - 1);
  const x0 = cx | 0;
  const y0 = cy | 0;
  const p = y0 * width + x0;
  const right = x0 < width - 1 ? 1 : 0;
  const below = y0 < height - 1 ? width : 0;
  const fx = cx - x0;
  const top = (data[p] as number) * (1 - fx) + (data[p + right] as number) * fx;
  const bottom = (data[p + below] as number) * (1 - fx) + (data[p + below + right] as number) * fx;
  return top + (bottom - top) * (cy - y0);
}
