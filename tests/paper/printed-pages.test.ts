/** The PDF measured as a person would: by what other programs draw of it. Tolerances of a cutting table. */
import { beforeAll, describe, expect, it } from 'vitest';
import { paperSheetWords } from '../../app/words/paper-sheet';
import { pieceDrawing } from '../../core/drawing/piece-drawing';
import type { Garment } from '../../core/garment/garment';
import type { Sides } from '../../core/garment/sheet-choice';
import { STAYS_PUT } from '../../core/paper/moved-marks';
import { HEADER, type PagePlan, planPages } from '../../core/paper/page-plan';
import { sheetOf } from '../../core/paper/page-sizes';
import { patternPdf } from '../../core/paper/pattern-pdf';
import { testSquares } from '../../core/paper/sheet-notes';
import { inches } from '../../core/units/inch';
import { fonts } from './fonts';
import { A4, garmentOf, LETTER, straightPiece } from './pieces';
import { checked, type GreyPage, greyPages, hasReaders, inkNear, median, pageTexts, unpacked } from './print-tools';

const SQUARE = inches(4);

/** A long wedge whose third edge runs slantwise over many joins. */
const wedge = straightPiece(
  [
    [-30, 40],
    [570, 840],
    [-30, 840],
  ],
  { name: 'Ärmel é Ж 漢', labels: [{ id: 'l', at: { x: 60, y: 500 }, text: 'pleat 2½ to 3⅛' }] },
);
const slant = (y: number) => -30 + ((y - 40) * 3) / 4;

async function made(garment: Garment, what: 'pages' | 'both' = 'pages'): Promise<Uint8Array> {
  const words = paperSheetWords('in', 'sixteenth');
  const answer = await patternPdf({ garment, what, words, fonts, today: '2026-03-04' });
  if (answer.kind !== 'pdf') throw new Error('it is made');
  return answer.bytes;
}

/** The darkest pixel nearer to a side of a page than is to be clear (mm); a pixel's width is left to rounding. */
function darkestOutside({ width, height, pixels, dpi }: GreyPage, clear: Sides): number {
  const px = (mm: number) => Math.floor((mm / 25.4) * dpi) - 1;
  const [left, right, top, bottom] = [
    px(clear.left),
    width - px(clear.right),
    px(clear.top),
    height - px(clear.bottom),
  ];
  let darkest = 255;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      if (x === left && y >= top && y < bottom) x = right;
      darkest = Math.min(darkest, pixels[y * width + x] ?? 255);
    }
  }
  return darkest;
}

describe.skipIf(!hasReaders)('ink', () => {
  it('keeps 10 mm from the edge on pages and squares sheets, though less was asked for, while the printer is unknown', async () => {
    const pages = greyPages(await made(garmentOf([wedge], { ...A4, margin: 3 }), 'both'), 100);
    for (const page of pages) expect(darkestOutside(page, { top: 10, right: 10, bottom: 10, left: 10 })).toBe(255);
  });

  it('reaches on full-size pages as far as the printer was measured to on each side, and no further', async () => {
    const losesAt = { top: 4, right: 6, bottom: 15, left: 8 };
    const [, ...pages] = greyPages(await made(garmentOf([wedge], { ...A4, margin: 15, loses: 15, losesAt })), 100);
    for (const page of pages) {
      expect(darkestOutside(page, losesAt)).toBe(255);
      for (const side of ['top', 'right', 'bottom', 'left'] as const) {
        expect(darkestOutside(page, { ...losesAt, [side]: losesAt[side] + 6 })).toBeLessThan(255);
      }
    }
  });
});

describe.skipIf(!hasReaders).each([
  ['A4', A4],
  ['Letter', LETTER],
])('pages on %s', (_, paper) => {
  const garment = garmentOf([wedge], paper);
  const plan = planPages(pieceDrawing(wedge), paper) as PagePlan;
  let pdf: Uint8Array;
  let pages: readonly GreyPage[];

  beforeAll(async () => {
    pdf = await made(garment);
    pages = greyPages(pdf, 150);
  });

  /** From a place on the table to the same on the sheet that shows it. */
  const onSheet = (page: PagePlan['pages'][number], { x, y }: { x: number; y: number }) => ({
    x: x - page.window.minX + paper.margin,
    y: y - page.window.minY + paper.margin + HEADER,
  });

  it('is as many pages as planned, of the right size', () => {
    expect(pages).toHaveLength(plan.pages.length + 1);
    const { width, height } = sheetOf(paper);
    for (const page of pages) {
      expect(Math.abs(page.width / page.dpi - width / 25.4)).toBeLessThan(0.01);
      expect(Math.abs(page.height / page.dpi - height / 25.4)).toBeLessThan(0.01);
    }
  });

  it('has a square of 4.00 in on every page, across and down, within 0.01 in', () => {
    const placed = [{ piece: wedge, motion: STAYS_PUT, marks: pieceDrawing(wedge), under: [] }];
    const squares = testSquares({ placed, plan }, garment);
    pages.forEach((grey, index) => {
      const [page, square] = [plan.pages[index - 1], squares[index - 1]];
      const at = page && square ? onSheet(page, square) : { x: paper.margin + 0.4, y: paper.margin + 22 };
      for (const along of ['x', 'y'] as const) {
        const other = along === 'x' ? 'y' : 'x';
        const sides = Array.from({ length: 60 }, (_, k) => {
          const start = { ...at, [other]: at[other] + 8 + k * 1.4 };
          const near = inkNear(grey, start, along, 0.6);
          const far = inkNear(grey, { ...start, [along]: start[along] + SQUARE }, along, 0.6);
          return near === undefined || far === undefined ? Number.NaN : far - near;
        });
        expect(Math.abs(median(sides) - SQUARE)).toBeLessThan(inches(0.01));
      }
    });
  });

  it('carries a slanting line over every join, within 0.02 in of where it belongs', () => {
    let looked = 0;
    plan.pages.forEach((page, index) => {
      const grey = pages[index + 1] as GreyPage;
      const offs: number[] = [];
      for (let y = Math.ceil(page.window.minY) + 12; y < page.window.maxY - 12; y += 1.7) {
        const x = slant(y);
        if (y < 60 || y > 820 || x < page.window.minX + 12 || x > page.window.maxX - 12) continue;
        // A pixel row is looked along at its own middle, not at the place asked for.
        const at = onSheet(page, { x, y });
        const row = (Math.floor((at.y * 150) / 25.4) + 0.5) / (150 / 25.4);
        const found = inkNear(grey, at, 'x', 1.2);
        if (found !== undefined) offs.push(found - at.x - ((row - at.y) * 3) / 4);
      }
      if (offs.length < 12) return;
      looked += 1;
      expect(Math.abs(median(offs))).toBeLessThan(inches(0.02));
    });
    expect(looked).toBeGreaterThan(3);
  });

  it('prints nothing in the margin', () => {
    const { margin } = paper;
    for (const page of pages) {
      expect(darkestOutside(page, { top: margin, right: margin, bottom: margin, left: margin })).toBe(255);
    }
  });

  it('says on every page which piece and page it is, what is allowed, which way is up and how large', () => {
    const texts = pageTexts(pdf);
    const all = plan.pages.length + 1;
    plan.pages.forEach(({ label }, index) => {
      const text = texts[index + 1] ?? '';
      for (const part of ['Ärmel é Ж 漢', `page ${index + 2} of ${all}`, label, 'this way up', '4 in', '10.16 cm']) {
        expect(text).toContain(part);
      }
      expect(text).toContain('4 March 2026');
      expect(text).toContain('allowances are in the drawing');
    });
    expect(texts.join('')).toContain('pleat 2½ to 3⅛');
    expect(texts[0]).toContain('Linden petticoat');
  });
});

describe.skipIf(!hasReaders)('the file', () => {
  it('is sound, asks not to be scaled, and has no exponent in any stream', async () => {
    const tiny = straightPiece([
      [1e-7, 3e-8],
      [400.0000001, -2e-9],
      [1 / 3, 299.9999999],
    ]);
    const pdf = await made(garmentOf([tiny]), 'both');
    expect(checked(pdf)).toBe(0);
    const text = unpacked(pdf);
    expect(text).toContain('/PrintScaling /None');
    expect(text).toContain('/PickTrayByPDFSize true');
    const streams = [...text.matchAll(/stream\n(.*?)endstream/gs)].map(([, content]) => content ?? '');
    const contents = streams.filter((content) => / re\n|\nBT\n/.test(content));
    expect(contents.length).toBeGreaterThan(3);
    // Text is written in hexadecimal between angle brackets, where an E is a digit.
    for (const content of contents) expect(content.replace(/<[0-9a-f]*>/gi, '')).not.toMatch(/\d[eE][-+]?\d/);
  });

  it('measures 10 in as 720 points', async () => {
    const ten = straightPiece([
      [0, 0],
      [254, 0],
      [254, 101.6],
    ]);
    const text = unpacked(await made(garmentOf([ten], { ...A4, turned: 'sideways' })));
    expect(text).toContain('0 0 m\n254 0 l');
    const [, scale] = /q ([\d.]+) 0 0 -\1 0/.exec(text) ?? [];
    expect(254 * Number(scale)).toBeCloseTo(720, 4);
  });
});
