/** A picture as light alone, row by row from the top left: 0 black … 1 white. The centre of a pixel lies at +0.5. */
export interface Grey {
  readonly width: number;
  readonly height: number;
  readonly data: Float32Array;
}

/** The shares of red, green and blue in what the eye sees as light. See: ITU-R BT.601, which JPEG follows too. */
const [RED, GREEN, BLUE] = [0.299, 0.587, 0.114];

/** The light of a picture of red, green, blue and opacity, one byte each. What is clear is taken for white paper. */
export function greyOf(rgba: Uint8ClampedArray, width: number, height: number): Grey {
  const data = new Float32Array(width * height);
  for (let i = 0, at = 0; i < data.length; i++, at += 4) {
    const light = RED * (rgba[at] as number) + GREEN * (rgba[at + 1] as number) + BLUE * (rgba[at + 2] as number);
    const opacity = rgba[at + 3] as number;
    data[i] = opacity === 255 ? light / 255 : 1 + ((light / 255 - 1) * opacity) / 255;
  }
  return { width, height, data };
}

/**
 * The picture at half the size, each pixel the mean of four, so that a place of the whole is twice the place of the half.
 * An odd last row or column is left off.
 */
export function halved({ width, height, data: from }: Grey): Grey {
  const [w, h] = [Math.max(1, width >> 1), Math.max(1, height >> 1)];
  const data = new Float32Array(w * h);
  const right = width > 1 ? 1 : 0;
  const below = height > 1 ? width : 0;
  for (let y = 0, at = 0; y < h; y++) {
    for (let x = 0, p = 2 * y * width; x < w; x++, at++, p += 2) {
      data[at] =
        ((from[p] as number) +
          (from[p + right] as number) +
          (from[p + below] as number) +
          (from[p + below + right] as number)) /
        4;
    }
  }
  return { width: w, height: h, data };
}

/** A picture halved until no side is longer than asked; a place of the whole is `factor` times the place of the copy. */
export function reducedTo(grey: Grey, mostSide: number): { readonly grey: Grey; readonly factor: number } {
  let [small, factor] = [grey, 1];
  while (Math.max(small.width, small.height) > mostSide) {
    small = halved(small);
    factor *= 2;
  }
  return { grey: small, factor };
}
