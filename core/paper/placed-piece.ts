import type { Mark } from '../drawing/drawing';
import { pieceDrawing } from '../drawing/piece-drawing';
import type { Piece } from '../garment/piece';
import type { Motion } from '../garment/printed';
import type { SheetChoice } from '../garment/sheet-choice';
import { movedMarks } from './moved-marks';
import { type PagePlan, planPages } from './page-plan';

/** A piece as it lies on sheets. */
export interface PlacedPiece {
  readonly piece: Piece;
  readonly motion: Motion;
  /** Its drawing, turned and moved. */
  readonly marks: readonly Mark[];
  /** The lines of older versions of it, laid under it: a list for each version, empty where there was no such piece. */
  readonly under: readonly (readonly Mark[])[];
}

/** What may be laid under pieces: older versions of them, by their ids. */
export type Under = readonly (readonly Piece[])[];

/** Pages taped together to one large sheet, with one piece on it or several. */
export interface TapedSheet {
  readonly placed: readonly PlacedPiece[];
  readonly plan: PagePlan;
}

/** A piece's drawing where it lies on the table, and the older ones under it. */
export type Lines = Pick<PlacedPiece, 'piece' | 'marks' | 'under'>;

const OUTLINES: readonly string[] = ['cut', 'stitch', 'fold', 'dart'];

/** What is drawn of a piece, and of older versions of it. */
export function lines(piece: Piece, older: Under): Lines {
  const under = older.map((pieces) => {
    const before = pieces.find(({ id }) => id === piece.id);
    const drawing = before ? pieceDrawing(before) : [];
    return drawing.filter((mark) => mark.kind === 'stroke' && OUTLINES.includes(mark.line));
  });
  return { piece, marks: pieceDrawing(piece), under };
}

/** The same, turned and moved. */
export function placedBy({ piece, marks, under }: Lines, motion: Motion): PlacedPiece {
  return { piece, motion, marks: movedMarks(marks, motion), under: under.map((one) => movedMarks(one, motion)) };
}

/** Everything drawn of pieces. */
export function drawingOf(placed: readonly PlacedPiece[]): readonly Mark[] {
  const [only, ...others] = placed;
  // The drawing of one piece alone is the very one that is remembered.
  if (only && others.length === 0 && only.under.every((one) => one.length === 0)) return only.marks;
  return placed.flatMap(({ marks, under }) => [...marks, ...under.flat()]);
}

/** A piece on pages of its own. */
export function sheetOfOne(placed: PlacedPiece, sheets: SheetChoice): TapedSheet | undefined {
  const plan = planPages(drawingOf([placed]), sheets);
  return plan && { placed: [placed], plan };
}
