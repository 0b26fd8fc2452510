import { describe, expect, it } from 'vitest';
import type { Point } from '../../core/geometry/point';
import { applyHomography, type Homography } from '../../core/geometry/projective';
import { flatRows } from '../../core/picture/page-warp';

const [width, height] = [90, 71];
const pixels = new Uint8ClampedArray(width * height * 4);
for (let at = 0; at < pixels.length; at++) {
  const [x, y] = [(at >> 2) % width, Math.floor((at >> 2) / width)];
  pixels[at] = [2 * x + 3, 3 * y + 5, 100 + 60 * Math.sin(x / 9) * Math.cos(y / 7), 255][at % 4] as number;
}
const photo = { pixels, width, height };

describe('flatRows', () => {
  it('shows the photo at the mapped place, to two grey levels', () => {
    const toSource: Homography = [0.8, 0.1, 2, -0.05, 0.9, 6, 0.0006, 0.0003, 1];
    const toPhoto = (flat: Point) => applyHomography(toSource, flat) as Point;
    const flat = flatRows(photo, { width: 83, height: 59, toPhoto }, { from: 0, to: 59 });
    for (const [x, y] of [
      [5, 7],
      [33, 21],
      [71, 50],
    ] as const) {
      const seen = toPhoto({ x: x + 0.5, y: y + 0.5 });
      const at = (y * 83 + x) * 4;
      expect(Math.abs((flat.pixels[at] as number) - (2 * (seen.x - 0.5) + 3))).toBeLessThanOrEqual(2);
      expect(Math.abs((flat.pixels[at + 1] as number) - (3 * (seen.y - 0.5) + 5))).toBeLessThanOrEqual(2);
    }
  });

  it('left as it is, a picture is the same byte for byte', () => {
    const flat = flatRows(photo, { width, height, toPhoto: (place) => place }, { from: 0, to: height });
    expect(flat.pixels).toEqual(pixels);
  });

  it('follows a bent map, is clear beyond the photo, and the same in strips', () => {
    const toPhoto = ({ x, y }: Point) => ({ x: x - 5 + (x * x) / 900, y: y + 4 * Math.sin(x / 40) });
    const plan = { width: 88, height: 70, toPhoto };
    const whole = flatRows(photo, plan, { from: 0, to: 70 });
    expect([...whole.pixels.slice(0, 4)]).toEqual([0, 0, 0, 0]);
    for (const [x, y] of [
      [20, 11],
      [47, 30],
      [70, 52],
    ] as const) {
      const seen = toPhoto({ x: x + 0.5, y: y + 0.5 });
      const at = (y * 88 + x) * 4;
      expect(Math.abs((whole.pixels[at] as number) - (2 * (seen.x - 0.5) + 3))).toBeLessThan(1.2);
      expect(Math.abs((whole.pixels[at + 1] as number) - (3 * (seen.y - 0.5) + 5))).toBeLessThan(1.2);
    }
    const strips = [
      [0, 21],
      [21, 48],
      [48, 70],
    ].flatMap(([from = 0, to = 0]) => [...flatRows(photo, plan, { from, to }).pixels]);
    expect(strips).toEqual([...whole.pixels]);
  });
});
