import { describe, expect, it } from 'vitest';
import { listedWords } from '../../app/words/check-page';
import { paperSheetWords } from '../../app/words/paper-sheet';
import { setPaper, setPrinter } from '../../core/garment/paper-edits';
import { versionMark } from '../../core/garment/version-mark';
import { versionSaid } from '../../core/garment/version-said';
import { listPdf } from '../../core/paper/list-pdf';
import { paperFindings, printerReading } from '../../core/paper/paper-findings';
import { patternPdf } from '../../core/paper/pattern-pdf';
import { inches } from '../../core/units/inch';
import { linden } from '../garment/linden';
import { fonts } from './fonts';
import { A4, garmentOf, rectangle } from './pieces';
import { hasReaders, pageTexts, unpacked } from './print-tools';

const today = '2026-03-04';
const printer = { across: 0.989, down: 1.013 };
const garment = garmentOf([rectangle(0, 0, 110, 70)], A4);
const proofOf = (across: number, down: number, of = garment) => ({
  ...of,
  scaleProof: { date: today, across, down, on: { size: of.paper.size } },
});

describe('printerReading', () => {
  it('reads a printer that is a little off, and multiplies what is corrected already', () => {
    const read = printerReading(proofOf(inches(3.95), inches(4.05)));
    expect(read).toEqual({ kind: 'factors', printer: { across: 3.95 / 4, down: 4.05 / 4 } });
    const corrected = setPrinter(garment, printer);
    const again = printerReading({
      ...corrected,
      scaleProof: { date: today, across: inches(3.96), down: inches(4), on: { size: 'a4', printer } },
    });
    expect(again?.kind === 'factors' && again.printer.across).toBeCloseTo(0.989 * 0.99, 9);
  });

  it('takes what was fitted to other paper, or is off by more than three in a hundred, for no printer', () => {
    expect(printerReading(proofOf(inches((4 * 210) / 215.9), inches((4 * 210) / 215.9)))).toEqual({
      kind: 'not-the-printer',
      cause: { kind: 'fitted', page: 'letter', to: 'a4' },
    });
    expect(printerReading(proofOf(inches(3.76), inches(3.76)))?.kind).toBe('not-the-printer');
    expect(printerReading(proofOf(inches(4.13), inches(4)))?.kind).toBe('not-the-printer');
    expect(printerReading(proofOf(inches(4), inches(4)))).toBeUndefined();
  });

  it('finds a proof out of date on other paper and after a correction', () => {
    const proved = proofOf(inches(4), inches(4));
    expect(paperFindings(proved)).toEqual([]);
    expect(paperFindings(setPaper(proved, { size: 'letter' }))).toMatchObject([
      { kind: 'scale-proof-stale', why: 'paper' },
    ]);
    expect(paperFindings(setPrinter(proved, printer))).toMatchObject([
      { kind: 'scale-proof-stale', why: 'correction' },
    ]);
  });
});

describe.skipIf(!hasReaders)('pages for a printer that is off', () => {
  it('has a test square that the printer makes true, and says so on every page', async () => {
    const words = paperSheetWords('in', 'sixteenth');
    const made = await patternPdf({ garment: setPrinter(garment, printer), what: 'pages', words, fonts, today });
    if (made.kind !== 'pdf') throw new Error('it is made');
    const texts = pageTexts(made.bytes);
    for (const text of texts) expect(text).toContain('corrected for a printer that prints 98.9 % across, 101.3 % down');
    // As the file has it: the page's matrix, then the correction's, then the square of four inches, on further pages stored.
    const file = unpacked(made.bytes);
    expect(file).toMatch(/stream\n[\s\S]{0,40}\n0 0 101\.6 101\.6 re\nS/);
    const pages = [...file.matchAll(/q (\S+) 0 0 -\S+ 0 \S+ cm (\S+) \S+ \S+ (\S+) \S+ \S+ cm([\s\S]*?)endstream/g)];
    expect(pages).toHaveLength(texts.length);
    for (const [, k, x, y, drawn] of pages) {
      const mm = (Number(k) * 25.4) / 72;
      expect(drawn).toMatch(/[\d.]+ [\d.]+ 101\.6 101\.6 re|q\n1 0 0 1 \S+ \S+ cm\n\/Drawing\d+ Do\nQ/);
      expect(Math.abs(101.6 * Number(x) * mm * printer.across - 101.6)).toBeLessThan(0.05);
      expect(Math.abs(101.6 * Number(y) * mm * printer.down - 101.6)).toBeLessThan(0.05);
    }
  });

  it('prints the list before cutting with every point, what is left and why', async () => {
    const listed = listedWords(linden(), versionSaid([], linden()), today);
    const { bytes, pages } = await listPdf({ listed, paper: linden().paper, fonts, today });
    const text = pageTexts(bytes).join(' ').replace(/\s+/g, ' ');
    expect(pages).toBeLessThanOrEqual(2);
    for (const said of [
      'Before you cut',
      `mark ${versionMark(linden())}`,
      '4 March 2026',
      'No lay has been made',
      'How often each piece is cut',
    ]) {
      expect(text).toContain(said);
    }
  });
});
