import { describe, expect, it } from 'vitest';
import { checkRules } from '../../core/paper/check-sheet';
import { paperFindings, printerReading } from '../../core/paper/paper-findings';
import { fitsOf } from '../../core/paper/scale-causes';
import { inches } from '../../core/units/inch';
import { garmentOf, LETTER, rectangle } from './pieces';

function measured(across: number, down: number) {
  const scaleProof = { date: '2026-03-02', across: inches(across), down: inches(down) };
  return paperFindings({ ...garmentOf([rectangle(0, 0, 300, 200)]), scaleProof });
}

describe('paperFindings', () => {
  it('warns while nobody has measured, and says nothing of a garment without pieces', () => {
    expect(paperFindings(garmentOf([rectangle(0, 0, 300, 200)]))).toMatchObject([
      { kind: 'scale-not-proved', weight: 'warn' },
    ]);
    expect(paperFindings(garmentOf([]))).toEqual([]);
  });

  it('is content within a thirty-second of an inch', () => {
    expect(measured(4, 4)).toEqual([]);
    expect(measured(4 + 1 / 32, 4 - 1 / 32)).toEqual([]);
  });

  // From the sizes of ISO 216 and ANSI: 210 / 215.9 = 97.3 % is 3.89 in of four, 279.4 / 297 = 94.1 % is 3.76 in.
  it.each([
    [3.89, 3.89, { kind: 'fitted', page: 'letter', to: 'a4' }],
    [3.875, 3.875, { kind: 'fitted', page: 'letter', to: 'a4' }],
    [3.76, 3.77, { kind: 'fitted', page: 'a4', to: 'letter' }],
    [3.9, 4, { kind: 'uneven' }],
    [3.3, 3.3, { kind: 'unknown' }],
  ])('stops at %f by %f in', (across, down, cause) => {
    const wanted = { across: inches(4), down: inches(4) };
    expect(measured(across, down)).toMatchObject([{ kind: 'scale-off', weight: 'stop', cause, wanted }]);
  });

  it('reads the rules of the check sheet: 7 in across and 10 in down on Letter', () => {
    const garment = garmentOf([rectangle(0, 0, 300, 200)], LETTER);
    const wanted = checkRules(LETTER);
    expect(wanted).toEqual({ across: inches(7), down: inches(10) });
    const proof = (across: number, down: number) => ({ date: '2026-03-02', across, down, wanted });
    expect(paperFindings({ ...garment, scaleProof: proof(inches(7), inches(10)) })).toEqual([]);
    const off = { ...garment, scaleProof: proof(inches(7 * 0.993), inches(10.06)) };
    expect(paperFindings(off)).toMatchObject([{ kind: 'scale-off', cause: { kind: 'uneven' } }]);
    const printer = printerReading(off);
    expect(printer?.kind === 'factors' && printer.printer.across).toBeCloseTo(0.993, 9);
    expect(printer?.kind === 'factors' && printer.printer.down).toBeCloseTo(1.006, 9);
  });
});

describe('fitsOf', () => {
  // Worked by hand from 210 by 297, 215.9 by 279.4, 215.9 by 355.6, 297 by 420 and 279.4 by 431.8 mm: the tighter way.
  it.each([
    ['letter', 'a4', 210 / 215.9, 97.3],
    ['a4', 'letter', 279.4 / 297, 94.1],
    ['legal', 'letter', 279.4 / 355.6, 78.6],
    ['legal', 'a4', 297 / 355.6, 83.5],
    ['a3', 'a4', 210 / 297, 70.7],
    ['a3', 'tabloid', 279.4 / 297, 94.1],
    ['tabloid', 'a3', 420 / 431.8, 97.3],
    ['tabloid', 'letter', 279.4 / 431.8, 64.7],
  ] as const)('%s fitted to %s prints at that share', (page, to, share, percent) => {
    const fit = fitsOf({ size: page }).find(({ cause }) => cause.kind === 'fitted' && cause.to === to && !cause.loses);
    expect(fit?.share).toBeCloseTo(share, 12);
    expect(Math.round((fit?.share ?? 0) * 1000) / 10).toBe(percent);
  });

  it('names shrinking into margins of a quarter inch: 8 of 8 1/2 in across on Letter, the tighter way', () => {
    const fit = fitsOf({ size: 'letter' }).find(({ cause }) => cause.kind === 'into-margins');
    expect(fit?.share).toBeCloseTo(8 / 8.5, 12);
    const shrunk = { date: '2026-03-02', across: inches((7 * 8) / 8.5), down: inches((10 * 8) / 8.5) };
    const garment = garmentOf([rectangle(0, 0, 300, 200)], LETTER);
    const found = paperFindings({ ...garment, scaleProof: { ...shrunk, wanted: checkRules(LETTER) } });
    expect(found).toMatchObject([{ cause: { kind: 'into-margins', page: 'letter' } }]);
  });
});
