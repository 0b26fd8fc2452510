import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyHomography, type Homography, homographyFrom, type PointPair } from '../../core/geometry/projective';
import { bestHomography } from '../../core/picture/page-homography';

// The map of a worked example with exact fractions: (0, 0) goes to (10, 20) and (200, 0) to (1025/3, 200/3).
const EXAMPLE: Homography = [2, 0.5, 10, 0.3, 1.8, 20, 0.001, 0.002, 1];

function pairsWith(slips: readonly number[]): PointPair[] {
  return Array.from({ length: 12 }, (_, k) => {
    const from = { x: (k % 4) * 61, y: Math.floor(k / 4) * 83 };
    const to = applyHomography(EXAMPLE, from) ?? { x: 0, y: 0 };
    return { from, to: { x: to.x + (slips[2 * k] ?? 0), y: to.y + (slips[2 * k + 1] ?? 0) } };
  });
}

function squares(map: Homography, pairs: readonly PointPair[]): number {
  return pairs.reduce((sum, { from, to }) => {
    const seen = applyHomography(map, from) ?? { x: 1e9, y: 1e9 };
    return sum + (seen.x - to.x) ** 2 + (seen.y - to.y) ** 2;
  }, 0);
}

describe('bestHomography', () => {
  it('is the map itself for pairs without slips', () => {
    const map = bestHomography(pairsWith([])) as Homography;
    const seen = applyHomography(map, { x: 200, y: 0 });
    expect(seen?.x).toBeCloseTo(1025 / 3, 7);
    expect(seen?.y).toBeCloseTo(200 / 3, 7);
  });

  it('misses by no more than the direct linear transform, and by more when any number of it is moved', () => {
    const slips = fc.array(fc.double({ min: -2, max: 2, noNaN: true }), { minLength: 24, maxLength: 24 });
    fc.assert(
      fc.property(slips, (each) => {
        const pairs = pairsWith(each);
        const best = bestHomography(pairs) as Homography;
        const least = squares(best, pairs);
        expect(least).toBeLessThanOrEqual(squares(homographyFrom(pairs) as Homography, pairs) + 1e-9);
        for (let k = 0; k < 8; k++) {
          for (const by of [1 + 1e-4, 1 - 1e-4]) {
            const moved = best.map((number, i) => (i === k ? number * by : number)) as unknown as Homography;
            expect(squares(moved, pairs)).toBeGreaterThanOrEqual(least - 1e-9);
          }
        }
      }),
      { numRuns: 20, seed: 3 },
    );
  });

  it('hands on why there is none', () => {
    const inLine = pairsWith([]).map(({ to }, k) => ({ from: { x: k, y: 2 * k }, to }));
    expect(bestHomography(inLine)).toMatchObject({ kind: 'degenerate' });
  });
});
