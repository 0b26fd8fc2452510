import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLength } from '../../core/units/read-length';
import { shareOut } from '../../core/units/share-out';
import { writeLength } from '../../core/units/write-length';

const inch = 25.4;

describe('writeLength writes as a dressmaker does', () => {
  it.each([
    [7.5 * inch, {}, '7 1/2 in'],
    [0.1875 * inch, {}, '3/16 in'],
    [-0.25 * inch, {}, '−1/4 in'],
    [-0.001, {}, '0 in'],
    [12 * inch, {}, '12 in'],
    [2.96 * inch, {}, '2 15/16 in'],
    [2.96 * inch, { step: 'eighth' }, '3 in'],
    [2.96 * inch, { step: 'thirtysecond' }, '2 31/32 in'],
  ] as const)('%d mm, %j: %s', (length, more, expected) => {
    expect(writeLength(length, { shownIn: 'in', spaces: 'typed', ...more })).toBe(expected);
  });

  it.each([
    [190.5, {}, '19.1 cm'],
    [190, {}, '19 cm'],
    [190.52, { step: 'tenth-millimetre' }, '19.05 cm'],
    [-3, {}, '−0.3 cm'],
    [100, {}, '10 cm'],
  ] as const)('%d mm, %j: %s', (length, more, expected) => {
    expect(writeLength(length, { shownIn: 'cm', spaces: 'typed', ...more })).toBe(expected);
  });

  it('has no space at which a line could break, and is read all the same', () => {
    expect(writeLength(1.25 * inch, { shownIn: 'in' })).toBe('1\u00a01/4\u00a0in');
    expect(writeLength(1.25 * inch, { shownIn: 'in', unit: 'left-off' })).toBe('1\u00a01/4');
    expect(writeLength(190, { shownIn: 'cm' })).toBe('19\u00a0cm');
    expect(readLength('1\u00a01/4\u00a0in', { bare: 'cm' })).toEqual({ kind: 'length', length: 1.25 * inch });
  });

  it('is read back to within half its step', () => {
    fc.assert(
      fc.property(fc.double({ min: -5000, max: 5000, noNaN: true }), fc.constantFrom('in', 'cm'), (length, shownIn) => {
        const read = readLength(writeLength(length, { shownIn }), { bare: shownIn });
        const halfStep = shownIn === 'in' ? inch / 32 : 0.5;
        return read.kind === 'length' && Math.abs(read.length - length) <= halfStep + 1e-6;
      }),
      { seed: 7 },
    );
  });
});

describe('shareOut', () => {
  it('shares 27 5/16 in into four parts that add up to it again', () => {
    const parts = shareOut(27.3125 * inch, 4, inch / 16);
    expect(parts.map((part) => Math.round((part / inch) * 16))).toEqual([109, 110, 109, 109]);
    expect(parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(27.3125 * inch, 9);
  });

  it('adds up to the rounded whole, with parts at most one step apart', () => {
    const steps = fc.constantFrom(inch / 16, inch / 8, 1);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 4000, noNaN: true }),
        fc.integer({ min: 1, max: 16 }),
        steps,
        (whole, count, step) => {
          const parts = shareOut(whole, count, step).map((part) => Math.round(part / step));
          const sum = parts.reduce((one, other) => one + other, 0);
          return sum === Math.round(whole / step) && Math.max(...parts) - Math.min(...parts) <= 1;
        },
      ),
      { seed: 7 },
    );
  });
});
