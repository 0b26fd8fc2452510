import { describe, expect, it } from 'vitest';
import { chartLength } from '../../core/cloth/yardage-chart';
import { inches, MM_PER_YARD } from '../../core/units/inch';

const yards = (length: number | undefined) => length && length / MM_PER_YARD;

describe('chartLength(length, from, to)', () => {
  // Read off the chart as posted at greenspun.com: another copy of single figures, not the table of the program.
  it.each([
    [1.75, 36, 60, 1],
    [2.5, 36, 39, 2.25],
    [2.5, 36, 45, 2.125],
    [2.875, 36, 54, 1.875],
    [3.75, 36, 50, 2.625],
    [4.25, 36, 42, 3.375],
    [5, 36, 66, 2.75],
    [2.75, 39, 36, 3.125],
    [3.125, 45, 60, 2.375],
    [2.375, 54, 45, 2.875],
  ])('%f yd of %d in is %s in wide: %f yd', (length, from, to, found) => {
    expect(yards(chartLength(length * MM_PER_YARD, inches(from), inches(to)))).toBeCloseTo(found, 9);
  });

  it('goes up to an eighth between two rows, takes 35 in for 36 and 44 for 45, and ends where the chart does', () => {
    // 2 1/8 of 36 lies between 2 (1 3/4 of 39) and 2 1/4 (2 of 39): 1 7/8.
    expect(yards(chartLength(2.125 * MM_PER_YARD, inches(36), inches(39)))).toBeCloseTo(1.875, 9);
    expect(chartLength(2 * MM_PER_YARD, inches(35), inches(44))).toBe(
      chartLength(2 * MM_PER_YARD, inches(36), inches(45)),
    );
    expect(chartLength(6 * MM_PER_YARD, inches(36), inches(45))).toBeUndefined();
    expect(chartLength(1 * MM_PER_YARD, inches(36), inches(45))).toBeUndefined();
    expect(chartLength(2 * MM_PER_YARD, inches(27), inches(45))).toBeUndefined();
    expect(chartLength(2 * MM_PER_YARD, inches(36), inches(72))).toBeUndefined();
  });

  it('keeps near the same area: the chart itself is within 5/8 yd of it, and a tenth of a yard at most on the whole', () => {
    const lengths = [1.75, 2, 2.25, 2.5, 2.875, 3.125, 3.375, 3.75, 4.25, 4.5, 4.75, 5];
    const off = lengths.flatMap((length) =>
      [39, 42, 45, 50, 54, 60, 66].map(
        (width) =>
          (yards(chartLength(length * MM_PER_YARD, inches(36), inches(width))) ?? Number.NaN) - (length * 36) / width,
      ),
    );
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(0.625);
    expect(Math.abs(off.reduce((sum, one) => sum + one, 0) / off.length)).toBeLessThan(0.1);
  });
});
