import { beforeAll, describe, expect, it } from 'vitest';
import { paperSheetWords } from '../../app/words/paper-sheet';
import type { PaperChoice } from '../../core/garment/garment';
import { PAPER_SIZES } from '../../core/garment/sheet-choice';
import type { Point } from '../../core/geometry/point';
import { patternPdf } from '../../core/paper/pattern-pdf';
import type { TapedSheet } from '../../core/paper/placed-piece';
import { testSquares } from '../../core/paper/sheet-notes';
import { tapedSheets } from '../../core/paper/taped-sheets';
import { fonts } from './fonts';
import { A4, garmentOf, LETTER, straightPiece } from './pieces';
import { checked, fontsNotEmbedded, hasReaders } from './print-tools';
import { READERS, squareOff } from './two-readers';

const wedge = straightPiece([
  [-30, 40],
  [570, 840],
  [-30, 840],
]);
const words = paperSheetWords('in', 'sixteenth');

const every = PAPER_SIZES.map((size): [string, PaperChoice] => [size, { ...A4, size }]);

describe
  .skipIf(!hasReaders)
  .each<[string, PaperChoice]>([
    ...every,
    ['Letter, edge to edge', { ...LETTER, joins: 'butted' }],
    ['A3 sideways, with fine squares', { ...A4, size: 'a3', turned: 'sideways', squaresOver: 'inch' }],
    [
      'Letter, for a printer that loses most at the bottom',
      { ...LETTER, loses: 12.7, losesAt: { top: 3.2, right: 4.8, bottom: 12.7, left: 6.4 } },
    ],
    ['a roll of 24 in', { ...A4, size: 'roll', rollWidth: 609.6 }],
  ])('pages on %s', (_, paper) => {
  let pdf: Uint8Array;
  let sheet: TapedSheet;
  let squares: readonly Point[];

  beforeAll(async () => {
    const garment = garmentOf([wedge], paper);
    const [only] = tapedSheets(garment.pieces, paper).sheets;
    const made = await patternPdf({ garment, what: 'pages', words, fonts, today: '2026-03-04' });
    if (!only || made.kind !== 'pdf') throw new Error('it is made');
    [pdf, sheet, squares] = [made.bytes, only, testSquares(only, garment)];
  });

  it('are a clean file with every font in it', () => {
    expect(checked(pdf)).toBe(0);
    expect(fontsNotEmbedded(pdf)).toBe(0);
  });

  it.each(READERS.flatMap((reader) => [300, 600].map((dpi) => [reader, dpi] as const)))(
    'have a 4 in square true within 0.05 mm, by %s at %i dpi',
    async (reader, dpi) => {
      for (const at of new Set([0, sheet.plan.pages.length - 1])) {
        const page = sheet.plan.pages[at];
        const square = squares[at];
        if (!page || !square) throw new Error('there are pages');
        const off = await squareOff(reader, pdf, { plan: sheet.plan, page, number: at + 2, square }, dpi);
        expect(off).toBeLessThan(0.05);
      }
    },
  );
});
