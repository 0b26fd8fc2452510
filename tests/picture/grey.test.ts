import { describe, expect, it } from 'vitest';
import { greyOf, halved, reducedTo } from '../../core/picture/grey';

describe('greyOf', () => {
  it('weighs the colours as ITU-R BT.601 does, and takes what is clear for white paper', () => {
    const rgba = new Uint8ClampedArray([255, 0, 0, 255, 0, 255, 0, 255, 0, 0, 255, 255, 40, 40, 40, 0, 0, 0, 0, 51]);
    const { data, width, height } = greyOf(rgba, 5, 1);
    expect([width, height]).toEqual([5, 1]);
    [0.299, 0.587, 0.114, 1, 0.8].forEach((light, i) => {
      expect(data[i]).toBeCloseTo(light, 6);
    });
  });
});

describe('halved', () => {
  it('makes each pixel the mean of four, and leaves an odd last row and column off', () => {
    const data = Float32Array.from({ length: 35 }, (_, i) => ((i % 7) * 3 + Math.floor(i / 7) * 11) / 100);
    const half = halved({ width: 7, height: 5, data });
    expect([half.width, half.height]).toEqual([3, 2]);
    expect(half.data[0]).toBeCloseTo(0.07, 6);
    expect(half.data[5]).toBeCloseTo((4.5 * 3 + 2.5 * 11) / 100, 6);
  });

  it('keeps places: twice the place of the half is the place of the whole', () => {
    // Light that grows evenly across is the same at the same place, however often it is halved.
    const data = Float32Array.from({ length: 64 * 32 }, (_, i) => ((i % 64) + 0.5) / 64);
    const { grey, factor } = reducedTo({ width: 64, height: 32, data }, 20);
    expect([grey.width, grey.height, factor]).toEqual([16, 8, 4]);
    for (let x = 0; x < 16; x++) expect(grey.data[3 * 16 + x]).toBeCloseTo(((x + 0.5) * factor) / 64, 5);
  });
});
