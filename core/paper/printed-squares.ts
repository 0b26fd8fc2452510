import { pieceDrawing } from '../drawing/piece-drawing';
import type { FindingBase } from '../garment/finding';
import type { Garment } from '../garment/garment';
import type { Piece } from '../garment/piece';
import type { PrintedSquares } from '../garment/printed';
import { pieceOf } from '../garment/with-piece';
import { type Box, growBox } from '../geometry/bounds';
import { isAsPrinted, pageMark } from './page-mark';
import { drawnBox } from './page-plan';

/** A squares sheet in use that shows a piece as it is no longer. */
export type SquaresFinding = FindingBase & {
  readonly kind: 'squares-out-of-date';
  /** YYYY-MM-DD: when it was made. */
  readonly date: string;
};

/** What is remembered of a squares sheet: which piece, and the mark of all that is drawn of it, wherever it lies. */
export function printedSquaresOf(piece: Piece): PrintedSquares {
  return { pieceId: piece.id, name: piece.name, mark: pageMark(pieceDrawing(piece), windowRound(piece)) };
}

/** The last squares sheet of each piece that is still used, and when it was made. */
export function squaresInUse({
  printings = [],
}: Pick<Garment, 'printings'>): (PrintedSquares & { readonly date: string })[] {
  const last = new Map<string, PrintedSquares & { readonly date: string }>();
  for (const { squares = [], unused, date } of printings) {
    if (unused === undefined) for (const sheet of squares) last.set(sheet.pieceId, { ...sheet, date });
  }
  return [...last.values()];
}

/** Which of them show their piece as it is no longer. */
export function squaresFindings(garment: Garment): SquaresFinding[] {
  return squaresInUse(garment).flatMap(({ pieceId, mark, date }): SquaresFinding[] => {
    const piece = pieceOf(garment, pieceId);
    if (!piece || isAsPrinted(mark, pieceDrawing(piece), windowRound(piece))) return [];
    return [{ kind: 'squares-out-of-date', weight: 'warn', place: { kind: 'piece', pieceId }, date }];
  });
}

/** The window that a piece's drawing just fits. */
function windowRound(piece: Piece): Box {
  const box = drawnBox(pieceDrawing(piece).filter((mark) => mark.kind === 'stroke' && mark.line !== 'upright'));
  return growBox(box ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 }, 1);
}
