import { describe, expect, it } from 'vitest';
import { distance, type Point } from '../../core/geometry/point';
import { largestQuadIn, leastQuadRound, topLeftFirst } from '../../core/picture/quad-of-hull';

const QUAD = [
  { x: 20, y: 10 },
  { x: 180, y: 25 },
  { x: 170, y: 140 },
  { x: 5, y: 120 },
] as const;

/** The quad with its third corner cut off. */
const CUT: readonly Point[] = [QUAD[0], QUAD[1], { x: 172, y: 117 }, { x: 137, y: 136 }, QUAD[3]];

function worst(found: readonly Point[] | undefined): number {
  return Math.max(...QUAD.map((corner, i) => distance(corner, found?.[i] ?? { x: 1e9, y: 0 })));
}

describe('largestQuadIn', () => {
  it('gives the corners back, though points lie along the sides', () => {
    const along = QUAD.flatMap((corner, i) => {
      const next = QUAD[(i + 1) % 4] as Point;
      return [0, 0.3, 0.7].map((t) => ({
        x: corner.x + (next.x - corner.x) * t,
        y: corner.y + (next.y - corner.y) * t,
      }));
    });
    expect(worst(largestQuadIn(along))).toBeLessThan(1e-9);
  });

  it('has no answer for a triangle', () => {
    expect(largestQuadIn(CUT.slice(0, 3))).toBeUndefined();
  });
});

describe('leastQuadRound', () => {
  it('puts back a corner that is folded away', () => {
    expect(worst(leastQuadRound(CUT))).toBeLessThan(1);
    expect(worst(largestQuadIn(CUT))).toBeGreaterThan(15);
  });
});

describe('topLeftFirst', () => {
  it('turns the order, never the way round', () => {
    for (let k = 0; k < 4; k++) {
      const turned = [0, 1, 2, 3].map((i) => QUAD[(i + k) % 4]) as unknown as typeof QUAD;
      expect(topLeftFirst(turned)).toEqual(QUAD);
    }
  });
});
