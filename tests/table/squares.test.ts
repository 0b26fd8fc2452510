import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rulingFor, SQUARES } from '../../app/table/squares';

describe('rulingFor', () => {
  it('numbers every square when there is room and thins out to 2, 5, 10, 20', () => {
    const numbers = [30, 14, 7, 3, 1.4].map((px) => rulingFor(px, SQUARES.in).numberEvery);
    expect(numbers).toEqual([1, 2, 5, 10, 20]);
  });

  it('rules halves, quarters and eighths of an inch as it comes nearer', () => {
    const parts = [20, 32, 64, 130].map((px) => rulingFor(px, SQUARES.in).parts);
    expect(parts).toEqual([1, 2, 4, 8]);
  });

  it('rules centimetres, halves of them and millimetres in a square of two centimetres', () => {
    const parts = [20, 40, 70, 320].map((px) => rulingFor(px, SQUARES.cm).parts);
    expect(parts).toEqual([1, 2, 4, 20]);
  });

  it('always leaves 7 pixels between lines and 27 between numbers, and numbers only what is ruled', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 5000, noNaN: true }), fc.constantFrom('in', 'cm'), (px, unit) => {
        const { every, numberEvery, parts } = rulingFor(px, SQUARES[unit]);
        expect(every * px).toBeGreaterThanOrEqual(7);
        expect(numberEvery * px).toBeGreaterThanOrEqual(27);
        expect(numberEvery % every).toBe(0);
        expect(parts === 1 || px / parts >= 15).toBe(true);
      }),
      { seed: 7 },
    );
  });
});
