import { pieceDrawing } from '../drawing/piece-drawing';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { line } from '../geometry/segment';
import type { Area } from './page-map';
import type { PaperWords } from './paper-words';
import type { PdfDocument } from './pdf-document';
import type { Ink } from './pdf-ink';
import type { SquaresOptions, SquaresPoint, SquaresSheet } from './squares-sheet';

/** A square is drawn at least so large (mm), or its number cannot be read; and no larger than is handy. */
const SMALLEST = 4.2;
const LARGEST = 14;

/** Lines run on so far above and to the left, past the names of points, to their numbers (mm). */
const RUN_ON = 6;
const NUMBERS = 7;

/** Room on the right and below for names of points (mm). */
const NAMES = 5;

/** The numbers of lines (mm). */
const NUMBER = 2.5;

/** How many squares can be told apart in so much room, with letters so many times larger than usual. */
export function squaresRoom(
  { width, height }: Pick<Area, 'width' | 'height'>,
  letters: number,
): SquaresOptions['most'] {
  const beside = letters * (RUN_ON + NUMBERS + NAMES);
  return { across: (width - beside) / (letters * SMALLEST), down: (height - beside) / (letters * SMALLEST) };
}

interface Drawn {
  readonly piece: Piece;
  readonly table: SquaresSheet;
  readonly words: PaperWords;
  /** Whether points are measured off from the base line, which is then drawn with its offsets. */
  readonly byLine: boolean;
  /** How much larger than usual its letters are. */
  readonly letters: number;
}

/**
 * Draws the piece small on its squares, every line numbered by its full-size distance from the zero, with the points of
 * the table. Gives where the page goes on below it.
 */
export function inkSquaresDrawing(ink: Ink, document: PdfDocument, drawn: Drawn, area: Area): number {
  const { piece, table, words, byLine, letters } = drawn;
  const [runOn, names, size] = [letters * RUN_ON, letters * NAMES, letters * NUMBER];
  const numbers = runOn + letters * NUMBERS;
  const { square, squaresAcross, squaresDown, origin } = table;
  const side = Math.min(
    LARGEST,
    (area.width - numbers - names) / squaresAcross,
    (area.height - numbers - names) / squaresDown,
  );
  const [wide, high] = [squaresAcross * side, squaresDown * side];
  const left = area.left + Math.max(numbers, (area.width - wide) / 2);
  const top = area.top + numbers - 4;
  for (let i = 0; i <= squaresAcross; i++) {
    const x = left + i * side;
    ink.pen(i === 0 ? 0.3 : 0.18, [], i === 0 ? 0 : 0.55).line(x, top - runOn, x, top + high);
    document.text(ink, words.figure(i * square), x, top - runOn - 1, { size, align: 'middle' });
  }
  for (let i = 0; i <= squaresDown; i++) {
    const y = top + i * side;
    ink.pen(i === 0 ? 0.3 : 0.18, [], i === 0 ? 0 : 0.55).line(left - runOn, y, left + wide, y);
    document.text(ink, words.figure(i * square), left - runOn - 1, y + 0.36 * size, { size, align: 'end' });
  }
  document.text(ink, words.squares.zero, left - runOn - 1, top - runOn - 1, {
    size,
    weight: 'bold',
    align: 'end',
  });
  const scale = side / square;
  ink.save().shift(left, top).scale(scale).shift(-origin.x, -origin.y);
  if (byLine) inkOffsets(ink, table, scale);
  inkLines(ink, piece, scale);
  ink.restore();
  inkPoints(ink, document, table, { left, top, scale, letters });
  return top + high + names;
}

/** The base line, and from it to every corner and point of a curve a thin line at a right angle. */
function inkOffsets(ink: Ink, { base, points, origin }: SquaresSheet, scale: number): void {
  const { start, end, length, side } = base;
  const [dx, dy] = [(end.x - start.x) / length, (end.y - start.y) / length];
  const reach = points.map(({ off }) => off.along);
  const at = (along: number) => ({ x: start.x + dx * along, y: start.y + dy * along });
  const [from, to] = [at(Math.min(0, ...reach)), at(Math.max(length, ...reach))];
  ink.pen(0.18 / scale, [1.2 / scale, 0.8 / scale], 0.35);
  for (const { across, down, off } of points) {
    const foot = at(off.along);
    if (Math.abs(off.out) > 0) ink.line(foot.x, foot.y, origin.x + across, origin.y + down);
  }
  ink.pen(0.9 / scale, [4 / scale, 1 / scale, 1 / scale, 1 / scale]).line(from.x, from.y, to.x, to.y);
  // An arrow at the start of the line shows which way to measure along, half of one on the side to measure out to.
  const tip = at(6 / scale);
  const turn = side === 'right' ? 1 : -1;
  ink.pen(0.5 / scale);
  const back = at(3.4 / scale);
  ink.line(tip.x, tip.y, back.x - turn * dy * (1.6 / scale), back.y + turn * dx * (1.6 / scale));
}

/** The stitch line, darts and grain, in pens that do not shrink with them. */
function inkLines(ink: Ink, piece: Piece, scale: number): void {
  outlineOf(piece).edges.forEach((path, index) => {
    ink.pen(0.45 / scale, piece.edges[index]?.role === 'fold' ? [3 / scale, 1 / scale] : []).path(path);
  });
  ink.pen(0.2 / scale);
  for (const mark of pieceDrawing(piece)) {
    if (mark.kind === 'stroke' && mark.line === 'dart') ink.path(mark.path);
  }
  if (piece.grain) ink.path([line(piece.grain.from, piece.grain.to)]);
}

interface OnPage {
  readonly left: number;
  readonly top: number;
  readonly scale: number;
  readonly letters: number;
}

/** The points with their names outside the outline, and small crosses for the marks. */
function inkPoints(
  ink: Ink,
  document: PdfDocument,
  { points, marks }: SquaresSheet,
  { left, top, scale, letters }: OnPage,
): void {
  const outward = Math.sign(ringArea(points)) || 1;
  points.forEach((point, index) => {
    const { name, kind, across, down } = point;
    const [x, y] = [left + across * scale, top + down * scale];
    const isCorner = kind === 'corner';
    const dot = isCorner ? 0.9 : 0.55;
    ink.fillRectangle(x - dot, y - dot, 2 * dot, 2 * dot, 0);
    const [before, after] = [points.at(index - 1) ?? point, points[(index + 1) % points.length] ?? point];
    const along = Math.atan2(after.down - before.down, after.across - before.across);
    const away = along - (outward * Math.PI) / 2;
    const size = letters * (isCorner ? 3.6 : 2.1);
    const weight = isCorner ? 'bold' : 'plain';
    const width = document.textWidth(name, size, weight);
    // As far as the name's own box reaches in that direction, so that wide names clear the line as well.
    const off = dot + 0.7 + (Math.abs(Math.cos(away)) * width) / 2 + (Math.abs(Math.sin(away)) * size) / 2.7;
    const [textX, textY] = [x + off * Math.cos(away), y + off * Math.sin(away) + size * 0.36];
    ink.fillRectangle(textX - width / 2 - 0.2, textY - size * 0.78, width + 0.4, size * 0.84, 1);
    document.text(ink, name, textX, textY, { size, weight, align: 'middle' });
  });
  for (const { across, down } of marks) {
    const [x, y] = [left + across * scale, top + down * scale];
    ink
      .pen(0.2)
      .line(x - 0.8, y, x + 0.8, y)
      .line(x, y - 0.8, x, y + 0.8);
  }
}

/** Twice the area inside the points, positive when they run clockwise to the eye. */
function ringArea(points: readonly SquaresPoint[]): number {
  return points.reduce((sum, { across, down }, index) => {
    const next = points[(index + 1) % points.length];
    return next ? sum + across * next.down - next.across * down : sum;
  }, 0);
}
