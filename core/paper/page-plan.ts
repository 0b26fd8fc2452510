import type { Mark, Words, WordsContent } from '../drawing/drawing';
import type { SheetChoice } from '../garment/sheet-choice';
import { type Box, boxOfPoints, growBox, unionBox } from '../geometry/bounds';
import { flattenPath } from '../geometry/flatten';
import { pathBounds } from '../geometry/path';
import { between, distance, type Point, type TablePoint } from '../geometry/point';
import { LONGEST_PAGE, marginsOf, sheetOf, UPRIGHT } from './page-sizes';
import { cellsAt, type Grid, pagesNeeded } from './pages-needed';
import { TEST_SQUARE } from './paper-findings';
import { sheetName } from './sheet-names';

/** One sheet of a piece. `window` is the part of the table it shows; neighbours share an overlap. */
export interface Page {
  readonly row: number;
  readonly column: number;
  /** Row as a letter and column as a number: B3. */
  readonly label: string;
  readonly window: Box;
}

export interface PagePlan {
  /** The sheets; of a roll with the length that is cut from it. */
  readonly paper: SheetChoice;
  readonly pages: readonly Page[];
  readonly rows: number;
  readonly columns: number;
  /** Where the first window begins. */
  readonly origin: TablePoint;
  /** The size of every window, and from the start of one to the start of the next (mm). */
  readonly window: { readonly width: number; readonly height: number };
  readonly step: { readonly across: number; readonly down: number };
  readonly drawn: Box;
  /** Places along everything drawn, a few mm apart, to find free room on a page by. */
  readonly ink: readonly Point[];
}

/** Kept clear above every window for the name of the piece and the number of the page (mm). */
export const HEADER = 13;

/** How finely lines are followed to see which pages they touch, and how far apart the places on them are (mm). */
const FOLLOW = 0.5;
const APART = 3;

/** The drawing keeps this far from the outer edge of the sheets, clear of the rulers; or less where that saves sheets (mm). */
const CLEAR = [4, 1] as const;

/** Room about the test square for the joins and the rulers (mm). */
const ABOUT_SQUARE = 11;

/** A piece that takes more is no piece but a point gone astray: A4 sheets over 5 m by 9 m, or as much in larger ones. */
const MOST_SHEETS = 1000;
const MOST_AREA = MOST_SHEETS * UPRIGHT.a4.width * UPRIGHT.a4.height;

/** A letter is about this wide for each mm of its height. */
const LETTER_WIDTH = 0.6;

/** Words whose length only the language knows count as this many letters. */
const USUAL_LETTERS = 24;

/** How many windows of `window` with `overlap` in common cover `length`: at least one (mm). */
export function windowsFor(length: number, window: number, overlap: number): number {
  return Math.max(1, Math.ceil((length - overlap) / (window - overlap) - 1e-9));
}

/** The part of a sheet that shows the drawing (mm). */
export function windowSize(paper: SheetChoice): { readonly width: number; readonly height: number } {
  const sheet = sheetOf(paper);
  const { top, right, bottom, left } = marginsOf(paper);
  return { width: sheet.width - left - right, height: sheet.height - top - bottom - HEADER };
}

/**
 * The sheets of one drawing, in rows, those without any line left out; the drawing is shifted over the sheets where that
 * saves some. `undefined` for a drawing without lines, or when margins and overlap leave no room for the test square.
 * `undefined` too for a drawing so large that nobody would tape it. With `at` the sheets are not shifted: one of them begins there. The last plan of a drawing is remembered.
 */
export function planPages(marks: readonly Mark[], paper: SheetChoice, at?: TablePoint): PagePlan | undefined {
  const key = JSON.stringify([paper, at]);
  const known = remembered.get(marks);
  if (known?.key === key) return known.plan;
  const plan = planned(marks, paper, at);
  remembered.set(marks, { key, plan });
  return plan;
}

const remembered = new WeakMap<readonly Mark[], { readonly key: string; readonly plan: PagePlan | undefined }>();

function planned(marks: readonly Mark[], choice: SheetChoice, at: TablePoint | undefined): PagePlan | undefined {
  const drawn = drawnBox(marks);
  if (!drawn) return undefined;
  const paper = choice.size === 'roll' ? { ...choice, rollLength: rollLength(drawn, choice) } : choice;
  const window = windowSize(paper);
  if (Math.min(window.width, window.height) < leastWindow(paper)) return undefined;
  const step = { across: window.width - paper.overlap, down: window.height - paper.overlap };
  if (sheetsOver(drawn, { window, step }) > MOST_SHEETS || areaOf(drawn) > MOST_AREA) return undefined;
  const ink = inkPlaces(marks);
  const { columns, origin, cells, rows } = at
    ? cellsFrom(ink, drawn, { window, step }, at)
    : fewestCells(ink, drawn, { window, step });
  const pages = cells.map((cell): Page => {
    const [row, column] = [Math.floor(cell / columns), cell % columns];
    const [minX, minY] = [origin.x + column * step.across, origin.y + row * step.down];
    return {
      row,
      column,
      label: sheetName(row, column),
      window: { minX, minY, maxX: minX + window.width, maxY: minY + window.height },
    };
  });
  return { paper, pages, rows, columns, origin, window, step, drawn, ink };
}

/** A page has room for the test square and what stands about it. */
function leastWindow({ overlap }: SheetChoice): number {
  return TEST_SQUARE + overlap + 2 * ABOUT_SQUARE;
}

/** How long the sheets of a roll are that hold a drawing: one, or several of one length where one would be too long. */
function rollLength(drawn: Box, paper: SheetChoice): number {
  const { top, bottom } = marginsOf(paper);
  const beside = top + bottom + HEADER;
  const high = Math.max(drawn.maxY - drawn.minY + 2 * CLEAR[0], leastWindow(paper));
  const count = windowsFor(high, LONGEST_PAGE - beside, paper.overlap);
  return Math.ceil((high + (count - 1) * paper.overlap) / count) + beside;
}

/** How many sheets a drawing lies on when none is left out. */
function sheetsOver({ minX, minY, maxX, maxY }: Box, { window, step }: Size): number {
  const columns = windowsFor(maxX - minX, window.width, window.width - step.across);
  return columns * windowsFor(maxY - minY, window.height, window.height - step.down);
}

function areaOf({ minX, minY, maxX, maxY }: Box): number {
  return (maxX - minX) * (maxY - minY);
}

type Size = Pick<Grid, 'window' | 'step'>;
type Cells = Pick<PagePlan, 'rows' | 'columns' | 'origin'> & { readonly cells: readonly number[] };

function fewestCells(ink: readonly Point[], drawn: Box, size: Size): Cells {
  const { window, step } = size;
  let fewest: Cells | undefined;
  for (const clear of CLEAR) {
    const columns = windowsFor(drawn.maxX - drawn.minX + 2 * clear, window.width, window.width - step.across);
    const rows = windowsFor(drawn.maxY - drawn.minY + 2 * clear, window.height, window.height - step.down);
    const needed = pagesNeeded(ink, growBox(drawn, clear), { columns, rows, ...size }, fewest?.cells.length);
    if (needed) fewest = { columns, rows, ...needed };
  }
  return fewest ?? { columns: 1, rows: 1, origin: { x: drawn.minX, y: drawn.minY }, cells: [] };
}

/** The sheets needed when one of them begins at a place. */
function cellsFrom(ink: readonly Point[], drawn: Box, size: Size, at: TablePoint): Cells {
  const { window, step } = size;
  const box = growBox(drawn, CLEAR[1]);
  const origin = {
    x: at.x + Math.floor((box.minX - at.x) / step.across) * step.across,
    y: at.y + Math.floor((box.minY - at.y) / step.down) * step.down,
  };
  const columns = windowsFor(box.maxX - origin.x, window.width, window.width - step.across);
  const rows = windowsFor(box.maxY - origin.y, window.height, window.height - step.down);
  return withoutEmptySides({ columns, rows, origin, cells: cellsAt(ink, origin, { columns, rows, ...size }) }, size);
}

/** The sheets counted from the first row and column of which any is needed. */
function withoutEmptySides({ columns, origin, cells }: Cells, { step }: Size): Cells {
  const at = cells.map((cell) => ({ row: Math.floor(cell / columns), column: cell % columns }));
  const top = Math.min(...at.map(({ row }) => row));
  const left = Math.min(...at.map(({ column }) => column));
  const wide = 1 + Math.max(...at.map(({ column }) => column)) - left;
  return {
    columns: wide,
    rows: 1 + Math.max(...at.map(({ row }) => row)) - top,
    origin: { x: origin.x + left * step.across, y: origin.y + top * step.down },
    cells: at.map(({ row, column }) => (row - top) * wide + column - left),
  };
}

/** The box round everything drawn; words count by their place alone. */
export function drawnBox(marks: readonly Mark[]): Box | undefined {
  return marks.reduce<Box | undefined>((box, mark) => {
    const next =
      mark.kind === 'words' ? boxOfPoints([mark.at]) : mark.path.length > 0 ? pathBounds(mark.path) : undefined;
    return box && next ? unionBox(box, next) : (next ?? box);
  }, undefined);
}

/** Places along every line and every run of words, a few mm apart. */
export function inkPlaces(marks: readonly Mark[]): Point[] {
  return marks.flatMap((mark) => {
    const line = mark.kind === 'words' ? wordsRun(mark) : flattenPath(mark.path, FOLLOW);
    return line.flatMap((to, index) => {
      const from = line[index - 1];
      if (!from) return [to];
      const parts = Math.max(1, Math.ceil(distance(from, to) / APART));
      return Array.from({ length: parts }, (_, k) => between(from, to, (k + 1) / parts));
    });
  });
}

/** From where to where words run, as nearly as can be told without a font. */
export function wordsRun({ content, at, size, angle }: Words): [Point, Point] {
  const half = (lettersOf(content) * size * LETTER_WIDTH) / 2;
  const [dx, dy] = [Math.cos(angle) * half, Math.sin(angle) * half];
  return [
    { x: at.x - dx, y: at.y - dy },
    { x: at.x + dx, y: at.y + dy },
  ];
}

function lettersOf(content: WordsContent): number {
  if (content.kind === 'piece-name') return content.name.length;
  return content.kind === 'label' ? content.text.length : USUAL_LETTERS;
}
