import type { LineKind, Mark, WordsContent } from '../drawing/drawing';
import type { Garment } from '../garment/garment';
import { growBox } from '../geometry/bounds';
import { firstPagesCount } from './first-page';
import type { MendedSheet } from './mend-plan';
import { type Furniture, inkFurniture } from './page-furniture';
import { type Join, pageJoins } from './page-joins';
import type { MappedSheet } from './page-map';
import { HEADER, type Page, windowSize } from './page-plan';
import { rulerTicks } from './page-rulers';
import { marginsOf, sheetOf } from './page-sizes';
import { TEST_SQUARE } from './paper-findings';
import type { PaperWords } from './paper-words';
import type { PdfDocument, StoredDrawing } from './pdf-document';
import { Ink } from './pdf-ink';
import { cutLineOf, inkMarks, inkOlder } from './piece-ink';
import type { TapedSheet } from './placed-piece';
import { type ChosenPages, isChosen } from './printing-of';
import { edgeContents, sheetNotes, testSquares } from './sheet-notes';
import { inkSquares } from './squares-over';
import { inkSquareGround, ruledSquare } from './test-square';
import type { SquarePlace } from './test-square-place';

/** The widest a word or a line reaches beyond the drawing's own box (mm). */
const AROUND = 200;

/** A sheet with its drawing stored. */
export type PlannedSheet = MappedSheet & {
  readonly drawing: StoredDrawing;
  readonly joins: readonly Join[];
  /** Where the test squares lie, in the order of the pages. */
  readonly squares: readonly SquarePlace[];
};

/** What is said of the pages, and what is drawn on them beside the pieces. */
export interface PagesSaid {
  readonly garment: Garment;
  readonly words: PaperWords;
  readonly garmentLine: string;
  /** The older versions that are laid under the pieces, in words. */
  readonly olderSaid?: readonly string[] | undefined;
}

/** The sheets with their drawings stored, their pages numbered on from the first pages. */
export function plannedSheets(document: PdfDocument, sheets: readonly TapedSheet[], said: PagesSaid): PlannedSheet[] {
  let firstNumber = 1 + firstPagesCount(said.garment, sheets.length);
  return sheets.map((sheet) => {
    const one = { ...storedSheet(document, sheet, pageJoins(sheet.plan), said), firstNumber };
    firstNumber += sheet.plan.pages.length;
    return one;
  });
}

export interface SheetPages extends PagesSaid {
  readonly planned: readonly PlannedSheet[];
  /** All pages that are counted. */
  readonly of: number;
  /** Only these of them, when said. */
  readonly chosen?: ChosenPages | undefined;
}

/** One job for each full-size page, each adding its page to the document: drawing, and all that stands beside it. */
export function sheetPages(document: PdfDocument, options: SheetPages): (() => void)[] {
  const { planned, of, chosen } = options;
  const ruled = ruledOf(document);
  return planned.flatMap((sheet) => {
    const number = (page: Page) => sheet.firstNumber + sheet.plan.pages.indexOf(page);
    const pages = sheet.plan.pages.filter((page) => isChosen(sheet, page, chosen));
    return pageJobs(document, { ...options, sheet, pages, number, of, ruled });
  });
}

/** One job for each page that is made anew, on the paper and under the name and number it had. */
export function mendedPages(document: PdfDocument, mended: readonly MendedSheet[], said: PagesSaid): (() => void)[] {
  const ruled = ruledOf(document);
  return mended.flatMap((one) => {
    const sheet = storedSheet(document, one, one.joins, said);
    return pageJobs(document, { ...said, sheet, pages: one.only, number: one.number, of: one.of, ruled });
  });
}

interface PageJobs extends PagesSaid {
  readonly sheet: Stored;
  readonly pages: readonly Page[];
  readonly number: (page: Page) => number;
  readonly of: number;
  readonly ruled: Ruled;
}

function pageJobs(document: PdfDocument, { sheet, pages, number, of, ruled, ...said }: PageJobs): (() => void)[] {
  const { plan, drawing, name, cutLine, placed, joins, squares } = sheet;
  const { words, garment, garmentLine, olderSaid = [] } = said;
  const rulers = ruled.rulers(plan.paper);
  return pages.map((page) => () => {
    const square = squares[plan.pages.indexOf(page)];
    if (!square) throw new Error('every page has a test square');
    addSheet(drawing, {
      document,
      words,
      sheet: sheetOf(plan.paper),
      paper: plan.paper,
      printer: garment.paper.printer,
      older: olderSaid.map((one, index) => ({ said: one, isHere: olderOf(placed, index).length > 0 })),
      plan,
      placed,
      joins,
      square,
      rulers,
      ruled: ruled.square,
      page,
      number: number(page),
      of,
      pieceName: name,
      garmentLine,
      cutLine,
    });
  });
}

type Stored = Omit<PlannedSheet, 'firstNumber'>;

function storedSheet(document: PdfDocument, sheet: TapedSheet, joins: readonly Join[], said: PagesSaid): Stored {
  const { placed, plan } = sheet;
  const { words, garment, olderSaid = [] } = said;
  const squares = testSquares(sheet, garment, joins);
  const ink = new Ink();
  if (garment.paper.squaresOver) inkSquares(ink, document, plan, garment.paper.squaresOver, words);
  for (const [index, one] of olderSaid.entries()) {
    const marks = olderOf(placed, index);
    if (marks.length > 0) inkOlder(ink, document, marks, { index, layer: words.layers.under(one) });
  }
  for (const { marks } of placed) inkMarks(ink, document, marks, words);
  const widthOf = (content: WordsContent, size: number) => document.textWidth(words.content(content), size);
  const notes = sheetNotes(sheet, { garment, joins, squares, widthOf });
  inkMarks(ink, document, notes, words);
  const cut = [...new Set(placed.map(({ marks }) => cutLineOf(marks, words)))].join(' | ');
  return {
    name: placed.map(({ piece }) => (piece.name === '' ? words.unnamedPiece : piece.name)).join(' + '),
    placed,
    plan,
    joins,
    squares,
    lines: kindsOf([...placed.flatMap(({ marks }) => marks), ...notes]),
    drawing: document.store(ink, growBox(plan.drawn, AROUND)),
    cutLine: cut,
    edgesLine: edgesLineOf(placed, said),
  };
}

/** What is allowed on each edge of the pieces, in words, for what has no room on the pieces themselves. */
function edgesLineOf(placed: TapedSheet['placed'], { garment, words }: PagesSaid): string {
  const lines = placed.map(({ piece }) => {
    const said = edgeContents(piece, garment).flatMap((one) => (one?.width === undefined ? [] : words.content(one)));
    return [...new Set(said)].join('; ');
  });
  return [...new Set(lines.filter((one) => one !== ''))].join(' | ');
}

function kindsOf(marks: readonly Mark[]): ReadonlySet<LineKind> {
  return new Set(marks.flatMap((mark) => (mark.kind === 'stroke' ? [mark.line] : [])));
}

/** The lines of one of the older versions, of all pieces that lie on a sheet. */
function olderOf(placed: TapedSheet['placed'], index: number): Mark[] {
  return placed.flatMap(({ under }) => under[index] ?? []);
}

/** What is the same on all pages of a size: the ticks of the rulers, and the test square. */
interface Ruled {
  readonly rulers: (paper: TapedSheet['plan']['paper']) => StoredDrawing;
  readonly square: StoredDrawing;
}

/** The ticks for each size of page, stored when they are first asked for. */
function ruledOf(document: PdfDocument): Ruled {
  const known = new Map<string, StoredDrawing>();
  return {
    square: document.store(ruledSquare(), { minX: -1, minY: -1, maxX: TEST_SQUARE + 1, maxY: TEST_SQUARE + 1 }),
    rulers(paper) {
      const { width, height } = windowSize(paper);
      const key = `${width} ${height}`;
      const box = { minX: 0, minY: 0, maxX: width, maxY: height };
      const stored = known.get(key) ?? document.store(rulerTicks({ width, height }), box);
      known.set(key, stored);
      return stored;
    },
  };
}

function addSheet(drawing: StoredDrawing, furniture: Furniture): void {
  const { document, paper, page, sheet } = furniture;
  const { width, height } = windowSize(paper);
  const margins = marginsOf(paper);
  const [left, top] = [margins.left, margins.top + HEADER];
  const ink = new Ink();
  ink.save().clip(left, top, width, height);
  ink.shift(left - page.window.minX, top - page.window.minY);
  // Under the drawing, so that every line of a piece stays whole.
  if (!furniture.square.isClear) inkSquareGround(ink, furniture.square);
  ink.show(drawing.name).restore();
  inkFurniture(ink, furniture);
  document.addPage(sheet, ink);
}
