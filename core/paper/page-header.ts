import type { SheetChoice } from '../garment/sheet-choice';
import { inches } from '../units/inch';
import { HEADER, type Page } from './page-plan';
import { marginsOf, type Sheet } from './page-sizes';
import type { PaperWords } from './paper-words';
import type { PdfDocument } from './pdf-document';
import type { Ink } from './pdf-ink';
import { fittedText } from './text-lines';

/** What the strip above the window says. */
export interface Header {
  readonly document: PdfDocument;
  readonly words: PaperWords;
  readonly sheet: Sheet;
  readonly paper: SheetChoice;
  readonly page: Page;
  /** The page's number among all the pages of the document, and how many there are. */
  readonly number: number;
  readonly of: number;
  readonly pieceName: string;
  readonly garmentLine: string;
  /** How the piece is cut and what allowance it has, in words. */
  readonly cutLine: string;
}

/** Letters of 18 points and more can be read on the floor. */
const NAME_LEAST = inches(18 / 72);
const NAME = inches(20 / 72);

/** Some letters reach over the place they are set at (mm). */
const OVERHANG = 0.4;

/** The strip above the window: which piece, how it is cut, which way is up, and which page this is. */
export function inkHeader(ink: Ink, header: Header): void {
  const { document, words, sheet, paper, page, number, of, pieceName, garmentLine, cutLine } = header;
  const margins = marginsOf(paper);
  const [left, right] = [margins.left + OVERHANG, sheet.width - margins.right - OVERHANG];
  // An accent on a capital reaches as high as the letters' whole size.
  const first = margins.top + NAME;
  const base = margins.top + 7.2;
  const second = margins.top + HEADER - 1.9;

  const label = { size: 9.4, weight: 'bold' } as const;
  document.text(ink, page.label, right, base, { ...label, align: 'end' });
  const beside = right - document.textWidth(page.label, label.size, label.weight) - 2.6;
  document.text(ink, words.pageOf(number, of), beside, base - 3.4, { size: 3, weight: 'bold', align: 'end' });
  const place = words.rowColumn(page.label.replace(/\d+$/, ''), page.column + 1);
  document.text(ink, place, beside, base, { size: 2.5, align: 'end' });

  const arrow = beside - Math.max(24, document.textWidth(place, 2.5)) - 7;
  upArrow(ink, arrow, margins.top + 0.4);
  document.text(ink, words.thisWayUp, arrow, base, { size: 2.1, align: 'middle' });

  const nameRoom = { width: arrow - 9 - left, size: NAME, least: NAME_LEAST, weight: 'bold' } as const;
  const name = fittedText(document, pieceName, nameRoom);
  document.text(ink, name.text, left, first, { size: name.size, weight: 'bold' });

  const cut = fittedText(document, cutLine, { width: right - left - 88, size: 3, least: 2.3, weight: 'plain' });
  document.text(ink, cut.text, left, second, { size: cut.size });
  // What may be cut short is the end of it, the date; never how the page is printed.
  const line = fittedText(document, `${words.fullSize} · ${garmentLine}`, {
    width: right - left - 4 - document.textWidth(cut.text, cut.size),
    size: 2.3,
    least: 1.9,
    weight: 'plain',
  });
  document.text(ink, line.text, right, second, { size: line.size, align: 'end', grey: 0.25 });
}

function upArrow(ink: Ink, x: number, top: number): void {
  const head = [
    { x, y: top },
    { x: x + 1.6, y: top + 2.6 },
    { x: x - 1.6, y: top + 2.6 },
  ];
  ink
    .fill(head, 0)
    .pen(0.5)
    .line(x, top + 2.4, x, top + 4.4);
}
