import type { LineKind, Mark } from '../drawing/drawing';
import { arcOfCircle } from '../geometry/arc';
import { type AssembledTotals, assembledTotals } from './assembled-totals';
import type { PaperWords } from './paper-words';
import type { PdfDocument } from './pdf-document';
import type { Ink } from './pdf-ink';
import type { PlacedPiece, TapedSheet } from './placed-piece';
import { fittedText, textLines } from './text-lines';

/** Pages taped together, and what is said of the pieces on them. */
export interface MappedSheet extends TapedSheet {
  readonly name: string;
  /** The number of its first page in the document. */
  readonly firstNumber: number;
  readonly cutLine: string;
  /** What each edge is and what is allowed on it; empty where nothing is. */
  readonly edgesLine: string;
  /** The kinds of lines that are drawn on it. */
  readonly lines: ReadonlySet<LineKind>;
}

/** A place on a page (mm). */
export interface Area {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

const TEXT = 2.8;
const LEADING = 4;
/** The ring about a corner's number on the map (mm). */
const RING = 1.75;
/** A corner's number in its ring may stand over the map's edge by so much (mm). */
const OVERHANG = 2;

/** Totals stand beside a map that leaves them so much room, and below any other (mm). */
const BESIDE = 82;

/** No page is drawn larger than this share of itself. */
const LARGEST = 0.14;

/** Which page goes where with the piece drawn small across them, and what the taped pages must measure. */
export function inkPageMap(ink: Ink, document: PdfDocument, mapped: MappedSheet, words: PaperWords, area: Area): void {
  const { plan, name, cutLine, edgesLine, firstNumber } = mapped;
  const { first } = words;
  const totals = mapped.placed.map(({ piece, marks, motion }) => assembledTotals(piece, marks, motion));
  const said = [
    first.totalsTitle,
    ...mapped.placed.flatMap((one, index) => totalsLines(one, totals[index], mapped, words)),
  ];
  const inWidth = (width: number) => said.flatMap((line) => textLines(document, line, width, TEXT, 'plain'));
  const head = { width: area.width, size: 3.4, least: 2.6, weight: 'bold' } as const;
  const title = fittedText(document, first.mapLine(name, plan.pages.length), head);
  document.text(ink, title.text, area.left, area.top + 3, { size: title.size, weight: 'bold' });
  const cut = [cutLine, edgesLine].flatMap((line) => textLines(document, line, area.width, 2.4, 'plain'));
  cut.forEach((line, index) => {
    document.text(ink, line, area.left, area.top + 6.4 + index * 3, { size: 2.4, grey: 0.2 });
  });
  const headHeight = 5.5 + cut.length * 3;
  const wide = (plan.columns - 1) * plan.step.across + plan.window.width;
  const high = (plan.rows - 1) * plan.step.down + plan.window.height;
  const heightAlone = (area.height - headHeight - OVERHANG) / high;
  const isBeside = wide * Math.min(heightAlone, LARGEST) + BESIDE <= area.width;
  const under = isBeside ? OVERHANG : inWidth(area.width).length * LEADING + 4;
  const room = area.height - headHeight - under;
  const scale = Math.min((area.width - 2 * OVERHANG) / wide, room / high, LARGEST);
  const place = (x: number, y: number): [number, number] => [
    area.left + OVERHANG + (x - plan.origin.x) * scale,
    area.top + headHeight + (y - plan.origin.y) * scale,
  ];
  const [cellWide, cellHigh] = [plan.step.across * scale, plan.step.down * scale];
  const size = Math.min(4.2, cellWide * 0.34, cellHigh * 0.34);
  const isPage = (row: number, column: number) => plan.pages.some((one) => one.row === row && one.column === column);
  plan.pages.forEach((page, index) => {
    const [x, y] = place(page.window.minX, page.window.minY);
    // A page with no neighbour there is seen to its edge.
    const width = isPage(page.row, page.column + 1) ? cellWide : plan.window.width * scale;
    const height = isPage(page.row + 1, page.column) ? cellHigh : plan.window.height * scale;
    ink.pen(0.2, [], 0.5).rectangle(x, y, width, height);
    const middle = x + cellWide / 2;
    document.text(ink, page.label, middle, y + cellHigh / 2, { size, weight: 'bold', align: 'middle', grey: 0.4 });
    document.text(ink, String(firstNumber + index), middle, y + cellHigh / 2 + size * 0.8, {
      size: size * 0.6,
      align: 'middle',
      grey: 0.4,
    });
  });
  for (const { marks } of mapped.placed) inkSmallPiece(ink, marks, { scale, place });
  for (const one of totals) inkDiagonal(ink, document, one, place);
  const left = isBeside ? area.left + wide * scale + 8 : area.left;
  const below = inWidth(area.left + area.width - left);
  let y = area.top + headHeight + (isBeside ? LEADING : high * scale + LEADING);
  for (const line of below) {
    const weight = line === first.totalsTitle ? 'bold' : 'plain';
    document.text(ink, line, left, y, { size: TEXT, weight });
    y += LEADING;
  }
}

/** A piece alone in three lines; one of several in one, after its name. */
function totalsLines(
  { piece }: PlacedPiece,
  totals: AssembledTotals | undefined,
  { placed }: MappedSheet,
  words: PaperWords,
): string[] {
  if (!totals) return [];
  const { across, down, grain, diagonal } = totals;
  const { totals: say } = words.first;
  const lines = [
    say.widest(words.length(across), words.length(down)),
    say.diagonal(diagonal.from, diagonal.to, words.length(diagonal.length)),
    ...(grain === undefined ? [] : [say.grain(words.length(grain))]),
  ];
  return placed.length === 1 ? lines : [`${piece.name || words.unnamedPiece}: ${lines.join(', ')}`];
}

interface Small {
  readonly scale: number;
  readonly place: (x: number, y: number) => [number, number];
}

/** The lines of a piece alone, in pens that do not shrink with it. */
function inkSmallPiece(ink: Ink, marks: readonly Mark[], { scale, place }: Small): void {
  const [x, y] = place(0, 0);
  ink.save().shift(x, y).scale(scale);
  for (const mark of marks) {
    if (mark.kind !== 'stroke') continue;
    if (mark.line === 'cut') ink.pen(0.45 / scale).path(mark.path);
    else if (mark.line === 'stitch' || mark.line === 'grain') ink.pen(0.2 / scale).path(mark.path);
    else if (mark.line === 'fold') ink.pen(0.3 / scale, [2.4 / scale, 0.8 / scale]).path(mark.path);
  }
  ink.restore();
}

function inkDiagonal(ink: Ink, document: PdfDocument, { diagonal }: AssembledTotals, place: Small['place']): void {
  const [fromX, fromY] = place(diagonal.fromAt.x, diagonal.fromAt.y);
  const [toX, toY] = place(diagonal.toAt.x, diagonal.toAt.y);
  ink.pen(0.2, [1.2, 0.8]).line(fromX, fromY, toX, toY);
  for (const [number, x, y] of [
    [diagonal.from, fromX, fromY],
    [diagonal.to, toX, toY],
  ] as const) {
    const ring = arcOfCircle({ x, y }, { x: x + RING, y }, 2 * Math.PI, 0.01);
    ink.fillPath(ring, 1).pen(0.2).path(ring);
    document.text(ink, String(number), x, y + 0.9, { size: 2.4, weight: 'bold', align: 'middle' });
  }
}
