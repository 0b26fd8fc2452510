import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convexParts } from '../../core/cloth/convex-parts';
import { isConvexRing, type Ring, ringArea } from '../../core/geometry/polygon';

const rectangle = (wide: number, high: number): Ring => [
  { x: 0, y: 0 },
  { x: wide, y: 0 },
  { x: wide, y: high },
  { x: 0, y: high },
];

/** A yoke, hollow on one side: 12 wide, 8 high, the hollow 6 wide and 5 deep. */
const yoke: Ring = [
  { x: 0, y: 0 },
  { x: 3, y: 0 },
  { x: 3, y: 5 },
  { x: 9, y: 5 },
  { x: 9, y: 0 },
  { x: 12, y: 0 },
  { x: 12, y: 8 },
  { x: 0, y: 8 },
];

const star = fc.array(fc.integer({ min: 30, max: 210 }), { minLength: 4, maxLength: 10 }).map((reach) =>
  reach.map((r, i) => ({
    x: r * Math.cos((2 * Math.PI * i) / reach.length),
    y: r * Math.sin((2 * Math.PI * i) / reach.length),
  })),
);

describe('convexParts(ring)', () => {
  it('covers the ring with convex parts that add up to its area', () => {
    fc.assert(
      fc.property(star, (ring) => {
        const parts = convexParts(ring);
        const sum = parts.reduce((area, part) => area + ringArea(part), 0);
        expect(Math.abs(sum - Math.abs(ringArea(ring)))).toBeLessThan(1e-6);
        for (const part of parts) expect(isConvexRing(part) || ringArea(part) < 1e-6).toBe(true);
      }),
      { seed: 7 },
    );
  });

  it('leaves a convex ring whole and makes three of a yoke', () => {
    expect(convexParts([...rectangle(7, 11)].reverse())).toHaveLength(1);
    expect(convexParts(yoke)).toHaveLength(3);
    expect(convexParts([])).toEqual([]);
  });
});
