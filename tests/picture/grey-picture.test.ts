import { describe, expect, it } from 'vitest';
import { greyAt, greyFromRgba, halved, pyramidOf } from '../../core/picture/grey-picture';

describe('greyFromRgba', () => {
  it('weighs red, green and blue as ITU-R BT.601 does, to a level, and lays clear pixels on white', () => {
    const pixels = new Uint8ClampedArray([200, 0, 0, 255, 0, 190, 0, 255, 0, 0, 180, 255, 10, 20, 30, 0]);
    const { data } = greyFromRgba({ pixels, width: 4, height: 1 });
    const wanted = [0.299 * 200, 0.587 * 190, 0.114 * 180, 255];
    for (const [i, level] of wanted.entries()) expect(Math.abs((data[i] as number) - level)).toBeLessThanOrEqual(1);
  });
});

describe('halved', () => {
  it('takes the mean of four and leaves off an odd row', () => {
    const { width, height, data } = halved({ width: 3, height: 2, data: Uint8Array.from([10, 20, 99, 30, 44, 99]) });
    expect([width, height, ...data]).toEqual([1, 1, 26]);
  });
});

describe('pyramidOf', () => {
  it('halves until the longer side is short enough', () => {
    const levels = pyramidOf({ width: 90, height: 35, data: new Uint8Array(90 * 35) }, { longestPx: 30 });
    expect(levels.map(({ width, height }) => [width, height])).toEqual([
      [90, 35],
      [45, 17],
      [22, 8],
    ]);
  });
});

describe('greyAt', () => {
  const ramp = {
    width: 12,
    height: 9,
    data: Uint8Array.from({ length: 108 }, (_, i) => 5 * (i % 12) + 7 * Math.floor(i / 12)),
  };

  it('reads a level slope exactly between pixel centres', () => {
    for (const [x, y] of [
      [3.5, 4.5],
      [6.2, 2.9],
      [10.75, 7.1],
    ] as const) {
      expect(Math.abs(greyAt(ramp, x, y) - (5 * (x - 0.5) + 7 * (y - 0.5)))).toBeLessThan(1e-9);
    }
  });

  it('goes on with the outermost pixel beyond the edge', () => {
    expect(greyAt(ramp, -8, -3)).toBe(0);
    expect(greyAt(ramp, 40, 30)).toBe(5 * 11 + 7 * 8);
  });
});
