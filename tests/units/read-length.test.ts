import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLength } from '../../core/units/read-length';

const inch = 25.4;

describe('readLength reads lengths as people write them', () => {
  it.each([
    ['7 1/2', 7.5 * inch],
    ['7½', 7.5 * inch],
    ['7 ½', 7.5 * inch],
    ['7.5', 7.5 * inch],
    ['7,5', 7.5 * inch],
    ['7-1/2', 7.5 * inch],
    ['7 - 1/2', 7.5 * inch],
    ['7 1⁄2', 7.5 * inch],
    ['7 1/2"', 7.5 * inch],
    ['7½″', 7.5 * inch],
    ['7 1/2 in', 7.5 * inch],
    ['7 1/2 in.', 7.5 * inch],
    ['7 1/2 inches', 7.5 * inch],
    ['½', 0.5 * inch],
    ['5/8', 0.625 * inch],
    ['2 5/8"', 2.625 * inch],
    ['2⅝', 2.625 * inch],
    ['⅓', inch / 3],
    ['2 2/3', (8 / 3) * inch],
    ['3\' 2"', 38 * inch],
    ["3'2", 38 * inch],
    ['3′ 2½″', 38.5 * inch],
    ['3 ft 2 in', 38 * inch],
    ['1\'3"', 15 * inch],
    ["2'", 24 * inch],
    ['2 1/2 yd', 90 * inch],
    ['1 yd 9 in', 45 * inch],
    ['3 nails', 6.75 * inch],
    ['19 cm', 190],
    ['19cm', 190],
    ['190 mm', 190],
    ['190mm', 190],
    ['6,7 cm', 67],
    ['1.2 m', 1200],
    ['1 m 20', 1200],
    ['.5', 0.5 * inch],
    ['0', 0],
    ['  8  ', 8 * inch],
    ['-1/4', -0.25 * inch],
    ['− 1/4', -0.25 * inch],
    ["14''", 14 * inch],
    [',5', 0.5 * inch],
    ['5´ 3', 63 * inch],
    ['1⅒', 1.1 * inch],
    ['2 yd 1 ft 3 in', 87 * inch],
    ['45 centimetres', 450],
    ['1.5 Meters', 1500],
    ['19 cm 5 mm', 195],
    ['1 m 20,5', 1205],
    ['−7½', -7.5 * inch],
  ])('%s', (text, expected) => {
    expect(readLength(text, { bare: 'in' })).toEqual({ kind: 'length', length: expect.closeTo(expected, 9) });
  });

  it('takes a bare number for centimetres where the garment is in centimetres', () => {
    expect(readLength('19,5', { bare: 'cm' })).toEqual({ kind: 'length', length: expect.closeTo(195, 9) });
    expect(readLength('7 1/2 in', { bare: 'cm' })).toEqual({ kind: 'length', length: expect.closeTo(190.5, 9) });
  });

  it('keeps feet, yards and nails exact to the last figure', () => {
    expect(readLength('1 yd', { bare: 'in' })).toEqual({ kind: 'length', length: 914.4 });
    expect(readLength('1 ft', { bare: 'in' })).toEqual({ kind: 'length', length: 304.8 });
    expect(readLength('1 nail', { bare: 'in' })).toEqual({ kind: 'length', length: 57.15 });
  });

  it('never answers with anything but a finite length or a reason, whatever is typed', () => {
    const typed = fc.string({ unit: fc.constantFrom(...'0123456789.,-−/ ½⅝\'"′incmftydal+e'), maxLength: 14 });
    fc.assert(
      fc.property(typed, (text) => {
        const read = readLength(text, { bare: 'cm' });
        return read.kind === 'refused' || (Number.isFinite(read.length) && !Object.is(read.length, -0));
      }),
      { seed: 7, numRuns: 2000 },
    );
  });

  it.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['seven', 'not-a-length'],
    ['7 8', 'not-a-length'],
    ['9,8,7', 'two-points'],
    ['1..2', 'two-points'],
    ['1.000,5 cm', 'two-points'],
    ['1 000 mm', 'not-a-length'],
    ['7 8 mm', 'not-a-length'],
    ['-', 'not-a-length'],
    ['5-7', 'not-a-length'],
    ['7 in 1/2', 'not-a-length'],
    ['1e999', 'not-a-length'],
    ['2 in 3 ft', 'not-a-length'],
    ['7 1/2 x 3', 'not-a-length'],
    ['NaN', 'not-a-length'],
    ['1/0', 'division-by-zero'],
    ['3 2/0 in', 'division-by-zero'],
    ['99999999 yd', 'too-large'],
  ])('refuses %j and says why', (text, why) => {
    expect(readLength(text, { bare: 'in' })).toEqual({ kind: 'refused', why });
  });
});
