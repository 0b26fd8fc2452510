import type { PaperChoice } from '../garment/garment';
import { MM_PER_CENTIMETRE, MM_PER_INCH } from '../units/inch';
import { inkHeader } from './page-header';
import type { Join, JoinMark } from './page-joins';
import { HEADER, type Page, type PagePlan } from './page-plan';
import type { Sheet } from './page-sizes';
import { TEST_SQUARE } from './paper-findings';
import type { PaperWords } from './paper-words';
import type { PdfDocument } from './pdf-document';
import type { Ink } from './pdf-ink';
import { testSquarePlace } from './test-square-place';

/** What stands on a page beside the drawing. */
export interface Furniture {
  readonly document: PdfDocument;
  readonly words: PaperWords;
  readonly sheet: Sheet;
  readonly paper: PaperChoice;
  readonly plan: PagePlan;
  readonly joins: readonly Join[];
  readonly page: Page;
  /** The page's number among all the pages of the document, and how many there are. */
  readonly number: number;
  readonly of: number;
  readonly pieceName: string;
  readonly garmentLine: string;
  /** How the piece is cut and what allowance it has, in words. */
  readonly cutLine: string;
}

/** No line is finer than half a point of a printer (0.176 mm), which vanishes in draft mode. */
const FINE = 0.2;

/** From the edge of the window to the middle of a line along it, so that none of it lies in the margin. */
const INSET = FINE / 2;

/** Draws everything beside the drawing: header, rulers, joins and the test square. */
export function inkFurniture(ink: Ink, furniture: Furniture): void {
  const { paper, plan, page } = furniture;
  inkHeader(ink, furniture);
  const window = { left: paper.margin, top: paper.margin + HEADER, ...plan.window };
  ink.save().clip(window.left, window.top, window.width, window.height);
  rulers(ink, furniture, window, crossesIn(furniture));
  ink.shift(window.left - page.window.minX, window.top - page.window.minY);
  joins(ink, furniture);
  testSquare(ink, furniture);
  ink.restore();
}

interface Window {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

const RULER_GREY = 0.3;
const RULER_TEXT = 1.9;

/** A ruler's figure this near to a cross gives way to it (mm). */
const GIVES_WAY = 4.5;

/** Where the crosses of this page are, in the window. */
function crossesIn({ joins, page }: Furniture): Record<Join['runs'], readonly number[]> {
  const marks = (runs: Join['runs']) =>
    joins.flatMap((join) => (join.runs === runs && touches(join, page) ? join.marks : []));
  return {
    across: marks('across').map(({ at }) => at.x - page.window.minX),
    down: marks('down').map(({ at }) => at.y - page.window.minY),
  };
}

function touches({ over, under }: Join, { label }: Page): boolean {
  return over.label === label || under.label === label;
}

/** A ruler along each side of the window: inches along the top and left, centimetres along the bottom and right. */
function rulers(
  ink: Ink,
  { document, words }: Furniture,
  { left, top, width, height }: Window,
  crosses: Record<Join['runs'], readonly number[]>,
): void {
  const [right, bottom] = [left + width, top + height];
  ink.pen(FINE, [], RULER_GREY);
  ink.rectangle(left + INSET, top + INSET, width - 2 * INSET, height - 2 * INSET);
  const says = (
    { text, at }: Tick,
    near: readonly number[],
    x: number,
    y: number,
    align: 'start' | 'middle' | 'end',
  ) => {
    if (text === '' || near.some((cross) => Math.abs(cross - at) < GIVES_WAY)) return;
    document.text(ink, text, x, y, { size: RULER_TEXT, align, grey: RULER_GREY });
  };
  for (const tick of ticks(width, MM_PER_INCH, 8, words.inch)) {
    ink.line(left + tick.at, top, left + tick.at, top + tick.reach);
    says(tick, crosses.across, left + tick.at, top + tick.reach + 1.8, 'middle');
  }
  for (const tick of ticks(height, MM_PER_INCH, 8, words.inch)) {
    ink.line(left, top + tick.at, left + tick.reach, top + tick.at);
    says(tick, crosses.down, left + tick.reach + 0.4, top + tick.at + 0.7, 'start');
  }
  for (const tick of ticks(width, MM_PER_CENTIMETRE, 2, words.centimetre)) {
    ink.line(left + tick.at, bottom, left + tick.at, bottom - tick.reach);
    says(tick, crosses.across, left + tick.at, bottom - tick.reach - 0.5, 'middle');
  }
  for (const tick of ticks(height, MM_PER_CENTIMETRE, 2, words.centimetre)) {
    ink.line(right, top + tick.at, right - tick.reach, top + tick.at);
    says(tick, crosses.down, right - tick.reach - 0.4, top + tick.at + 0.7, 'end');
  }
}

interface Tick {
  readonly at: number;
  readonly reach: number;
  readonly text: string;
}

/** The ticks of a ruler: whole units the longest and numbered, the unit named after the first, halves shorter, parts shortest. */
function ticks(length: number, unit: number, parts: number, unitName: string): Tick[] {
  const all: Tick[] = [];
  for (let i = 1; (i * unit) / parts < length - 3; i++) {
    const isWhole = i % parts === 0;
    const reach = isWhole ? 2 : i % (parts / 2) === 0 ? 1.4 : 0.8;
    const text = i === parts * 1.5 ? unitName : isWhole ? String(i / parts) : '';
    all.push({ at: (i * unit) / parts, reach, text });
  }
  return all;
}

/** The joins of this page, in table millimetres, and which page of each lies over which. */
function joins(ink: Ink, furniture: Furniture): void {
  const { document, words, page } = furniture;
  for (const join of furniture.joins) {
    if (!touches(join, page)) continue;
    const isOver = join.over.label === page.label;
    // Dots so short that nobody takes it for a stitch line.
    ink.pen(0.25, [0.4, 1.3]).line(join.from.x, join.from.y, join.to.x, join.to.y);
    const inner = isOver ? -1 : 1;
    for (const mark of join.marks) joinMark(ink, document, join, mark, inner);
    const says = isOver ? words.cutAndLayOver(join.under.label) : words.goesUnder(join.over.label);
    const { x, y } = join.wordsAt;
    const style = { size: 2.1, align: 'middle', grey: 0.2 } as const;
    const base = isOver ? -0.9 : 2.4;
    if (join.runs === 'across') document.text(ink, says, x, y + base, style);
    else document.text(ink, says, x + base, y, { ...style, angle: -Math.PI / 2 });
  }
}

/** A cross whose arms reach over the join, so that half of it is left on each page, and its mark on this page's side. */
function joinMark(
  ink: Ink,
  document: PdfDocument,
  { runs }: Join,
  { at: { x, y }, mark }: JoinMark,
  inner: 1 | -1,
): void {
  const arm = 3;
  ink
    .pen(0.4)
    .line(x - arm, y - arm, x + arm, y + arm)
    .line(x - arm, y + arm, x + arm, y - arm);
  const away = arm + 3.4;
  const [textX, textY] = runs === 'down' ? [x + inner * away, y] : [x, y + inner * away];
  document.text(ink, mark, textX, textY + 1.5, { size: 4.2, weight: 'bold', align: 'middle' });
}

const SQUARE_GREY = 0.35;

/** A square of just four inches, fine enough to lie over the drawing, with sharp corners to measure between. */
function testSquare(ink: Ink, { document, words, plan, page, pieceName }: Furniture): void {
  const { x, y } = testSquarePlace(plan, page);
  const [right, bottom] = [x + TEST_SQUARE, y + TEST_SQUARE];
  ink.pen(FINE, [], SQUARE_GREY).rectangle(x, y, TEST_SQUARE, TEST_SQUARE);
  ink.pen(0.3);
  for (const [cx, cy, dx, dy] of [
    [x, y, 1, 1],
    [right, y, -1, 1],
    [x, bottom, 1, -1],
    [right, bottom, -1, -1],
  ] as const) {
    ink.line(cx, cy, cx + 5 * dx, cy).line(cx, cy, cx, cy + 5 * dy);
  }
  document.text(ink, page.label, x + 2.5, y + 6.4, { size: 5.2, weight: 'bold', grey: SQUARE_GREY });
  const beside = x + 4.5 + document.textWidth(page.label, 5.2, 'bold');
  document.text(ink, pieceName, beside, y + 6.4, { size: 3, grey: SQUARE_GREY });
  document.text(ink, words.testSquare, x + 2.5, bottom - 2.6, { size: 3, grey: SQUARE_GREY });
}
