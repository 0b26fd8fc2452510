import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convexParts } from '../../core/cloth/convex-parts';
import { isConvexRing, ringArea } from '../../core/geometry/polygon';
import { rectangle, star, yoke } from './rings';

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
