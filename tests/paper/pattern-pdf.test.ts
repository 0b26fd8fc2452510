import { describe, expect, it } from 'vitest';
import { paperSheetWords } from '../../app/words/paper-sheet';
import { type PatternPdfOptions, patternPdf } from '../../core/paper/pattern-pdf';
import { fonts } from './fonts';
import { A4, garmentOf, rectangle } from './pieces';
import { hasReaders, unpacked } from './print-tools';

const words = paperSheetWords('in', 'sixteenth');

function options(more: Partial<PatternPdfOptions> = {}): PatternPdfOptions {
  const pieces = [rectangle(0, 0, 300, 400), rectangle(500, 20, 150, 120, { id: 'q', name: 'Pocket' })];
  return { garment: garmentOf(pieces), what: 'pages', words, fonts, today: '2026-03-04', ...more };
}

describe('patternPdf', () => {
  it('makes the first page, then the pages of every piece: 1, 2 by 2 and 1', async () => {
    expect(await patternPdf(options())).toMatchObject({ kind: 'pdf', pages: 6 });
  });

  it('prints only the pieces asked for, and their squares sheets', async () => {
    expect(await patternPdf(options({ pieceIds: ['q'] }))).toMatchObject({ pages: 2 });
    expect(await patternPdf(options({ pieceIds: ['q'], what: 'squares' }))).toMatchObject({ pages: 1 });
    expect(await patternPdf(options({ what: 'both' }))).toMatchObject({ pages: 8 });
  });

  it('makes the same bytes of the same garment on the same day, and others on another', async () => {
    const [one, again, later] = await Promise.all([
      patternPdf(options()),
      patternPdf(options()),
      patternPdf(options({ today: '2026-03-05' })),
    ]);
    if (one.kind !== 'pdf' || again.kind !== 'pdf' || later.kind !== 'pdf') throw new Error('all are made');
    expect(Buffer.from(one.bytes).equals(Buffer.from(again.bytes))).toBe(true);
    expect(Buffer.from(one.bytes).equals(Buffer.from(later.bytes))).toBe(false);
  });

  it('says when there is nothing to print, or no room on the paper', async () => {
    expect(await patternPdf(options({ pieceIds: [] }))).toEqual({ kind: 'nothing-to-print', why: 'no-piece' });
    const garment = garmentOf([rectangle(0, 0, 300, 400)], { ...A4, margin: 80 });
    expect(await patternPdf(options({ garment }))).toEqual({ kind: 'nothing-to-print', why: 'no-room' });
  });

  it('tells the share done after every page, and stops where it is told to', async () => {
    const shares: number[] = [];
    const signal = { aborted: false };
    const onProgress = (share: number) => {
      shares.push(share);
      signal.aborted = share >= 0.5;
    };
    expect(await patternPdf(options({ onProgress, signal }))).toEqual({ kind: 'stopped' });
    expect(shares).toEqual([1 / 6, 2 / 6, 3 / 6]);
  });

  it('shares one drawing among 40 pages: under 100 KB beside the fonts', async () => {
    const garment = garmentOf([rectangle(0, 0, 2400, 1780, { name: 'Circular skirt' })]);
    const made = await patternPdf(options({ garment }));
    if (made.kind !== 'pdf') throw new Error('it is made');
    expect(made.pages).toBeGreaterThanOrEqual(40);
    const fontsAlone = await patternPdf(options({ pieceIds: ['q'] }));
    if (fontsAlone.kind !== 'pdf') throw new Error('it is made');
    expect(made.bytes.length - fontsAlone.bytes.length).toBeLessThan(100 * 1024);
  });

  it.skipIf(!hasReaders)(
    'stores each drawing once, and the rulers and the square once, however many pages show them',
    async () => {
      const gores = [0, 1, 2].map((k) => rectangle(900 * k, 0, 500, 700, { id: `g${k}`, name: `Gore ${k + 1}` }));
      const made = await patternPdf(options({ garment: garmentOf(gores) }));
      if (made.kind !== 'pdf') throw new Error('it is made');
      expect(made.pages).toBeGreaterThan(20);
      expect(unpacked(made.bytes).match(/\/Subtype \/Form/g)).toHaveLength(gores.length + 2);
    },
  );
});
