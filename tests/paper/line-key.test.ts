import { describe, expect, it } from 'vitest';
import { paperSheetWords as german } from '../../app/words/de/paper-sheet';
import { paperSheetWords as english } from '../../app/words/en/paper-sheet';
import type { Garment } from '../../core/garment/garment';
import type { PaperWords } from '../../core/paper/paper-words';
import { patternPdf } from '../../core/paper/pattern-pdf';
import { linden } from '../garment/linden';
import { fonts } from './fonts';
import { garmentOf, rectangle } from './pieces';
import { hasReaders, pageTexts } from './print-tools';

async function firstPage(garment: Garment, words: PaperWords): Promise<string> {
  const made = await patternPdf({ garment, what: 'pages', words, fonts, today: '2026-03-04' });
  if (made.kind !== 'pdf') throw new Error('it is made');
  return pageTexts(made.bytes)[0] ?? '';
}

const [inEnglish, inGerman] = [english('in', 'sixteenth'), german('cm', 'millimetre')];

/** The kinds of lines of the sample. */
const DRAWN = ['cut', 'stitch', 'fold', 'grain', 'notch', 'dart', 'gathers', 'level', 'corner', 'upright'] as const;

describe.skipIf(!hasReaders)('the key to the lines on the first page', () => {
  it('tells of the kinds that are drawn, and of no other', async () => {
    const { key } = inEnglish.first;
    const all = await firstPage(linden(), inEnglish);
    for (const kind of DRAWN) expect(all).toContain(key[kind]);
    const plain = await firstPage(garmentOf([rectangle(0, 0, 300, 400)]), inEnglish);
    expect(plain).toContain(key.cut);
    expect(plain).toContain(key.corner);
    for (const kind of ['fold', 'grain', 'notch', 'dart', 'gathers', 'level', 'opening'] as const) {
      expect(plain).not.toContain(key[kind]);
    }
  });

  it.each(['upright', 'sideways'] as const)('is cut short in neither language, on Letter %s', async (turned) => {
    for (const words of [inEnglish, inGerman]) {
      const garment = linden();
      const text = await firstPage({ ...garment, paper: { ...garment.paper, size: 'letter', turned } }, words);
      for (const kind of DRAWN) expect(text).toContain(words.first.key[kind]);
    }
  });

  it('says the corners between which the whole is measured by the numbers printed there, and what is allowed where', async () => {
    const text = await firstPage(linden(), inEnglish);
    expect(text).toMatch(/stitch corner 1 to 3: \d/);
    expect(text).toContain('hem, 2 in allowed');
    expect(text).toContain('On every page stands: mark');
  });
});
