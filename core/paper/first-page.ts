import type { Garment } from '../garment/garment';
import { currentSet } from '../garment/measure-value';
import type { VersionSaid } from '../garment/version-said';
import { inkLineKey } from './line-key';
import { type Area, inkPageMap, type MappedSheet } from './page-map';
import { homeMargin, homeSheet } from './page-sizes';
import { TEST_SQUARE } from './paper-findings';
import type { PaperWords } from './paper-words';
import type { PdfDocument } from './pdf-document';
import { Ink } from './pdf-ink';
import { fittedText, textLines } from './text-lines';

export interface FirstPages {
  readonly garment: Garment;
  readonly pieces: readonly MappedSheet[];
  readonly version: VersionSaid;
  readonly words: PaperWords;
  /** YYYY-MM-DD */
  readonly today: string;
  /** All pages of the document. */
  readonly of: number;
}

const TEXT = 3.1;
const LEADING = 4.4;
const GAP = 8;

/** Some letters, and half of a line's width, reach over the place they are set at (mm). */
const OVERHANG = 0.4;
const UNDER_HEADING = 10.5;

/** The key to the lines keeps so far from the sides of the square, and below its words (mm). */
const KEY_INSET = 6;
const KEY_TOP = 16;
const MAP_LEAST = { width: 58, height: 74 };

/** How many pages {@link addFirstPages} will add for so many sheets of pages. */
export function firstPagesCount(garment: Garment, sheets: number): number {
  const areas = layout(garment);
  const onFirst = mapsIn(areas.maps);
  if (sheets <= onFirst) return 1;
  return 1 + Math.ceil((sheets - onFirst) / mapsIn(areas.whole));
}

/**
 * The page to print first: the square that proves the scale and what to do with it, how pages are joined, which page goes
 * where, and what the whole must measure. Maps for which it has no room stand on further pages.
 */
export function addFirstPages(document: PdfDocument, options: FirstPages): void {
  const { garment, pieces, words } = options;
  const areas = layout(garment);
  const sheet = homeSheet(garment.paper);
  let ink = new Ink();
  title(ink, document, options, areas.title);
  scale(ink, document, words, areas.scale);
  key(ink, document, options, areas.scale);
  joinsAndCautions(ink, document, words, garment.paper.joins ?? 'lapped', areas.notes);
  let rest = pieces;
  let area = areas.maps;
  heading(ink, document, words.first.mapTitle, area);
  while (rest.length > 0) {
    const here = rest.slice(0, mapsIn(area));
    rest = rest.slice(here.length);
    inkMaps(ink, document, here, words, { ...area, top: area.top + 7, height: area.height - 7 });
    document.addPage(sheet, ink);
    if (rest.length === 0) return;
    ink = new Ink();
    area = areas.whole;
    heading(ink, document, words.first.mapTitle, area);
  }
}

interface Layout {
  readonly title: Area;
  readonly scale: Area;
  readonly notes: Area;
  readonly maps: Area;
  readonly whole: Area;
}

/** Upright: square and its words side by side, notes, maps below. Sideways: all of that on the left, maps on the right. */
function layout({ paper }: Garment): Layout {
  const sheet = homeSheet(paper);
  const margin = homeMargin(paper);
  const [left, top] = [margin + OVERHANG, margin];
  const [width, height] = [sheet.width - 2 * left, sheet.height - 2 * margin];
  const whole = { left, top, width, height };
  const below = top + 22;
  if (sheet.height >= sheet.width) {
    const notesTop = below + TEST_SQUARE + GAP;
    const mapsTop = notesTop + 40;
    return {
      title: { left, top, width, height: 22 },
      scale: { left, top: below, width, height: TEST_SQUARE },
      notes: { left, top: notesTop, width, height: 40 },
      maps: { left, top: mapsTop, width, height: top + height - mapsTop },
      whole,
    };
  }
  const half = TEST_SQUARE + 70;
  return {
    title: { left, top, width, height: 22 },
    scale: { left, top: below, width: half, height: TEST_SQUARE },
    notes: { left, top: below + TEST_SQUARE + GAP, width: half, height: top + height - below - TEST_SQUARE - GAP },
    maps: { left: left + half + GAP, top: below, width: width - half - GAP, height: top + height - below },
    whole,
  };
}

function title(ink: Ink, document: PdfDocument, options: FirstPages, area: Area): void {
  const { garment, version, words, today, of } = options;
  const name = garment.name === '' ? words.unnamedGarment : garment.name;
  const fitted = fittedText(document, name, { width: area.width, size: 8.5, least: 5, weight: 'bold' });
  document.text(ink, fitted.text, area.left, area.top + 8.5, { size: fitted.size, weight: 'bold' });
  const set = currentSet(garment);
  const line = words.first.line(of, words.first.paper(garment.paper.size), words.date(today));
  document.text(ink, line, area.left, area.top + 13, { size: TEXT });
  const { printer } = garment.paper;
  const wearer = words.first.wearerLine(words.date(set.date), set.wornOver);
  const said = printer ? `${wearer} · ${words.corrected(printer)}` : wearer;
  for (const [index, small] of [said, words.first.markLine(version)].entries()) {
    const fits = { width: area.width, size: 2.6, least: 1.9, weight: 'plain' } as const;
    const row = fittedText(document, small, fits);
    document.text(ink, row.text, area.left, area.top + 16.8 + 3.5 * index, { size: row.size, grey: 0.25 });
  }
}

function scale(ink: Ink, document: PdfDocument, words: PaperWords, { left, top, width }: Area): void {
  ink.pen(0.4).rectangle(left, top, TEST_SQUARE, TEST_SQUARE);
  document.text(ink, words.testSquare, left + TEST_SQUARE / 2, top + 9, { size: 4.4, weight: 'bold', align: 'middle' });
  const beside = { left: left + TEST_SQUARE + GAP, top, width: width - TEST_SQUARE - GAP, height: TEST_SQUARE };
  heading(ink, document, words.first.scaleTitle, beside);
  paragraphs(ink, document, words.first.scaleLines, { ...beside, top: top + UNDER_HEADING });
}

/** The key to the lines, in the square that proves the scale: there is room in whatever language. */
function key(ink: Ink, document: PdfDocument, { pieces, words }: FirstPages, { left, top }: Area): void {
  const drawn = new Set(pieces.flatMap(({ lines }) => [...lines]));
  const side = TEST_SQUARE - 2 * KEY_INSET;
  inkLineKey(ink, document, drawn, words, {
    left: left + KEY_INSET,
    top: top + KEY_TOP,
    width: side,
    height: TEST_SQUARE - KEY_TOP - 3,
  });
}

function joinsAndCautions(
  ink: Ink,
  document: PdfDocument,
  words: PaperWords,
  joins: 'lapped' | 'butted',
  area: Area,
): void {
  const column = { ...area, width: (area.width - GAP) / 2 };
  heading(ink, document, words.first.joinTitle, column);
  paragraphs(ink, document, words.first.joinLines[joins], { ...column, top: column.top + UNDER_HEADING });
  const other = { ...column, left: area.left + column.width + GAP };
  heading(ink, document, words.first.cautionTitle, other);
  paragraphs(ink, document, words.first.cautions, { ...other, top: other.top + UNDER_HEADING });
}

function heading(ink: Ink, document: PdfDocument, text: string, { left, top, width }: Area): void {
  const fitted = fittedText(document, text, { width, size: 4.2, least: 3, weight: 'bold' });
  document.text(ink, fitted.text, left, top + 3.6, { size: fitted.size, weight: 'bold' });
  ink.pen(0.2, [], 0.4).line(left, top + 5.4, left + width, top + 5.4);
}

function paragraphs(ink: Ink, document: PdfDocument, texts: readonly string[], { left, top, width }: Area): void {
  let y = top;
  for (const text of texts) {
    for (const line of textLines(document, text, width, TEXT, 'plain')) {
      document.text(ink, line, left, y, { size: TEXT });
      y += LEADING;
    }
    y += 1.4;
  }
}

function columnsIn(area: Area): number {
  return Math.max(1, Math.floor((area.width + GAP) / (MAP_LEAST.width + GAP)));
}

function mapsIn(area: Area): number {
  return columnsIn(area) * Math.max(1, Math.floor((area.height - 7) / MAP_LEAST.height));
}

function inkMaps(ink: Ink, document: PdfDocument, pieces: readonly MappedSheet[], words: PaperWords, area: Area): void {
  const columns = Math.min(columnsIn(area), pieces.length);
  const rows = Math.ceil(pieces.length / columns);
  const [width, height] = [(area.width + GAP) / columns - GAP, (area.height + GAP) / rows - GAP];
  pieces.forEach((mapped, index) => {
    const left = area.left + (index % columns) * (width + GAP);
    const top = area.top + Math.floor(index / columns) * (height + GAP);
    inkPageMap(ink, document, mapped, words, { left, top, width, height });
  });
}
