import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { labelWords } from '../../app/words/label';
import type { Garment } from '../../core/garment/garment';
import { labelPdf } from '../../core/paper/label-pdf';
import { inches } from '../../core/units/inch';
import { fonts } from './fonts';
import { A4, garmentOf, LETTER, rectangle } from './pieces';
import { checked, greyPages, hasReaders, pageTexts } from './print-tools';

const version = { kind: 'kept', number: 3, name: 'longer', mark: 'K7WQ2' } as const;
const today = '2026-03-09';

function filed(count: number, paper = A4): Garment {
  const pieces = Array.from({ length: count }, (_, i) => ({
    ...rectangle(i * 300, 0, 250, 600),
    id: `p${i}`,
    name: `Gore ${i + 1}`,
    cut: { how: 'pair', count: 2 * (i + 1) } as const,
  }));
  const garment = garmentOf(pieces, paper, 'Walking skirt');
  const [set] = garment.wearer.sets;
  if (!set) throw new Error('no set of measures');
  const measures = { waist: { length: inches(28.5) }, hip: { length: inches(39) } };
  return {
    ...garment,
    source: { book: 'Our own booklet', page: '31', plate: 'IV', year: '1897', remarks: '' },
    cloth: 'five yards of serge',
    wearer: { ...garment.wearer, name: 'Marta', sets: [{ ...set, date: '2026-02-11', wornOver: 'corset', measures }] },
  };
}

const label = (garment: Garment, picture?: Uint8Array) =>
  labelPdf({ garment, version, words: labelWords(garment), fonts, today, ...(picture ? { picture } : {}) });

describe('labelPdf', () => {
  it('makes the same bytes on the same day', async () => {
    const [one, other] = [await label(filed(3)), await label(filed(3))];
    expect(one.bytes).toEqual(other.bytes);
    expect(one.pages).toBe(1);
  });

  it('holds a garment without pieces, and one with a hundred, on as many labels as it needs', async () => {
    expect((await label(filed(0))).pages).toBe(1);
    expect((await label(filed(30))).pages).toBe(1);
    expect((await label(filed(100))).pages).toBeGreaterThan(1);
  });
});

describe.skipIf(!hasReaders)('a label read back', () => {
  it('says source, version, measures and every piece with its cut count', async () => {
    // For a roll, as for A0, the label is on a sheet of a home printer.
    for (const paper of [A4, LETTER, { ...A4, size: 'roll' } as const]) {
      const { bytes } = await label(filed(3, paper));
      const text = pageTexts(bytes).join('\n');
      for (const said of [
        'Walking skirt',
        'Our own booklet',
        'page 31, plate IV, 1897',
        'Version 3, longer (K7WQ2)',
        '9 March 2026',
        'For Marta',
        'Measures of 11 February 2026',
        'corset',
        'Waist 28 1/2 in',
        'hip 39 in',
        'five yards of serge',
        '3 pieces, 12 parts to cut',
        'Cut 6, in mirrored pairs',
      ]) {
        expect(text.replace(/\s+/g, ' ')).toContain(said);
      }
      expect(checked(bytes)).toBe(0);
    }
  });

  it('never asks for paper that a home printer does not take', async () => {
    for (const size of ['a4', 'roll', 'a0'] as const) {
      const [page] = greyPages((await label(filed(2, { ...A4, size }))).bytes, 50);
      expect(((page?.width ?? 0) / 50) * 25.4).toBeLessThan(216.5);
    }
  });

  it('loses no piece of many', async () => {
    const text = pageTexts((await label(filed(100))).bytes).join('\n');
    for (let i = 1; i <= 100; i++) expect(text).toMatch(new RegExp(`Gore ${i}\\b`));
  });

  it('shows the photo in its own proportions, inside the face', async () => {
    const photo = new Uint8Array(readFileSync(new URL('../../public/demo/linden-plate.jpg', import.meta.url)));
    const { bytes } = await label(filed(2), photo);
    const [page] = greyPages(bytes, 100);
    expect(checked(bytes)).toBe(0);
    if (!page) throw new Error('no page');
    // On A4 the front begins in the middle of the page, 148.5 mm down and 30 mm from the left.
    const grey = (x: number, y: number) =>
      page.pixels[Math.round((y / 25.4) * 100) * page.width + Math.round((x / 25.4) * 100)] ?? 255;
    expect(grey(40, 203)).toBeLessThan(250);
    expect(grey(90, 203)).toBeLessThan(250);
    expect(grey(33, 203)).toBe(255);
  });

  it('keeps a name so long that it fits nowhere inside the label', async () => {
    const garment = { ...filed(2), name: 'Petticoat '.repeat(40) };
    const { bytes } = await label(garment);
    const [page] = greyPages(bytes, 60);
    if (!page) throw new Error('no page');
    const perMm = 60 / 25.4;
    // Right of the face there is nothing.
    for (let y = 0; y < page.height; y++) {
      for (let x = Math.ceil(181.5 * perMm); x < page.width; x++) expect(page.pixels[y * page.width + x]).toBe(255);
    }
  });
});
