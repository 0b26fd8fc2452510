import { pieceDrawing } from '../drawing/piece-drawing';
import type { Garment, PaperChoice } from '../garment/garment';
import type { Piece } from '../garment/piece';
import type { LaidOnSheets, PrintedJoin, PrintedPage, Printing } from '../garment/printed';
import type { VersionSaid } from '../garment/version-said';
import { firstPagesCount } from './first-page';
import { type MendedPiece, mendPlan } from './mend-plan';
import { type Join, pageJoins } from './page-joins';
import { pageMark } from './page-mark';
import { type Page, type PagePlan, planPages } from './page-plan';
import { printedSquaresOf } from './printed-squares';

/** More printings than this are not remembered; the oldest goes. */
const MOST = 500;

/** More pages than this are not remembered of one printing. */
const MOST_PAGES = 2000;

interface Made {
  readonly id: string;
  /** YYYY-MM-DD */
  readonly today: string;
  readonly version: VersionSaid;
}

/** What is remembered of the full-size pages of pieces when they are made. */
export function printingOf(garment: Garment, pieces: readonly Piece[], made: Made): Printing {
  const { paper } = garment;
  const planned = pieces.flatMap((piece) => {
    const plan = planPages(pieceDrawing(piece), paper);
    return plan ? [{ piece, plan }] : [];
  });
  const first = firstPagesCount(garment, planned.length);
  const of = planned.reduce((sum, { plan }) => sum + plan.pages.length, first);
  let number = 1 + first;
  const laid = planned.map(({ piece, plan }) => {
    const one = laidOn({ piece, paper, plan, joins: pageJoins(plan), number, of });
    number += plan.pages.length;
    return one;
  });
  return {
    ...headOf(made),
    pages: planned.flatMap(({ piece, plan }) => printedPages(piece, plan.pages)),
    laid,
  };
}

/** What is remembered when only the pages that are out of date are made; `undefined` when there is none. */
export function mendingOf(garment: Garment, made: Made): Printing | undefined {
  const mended = mendPlan(garment);
  if (mended.length === 0) return undefined;
  return {
    ...headOf(made),
    pages: mended.flatMap(({ piece, only }) => printedPages(piece, only)),
    laid: mended.map(laidMended),
  };
}

/** What is remembered when squares sheets of pieces are made. */
export function squaresPrintingOf(pieces: readonly Piece[], made: Made): Printing {
  return { ...headOf(made), pages: [], squares: pieces.map(printedSquaresOf) };
}

/** The garment with a printing remembered. */
export function addPrinting(garment: Garment, printing: Printing): Garment {
  const had = garment.printings ?? [];
  if (printing.pages.length > MOST_PAGES) return garment;
  return { ...garment, printings: [...had, printing].slice(-MOST) };
}

/** The garment with a printing no longer used since a day, or used again. */
export function setUnused(garment: Garment, id: string, since: string | undefined): Garment {
  const { printings = [] } = garment;
  return {
    ...garment,
    printings: printings.map((printing) => {
      if (printing.id !== id) return printing;
      const { unused: _, ...rest } = printing;
      return since === undefined ? rest : { ...rest, unused: since };
    }),
  };
}

function headOf({ id, today, version }: Made): Pick<Printing, 'id' | 'date' | 'version' | 'mark'> {
  return { id, date: today, mark: version.mark, ...(version.kind === 'kept' && { version: version.number }) };
}

function laidMended({ piece, paper, plan, joins, of, on }: MendedPiece): LaidOnSheets {
  const laid = laidOn({ piece, paper, plan, joins, number: on.laid.number, of });
  const gone = on.sheets.filter(({ state }) => state === 'gone').map(({ name }) => name);
  return { ...laid, mends: { printingId: on.printing.id, gone } };
}

function laidOn(options: {
  readonly piece: Piece;
  readonly paper: PaperChoice;
  readonly plan: PagePlan;
  readonly joins: readonly Join[];
  readonly number: number;
  readonly of: number;
}): LaidOnSheets {
  const { piece, plan, joins, number, of } = options;
  const { size, turned, margin, overlap } = options.paper;
  return {
    pieceId: piece.id,
    name: piece.name,
    paper: { size, turned, margin, overlap },
    origin: plan.origin,
    corners: piece.corners.map(({ id, at }) => ({ id, at })),
    joins: joins.map(printedJoin),
    number,
    of,
  };
}

function printedJoin({ over, under, marks }: Join): PrintedJoin {
  return { over: over.label, under: under.label, marks };
}

function printedPages(piece: Piece, pages: readonly Page[]): PrintedPage[] {
  const drawing = pieceDrawing(piece);
  return pages.map(({ label, window }) => ({ name: label, pieceIds: [piece.id], mark: pageMark(drawing, window) }));
}
