import { describe, expect, it } from 'vitest';
import { halveRaster } from '../../core/picture/raster';

/** A picture whose red grows across and green down: what it shows at any place is known without the picture. */
function ramp(width: number, height: number) {
  const pixels = new Uint8ClampedArray(width * height * 4);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) pixels.set([2 * x + 1, 3 * y + 2, 7, 255], (y * width + x) * 4);
  }
  return { pixels, width, height };
}

describe('halveRaster', () => {
  it('halved, each pixel is the mean of four', () => {
    const { pixels, width, height } = halveRaster(ramp(9, 6));
    expect([width, height]).toEqual([4, 3]);
    // Red 1 and 3 above each other twice; green 2 and 5.
    expect([...pixels.slice(0, 4)]).toEqual([2, 4, 7, 255]);
  });
});
