import { readFileSync } from 'node:fs';
import { paperSheetWords } from '../app/words/paper-sheet';
import type { Garment, PaperChoice } from '../core/garment/garment';
import { PAPER_SIZES } from '../core/garment/sheet-choice';
import { firstPagesCount } from '../core/paper/first-page';
import { patternPdf } from '../core/paper/pattern-pdf';
import { testSquares } from '../core/paper/sheet-notes';
import { tapedSheets } from '../core/paper/taped-sheets';
import { garmentOf, rectangle } from '../tests/paper/pieces';
import { checked, fontsNotEmbedded, unpacked } from '../tests/paper/print-tools';
import { READERS, squareOff, uprightAt } from '../tests/paper/two-readers';
import type { Figure } from './figure';
import { pagesMemoryFigures } from './pages-memory';
import { sampleGarment } from './sample-garment';
import { quantile } from './timing';

const fonts = {
  plain: readFileSync('public/fonts/dejavu-sans.ttf'),
  bold: readFileSync('public/fonts/dejavu-sans-bold.ttf'),
};
const words = paperSheetWords('in', 'sixteenth');

/** Pages made: how fast, how large, how true, and how many beside what they might be. */
export async function pagesFigures(): Promise<Figure[]> {
  return [
    ...(await sixtyPages()),
    ...(await pagesMemoryFigures()),
    ...(await fewestPages()),
    ...(await trueScale()),
    ...(await acrossJoins()),
  ];
}

async function pdfOf(
  garment: Garment,
  onProgress?: () => void,
): Promise<{ readonly bytes: Uint8Array; readonly pages: number }> {
  const made = await patternPdf({
    garment,
    what: 'pages',
    words,
    fonts,
    today: '2026-01-02',
    ...(onProgress && { onProgress }),
  });
  if (made.kind !== 'pdf') throw new Error('the garment has pages');
  return made;
}

/** Time, size and memory of a PDF of 60 pages or a little more, fonts included, of pieces as they are drawn. */
async function sixtyPages(): Promise<Figure[]> {
  const garment = asDrawn(sampleGarment(10));
  const times: number[] = [];
  let made = await pdfOf(garment);
  const peaks: number[] = [];
  for (let round = 0; round < 5; round++) {
    const before = memory();
    let peak = before;
    const began = performance.now();
    made = await pdfOf(garment, () => {
      peak = Math.max(peak, memory());
    });
    times.push(performance.now() - began);
    peaks.push(Math.max(peak, memory()) - before);
  }
  const one = garment.pieces[0] ? await pdfOf({ ...garment, pieces: [garment.pieces[0]] }) : made;
  const share = 60 / made.pages;
  return [
    { name: 'pages_count', value: made.pages, unit: 'pages' },
    { name: 'pages_60_ms', value: quantile(times, 0.5) * share, unit: 'ms' },
    { name: 'pages_60_kb', value: (made.bytes.length / 1024) * share, unit: 'kB' },
    // What a page more takes, its drawing being there already: beside a file of one piece, which holds the fonts.
    {
      name: 'pages_more_kb_a_page',
      value: (made.bytes.length - one.bytes.length) / 1024 / (made.pages - one.pages),
      unit: 'kB',
    },
    // Drawings in the file: one a piece and the rulers, shown through every page, beside one on each page.
    {
      name: 'pages_drawings_stored',
      value: unpacked(made.bytes).match(/\/Subtype \/Form/g)?.length ?? 0,
      unit: 'drawings',
      baseline: made.pages,
    },
    // Looked at after every page; what only waits to be cleared away counts too.
    { name: 'pages_60_peak_memory_mb', value: (Math.max(...peaks) / 1e6) * share, unit: 'MB' },
    { name: 'pages_qpdf_check', value: checked(made.bytes) ?? -1, unit: 'exit code' },
    { name: 'pages_fonts_not_embedded', value: fontsNotEmbedded(made.bytes), unit: 'fonts' },
  ];
}

function memory(): number {
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
}

function asDrawn(garment: Garment): Garment {
  return { ...garment, paper: { ...garment.paper, placed: 'as-drawn' } };
}

/** How many pages of each size a set of five gores takes, beside plain rows and columns, and beside the lower bound. */
async function fewestPages(): Promise<Figure[]> {
  const garment = sampleGarment(5);
  const figures: Figure[] = [];
  let [all, plain, least] = [0, 0, 0];
  const began = performance.now();
  for (const size of PAPER_SIZES) {
    if (size === 'roll') continue;
    const { counted } = tapedSheets(garment.pieces, { ...fewest(garment.paper), size });
    figures.push({
      name: `pages_fewest_${size}`,
      value: counted.pages,
      unit: 'pages',
      baseline: counted.plain,
      ratio: counted.plain / counted.pages,
    });
    [all, plain, least] = [all + counted.pages, plain + counted.plain, least + counted.least];
  }
  return [
    ...figures,
    { name: 'pages_fewest_ms', value: (performance.now() - began) / (PAPER_SIZES.length - 1), unit: 'ms' },
    { name: 'pages_over_bound', value: all / least, unit: 'times' },
    { name: 'pages_plain_over_fewest', value: plain / all, unit: 'times' },
  ];
}

function fewest({ placed: _, ...paper }: PaperChoice): PaperChoice {
  return paper;
}

/** The 4 in square of first and last pages of every size, lapped and butted, by two readers at two resolutions. */
async function trueScale(): Promise<Figure[]> {
  const garment = sampleGarment(2);
  const worst = new Map<string, number>();
  for (const size of PAPER_SIZES) {
    for (const joins of [undefined, 'butted'] as const) {
      const paper = { ...fewest(garment.paper), size, ...(joins && { joins }) };
      const { sheets } = tapedSheets(garment.pieces, paper);
      const { bytes } = await pdfOf({ ...garment, paper });
      let number = 1 + firstPagesCount({ ...garment, paper }, sheets.length);
      for (const sheet of sheets) {
        const { plan } = sheet;
        const squares = testSquares(sheet, garment);
        for (const at of new Set([0, plan.pages.length - 1])) {
          const page = plan.pages[at];
          const square = squares[at];
          if (!page || !square) continue;
          for (const reader of READERS) {
            for (const dpi of [300, 600]) {
              const off = await squareOff(reader, bytes, { plan, page, number: number + at, square }, dpi);
              const key = `pages_scale_error_mm_max_${reader.replace('.', '')}_${dpi}`;
              worst.set(key, Math.max(worst.get(key) ?? 0, off));
            }
          }
        }
        number += plan.pages.length;
      }
    }
  }
  const figures = [...worst].map(([name, value]) => ({ name, value, unit: 'mm' }));
  return [{ name: 'pages_scale_error_mm_max', value: Math.max(...worst.values()), unit: 'mm' }, ...figures];
}

/** Pages laid one by one to a line that both of two neighbours show, over ten joins, and the whole measured. */
async function acrossJoins(): Promise<Figure[]> {
  // Pages share so much that every overlap holds an upright line of the fine squares.
  const paper: PaperChoice = {
    size: 'a4',
    turned: 'upright',
    margin: 10,
    overlap: 30,
    step: 'sixteenth',
    squaresOver: 'inch',
    placed: 'as-drawn',
  };
  const garment = garmentOf([rectangle(3, 5, 1720, 90)], paper);
  const plan = tapedSheets(garment.pieces, paper).sheets[0]?.plan;
  if (!plan || plan.pages.length < 11) throw new Error('there are ten joins');
  const { bytes } = await pdfOf(garment);
  let worst = 0;
  for (const reader of READERS) {
    for (const dpi of [300, 600]) {
      const read = (index: number, x: number) => {
        const page = plan.pages[index];
        if (!page) throw new Error('there is such a page');
        return uprightAt(reader, bytes, { plan, page, number: index + 2, x }, dpi);
      };
      const line = (index: number) => {
        const window = plan.pages[index]?.window;
        return Math.ceil(((window?.minX ?? 0) + 2) / 25.4) * 25.4;
      };
      const first = line(1) - 25.4 * 4;
      const last = line(10) + 25.4 * 3;
      // From the first line on, page by page: how far it is to the line shared with the next page, and so on.
      let measured = 0;
      let from = await read(0, first);
      for (let index = 0; index < 10; index++) {
        measured += (await read(index, line(index + 1))) - from;
        from = await read(index + 1, line(index + 1));
      }
      measured += (await read(10, last)) - from;
      worst = Math.max(worst, Math.abs(measured - (last - first)));
    }
  }
  return [{ name: 'pages_ten_joins_error_mm_max', value: worst, unit: 'mm' }];
}
