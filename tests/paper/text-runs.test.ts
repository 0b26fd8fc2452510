import { describe, expect, it } from 'vitest';
import { type DrawnText, PdfDocument } from '../../core/paper/pdf-document';
import { Ink } from '../../core/paper/pdf-ink';
import { textRuns } from '../../core/paper/text-runs';
import { fonts } from './fonts';
import { checked, greyPages, hasReaders, pageTexts } from './print-tools';

/** A font of Latin letters, and the accent that can be set over them. */
const latin = (codePoint: number) => codePoint < 0x250 || codePoint === 0x301;
const runs = (text: string) => textRuns(text, latin).map(({ kind, text: part }) => `${kind}:${part}`);

describe('textRuns', () => {
  it('sets what the font has and draws the rest', () => {
    expect(runs('Skirt スカート 1912')).toEqual(['set:Skirt ', 'drawn:スカート', 'set: 1912']);
    expect(runs('Ärmel, côté')).toEqual(['set:Ärmel, côté']);
  });

  it('composes accents, and takes no letter apart from its marks', () => {
    expect(runs('A\u0308rmel')).toEqual(['set:Ärmel']);
    // A consonant with its vowel sign, in Devanagari, and a family of four in one sign.
    expect(runs('घाघरा')).toEqual(['drawn:घाघरा']);
    expect(runs('a 👩‍👩‍👧‍👦 b')).toEqual(['set:a ', 'drawn:👩‍👩‍👧‍👦', 'set: b']);
  });

  it('draws the space between two drawn words with them', () => {
    expect(runs('中 国 a')).toEqual(['drawn:中 国', 'set: a']);
  });

  it('shapes what runs from right to left as a whole', () => {
    expect(textRuns('חצאית 1890', () => true)).toEqual([{ kind: 'drawn', text: 'חצאית 1890' }]);
  });

  it('leaves lines and controls out', () => {
    expect(runs('one\n\ttwo\u0007three')).toEqual(['set:one two three']);
    expect(runs('')).toEqual([]);
  });
});

/** Letters as black squares, half a square apart: what is drawn can be measured. */
function squares(text: string): DrawnText {
  const count = [...text].length;
  const em = 64;
  const width = count * em;
  const row = Math.ceil(width / 8);
  const bits = new Uint8Array(row * em);
  for (let y = 0; y < em; y++) for (let at = 0; at < row; at++) bits[y * row + at] = at % 8 < 4 ? 0xff : 0;
  return { em, advance: width, left: 0, base: em, width, height: em, bits };
}

async function pageWith(text: string, draw: boolean, angle = 0) {
  const document = await PdfDocument.begin({
    fonts: { ...fonts, ...(draw ? { draw: squares } : {}) },
    title: text,
    made: new Date('2026-03-01T12:00:00Z'),
  });
  const ink = new Ink();
  document.text(ink, text, 30, 50, { size: 10, angle });
  document.addPage({ width: 120, height: 100 }, ink);
  return { bytes: await document.finish(), width: document.textWidth(text, 10) };
}

describe.skipIf(!hasReaders)('texts in any script, read back by poppler', () => {
  it.each([
    ['drawn', true],
    ['in boxes', false],
  ])('can be searched for when they are %s', async (_, draw) => {
    for (const text of ['裙子 pattern', 'חצאית', 'घाघरा', 'Ärmel']) {
      const { bytes } = await pageWith(text, draw);
      const read = pageTexts(bytes).join('').normalize('NFC');
      // Poppler takes what is set from left to right for its order on the page, and turns Hebrew round.
      expect([read, [...read].reverse().join('')].some((way) => way.includes(text))).toBe(true);
      expect(checked(bytes)).toBe(0);
    }
  });

  it('stand on the base line, as large and as far along as they should', async () => {
    const { bytes, width } = await pageWith('裙子', true);
    expect(width).toBeCloseTo(20, 9);
    const dpi = 300;
    const [page] = greyPages(bytes, dpi);
    if (!page) throw new Error('no page');
    const mm = (px: number) => (px / dpi) * 25.4;
    const dark = (x: number, y: number) => (page.pixels[y * page.width + x] ?? 255) < 128;
    const all = Array.from(
      { length: page.width * page.height },
      (_, i) => [i % page.width, Math.floor(i / page.width)] as const,
    );
    const inked = all.filter(([x, y]) => dark(x, y));
    const xs = inked.map(([x]) => x);
    const ys = inked.map(([, y]) => y);
    const least = (values: readonly number[]) => values.reduce((a, b) => Math.min(a, b));
    const most = (values: readonly number[]) => values.reduce((a, b) => Math.max(a, b));
    expect(mm(least(xs))).toBeCloseTo(30, 0);
    expect(Math.abs(mm(least(xs)) - 30)).toBeLessThan(0.15);
    // The last square ends half a letter before the advance.
    expect(Math.abs(mm(most(xs) + 1) - 45)).toBeLessThan(0.15);
    expect(Math.abs(mm(most(ys) + 1) - 50)).toBeLessThan(0.15);
    expect(Math.abs(mm(least(ys)) - 40)).toBeLessThan(0.15);
  });

  it('turn clockwise with their angle', async () => {
    const { bytes } = await pageWith('裙子', true, Math.PI / 2);
    const [page] = greyPages(bytes, 100);
    if (!page) throw new Error('no page');
    const at = (x: number, y: number) =>
      page.pixels[Math.round((y / 25.4) * 100) * page.width + Math.round((x / 25.4) * 100)];
    // Down from (30, 50), its letters to the right: a quarter turn.
    expect(at(35, 52)).toBeLessThan(100);
    expect(at(25, 52)).toBe(255);
    expect(at(35, 57)).toBe(255);
    expect(at(35, 62)).toBeLessThan(100);
  });
});
