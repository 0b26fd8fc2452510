import { describe, expect, it } from 'vitest';
import { halveRaster, warpRaster } from '../../core/diagram/warp';
import type { Homography } from '../../core/geometry/projective';

/** A picture whose red grows across and green down: what it shows at any place is known without the picture. */
function ramp(width: number, height: number) {
  const pixels = new Uint8ClampedArray(width * height * 4);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) pixels.set([2 * x + 1, 3 * y + 2, 7, 255], (y * width + x) * 4);
  }
  return { pixels, width, height };
}

describe('warpRaster', () => {
  it('shows the source at the mapped place, to a grey level, and nothing beyond its edge', () => {
    const source = ramp(100, 70);
    const toSource: Homography = [0.8, 0.1, 5, -0.05, 0.9, 8, 0.0002, 0.0001, 1];
    const { pixels } = warpRaster(source, { toSource, width: 90, height: 60 });
    for (const [x, y] of [
      [10, 12],
      [40, 33],
      [71, 50],
    ] as const) {
      const [u, v] = [x + 0.5, y + 0.5];
      const w = 0.0002 * u + 0.0001 * v + 1;
      const at = (y * 90 + x) * 4;
      expect(Math.abs((pixels[at] ?? 0) - (2 * ((0.8 * u + 0.1 * v + 5) / w - 0.5) + 1))).toBeLessThanOrEqual(1);
      expect(Math.abs((pixels[at + 1] ?? 0) - (3 * ((-0.05 * u + 0.9 * v + 8) / w - 0.5) + 2))).toBeLessThanOrEqual(1);
    }
    const away: Homography = [1, 0, 400, 0, 1, 0, 0, 0, 1];
    expect(warpRaster(source, { toSource: away, width: 4, height: 3 }).pixels.every((value) => value === 0)).toBe(true);
  });

  it('left as it is, a picture is the same byte for byte', () => {
    const source = ramp(23, 17);
    expect(warpRaster(source, { toSource: [1, 0, 0, 0, 1, 0, 0, 0, 1], width: 23, height: 17 }).pixels).toEqual(
      source.pixels,
    );
  });

  it('halved, each pixel is the mean of four', () => {
    const { pixels, width, height } = halveRaster(ramp(9, 6));
    expect([width, height]).toEqual([4, 3]);
    // Red 1 and 3 above each other twice; green 2 and 5.
    expect([...pixels.slice(0, 4)]).toEqual([2, 4, 7, 255]);
  });
});
