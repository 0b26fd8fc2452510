import fc from 'fast-check';
import { expect, it } from 'vitest';
import { shareOut } from '../../core/units/share-out';

it('shareOut gives 10 in over 3 parts in eighths as 27, 26 and 27 eighths, in some order', () => {
  const parts = shareOut(254, 3, 25.4 / 8).map((each) => Math.round(each / (25.4 / 8)));
  expect(parts.toSorted()).toEqual([26, 27, 27]);
});

it('shareOut adds up to the whole in steps, and no two parts differ by more than a step', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 5000 }), fc.integer({ min: 1, max: 17 }), (steps, parts) => {
      const shared = shareOut(steps * 1.5875, parts, 1.5875).map((each) => Math.round(each / 1.5875));
      expect(shared.reduce((sum, each) => sum + each, 0)).toBe(steps);
      expect(Math.max(...shared) - Math.min(...shared)).toBeLessThanOrEqual(1);
    }),
    { seed: 7 },
  );
});
