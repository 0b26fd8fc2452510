import { describe, expect, it } from 'vitest';
import { solveCyclic, solveTridiagonal } from '../../core/geometry/tridiagonal';

const SYSTEM = { below: [0.5, 1, -1, 0.3], diagonal: [4, 5, 3, 2.5], above: [1, 2, 0.5, -0.7], right: [3, -1, 7, 2] };

describe('solveTridiagonal', () => {
  it('gives numbers that satisfy every row', () => {
    const x = solveTridiagonal(SYSTEM);
    SYSTEM.right.forEach((right, k) => {
      const sum =
        (k > 0 ? (SYSTEM.below[k] as number) * (x[k - 1] as number) : 0) +
        (SYSTEM.diagonal[k] as number) * (x[k] as number) +
        (k < 3 ? (SYSTEM.above[k] as number) * (x[k + 1] as number) : 0);
      expect(sum).toBeCloseTo(right, 12);
    });
  });
});

describe('solveCyclic', () => {
  it('ties the first unknown to the last', () => {
    const x = solveCyclic(SYSTEM);
    SYSTEM.right.forEach((right, k) => {
      const sum =
        (SYSTEM.below[k] as number) * (x[(k + 3) % 4] as number) +
        (SYSTEM.diagonal[k] as number) * (x[k] as number) +
        (SYSTEM.above[k] as number) * (x[(k + 1) % 4] as number);
      expect(sum).toBeCloseTo(right, 12);
    });
  });

  it('solves two unknowns, each the neighbour of the other twice', () => {
    // 4x + 3y = 10 and 5x + 6y = 17: x = 1, y = 2.
    const [x, y] = solveCyclic({ below: [1, 2], diagonal: [4, 6], above: [2, 3], right: [10, 17] });
    expect(x).toBeCloseTo(1, 12);
    expect(y).toBeCloseTo(2, 12);
  });
});
