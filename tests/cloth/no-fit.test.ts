import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convexParts } from '../../core/cloth/convex-parts';
import { convexSum, depthInConvex, noFit } from '../../core/cloth/no-fit';
import type { Point } from '../../core/geometry/point';
import { placeInRing, type Ring, ringArea } from '../../core/geometry/polygon';
import { commonAreas } from '../../core/geometry/polygon-boolean';
import { rectangle, star, yoke } from './rings';

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
    const { rings } = noFit(convexParts(yoke), convexParts(rectangle(4, 2)));
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
        const { rings, parts } = noFit(convexParts(a), convexParts(b));
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

/** How often outer rings go round a point, less how often holes do. */
function windings(rings: readonly Ring[], point: Point): number {
  return rings
    .filter((ring) => placeInRing(ring, point) === 'inside')
    .reduce((sum, ring) => sum + Math.sign(ringArea(ring)), 0);
}
