import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { line } from '../../core/geometry/segment';
import { Ink } from '../../core/paper/pdf-ink';

describe('Ink', () => {
  // ISO 32000-1, 7.3.3: a number is digits with perhaps a sign and a point, never an exponent.
  it('writes numbers as PDF has them, within half a thousandth', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
        const text = Ink.number(value);
        expect(text).toMatch(/^-?\d+(\.\d{1,3})?$/);
        expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(0.000501);
      }),
      { seed: 7 },
    );
  });

  it.each([
    [1e-7, '0'],
    [-1e-7, '0'],
    [100, '100'],
    [-2.5, '-2.5'],
  ])('writes %f as %s', (value, text) => {
    expect(Ink.number(value)).toBe(text);
  });

  it('draws a path by its stretches', () => {
    const path = [line({ x: 1, y: 2 }, { x: 3, y: 4 }), line({ x: 3, y: 4 }, { x: 5, y: 7 })];
    expect(new Ink().path(path).toString()).toBe('1 2 m\n3 4 l\n5 7 l\nS');
  });
});
