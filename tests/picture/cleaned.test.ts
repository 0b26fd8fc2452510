import { describe, expect, it } from 'vitest';
import { cleanedRows } from '../../core/picture/cleaned';
import type { Grey } from '../../core/picture/grey';

/** Paper that falls into shadow from left to right, with an upright line of ink every 20 pixels. */
function shaded(width: number, height: number): Grey {
  const data = new Float32Array(width * height);
  for (let i = 0; i < data.length; i++) {
    const x = i % width;
    data[i] = (0.9 - (0.5 * x) / width) * (x % 20 < 2 ? 0.3 : 1);
  }
  return { width, height, data };
}

describe('a picture cleaned up', () => {
  const grey = shaded(220, 170);
  const isInk = (i: number) => (i % grey.width) % 20 < 2;

  it.each(['even', 'contrast', 'black-and-white'] as const)('%s: the strips together are the picture', (how) => {
    const rowsOf = cleanedRows(grey, how);
    const whole = rowsOf({ from: 0, to: grey.height });
    const strips = [0, 70, 140].flatMap((from) => [...rowsOf({ from, to: Math.min(from + 70, grey.height) }).data]);
    expect(strips.length).toBe(whole.data.length);
    expect(strips.every((value, i) => Math.abs(value - (whole.data[i] as number)) < 1e-6)).toBe(true);
  });

  it.each(['even', 'contrast', 'black-and-white'] as const)('%s: paper in shadow is as light as in the sun', (how) => {
    const { data } = cleanedRows(grey, how)({ from: 0, to: grey.height });
    expect(data.every((value, i) => (isInk(i) ? value < 0.5 : value > 0.85))).toBe(true);
  });
});
