/** A picture in grey: 0 black to 1 white, row by row. The centre of the first pixel lies at (0.5, 0.5). */
export interface Grey {
  readonly width: number;
  readonly height: number;
  readonly data: Float32Array;
}

/** The grey of rows of red, green, blue and opacity, weighed as the eye does (ITU-R BT.601 luma). */
export function greyOf(rgba: Uint8ClampedArray, width: number, height: number): Grey {
  const data = new Float32Array(width * height);
  for (let i = 0, at = 0; i < data.length; i++, at += 4) {
    data[i] =
      (0.299 * (rgba[at] as number) + 0.587 * (rgba[at + 1] as number) + 0.114 * (rgba[at + 2] as number)) / 255;
  }
  return { width, height, data };
}

/** The picture at half the size, each pixel the mean of four; an odd last row or column is left off. */
export function halved({ width, height, data: from }: Grey): Grey {
  const [w, h] = [Math.max(1, width >> 1), Math.max(1, height >> 1)];
  const data = new Float32Array(w * h);
  const right = width > 1 ? 1 : 0;
  const below = height > 1 ? width : 0;
  for (let y = 0; y < h; y++) {
    for (let x = 0; x < w; x++) {
      const p = 2 * y * width + 2 * x;
      data[y * w + x] =
        ((from[p] as number) +
          (from[p + right] as number) +
          (from[p + below] as number) +
          (from[p + below + right] as number)) /
        4;
    }
  }
  return { width: w, height: h, data };
}
