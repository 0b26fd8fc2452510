import { expect, it } from 'vitest';
import { paperSheetWords } from '../../app/words/paper-sheet';
import type { PaperChoice } from '../../core/garment/garment';
import { homeMargin, homeSheet } from '../../core/paper/page-sizes';
import { patternPdf } from '../../core/paper/pattern-pdf';
import { linden } from '../garment/linden';
import { fonts } from './fonts';

const today = '2026-03-04';

/** Papers whose margin is more than half of the sheet that tables are printed on. */
const PAPERS: readonly Partial<PaperChoice>[] = [
  { size: 'a4', margin: 150 },
  { size: 'letter', margin: 1000 },
  { size: 'roll', rollWidth: 1000, margin: 156 },
  { size: 'a0', margin: 200 },
];

it.each(PAPERS)('a table is printed, and ends, on $size with a margin of $margin mm', async (paper) => {
  const garment = { ...linden(), paper: { ...linden().paper, ...paper } };
  const words = paperSheetWords('in', 'sixteenth');
  const made = await patternPdf({ garment, what: 'squares', words, fonts, today });
  expect(made).toMatchObject({ kind: 'pdf' });
  if (made.kind === 'pdf') expect(made.pages).toBeLessThan(4 * garment.pieces.length);
  const { width } = homeSheet(garment.paper);
  expect(width - 2 * homeMargin(garment.paper)).toBeGreaterThan(width / 2);
});
