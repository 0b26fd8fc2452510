import { describe, expect, it } from 'vitest';
import { rootBetween } from '../../core/shaping/root';

describe('rootBetween', () => {
  it('finds the place within the accuracy asked for', () => {
    const root = rootBetween((x) => x * x - 2, 0, 3, 1e-9);
    expect(Math.abs((root ?? 0) - Math.SQRT2)).toBeLessThanOrEqual(1e-9);
    expect(rootBetween((x) => 5 - x, 5, 9, 1e-3)).toBe(5);
    expect(rootBetween((x) => 5 - x, 2, 5, 1e-3)).toBe(5);
  });

  it('ends at the finest a number can be', () => {
    expect(rootBetween((x) => x - 1e9 / 3, 0, 1e9, 0)).toBeCloseTo(1e9 / 3, 6);
  });

  it('has no answer without a change of sign', () => {
    expect(rootBetween((x) => x * x + 1, -1, 2, 1e-9)).toBeUndefined();
    expect(rootBetween(() => Number.NaN, -1, 2, 1e-9)).toBeUndefined();
  });
});
