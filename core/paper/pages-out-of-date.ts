import type { FindingBase } from '../garment/finding';
import type { Garment } from '../garment/garment';
import { pieceOf } from '../garment/with-piece';
import { isOutOfDate } from './mend-plan';
import { piecesOnPaper, printedPieces } from './sheets-now';

/** What she has on paper that is no longer so. */
export type PrintedFinding = FindingBase &
  (
    | {
        readonly kind: 'pages-out-of-date';
        /** YYYY-MM-DD: when they were printed. */
        readonly date: string;
        /** The names of pages with something else on them now, of pages wanted since, and of pages without use. */
        readonly pages: readonly string[];
        readonly added: readonly string[];
        readonly gone: readonly string[];
      }
    /** A piece that is on paper is not in the garment any more. */
    | { readonly kind: 'printed-piece-gone'; readonly date: string; readonly name: string; readonly at: string }
  );

/** Which of the printed pages are out of date, piece by piece. */
export function printedFindings(garment: Garment): PrintedFinding[] {
  const stale = piecesOnPaper(garment)
    .filter(isOutOfDate)
    .map((on): PrintedFinding => {
      const named = (state: string) => on.sheets.filter((sheet) => sheet.state === state).map(({ name }) => name);
      return {
        kind: 'pages-out-of-date',
        weight: 'warn',
        place: { kind: 'piece', pieceId: on.piece.id },
        date: on.printing.date,
        pages: named('changed'),
        added: named('added'),
        gone: named('gone'),
      };
    });
  const gone = printedPieces(garment)
    .filter(({ laid }) => !pieceOf(garment, laid.pieceId))
    .map(({ laid, printing }): PrintedFinding => {
      const { name, pieceId } = laid;
      const place = { kind: 'paper' } as const;
      return { kind: 'printed-piece-gone', weight: 'warn', place, date: printing.date, name, at: pieceId };
    });
  return [...stale, ...gone];
}
