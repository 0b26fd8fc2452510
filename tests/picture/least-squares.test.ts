import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../core/picture/least-squares';

describe('leastSquares', () => {
  it('gives the line of the worked example of C. F. Gauss’s method in NIST’s Norris data, to nine figures', () => {
    // NIST/ITL Statistical Reference Datasets, linear regression, Norris: certified intercept and slope.
    const x = [
      0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5,
      11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1,
      448.9, 0.5,
    ];
    const y = [
      0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9,
      10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4,
      449.2, 0.2,
    ];
    const rows = Float64Array.from(x.flatMap((value) => [1, value]));
    const [intercept, slope] = leastSquares(rows, Float64Array.from(y), new Float64Array(36).fill(1)) ?? [];
    expect(Math.abs((intercept ?? 0) - -0.262323073774029)).toBeLessThan(1e-9);
    expect(Math.abs((slope ?? 0) - 1.00211681802045)).toBeLessThan(1e-11);
  });

  it('leaves rows of no weight out, and has no answer where an unknown is left open', () => {
    const rows = Float64Array.from([1, 2, 1, 5, 1, 9]);
    expect(
      leastSquares(rows, Float64Array.from([7, 13, 999]), Float64Array.from([1, 2, 0]))?.map(
        (v) => Math.round(v * 1e9) / 1e9,
      ),
    ).toEqual([3, 2]);
    expect(
      leastSquares(Float64Array.from([1, 2, 2, 4]), Float64Array.from([3, 6]), Float64Array.from([1, 1])),
    ).toBeUndefined();
    expect(leastSquares(new Float64Array(0), new Float64Array(0), new Float64Array(0))).toBeUndefined();
  });
});
