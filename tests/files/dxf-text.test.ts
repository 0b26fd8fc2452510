import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blockName, dxfText, plainText } from '../../core/files/dxf-text';

describe('dxfText', () => {
  it('is plain ASCII on one line, and comes back whole', () => {
    expect(dxfText('Ärmel\r\n0\nEOF')).toBe('\\U+00C4rmel 0 EOF');
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 30 }), (text) => {
        const words = text.replace(/[\p{Cc}\s]+/gu, ' ').trim();
        expect(dxfText(text)).toMatch(/^[ -~]*$/);
        expect(plainText(dxfText(words))).toBe(words);
      }),
      { seed: 7 },
    );
  });
});

describe('blockName', () => {
  it('is short, plain and different for every number', () => {
    expect(blockName('Jupe d’été, côté', 2)).toBe('JUPE_D_ETE_COTE_2');
    expect(blockName('スカート', 3)).toBe('PIECE_3');
    expect(blockName('a'.repeat(90), 123)).toMatch(/^A{24}_123$/);
  });
});
