import { pieceDrawing } from '../drawing/piece-drawing';
import { cutPieces } from '../garment/cut-pieces';
import type { Garment } from '../garment/garment';
import type { Piece } from '../garment/piece';
import type { LaidOnSheets, Motion, PrintedJoin, Printing } from '../garment/printed';
import type { Box } from '../geometry/bounds';
import type { Point, Vector } from '../geometry/point';
import { motionAfter, movedMarks, STAYS_PUT } from './moved-marks';
import { isAsPrinted, pageMark } from './page-mark';
import { inkPlaces, windowSize } from './page-plan';
import { sheetAt, sheetName } from './sheet-names';

/**
 * A sheet of a piece that is on paper, as it stands now: as printed; with something else drawn on it since; wanted since
 * and not printed; or with nothing left to show.
 */
export interface SheetNow {
  readonly name: string;
  readonly row: number;
  readonly column: number;
  readonly window: Box;
  readonly state: 'current' | 'changed' | 'added' | 'gone';
}

/** The pages of one piece that she has on paper: of a printing, and of those that mended it. */
export interface PrintedPiece {
  readonly printing: Printing;
  readonly laid: LaidOnSheets;
  /** The mark of each page by its name. */
  readonly marks: ReadonlyMap<string, string>;
  readonly joins: readonly PrintedJoin[];
}

/** A printed piece beside the drawing as it is now. */
export interface PieceOnPaper extends PrintedPiece {
  readonly piece: Piece;
  /** How it is turned and moved to its sheets now: the other way round by as much as it was moved on the table since. */
  readonly motion: Motion;
  readonly sheets: readonly SheetNow[];
}

/** What is on paper, the last printing of each piece that is still used. */
export function printedPieces({ printings = [] }: Pick<Garment, 'printings'>): PrintedPiece[] {
  const found = new Map<string, PrintedPiece>();
  for (const printing of printings) {
    if (printing.unused !== undefined) continue;
    for (const laid of printing.laid ?? []) {
      const { pieceId, mends, joins } = laid;
      const pages = printing.pages.filter(({ pieceIds }) => pieceIds.includes(pieceId));
      const marks = pages.map(({ name, mark }): [string, string] => [name, mark]);
      const had = found.get(pieceId);
      if (!mends) found.set(pieceId, { printing, laid, joins, marks: new Map(marks) });
      else if (had?.printing.id === mends.printingId) {
        const left = [...had.marks].filter(([name]) => !mends.gone.includes(name));
        const { origin, motion, corners } = laid;
        const there = { ...had.laid, origin, corners, ...(motion && { motion }) };
        found.set(pieceId, { ...had, laid: there, joins, marks: new Map([...left, ...marks]) });
      }
    }
  }
  return [...found.values()];
}

/** Every piece that is on paper and still in the garment, page by page. What one piece came to is remembered with it. */
export function piecesOnPaper(garment: Garment): PieceOnPaper[] {
  const printed = printedPieces(garment);
  const found = cutPieces(garment).flatMap((piece) => {
    const its = printed.find(({ laid }) => laid.pieceId === piece.id);
    return its ? [remembered(piece, its)] : [];
  });
  return found.map((on) =>
    besideOthers(
      on,
      found.filter((other) => other !== on && areTogether(on, other)),
    ),
  );
}

/** Whether two pieces are on the same pages. */
export function areTogether(a: PrintedPiece, b: PrintedPiece): boolean {
  return a.printing.id === b.printing.id && a.laid.together !== undefined && a.laid.together === b.laid.together;
}

/** On a page that others are on too, a line that came or went changes the page: it is there already, and stays. */
function besideOthers(on: PieceOnPaper, others: readonly PieceOnPaper[]): PieceOnPaper {
  if (others.length === 0) return on;
  const isThere = (name: string) => others.some(({ marks }) => marks.has(name));
  const isInUse = (name: string) =>
    others.some(({ sheets }) => sheets.some((one) => one.name === name && one.state !== 'gone'));
  const sheets = on.sheets.map((sheet): SheetNow => {
    const { name, state } = sheet;
    const isChanged = (state === 'added' && isThere(name)) || (state === 'gone' && isInUse(name));
    return isChanged ? { ...sheet, state: 'changed' } : sheet;
  });
  return { ...on, sheets };
}

const memory = new WeakMap<Piece, { readonly key: string; readonly on: PieceOnPaper }>();

function remembered(piece: Piece, printed: PrintedPiece): PieceOnPaper {
  const key = JSON.stringify([printed.printing.id, printed.laid, [...printed.marks], printed.joins]);
  const known = memory.get(piece);
  if (known?.key === key) return known.on;
  const found = motions(piece, printed.laid).map((moved) => onPaper(piece, printed, moved));
  const on = found.reduce((best, other) => (unlike(other) < unlike(best) ? other : best));
  memory.set(piece, { key, on });
  return on;
}

/** How many of its sheets are not as printed. */
function unlike({ sheets }: PieceOnPaper): number {
  return sheets.filter(({ state }) => state !== 'current').length;
}

function onPaper(piece: Piece, printed: PrintedPiece, moved: Vector): PieceOnPaper {
  const { laid, marks } = printed;
  const { origin } = laid;
  const motion = motionAfter(laid.motion ?? STAYS_PUT, moved);
  const window = windowSize(laid.paper);
  const step = { across: window.width - laid.paper.overlap, down: window.height - laid.paper.overlap };
  const windowAt = (row: number, column: number): Box => {
    const [minX, minY] = [origin.x + column * step.across, origin.y + row * step.down];
    return { minX, minY, maxX: minX + window.width, maxY: minY + window.height };
  };
  const drawing = movedMarks(pieceDrawing(piece), motion);
  const empty = pageMark([], { minX: 0, minY: 0, maxX: 0, maxY: 0 });
  const sheets = [...marks].map(([name, mark]): SheetNow => {
    const { row, column } = sheetAt(name);
    const at = windowAt(row, column);
    const lines = drawing.filter((one) => one.kind === 'stroke');
    const isEmpty = pageMark(lines, at) === empty;
    const state = isAsPrinted(mark, drawing, at) ? 'current' : isEmpty ? 'gone' : 'changed';
    return { name, row, column, window: at, state };
  });
  const shown = sheets.filter(({ state }) => state !== 'gone');
  const cells = new Map<string, SheetNow>();
  for (const place of inkPlaces(drawing.filter((one) => one.kind === 'stroke' && one.line !== 'upright'))) {
    if (shown.some((sheet) => shows(sheet.window, place))) continue;
    const column = Math.floor((place.x - origin.x) / step.across);
    const row = Math.floor((place.y - origin.y) / step.down);
    if (shown.some((sheet) => sheet.row === row && sheet.column === column)) continue;
    const name = sheetName(row, column);
    cells.set(name, { name, row, column, window: windowAt(row, column), state: 'added' });
  }
  const added = [...cells.values()];
  const all = [...sheets.filter(({ name }) => !cells.has(name)), ...added].map((sheet) =>
    // A page beside a new one must show where the two are joined.
    sheet.state === 'current' && added.some((other) => isBeside(sheet, other))
      ? { ...sheet, state: 'changed' as const }
      : sheet,
  );
  return { ...printed, piece, motion, sheets: all.sort((a, b) => a.row - b.row || a.column - b.column) };
}

/** A place this near to the edge of a window (mm) does not count as shown there, for lines have width; less than drawings keep clear. */
const EDGE = 0.99;

function shows({ minX, minY, maxX, maxY }: Box, { x, y }: Point): boolean {
  return x >= minX + EDGE && x <= maxX - EDGE && y >= minY + EDGE && y <= maxY - EDGE;
}

/** Whether two sheets meet along a side. */
export function isBeside(a: SheetNow, b: SheetNow): boolean {
  return Math.abs(a.row - b.row) + Math.abs(a.column - b.column) === 1;
}

/** So many ways in which it may have been moved are looked at. */
const MOST_MOTIONS = 3;

/**
 * How the piece may have been moved as a whole since: not at all, or as two of its corners or more were, those first that
 * most of them were.
 */
function motions(piece: Piece, { corners }: LaidOnSheets): Vector[] {
  const stays = { by: { dx: 0, dy: 0 }, count: Infinity };
  const votes = new Map<string, { readonly by: Vector; count: number }>([['0 0', stays]]);
  for (const { id, at } of piece.corners) {
    const was = corners.find((corner) => corner.id === id)?.at;
    if (!was) continue;
    const by = { dx: at.x - was.x, dy: at.y - was.y };
    // Adding 0 makes one key of 0 and -0.
    const key = `${Math.round(by.dx * 100) + 0} ${Math.round(by.dy * 100) + 0}`;
    const vote = votes.get(key) ?? { by, count: 0 };
    vote.count += 1;
    votes.set(key, vote);
  }
  const likely = [...votes.values()].filter(({ count }) => count > 1).sort((a, b) => b.count - a.count);
  return likely.slice(0, MOST_MOTIONS).map(({ by }) => by);
}
