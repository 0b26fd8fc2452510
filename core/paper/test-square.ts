import type { PrinterFactors } from '../garment/garment';
import { boxContains } from '../geometry/bounds';
import type { Point } from '../geometry/point';
import { MM_PER_INCH } from '../units/inch';
import { assembledTotals } from './assembled-totals';
import { olderLine } from './older-lines';
import type { Header } from './page-header';
import { inkPlaces, type Page, type PagePlan } from './page-plan';
import { TEST_SQUARE } from './paper-findings';
import type { PaperWords } from './paper-words';
import type { StoredDrawing } from './pdf-document';
import { Ink } from './pdf-ink';
import type { PlacedPiece } from './placed-piece';
import type { SquarePlace } from './test-square-place';
import { fittedText } from './text-lines';

/** What a page's test square tells of. */
export interface SquareOnPage extends Header {
  readonly plan: PagePlan;
  readonly placed: readonly PlacedPiece[];
  /** What the printer makes of a length, where pages are drawn the other way round. */
  readonly printer: PrinterFactors | undefined;
  /** The older versions under the pieces, and whether the sheet holds lines of them. */
  readonly older: readonly { readonly said: string; readonly isHere: boolean }[];
  readonly square: SquarePlace;
  /** The sides of the square and their ticks, stored once for all pages. */
  readonly ruled: StoredDrawing;
}

const GREY = 0.35;

/**
 * The ground of a square over which lines of a piece run: so pale that a line on it is as plain as beside it, and within
 * the ticks, so that the sides are as sharp to measure between as on white.
 */
const GROUND = 0.93;
const GROUND_INSET = 3;

/** The ticks along its sides, a quarter of an inch apart: full inches reach further in (mm). */
const TICK = 1.2;
const INCH_TICK = 2.4;

/** How much is shown of a line that is named (mm). */
const SAMPLE = 16;

/** The first line of words below the top, and from one to the next (mm). */
const FIRST = 8.4;
const LEADING = 3.6;

/** Words keep so far from the left side, and more where lines run there (mm); so wide they mostly are. */
const INDENTS = [4.5, 16, 28, 40];
const WIDE = 56;

/** The ground of a square that could not be kept clear of lines: no pattern has one. */
export function inkSquareGround(ink: Ink, { x, y }: SquarePlace): void {
  const side = TEST_SQUARE - 2 * GROUND_INSET;
  ink.fillRectangle(x + GROUND_INSET, y + GROUND_INSET, side, side, GROUND);
}

/** A square of just four inches from its corner, ruled along its sides: the same on every page. */
export function ruledSquare(): Ink {
  const ink = new Ink();
  const quarter = MM_PER_INCH / 4;
  ink.pen(0.2, [], GREY).rectangle(0, 0, TEST_SQUARE, TEST_SQUARE);
  for (let i = 1; i * quarter < TEST_SQUARE - 1; i++) {
    const reach = i % 4 === 0 ? INCH_TICK : TICK;
    const at = i * quarter;
    ink.line(at, 0, at, reach).line(at, TEST_SQUARE, at, TEST_SQUARE - reach);
    ink.line(0, at, reach, at).line(TEST_SQUARE, at, TEST_SQUARE - reach, at);
  }
  return ink;
}

interface Row {
  readonly said: string;
  readonly size: number;
  readonly weight?: 'bold';
  /** A sample of the line of an older version, by its index. */
  readonly older?: number;
}

/**
 * The square, ruled so that nobody takes it for part of a pattern, and in it: which page it is, that it is there to be
 * measured, what the taped pages must measure, for she measures here, and what is laid under the piece.
 */
export function inkTestSquare(ink: Ink, said: SquareOnPage): void {
  const { document, page, pieceName, square, plan, ruled } = said;
  const { x, y } = square;
  ink.save().shift(x, y).show(ruled.name).restore();
  const rows = rowsOf(said);
  const height = FIRST + rows.length * LEADING;
  const { left, top } = freestPlace(plan.ink, square, height);
  document.text(ink, page.label, left, top + FIRST, { size: 5.2, weight: 'bold', grey: GREY });
  const beside = left + 2 + document.textWidth(page.label, 5.2, 'bold');
  document.text(ink, pieceName, beside, top + FIRST, { size: 3, grey: GREY });
  let base = top + FIRST;
  for (const { said, size, weight = 'plain', older } of rows) {
    base += LEADING;
    const from = older === undefined ? 0 : SAMPLE + 2;
    if (older !== undefined) {
      const { width, dash } = olderLine(older);
      ink.pen(width, dash).line(left, base - 0.8, left + SAMPLE, base - 0.8);
    }
    const line = fittedText(document, said, {
      width: x + TEST_SQUARE - INCH_TICK - left - from,
      size,
      least: 1.6,
      weight,
    });
    document.text(ink, line.text, left + from, base, { size: line.size, weight, grey: GREY });
  }
}

function rowsOf({ words, printer, older, page, placed }: SquareOnPage): Row[] {
  return [
    { said: words.testSquare, size: 3, weight: 'bold' },
    ...piecesTotals(placed, page, words).map((said) => ({ said, size: 2.4 })),
    ...older.flatMap(({ said, isHere }, index) =>
      isHere ? [{ said: words.layers.older(index, said), size: 2.4, older: index }] : [],
    ),
    ...(printer ? [{ said: words.corrected(printer), size: 2.4 }] : []),
  ];
}

/** Where the words of a square begin: where least of the drawing runs through them. */
function freestPlace(
  ink: readonly Point[],
  { x, y, isClear }: SquarePlace,
  height: number,
): { readonly left: number; readonly top: number } {
  const first = { left: x + (INDENTS[0] ?? 0), top: y };
  if (isClear) return first;
  const here = ink.filter((at) => boxContains({ minX: x, minY: y, maxX: x + TEST_SQUARE, maxY: y + TEST_SQUARE }, at));
  const tops = Array.from({ length: Math.floor((TEST_SQUARE - height) / LEADING) }, (_, k) => y + k * LEADING);
  let [best, least] = [first, Number.POSITIVE_INFINITY];
  for (const place of tops.flatMap((top) => INDENTS.map((indent) => ({ left: x + indent, top })))) {
    const { left, top } = place;
    const block = { minX: left - 1, maxX: left + WIDE + 1, minY: top + 2, maxY: top + height + 1 };
    const crossed = here.filter((at) => boxContains(block, at)).length;
    if (crossed < least) [best, least] = [place, crossed];
  }
  return best;
}

/** So many pieces are told of on one page. */
const MOST_TOLD = 3;

/** What the taped-up pages must measure, of each piece that this page shows some of. */
function piecesTotals(placed: readonly PlacedPiece[], { window }: Page, words: PaperWords): string[] {
  const here = placed.filter(
    ({ marks }) => placed.length === 1 || inkPlaces(marks).some((at) => boxContains(window, at)),
  );
  return here.slice(0, MOST_TOLD).map(({ piece, marks, motion }) => {
    const { across, down, grain } = assembledTotals(piece, marks, motion);
    const name = placed.length === 1 ? undefined : piece.name || words.unnamedPiece;
    return words.inAll(
      name,
      words.length(across),
      words.length(down),
      grain === undefined ? undefined : words.length(grain),
    );
  });
}
