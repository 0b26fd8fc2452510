import { describe, expect, it } from 'vitest';
import { blackAndWhite, evenLight, levelsOf, PAPER, withContrast } from '../../core/picture/clean-up';

/** Paper under light that falls from 230 on the left to 110 on the right, with a line of ink a third as bright every 20 rows. */
function unevenPage() {
  const [width, height] = [240, 160];
  const data = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const light = 230 - x / 2;
      data[y * width + x] = y % 20 < 2 ? light / 3 : light;
    }
  }
  return { width, height, data };
}

const isInk = (y: number) => y % 20 < 2;

describe('evenLight', () => {
  it('brings paper within 12 levels of its own grey everywhere, ink to a third of it, and leaves the picture alone', () => {
    const page = unevenPage();
    const before = page.data.slice();
    const even = evenLight(page, { blockPx: 24 });
    expect(page.data).toEqual(before);
    for (const [x, y] of [
      [9, 30],
      [120, 71],
      [231, 150],
    ] as const) {
      expect(Math.abs((even.data[y * 240 + x] as number) - PAPER)).toBeLessThanOrEqual(12);
    }
    for (const [x, y] of [
      [14, 40],
      [200, 101],
    ] as const) {
      expect(Math.abs((even.data[y * 240 + x] as number) - PAPER / 3)).toBeLessThanOrEqual(12);
    }
  });
});

describe('blackAndWhite', () => {
  it('tells ink from paper though paper on the dark side is no lighter than a stain on the bright side', () => {
    const bw = blackAndWhite(unevenPage(), { windowPx: 18, darkerBy: 0.2 });
    let wrong = 0;
    for (let y = 10; y < 150; y++) for (let x = 0; x < 240; x++) if ((bw.data[y * 240 + x] === 0) !== isInk(y)) wrong++;
    expect(wrong).toBe(0);
  });
});

describe('levelsOf and withContrast', () => {
  it('stretch the levels that are there to all of black and white', () => {
    const data = Uint8Array.from({ length: 100 }, (_, i) => 60 + i);
    const levels = levelsOf({ width: 20, height: 5, data }, { dark: 0.05, light: 0.1 });
    expect(levels).toEqual({ black: 65, white: 149 });
    const stretched = withContrast({ width: 20, height: 5, data }, levels).data;
    expect([stretched[0], stretched[5], stretched[47], stretched[89], stretched[99]]).toEqual([0, 0, 128, 255, 255]);
  });

  it('leave a flat picture as it is', () => {
    const data = new Uint8Array(12).fill(77);
    const picture = { width: 4, height: 3, data };
    expect(withContrast(picture, levelsOf(picture, { dark: 0.01, light: 0.01 })).data).toEqual(data);
  });
});
