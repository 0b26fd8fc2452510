import { describe, expect, it } from 'vitest';
import { gapsBridged } from '../../core/picture/ink-gaps';

const PAPER = 24;
const INK = 2;
const OVER = 5;
const [width, height] = [90, 70];

/** Costs with ink where asked, and what they are when the gaps are bridged. */
function bridged(isInk: (x: number, y: number) => boolean): (x: number, y: number) => number {
  const cost = Uint8Array.from({ length: width * height }, (_, i) =>
    isInk(i % width, Math.floor(i / width)) ? INK : PAPER,
  );
  const after = gapsBridged(cost, { width, height, ink: INK, over: OVER });
  return (x, y) => after[y * width + x] as number;
}

const inDash = (along: number) => along >= 10 && along < 70 && (along - 10) % 25 < 14;

describe('gapsBridged', () => {
  it('makes the gaps of a dashed line cheap, level and upright, and leaves its dashes', () => {
    const level = bridged((x, y) => Math.abs(y - 31) <= 1 && inDash(x));
    const upright = bridged((x, y) => Math.abs(x - 43) <= 1 && inDash(y));
    for (let along = 10; along < 60; along++) {
      expect(level(along, 31)).toBe(inDash(along) ? INK : OVER);
      expect(upright(43, along)).toBe(inDash(along) ? INK : OVER);
    }
  });

  it('makes those of a slanting line cheap', () => {
    const slope = 0.6;
    const seen = bridged((x, y) => Math.abs(y - 9 - slope * x) <= 1.5 && inDash(x));
    for (let x = 10; x < 60; x++) {
      const middle = Math.round(9 + slope * x);
      expect(Math.min(...[-1, 0, 1].map((off) => seen(x, middle + off)))).toBeLessThanOrEqual(OVER);
    }
  });

  it('leaves the paper beside a line and beyond its ends', () => {
    const seen = bridged((x, y) => Math.abs(y - 31) <= 1 && inDash(x));
    for (const [x, y] of [
      [40, 38],
      [40, 24],
      [3, 31],
      [81, 31],
    ] as const) {
      expect(seen(x, y)).toBe(PAPER);
    }
  });

  it('leaves the paper between lines that run side by side, and a gap that is too long', () => {
    const beside = bridged((_, y) => Math.abs(y - 20) <= 1 || Math.abs(y - 33) <= 1);
    for (let x = 0; x < width; x++) expect(beside(x, 26)).toBe(PAPER);
    const far = bridged((x, y) => Math.abs(y - 31) <= 1 && (x < 30 || x > 56));
    expect(far(43, 31)).toBe(PAPER);
  });
});
