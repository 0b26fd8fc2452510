import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convexSum, depthInConvex } from '../../core/cloth/convex-sum';
import { noFit } from '../../core/cloth/no-fit';
import type { Point } from '../../core/geometry/point';
import { placeInRing, type Ring, ringArea } from '../../core/geometry/polygon';
import { commonAreas } from '../../core/geometry/polygon-boolean';
import { rectangle, star, sumsOfParts, yoke } from './rings';

describe('convexSum(a, b)', () => {
  it('has the area of both and twice their mixed area: for rectangles (a + c)(b + d)', () => {
    expect(ringArea(convexSum(rectangle(7, 11), rectangle(3, 5)))).toBeCloseTo(10 * 16, 9);
  });

  it('of a triangle and its opposite is six times its area', () => {
    // The difference body of a triangle: Rogers and Shephard, "The difference body of a convex body" (1957).
    const triangle: Ring = [
      { x: 0, y: 0 },
      { x: 13, y: 2 },
      { x: 4, y: 9 },
    ];
    const opposite = triangle.map(({ x, y }) => ({ x: -x, y: -y }));
    expect(ringArea(convexSum(triangle, opposite))).toBeCloseTo(6 * ringArea(triangle), 9);
  });
});

describe('noFit(stays, moves)', () => {
  it('of a yoke and a block that goes into its hollow leaves the hollow free', () => {
    // The block is 4 by 2; in the hollow, 6 by 5, its corner has a slot 2 wide, and reaches 5 - 2 = 3 down from the top.
    const rings = noFit(yoke, rectangle(4, 2));
    const area = rings.reduce((sum, ring) => sum + ringArea(ring), 0);
    expect(area).toBeCloseTo((12 + 4) * (8 + 2) - 2 * 5, 4);
    const overlaps = (x: number, y: number) => rings.some((ring) => placeInRing(ring, { x, y }) === 'inside');
    expect(overlaps(4, 2.9)).toBe(false);
    expect(overlaps(4, 3.1)).toBe(true);
    expect(overlaps(2.9, 2)).toBe(true);
  });

  it('holds a move just where clipping finds that the shapes overlap', () => {
    const move = fc.tuple(fc.integer({ min: -400, max: 400 }), fc.integer({ min: -400, max: 400 }));
    fc.assert(
      fc.property(star, star, move, (a, b, [dx, dy]) => {
        const rings = noFit(a, b);
        const parts = sumsOfParts(a, b);
        const moved = b.map(({ x, y }) => ({ x: x + dx, y: y + dy }));
        const common = commonAreas([a], [moved]);
        if (common.kind === 'unsure') return;
        const area = common.rings.reduce((sum, ring) => sum + ringArea(ring), 0);
        const depth = Math.max(...parts.map((part) => depthInConvex(part, { x: dx, y: dy })));
        // Both ways of asking agree, but for a touch.
        if (Math.abs(depth) < 0.01) return;
        expect(area > 1e-3).toBe(depth > 0);
        expect(windings(rings, { x: dx, y: dy }) > 0).toBe(depth > 0);
      }),
      { seed: 7, numRuns: 200 },
    );
  });
});

describe('noFit(stays, moves) of combs, whose sides lie level on one another', () => {
  /** Teeth of chance heights in steps of 10. */
  const comb = fc
    .array(fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 9 })), { minLength: 2, maxLength: 6 })
    .map((teeth): Ring => {
      let x = 0;
      const tops = teeth.flatMap(([wide, high]) => {
        const from = x;
        x += 10 * wide;
        return [
          { x: from, y: -10 * high },
          { x, y: -10 * high },
        ];
      });
      return [{ x: 0, y: 0 }, ...tops, { x, y: 0 }];
    });

  it('goes round every place of the convex sums just once, and has no side elsewhere', () => {
    const place = fc.tuple(fc.integer({ min: -40, max: 40 }), fc.integer({ min: -20, max: 20 }));
    fc.assert(
      fc.property(comb, comb, fc.array(place, { minLength: 30, maxLength: 30 }), (a, b, places) => {
        const rings = noFit(a, b);
        const parts = sumsOfParts(a, b);
        // Corners stand on whole tens: so far off them nothing can be on a side.
        for (const [x, y] of places.map(([i, j]) => [10 * i + 4, 10 * j + 3] as const)) {
          const depth = Math.max(...parts.map((part) => depthInConvex(part, { x, y })));
          expect(windings(rings, { x, y })).toBe(depth > 0 ? 1 : 0);
        }
        const off = (v: number) => Math.abs(v - 10 * Math.round(v / 10));
        for (const { x, y } of rings.flat()) expect(Math.min(off(x), off(y))).toBeLessThan(1e-4);
        const area = rings.reduce((sum, ring) => sum + ringArea(ring), 0);
        expect(Math.abs(area - 100 * Math.round(area / 100))).toBeLessThan(0.1);
      }),
      { seed: 7, numRuns: 120 },
    );
  });
});

/** How often outer rings go round a point, less how often holes do. */
function windings(rings: readonly Ring[], point: Point): number {
  return rings
    .filter((ring) => placeInRing(ring, point) === 'inside')
    .reduce((sum, ring) => sum + Math.sign(ringArea(ring)), 0);
}
