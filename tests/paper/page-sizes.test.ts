import { describe, expect, it } from 'vitest';
import { PAPER_SIZES } from '../../core/garment/sheet-choice';
import { sheetOf } from '../../core/paper/page-sizes';

/** PDF units of each upright sheet, from the size table of CUPS (cups/pwg-media.c): 1/72 in. */
const units = {
  a4: [595.276, 841.89],
  a3: [841.89, 1190.551],
  letter: [612, 792],
  legal: [612, 1008],
  tabloid: [792, 1224],
  a0: [2383.937, 3370.394],
} as const;

const sheets = PAPER_SIZES.filter((size) => size !== 'roll');

describe('sheetOf', () => {
  it.each(sheets)('gives %s in millimetres, as the size table of CUPS has it in points', (size) => {
    const { width, height } = sheetOf({ size, turned: 'upright' });
    expect((width / 25.4) * 72).toBeCloseTo(units[size][0], 3);
    expect((height / 25.4) * 72).toBeCloseTo(units[size][1], 3);
  });

  it('halves A3 to A4 (ISO 216)', () => {
    const [a3, a4] = [sheetOf({ size: 'a3', turned: 'upright' }), sheetOf({ size: 'a4', turned: 'upright' })];
    expect(a4).toEqual({ width: Math.floor(a3.height / 2), height: a3.width });
  });

  it('gives a roll its width, and at most the 14,400 units of a page its length', () => {
    const roll = sheetOf({ size: 'roll', turned: 'upright', rollWidth: 610 });
    expect(roll).toEqual({ width: 610, height: (14400 / 72) * 25.4 });
    expect(sheetOf({ size: 'roll', turned: 'sideways', rollWidth: 610, rollLength: 1500 }).height).toBe(1500);
  });

  it('turns a sheet on its side', () => {
    expect(sheetOf({ size: 'legal', turned: 'sideways' })).toEqual({ width: 355.6, height: 215.9 });
  });
});
