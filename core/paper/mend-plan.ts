import { pieceDrawing } from '../drawing/piece-drawing';
import type { Garment } from '../garment/garment';
import { unionBox } from '../geometry/bounds';
import { movedMarks } from './moved-marks';
import { type Join, pageJoins } from './page-joins';
import { drawnBox, inkPlaces, type Page, type PagePlan, windowSize } from './page-plan';
import type { TapedSheet } from './placed-piece';
import { areTogether, isBeside, type PieceOnPaper, piecesOnPaper, type SheetNow } from './sheets-now';
import { wordsOnAPage } from './words-on-a-page';

/** A sheet of pages of which some are made anew, among those that stay. */
export interface MendedSheet extends TapedSheet {
  readonly joins: readonly Join[];
  /** The pages that are made. */
  readonly only: readonly Page[];
  readonly number: (page: Page) => number;
  readonly of: number;
  /** What they belong to, piece by piece. */
  readonly on: readonly PieceOnPaper[];
  /** Pages that are not needed any more. */
  readonly gone: readonly string[];
}

/** Pages on paper that are wanted once more: of the sheet a piece is on, by name. */
export interface PagesAgain {
  readonly pieceId: string;
  readonly names: readonly string[];
}

/**
 * What is to be made so that everything on paper is as drawn now, and joins what stays; or only the pages wanted once
 * more, as printed or not.
 */
export function mendPlan(garment: Garment, again?: PagesAgain): MendedSheet[] {
  const pieces = piecesOnPaper(garment);
  return pieces.flatMap((piece): MendedSheet[] => {
    const on = pieces.filter((other) => other === piece || areTogether(piece, other));
    if (on[0] !== piece) return [];
    if (again) return on.some((one) => one.piece.id === again.pieceId) ? mended(on, again.names) : [];
    return on.some(isOutOfDate) ? mended(on) : [];
  });
}

/** Whether any page of it must be made anew. */
export function isOutOfDate({ sheets }: PieceOnPaper): boolean {
  return sheets.some(({ state }) => state === 'changed' || state === 'added');
}

function mended(on: readonly PieceOnPaper[], wanted?: readonly string[]): MendedSheet[] {
  const [first] = on;
  const lying = on.map(({ piece, motion }) => {
    return { piece, motion, marks: movedMarks(pieceDrawing(piece), motion), under: [] };
  });
  const [box, ...boxes] = lying.flatMap(({ marks }) => drawnBox(marks) ?? []);
  if (!first || !box) return [];
  const { laid, printing } = first;
  const { paper, origin } = laid;
  const window = windowSize(paper);
  const step = { across: window.width - paper.overlap, down: window.height - paper.overlap };
  const sheets = sheetsOf(on);
  const kept = sheets.filter(({ state }) => state !== 'gone');
  const pages = kept.map(({ row, column, name, window: at }): Page => ({ row, column, label: name, window: at }));
  const rows = 1 + Math.max(...pages.map(({ row }) => row));
  const columns = 1 + Math.max(...pages.map(({ column }) => column));
  const all = lying.flatMap(({ marks }) => marks);
  const drawn = boxes.reduce(unionBox, box);
  const laidOut: PagePlan = { paper, pages, rows, columns, origin, window, step, drawn, ink: inkPlaces(all) };
  const placed = lying.map((one) => ({ ...one, marks: wordsOnAPage(one, all, laidOut) }));
  const plan = { ...laidOut, ink: placed.flatMap(({ marks }) => inkPlaces(marks)) };
  const old = new Set(kept.filter(({ state }) => state === 'changed' || state === 'added').map(({ name }) => name));
  const ids = on.map(({ piece }) => piece.id);
  const printed = printing.pages.filter(({ pieceIds }) => pieceIds.some((id) => ids.includes(id)));
  const names = laid.names ?? [...new Set(printed.map(({ name }) => name))];
  const later = pages.map(({ label }) => label).filter((label) => !names.includes(label));
  const only = pages.filter(({ label }) => (wanted ? wanted.includes(label) : old.has(label)));
  const sheet: MendedSheet = {
    placed,
    plan,
    joins: pageJoins(plan, first.joins),
    only,
    number: ({ label }) =>
      names.includes(label) ? laid.number + names.indexOf(label) : laid.of + 1 + later.indexOf(label),
    of: laid.of + later.length,
    on,
    gone: wanted ? [] : sheets.filter(({ state }) => state === 'gone').map(({ name }) => name),
  };
  return only.length > 0 ? [sheet] : [];
}

/** The pages of all its pieces as one: changed when any of them is, gone when all are. */
function sheetsOf(on: readonly PieceOnPaper[]): SheetNow[] {
  const states = ['changed', 'added', 'current', 'gone'];
  const found = new Map<string, SheetNow>();
  for (const sheet of on.flatMap(({ sheets }) => sheets)) {
    const had = found.get(sheet.name);
    if (!had || states.indexOf(sheet.state) < states.indexOf(had.state)) found.set(sheet.name, sheet);
  }
  const all = [...found.values()].sort((a, b) => a.row - b.row || a.column - b.column);
  const added = all.filter(({ state }) => state === 'added');
  return all.map((sheet) =>
    // A page beside a new one must show where the two are joined.
    sheet.state === 'current' && added.some((other) => isBeside(sheet, other)) ? { ...sheet, state: 'changed' } : sheet,
  );
}
