import { pieceDrawing } from '../drawing/piece-drawing';
import type { Garment } from '../garment/garment';
import type { Piece } from '../garment/piece';
import type { Area } from './page-map';
import { homeMargin, homeSheet } from './page-sizes';
import type { PaperWords } from './paper-words';
import type { PdfDocument } from './pdf-document';
import { Ink } from './pdf-ink';
import { cutLineOf } from './piece-ink';
import { inkSquaresDrawing, squaresRoom } from './squares-drawing';
import {
  type SquaresMark,
  type SquaresOptions,
  type SquaresPoint,
  type SquaresSheet,
  squaresSheet,
} from './squares-sheet';
import { fittedText, textLines } from './text-lines';

export interface SquaresPages {
  readonly document: PdfDocument;
  readonly garment: Garment;
  readonly piece: Piece;
  readonly words: PaperWords;
  readonly garmentLine: string;
}

/** How large letters are and how many columns stand side by side (mm). Large print is read standing, the sheet at one's feet. */
interface Print {
  readonly text: number;
  readonly row: number;
  readonly columns: number;
  /** From the end of one figure to the end of the next. */
  readonly figure: number;
  /** How much larger than usual the letters in the drawing are. */
  readonly drawing: number;
}
const PRINTS: Readonly<Record<'usual' | 'large', Print>> = {
  usual: { text: 3, row: 4.6, columns: 3, figure: 19, drawing: 1 },
  large: { text: 6, row: 9, columns: 2, figure: 32, drawing: 1.5 },
};
const GUTTER = 8;

/** What is read once, before the paper lies on the floor. */
const TEXT = 3;
const LEADING = 4.2;

/** Some letters reach over the place they are set at (mm). */
const OVERHANG = 0.4;

/** The drawing takes this share of the page: more when the table below it is short, and in large print, for it is read from afar too. */
const DRAWING = { least: 0.42, most: 0.6 };

/** Fewer rows than this are not begun at the foot of a page. */
const FEWEST_ROWS = 5;

/** A block of so many rows, its heading counted, is kept together. */
const SHORT_BLOCK = 7;

/** Adds the squares sheet of a piece: the small drawing on its numbered squares, and the table of points and proofs. */
export function addSquaresPages({ document, garment, piece, words, garmentLine }: SquaresPages): void {
  const paper = { ...garment.paper, turned: 'upright' } as const;
  const sheet = homeSheet(paper);
  const margin = homeMargin(paper);
  const left = margin + OVERHANG;
  const width = sheet.width - 2 * left;
  const bottom = sheet.height - margin;
  const name = piece.name === '' ? words.unnamedPiece : piece.name;
  let ink = new Ink();

  function begin(title: string): number {
    const fitted = fittedText(document, title, { width, size: 6.6, least: 4, weight: 'bold' });
    document.text(ink, fitted.text, left, margin + 6.6, { size: fitted.size, weight: 'bold' });
    document.text(ink, garmentLine, left, margin + 10.6, { size: 2.5, grey: 0.25 });
    return margin + 17;
  }

  function paragraph(text: string, from: number): number {
    const lines = textLines(document, text, width, TEXT, 'plain');
    lines.forEach((line, index) => {
      document.text(ink, line, left, from + index * LEADING, { size: TEXT });
    });
    return from + lines.length * LEADING + 1.2;
  }

  let y = begin(words.squares.title(name));
  const { shownIn } = garment;
  const choice = paper.squares;
  const byLine = choice?.from === 'base-line';
  const print = PRINTS[choice?.print ?? 'usual'];
  const tableWith = (most: SquaresOptions['most']) => squaresSheet(piece, { shownIn, step: paper.step, most, choice });
  const said = words.squares.line(
    piece.drawnAs === 'included' ? 'cut' : 'stitch',
    cutLineOf(pieceDrawing(piece), words),
  );
  const column = (width - (print.columns - 1) * GUTTER) / print.columns;
  const rowsFor = (table: SquaresSheet) =>
    rowsOf(table, words, byLine).flatMap((row) => namedInFull(document, row, column, print));
  const rows = rowsFor(tableWith({ across: 1, down: 1 })).length;
  const most = sheet.height * DRAWING.most;
  const spare = bottom - y - 40 - Math.ceil(rows / print.columns + 2) * print.row;
  const height = print === PRINTS.large ? most : Math.max(sheet.height * DRAWING.least, Math.min(most, spare));
  const room = { left, width, height };
  const table = tableWith(squaresRoom(room, print.drawing));
  const square = words.length(table.square);
  const how = byLine ? words.squares.howByLine(square, table.base) : words.squares.how(square);
  y = paragraph(said, y);
  y = paragraph(how, y);
  y = inkSquaresDrawing(ink, document, { piece, table, words, byLine, letters: print.drawing }, { ...room, top: y });
  document.text(ink, words.squares.proveTitle, left, y + 3, { size: TEXT, weight: 'bold' });
  y += 3 + LEADING;
  for (const text of words.squares.proof(table.proof, byLine)) y = paragraph(text, y);

  let rest: readonly Row[] = rowsFor(table);
  while (rest.length > 0) {
    const fit = Math.floor((bottom - y) / print.row);
    if (fit >= FEWEST_ROWS) {
      const each = Math.min(fit, Math.max(FEWEST_ROWS, Math.ceil(rest.length / print.columns) + 2));
      rest = inkColumns(ink, document, rest, { left, top: y, width, height: each * print.row }, print);
    }
    document.addPage(sheet, ink);
    if (rest.length === 0) return;
    ink = new Ink();
    y = begin(words.squares.goesOn(name));
  }
}

/** A row of the table: a heading, or a name with one or two figures; `name` is one whose figures stand in the next. */
interface Row {
  readonly kind: 'heading' | 'corner' | 'plain' | 'name' | 'gap';
  readonly cells: readonly [string, string, string];
}

function rowsOf(table: SquaresSheet, words: PaperWords, byLine: boolean): Row[] {
  const { squares, figure, length } = words;
  const figures = ({ across, down, off }: SquaresPoint | SquaresMark): [string, string] =>
    byLine ? [figure(off.along), figure(off.out)] : [figure(across), figure(down)];
  const columns = byLine ? ([squares.along, squares.out] as const) : ([squares.across, squares.down] as const);
  const heading = (...cells: Row['cells']): Row => ({ kind: 'heading', cells });
  const gap: Row = { kind: 'gap', cells: ['', '', ''] };
  return [
    heading(squares.point, ...columns),
    ...table.points.map(
      (point): Row => ({
        kind: point.kind === 'corner' ? 'corner' : 'plain',
        cells: [point.name, ...figures(point)],
      }),
    ),
    ...(table.marks.length > 0 ? [gap, heading(squares.marks, ...columns)] : []),
    ...table.marks.map(
      (mark): Row => ({
        kind: 'plain',
        cells: [squares.mark(mark.kind, mark.text), ...figures(mark)],
      }),
    ),
    gap,
    heading(squares.edges, '', ''),
    ...table.edges.map(
      ({ from, to, name, length: long }): Row => ({
        kind: 'plain',
        cells: [`${from}–${to}${name === '' ? '' : `  ${name}`}`, '', length(long)],
      }),
    ),
    gap,
    heading(squares.proofs, '', ''),
    ...table.diagonals.map(
      ({ from, to, length: long }): Row => ({ kind: 'plain', cells: [squares.straight(from, to), '', length(long)] }),
    ),
  ];
}

/** Room between a name and its figures (mm). */
const APART = 2;

/** So much of their size letters of a name may lose. */
const LEAST_NAME = 0.6;

/** The room for the name in a row of a column so wide. */
function nameRoom(document: PdfDocument, { kind, cells: [, middle, end] }: Row, width: number, print: Print): number {
  const size = kind === 'heading' ? 0.9 * print.text : print.text;
  const weight = kind === 'heading' ? 'bold' : 'plain';
  const figure = middle === '' ? end : middle;
  return width - (middle === '' ? 0 : print.figure) - document.textWidth(figure, size, weight) - APART;
}

/** A row whose name finds no room beside its figures, with the name in lines of its own above them. */
function namedInFull(document: PdfDocument, row: Row, width: number, print: Print): Row[] {
  const [name, middle, end] = row.cells;
  const least = LEAST_NAME * print.text;
  const weight = row.kind === 'plain' ? 'plain' : 'bold';
  if (document.textWidth(name, least, weight) <= nameRoom(document, row, width, print)) return [row];
  const lines = textLines(document, name, width, least, weight);
  return [...lines.map((line): Row => ({ kind: 'name', cells: [line, '', ''] })), { ...row, cells: ['', middle, end] }];
}

/** Sets rows in columns, each under its heading again where one is broken off; gives the rows for which there was no room. */
function inkColumns(ink: Ink, document: PdfDocument, rows: readonly Row[], area: Area, print: Print): readonly Row[] {
  const { columns, row: height } = print;
  const width = (area.width - (columns - 1) * GUTTER) / columns;
  const fit = Math.floor(area.height / height + 1e-6);
  let rest = rows;
  let heading: Row | undefined;
  for (let column = 0; column < columns && rest.length > 0; column++) {
    const [first] = rest;
    if (first?.kind === 'gap') rest = rest.slice(1);
    const isBroken = rest[0]?.kind !== 'heading' && heading;
    const all: readonly Row[] = isBroken ? [isBroken, ...rest] : rest;
    const here = all.slice(0, breakAt(all, fit));
    const left = area.left + column * (width + GUTTER);
    here.forEach((row, index) => {
      inkRow(ink, document, row, { left, top: area.top + index * height, width, height }, print);
    });
    heading = here.findLast((row) => row.kind === 'heading') ?? heading;
    rest = all.slice(here.length);
  }
  if (rest[0]?.kind === 'gap') return rest.slice(1);
  return rest.length > 0 && rest[0]?.kind !== 'heading' && heading ? [heading, ...rest] : rest;
}

/** How many of the rows stand in a column: a short block is not broken, and no heading stands alone at the foot. */
function breakAt(rows: readonly Row[], fit: number): number {
  if (rows.length <= fit) return rows.length;
  const heading = rows.slice(0, fit).findLastIndex(({ kind }) => kind === 'heading');
  // Further on than a short block reaches it does not matter.
  const near = rows.slice(0, Math.max(0, heading) + SHORT_BLOCK + 1);
  const next = near.findIndex(({ kind }, index) => index > heading && kind === 'gap');
  const block = (next < 0 ? rows.length : next) - heading;
  if (heading > 1 && next !== fit && block <= SHORT_BLOCK) return heading - 1;
  return heading === fit - 1 && heading > 1 ? heading - 1 : fit;
}

function inkRow(ink: Ink, document: PdfDocument, row: Row, { left, top, width, height }: Area, print: Print): void {
  const { kind, cells } = row;
  if (kind === 'gap') return;
  const base = top + height - 0.43 * print.text;
  const weight = kind === 'plain' || kind === 'name' ? 'plain' : 'bold';
  const [name, middle, end] = cells;
  const size = kind === 'heading' ? 0.9 * print.text : print.text;
  const room = kind === 'name' ? width : nameRoom(document, row, width, print);
  const fitted = fittedText(document, name, { width: room, size, least: LEAST_NAME * print.text, weight });
  document.text(ink, fitted.text, left, base, { size: fitted.size, weight });
  const figures = kind === 'heading' ? 'bold' : 'plain';
  document.text(ink, middle, left + width - print.figure, base, { size, weight: figures, align: 'end' });
  document.text(ink, end, left + width, base, { size, weight: figures, align: 'end' });
  const foot = top + height - 0.2;
  if (kind === 'name') return;
  if (kind === 'heading') ink.pen(0.3).line(left, foot, left + width, foot);
  else ink.pen(0.18, [], 0.55).line(left, foot, left + width, foot);
}
