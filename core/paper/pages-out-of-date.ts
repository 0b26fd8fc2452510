import type { FindingBase } from '../garment/finding';
import type { Garment } from '../garment/garment';
import { pieceOf } from '../garment/with-piece';
import { isOutOfDate } from './mend-plan';
import { type SquaresFinding, squaresFindings, squaresInUse } from './printed-squares';
import { piecesOnPaper, printedPieces } from './sheets-now';

/** What she has on paper that is no longer so. */
export type PrintedFinding = SquaresFinding | PagesFinding;

type PagesFinding = FindingBase &
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

/** Which of the printed pages and squares sheets are out of date, piece by piece. */
export function printedFindings(garment: Garment): PrintedFinding[] {
  const stale = piecesOnPaper(garment)
    .filter(isOutOfDate)
    .map((on): PagesFinding => {
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
  const onPaper = [
    ...printedPieces(garment).map(({ laid, printing }) => ({ ...laid, date: printing.date })),
    ...squaresInUse(garment),
  ];
  const gone = new Map(onPaper.filter(({ pieceId }) => !pieceOf(garment, pieceId)).map((one) => [one.pieceId, one]));
  const goneFindings = [...gone.values()].map(({ pieceId, name, date }): PagesFinding => {
    const place = { kind: 'paper' } as const;
    return { kind: 'printed-piece-gone', weight: 'warn', place, date, name, at: pieceId };
  });
  return [...stale, ...squaresFindings(garment), ...goneFindings];
}
