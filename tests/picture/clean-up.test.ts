import { describe, expect, it } from 'vitest';
import { blackAndWhite, contrasted, evened, levelsOf, paperLight, type Rows } from '../../core/picture/clean-up';
import type { Grey } from '../../core/picture/grey';

const [width, height] = [140, 97];

/** Paper that grows darker to the lower right, with an inked line every 11 pixels. */
function shaded(): Grey {
  const data = Float32Array.from({ length: width * height }, (_, at) => {
    const [x, y] = [at % width, Math.floor(at / width)];
    const paper = 0.9 - 0.004 * x - 0.001 * y;
    return x % 11 === 5 ? paper * 0.35 : paper;
  });
  return { width, height, data };
}

function inStrips(work: (rows: Rows) => Grey): number[] {
  return [0, 31, 64].flatMap((from, k) => [...work({ from, to: [31, 64, height][k] as number }).data]);
}

describe('clean-up', () => {
  const grey = shaded();

  it('evens light and shadow: paper white everywhere, ink as dark everywhere', () => {
    const { data } = evened(grey, paperLight(grey));
    for (const y of [3, 48, 93]) {
      for (const x of [8, 63, 129]) expect(data[y * width + x]).toBeGreaterThan(0.94);
      for (const x of [5, 71, 126]) expect(Math.abs((data[y * width + x] as number) - 0.35)).toBeLessThan(0.03);
    }
  });

  it('makes ink black and paper white', () => {
    const { data } = contrasted(grey, { black: 0.2, white: 0.7 });
    expect(data[0]).toBe(1);
    expect(data[5]).toBeCloseTo((0.88 * 0.35 - 0.2) / 0.5, 5);
    const levels = levelsOf(grey);
    expect(levels.black).toBeLessThan(0.2);
    expect(levels.white).toBeGreaterThan(0.5);
    const blank = levelsOf({ width: 9, height: 7, data: new Float32Array(63).fill(0.4) });
    expect(blank.white - blank.black).toBeCloseTo(0.1, 6);
  });

  it('takes the threshold of Sauvola and Pietikäinen, m (1 + k (s / R - 1)), worked out pixel by pixel', () => {
    const options = { reach: 7, strictness: 0.34 };
    const { data } = blackAndWhite(grey, options);
    for (const [x, y] of [
      [0, 0],
      [5, 3],
      [60, 50],
      [82, 96],
      [139, 40],
    ] as const) {
      const near: number[] = [];
      for (let v = Math.max(0, y - 7); v <= Math.min(height - 1, y + 7); v++) {
        for (let u = Math.max(0, x - 7); u <= Math.min(width - 1, x + 7); u++)
          near.push(grey.data[v * width + u] as number);
      }
      const mean = near.reduce((sum, each) => sum + each, 0) / near.length;
      const spread = Math.sqrt(near.reduce((sum, each) => sum + (each - mean) ** 2, 0) / near.length);
      const isInk = (grey.data[y * width + x] as number) < mean * (1 + 0.34 * (spread / 0.5 - 1));
      expect(data[y * width + x]).toBe(isInk ? 0 : 1);
    }
    for (let at = 0; at < data.length; at++) expect(data[at]).toBe((at % width) % 11 === 5 ? 0 : 1);
  });

  it('gives the same in strips as in one', () => {
    const light = paperLight(grey);
    expect(inStrips((rows) => evened(grey, light, rows))).toEqual([...evened(grey, light).data]);
    const levels = { black: 0.3, white: 0.8 };
    expect(inStrips((rows) => contrasted(grey, levels, rows))).toEqual([...contrasted(grey, levels).data]);
    const ink = { reach: 9, strictness: 0.3 };
    expect(inStrips((rows) => blackAndWhite(grey, ink, rows))).toEqual([...blackAndWhite(grey, ink).data]);
  });
});
