import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { polynomialAt, polynomialDerivative, polynomialRoots } from '../../core/geometry/polynomial';

/** The coefficients of the product of (t - r) over the roots. */
function withRoots(roots: readonly number[]): number[] {
  let product = [1];
  for (const root of roots) {
    const shifted = [0, ...product];
    product = shifted.map((each, i) => each - root * (product[i] ?? 0));
  }
  return product;
}

describe('polynomialRoots', () => {
  it('finds the roots it was made from, of any degree up to five', () => {
    const root = fc.integer({ min: 1, max: 39 }).map((n) => n / 40);
    fc.assert(
      fc.property(fc.uniqueArray(root, { minLength: 1, maxLength: 5 }), (roots) => {
        const found = polynomialRoots(withRoots(roots));
        expect(found.length).toBe(roots.length);
        roots
          .sort((a, b) => a - b)
          .forEach((wanted, i) => {
            expect(Math.abs((found[i] as number) - wanted)).toBeLessThan(1e-9);
          });
      }),
      { seed: 7 },
    );
  });

  it('leaves out roots outside the interval', () => {
    const found = polynomialRoots(withRoots([-0.5, 0.25, 1.5]));
    expect(found.length).toBe(1);
    expect(found[0]).toBeCloseTo(0.25, 14);
    expect(polynomialRoots(withRoots([-0.5, 0.25, 1.5]), 1, 2)[0]).toBeCloseTo(1.5, 14);
  });

  it('gives no root for constants, and the single root of what is really a line', () => {
    expect(polynomialRoots([0, 0, 0])).toEqual([]);
    expect(polynomialRoots([3])).toEqual([]);
    expect(polynomialRoots([-0.3, 2, 0, 0])[0]).toBeCloseTo(0.15, 15);
  });

  it('holds where coefficients are very large, very small or nearly vanish', () => {
    expect(polynomialRoots([-0.5e300, 1e300, 0])).toEqual([0.5]);
    expect(polynomialRoots([-0.5e-300, 1e-300])).toEqual([0.5]);
    expect(polynomialRoots([-0.5, 1, 1e-18])[0]).toBeCloseTo(0.5, 15);
  });
});

describe('polynomialAt and polynomialDerivative', () => {
  it('follow the textbook', () => {
    expect(polynomialAt([5, -3, 2], 4)).toBe(25);
    expect(polynomialDerivative([5, -3, 2, 7])).toEqual([-3, 4, 21]);
  });
});
