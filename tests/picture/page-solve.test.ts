import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../core/picture/page-solve';

describe('leastSquares', () => {
  it('gives the line of a worked example, and less to what weighs less', () => {
    // Through (0, 6), (0, 0), (6, 0) the line of least squares is y = 3 - x / 2, as (x̄, ȳ) = (2, 2) and Sxy / Sxx = -12 / 24.
    const places = [
      [0, 6],
      [0, 0],
      [6, 0],
    ] as const;
    const equations = places.map(([x, y]) => ({ row: [1, x], right: y, weight: 1 }));
    const found = leastSquares(equations, 2) ?? [];
    expect(found[0]).toBeCloseTo(3, 12);
    expect(found[1]).toBeCloseTo(-0.5, 12);
    const [at] =
      leastSquares(
        equations.map((each, k) => ({ ...each, row: [1], weight: k === 0 ? 1 : 0.25 })),
        1,
      ) ?? [];
    expect(at).toBeCloseTo(6 / 1.5, 12);
  });

  it('settles nothing when two unknowns only ever come together', () => {
    const equations = [3, 5, 7].map((right) => ({ row: [right, 2 * right], right, weight: 1 }));
    expect(leastSquares(equations, 2)).toBeUndefined();
    expect(leastSquares(equations, 2, 1e-6)).toBeDefined();
  });
});
