import { pieceDrawing } from '../drawing/piece-drawing';
import type { Garment } from '../garment/garment';
import type { Piece } from '../garment/piece';
import type { Area } from './page-map';
import { sheetOf } from './page-sizes';
import type { PaperWords } from './paper-words';
import type { PdfDocument } from './pdf-document';
import { Ink } from './pdf-ink';
import { cutLineOf } from './piece-ink';
import { inkSquaresDrawing, squaresRoom } from './squares-drawing';
import { type SquaresOptions, type SquaresSheet, squaresSheet } from './squares-sheet';
import { fittedText, textLines } from './text-lines';

export interface SquaresPages {
  readonly document: PdfDocument;
  readonly garment: Garment;
  readonly piece: Piece;
  readonly words: PaperWords;
  readonly garmentLine: string;
}

const TEXT = 3;
const ROW = 4.6;
const COLUMNS = 3;
const GUTTER = 8;

/** Some letters reach over the place they are set at (mm). */
const OVERHANG = 0.4;

/** The drawing takes this share of the page: more when the table below it is short. */
const DRAWING = { least: 0.42, most: 0.6 };

/** Fewer rows than this are not begun at the foot of a page. */
const FEWEST_ROWS = 5;

/** A block of so many rows, its heading counted, is kept together. */
const SHORT_BLOCK = 7;

/** Adds the squares sheet of a piece: the small drawing on its numbered squares, and the table of points and proofs. */
export function addSquaresPages({ document, garment, piece, words, garmentLine }: SquaresPages): void {
  const paper = { ...garment.paper, turned: 'upright' } as const;
  const sheet = sheetOf(paper);
  const left = paper.margin + OVERHANG;
  const width = sheet.width - 2 * left;
  const bottom = sheet.height - paper.margin;
  const name = piece.name === '' ? words.unnamedPiece : piece.name;
  let ink = new Ink();

  function begin(title: string): number {
    const fitted = fittedText(document, title, { width, size: 6.6, least: 4, weight: 'bold' });
    document.text(ink, fitted.text, left, paper.margin + 6.6, { size: fitted.size, weight: 'bold' });
    document.text(ink, garmentLine, left, paper.margin + 10.6, { size: 2.5, grey: 0.25 });
    return paper.margin + 17;
  }

  let y = begin(words.squares.title(name));
  const { shownIn } = garment;
  const tableWith = (most: SquaresOptions['most']) => squaresSheet(piece, { shownIn, step: paper.step, most });
  const said = words.squares.line(
    piece.drawnAs === 'included' ? 'cut' : 'stitch',
    cutLineOf(pieceDrawing(piece), words),
  );
  const rows = rowsOf(tableWith({ across: 1, down: 1 }), words).length;
  const most = sheet.height * DRAWING.most;
  const spare = bottom - y - 26 - Math.ceil(rows / COLUMNS + 2) * ROW;
  const room = { left, width, height: Math.max(sheet.height * DRAWING.least, Math.min(most, spare)) };
  const table = tableWith(squaresRoom(room));
  for (const text of [said, words.squares.how(words.length(table.square))]) {
    for (const line of textLines(document, text, width, TEXT, 'plain')) {
      document.text(ink, line, left, y, { size: TEXT });
      y += ROW - 0.4;
    }
    y += 1.2;
  }
  y = inkSquaresDrawing(ink, document, { piece, table, words }, { ...room, top: y });

  let rest: readonly Row[] = rowsOf(table, words);
  while (rest.length > 0) {
    const fit = Math.floor((bottom - y) / ROW);
    if (fit >= FEWEST_ROWS) {
      const each = Math.min(fit, Math.max(FEWEST_ROWS, Math.ceil(rest.length / COLUMNS) + 2));
      rest = inkColumns(ink, document, rest, { left, top: y, width, height: each * ROW });
    }
    document.addPage(sheet, ink);
    if (rest.length === 0) return;
    ink = new Ink();
    y = begin(words.squares.goesOn(name));
  }
}

/** A row of the table: a heading, or a name with one or two figures. */
interface Row {
  readonly kind: 'heading' | 'corner' | 'plain' | 'gap';
  readonly cells: readonly [string, string, string];
}

function rowsOf(table: SquaresSheet, words: PaperWords): Row[] {
  const { squares, figure, length } = words;
  const heading = (...cells: Row['cells']): Row => ({ kind: 'heading', cells });
  const gap: Row = { kind: 'gap', cells: ['', '', ''] };
  return [
    heading(squares.point, squares.across, squares.down),
    ...table.points.map(
      ({ name, kind, across, down }): Row => ({
        kind: kind === 'corner' ? 'corner' : 'plain',
        cells: [name, figure(across), figure(down)],
      }),
    ),
    ...(table.marks.length > 0 ? [gap, heading(squares.marks, squares.across, squares.down)] : []),
    ...table.marks.map(
      ({ kind, text, across, down }): Row => ({
        kind: 'plain',
        cells: [squares.mark(kind, text), figure(across), figure(down)],
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

/** Sets rows in columns, each under its heading again where one is broken off; gives the rows for which there was no room. */
function inkColumns(ink: Ink, document: PdfDocument, rows: readonly Row[], area: Area): readonly Row[] {
  const width = (area.width - (COLUMNS - 1) * GUTTER) / COLUMNS;
  const fit = Math.floor(area.height / ROW + 1e-6);
  let rest = rows;
  let heading: Row | undefined;
  for (let column = 0; column < COLUMNS && rest.length > 0; column++) {
    const [first] = rest;
    if (first?.kind === 'gap') rest = rest.slice(1);
    const isBroken = rest[0]?.kind !== 'heading' && heading;
    const all: readonly Row[] = isBroken ? [isBroken, ...rest] : rest;
    const here = all.slice(0, breakAt(all, fit));
    const left = area.left + column * (width + GUTTER);
    here.forEach((row, index) => {
      inkRow(ink, document, row, { left, top: area.top + index * ROW, width, height: ROW });
    });
    heading = here.findLast((row) => row.kind === 'heading') ?? heading;
    rest = all.slice(here.length);
  }
  if (rest.length > 0 && rest[0]?.kind !== 'heading' && heading) return [heading, ...rest];
  return rest;
}

/** How many of the rows stand in a column: a short block is not broken, and no heading stands alone at the foot. */
function breakAt(rows: readonly Row[], fit: number): number {
  if (rows.length <= fit) return rows.length;
  const heading = rows.slice(0, fit).findLastIndex(({ kind }) => kind === 'heading');
  const next = rows.findIndex(({ kind }, index) => index > heading && kind === 'gap');
  const block = (next < 0 ? rows.length : next) - heading;
  if (heading > 1 && next !== fit && block <= SHORT_BLOCK) return heading - 1;
  return heading === fit - 1 && heading > 1 ? heading - 1 : fit;
}

function inkRow(ink: Ink, document: PdfDocument, { kind, cells }: Row, { left, top, width }: Area): void {
  if (kind === 'gap') return;
  const base = top + ROW - 1.3;
  const weight = kind === 'plain' ? 'plain' : 'bold';
  const [name, middle, end] = cells;
  const size = kind === 'heading' ? 2.7 : 3;
  const edge = middle === '' ? width - document.textWidth(end, size, weight) - 2 : width - 36;
  const fitted = fittedText(document, name, { width: edge, size, least: 2.2, weight });
  document.text(ink, fitted.text, left, base, { size: fitted.size, weight });
  const figures = kind === 'heading' ? 'bold' : 'plain';
  document.text(ink, middle, left + width - 19, base, { size, weight: figures, align: 'end' });
  document.text(ink, end, left + width, base, { size, weight: figures, align: 'end' });
  if (kind === 'heading') ink.pen(0.3).line(left, top + ROW - 0.2, left + width, top + ROW - 0.2);
  else ink.pen(0.18, [], 0.8).line(left, top + ROW - 0.2, left + width, top + ROW - 0.2);
}
