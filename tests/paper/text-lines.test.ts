import { beforeAll, describe, expect, it } from 'vitest';
import { PdfDocument } from '../../core/paper/pdf-document';
import { fittedText, textLines } from '../../core/paper/text-lines';
import { fonts } from './fonts';

let document: PdfDocument;
beforeAll(async () => {
  document = await PdfDocument.begin({ fonts, title: 'lines', made: new Date(0) });
});

describe('textLines', () => {
  it('breaks between words, loses none, and keeps within the width', () => {
    const text = 'Lay a ruler on the square, across and down, and write what it says';
    const lines = textLines(document, text, 40, 3.5, 'plain');
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.join(' ')).toBe(text);
    for (const line of lines) expect(document.textWidth(line, 3.5)).toBeLessThanOrEqual(40);
  });

  it('keeps a word whole that is wider than the line, and gives nothing for nothing', () => {
    expect(textLines(document, 'an Unterrockvorderbahn', 10, 5, 'bold')).toEqual(['an', 'Unterrockvorderbahn']);
    expect(textLines(document, '', 10, 5, 'bold')).toEqual([]);
  });
});

describe('fittedText', () => {
  const fit = { size: 7, least: 6.35, weight: 'bold' } as const;

  it('leaves what fits, makes the rest smaller, and then cuts it short', () => {
    const text = 'Side back gore';
    const whole = document.textWidth(text, 7, 'bold');
    expect(fittedText(document, text, { ...fit, width: whole })).toEqual({ text, size: 7 });
    const smaller = fittedText(document, text, { ...fit, width: whole * 0.95 });
    expect([smaller.text, smaller.size]).toEqual([text, expect.closeTo(7 * 0.95, 9)]);
    const cut = fittedText(document, text, { ...fit, width: whole * 0.5 });
    expect(cut.text).toMatch(/^Side ba?.*…$/);
    expect(cut.size).toBe(6.35);
    expect(document.textWidth(cut.text, cut.size, 'bold')).toBeLessThanOrEqual(whole * 0.5);
  });
});

// In DejaVu Sans 2.37 the digits are 1303 of 2048 parts of the letters' square wide (read from the font's own table).
it('textWidth is in millimetres', () => {
  expect(document.textWidth('4', 20.48)).toBeCloseTo(13.03, 6);
});
