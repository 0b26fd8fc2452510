/** A picture as rows of red, green, blue and opacity, one byte each. */
export interface Raster {
  readonly pixels: Uint8ClampedArray<ArrayBuffer>;
  readonly width: number;
  readonly height: number;
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
