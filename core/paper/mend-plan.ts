import { pieceDrawing } from '../drawing/piece-drawing';
import type { Garment, PaperChoice } from '../garment/garment';
import type { Piece } from '../garment/piece';
import { type Join, pageJoins } from './page-joins';
import { drawnBox, inkPlaces, type Page, type PagePlan, windowSize } from './page-plan';
import { type PieceOnPaper, piecesOnPaper } from './sheets-now';

/** The pages of a piece to be made anew among those that stay. */
export interface MendedPiece {
  readonly piece: Piece;
  readonly paper: PaperChoice;
  /** All pages of the piece as they are after mending. */
  readonly plan: PagePlan;
  readonly joins: readonly Join[];
  /** Those that are made. */
  readonly only: readonly Page[];
  readonly number: (page: Page) => number;
  readonly of: number;
  /** What they belong to. */
  readonly on: PieceOnPaper;
}

/** What is to be made so that everything on paper is as drawn now, and joins what stays. */
export function mendPlan(garment: Garment): MendedPiece[] {
  return piecesOnPaper(garment).flatMap((on): MendedPiece[] => {
    if (!isOutOfDate(on)) return [];
    const mended = mendedPiece(on, { ...garment.paper, ...on.laid.paper });
    return mended ? [mended] : [];
  });
}

/** Whether any page of it must be made anew. */
export function isOutOfDate({ sheets }: PieceOnPaper): boolean {
  return sheets.some(({ state }) => state === 'changed' || state === 'added');
}

function mendedPiece(on: PieceOnPaper, paper: PaperChoice): MendedPiece | undefined {
  const { piece, origin, moved, laid, joins, sheets } = on;
  const drawing = pieceDrawing(piece);
  const drawn = drawnBox(drawing);
  if (!drawn) return undefined;
  const window = windowSize(paper);
  const step = { across: window.width - paper.overlap, down: window.height - paper.overlap };
  const kept = sheets.filter(({ state }) => state !== 'gone');
  const pages = kept.map(({ row, column, name, window: box }): Page => ({ row, column, label: name, window: box }));
  const rows = 1 + Math.max(...pages.map(({ row }) => row));
  const columns = 1 + Math.max(...pages.map(({ column }) => column));
  const plan = { pages, rows, columns, origin, window, step, drawn, ink: inkPlaces(drawing) };
  const printed = joins.map((join) => ({
    ...join,
    marks: join.marks.map(({ at, mark }) => ({ at: { x: at.x + moved.dx, y: at.y + moved.dy }, mark })),
  }));
  const states = new Map(kept.map(({ name, state }) => [name, state]));
  const first = on.printing.pages.filter(({ pieceIds }) => pieceIds.includes(piece.id)).map(({ name }) => name);
  const later = pages.map(({ label }) => label).filter((label) => !first.includes(label));
  return {
    piece,
    paper,
    plan,
    joins: pageJoins(plan, printed),
    only: pages.filter(({ label }) => states.get(label) !== 'current'),
    number: ({ label }) =>
      first.includes(label) ? laid.number + first.indexOf(label) : laid.of + 1 + later.indexOf(label),
    of: laid.of + later.length,
    on,
  };
}
