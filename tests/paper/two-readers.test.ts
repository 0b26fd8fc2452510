import { describe, expect, it } from 'vitest';
import { paperSheetWords } from '../../app/words/paper-sheet';
import type { PaperChoice } from '../../core/garment/garment';
import { patternPdf } from '../../core/paper/pattern-pdf';
import { tapedSheets } from '../../core/paper/taped-sheets';
import { fonts } from './fonts';
import { A4, garmentOf, LETTER, straightPiece } from './pieces';
import { checked, hasReaders } from './print-tools';
import { READERS, squareOff } from './two-readers';

const wedge = straightPiece([
  [-30, 40],
  [570, 840],
  [-30, 840],
]);
const words = paperSheetWords('in', 'sixteenth');

describe.skipIf(!hasReaders).each<[string, PaperChoice]>([
  ['A4', A4],
  ['Letter, edge to edge', { ...LETTER, joins: 'butted' }],
  ['A0', { ...A4, size: 'a0' }],
  ['a roll of 24 in', { ...A4, size: 'roll', rollWidth: 609.6 }],
])('the test square on %s', (_, paper) => {
  it.each(READERS)('measures 4 in within 0.05 mm at 600 dpi by %s', async (reader) => {
    const garment = garmentOf([wedge], paper);
    const [sheet] = tapedSheets(garment.pieces, paper).sheets;
    const made = await patternPdf({ garment, what: 'pages', words, fonts, today: '2026-03-04' });
    if (!sheet || made.kind !== 'pdf') throw new Error('it is made');
    expect(checked(made.bytes)).toBe(0);
    for (const at of [0, sheet.plan.pages.length - 1]) {
      const page = sheet.plan.pages[at];
      if (!page) throw new Error('there are pages');
      const off = await squareOff(reader, made.bytes, { plan: sheet.plan, page, number: at + 2 }, 600);
      expect(off).toBeLessThan(0.05);
    }
  });
});
