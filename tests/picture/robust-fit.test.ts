import { describe, expect, it } from 'vitest';
import { bowAt, robustBow } from '../../core/picture/robust-fit';

describe('robustBow', () => {
  it('finds a cubic though a quarter of the readings are wild, and leaves those out', () => {
    const count = 80;
    const at = Float64Array.from({ length: count }, (_, i) => (2 * i) / (count - 1) - 1);
    const truth = (t: number) => 3 - 2 * t + 5 * t * t - 4 * t ** 3;
    const values = at.map((t, i) => (i % 4 === 1 ? 20 + (i % 7) : truth(t)));
    const fit = robustBow(at, values, new Float64Array(count).fill(1), { degree: 3, noise: 0.01 });
    for (const t of [-1, -0.37, 0.2, 0.91]) expect(Math.abs(bowAt(fit?.terms ?? [], t) - truth(t))).toBeLessThan(1e-6);
    expect(fit?.weights.filter((weight) => weight === 0).length).toBe(20);
  });

  it('has no answer for fewer readings than terms', () => {
    const two = Float64Array.from([-1, 1]);
    expect(robustBow(two, two, Float64Array.from([1, 1]), { degree: 2, noise: 0.1 })).toBeUndefined();
  });
});

describe('bowAt', () => {
  it('sums Chebyshev terms: T0 to T4 at 0.3 by their closed form cos(k arccos t)', () => {
    const terms = [2, -3, 5, 7, -11];
    const sum = terms.reduce((total, term, k) => total + term * Math.cos(k * Math.acos(0.3)), 0);
    expect(Math.abs(bowAt(terms, 0.3) - sum)).toBeLessThan(1e-12);
  });
});
