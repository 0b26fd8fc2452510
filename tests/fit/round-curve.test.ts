import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundCurve } from '../../core/fit/round-curve';

describe('roundCurve', () => {
  it('passes every reading, never leaves the span of two neighbours, and closes', () => {
    const readings = fc.array(fc.double({ min: -40, max: 40, noNaN: true }), { minLength: 2, maxLength: 8 });
    fc.assert(
      fc.property(readings, fc.constantFrom('smooth' as const, 'even' as const), (values, spread) => {
        const curve = roundCurve(
          values.map((value, i) => ({ at: i / values.length, value })),
          spread,
        );
        if (!curve) throw new Error('no curve');
        for (const [i, value] of values.entries()) {
          expect(curve(i / values.length)).toBeCloseTo(value, 9);
          const next = values[(i + 1) % values.length] ?? value;
          for (const t of [0.1, 0.37, 0.8]) {
            const at = curve((i + t) / values.length);
            expect(at).toBeGreaterThanOrEqual(Math.min(value, next) - 1e-9);
            expect(at).toBeLessThanOrEqual(Math.max(value, next) + 1e-9);
          }
        }
        expect(curve(1)).toBeCloseTo(curve(0), 9);
      }),
      { seed: 7, numRuns: 100 },
    );
  });

  it('is flat at a highest and a lowest reading, so that a centre stays square', () => {
    const curve = roundCurve(
      [
        { at: 0, value: 38 },
        { at: 0.25, value: 39 },
        { at: 0.5, value: 39.5 },
        { at: 0.75, value: 39 },
      ],
      'smooth',
    );
    const slope = (at: number) => ((curve?.(at + 1e-6) ?? 0) - (curve?.(at - 1e-6) ?? 9)) / 2e-6;
    expect(Math.abs(slope(0))).toBeLessThan(1e-4);
    expect(Math.abs(slope(0.5))).toBeLessThan(1e-4);
    expect(slope(0.25)).toBeGreaterThan(1);
  });

  it('is one reading all round, and nothing without any', () => {
    expect(roundCurve([{ at: 0.3, value: 7 }], 'smooth')?.(0.9)).toBe(7);
    expect(roundCurve([], 'even')).toBeUndefined();
  });
});
