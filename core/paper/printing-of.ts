import type { Mark } from '../drawing/drawing';
import type { Garment } from '../garment/garment';
import type { Piece } from '../garment/piece';
import type { LaidOnSheets, PrintedJoin, PrintedPage, Printing } from '../garment/printed';
import type { VersionSaid } from '../garment/version-said';
import { firstPagesCount } from './first-page';
import { type MendedSheet, mendPlan, type PagesAgain } from './mend-plan';
import { type Join, pageJoins } from './page-joins';
import { pageMark } from './page-mark';
import type { Page } from './page-plan';
import type { PlacedPiece, TapedSheet } from './placed-piece';
import { printedSquaresOf } from './printed-squares';
import { printedPieces } from './sheets-now';

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

/** Pages chosen among those of sheets: the ids of the pieces on a sheet, and the names of its pages. */
export type ChosenPages = readonly { readonly pieceId: string; readonly name: string }[];

/** Whether a page of a sheet is among those chosen; all are when none is said. */
export function isChosen(sheet: TapedSheet, { label }: Pick<Page, 'label'>, chosen?: ChosenPages): boolean {
  return (
    !chosen ||
    chosen.some(({ pieceId, name }) => name === label && sheet.placed.some(({ piece }) => piece.id === pieceId))
  );
}

/**
 * What is remembered of full-size pages when they are made, all of them or those chosen. Chosen pages of a sheet that is
 * on paper in just this way take their place among the others.
 */
export function printingOf(
  garment: Garment,
  sheets: readonly TapedSheet[],
  made: Made,
  chosen?: ChosenPages,
): Printing {
  const first = firstPagesCount(garment, sheets.length);
  const of = sheets.reduce((sum, { plan }) => sum + plan.pages.length, first);
  let number = 1 + first;
  const pages: PrintedPage[] = [];
  const laid: LaidOnSheets[] = [];
  for (const sheet of sheets) {
    const { plan, placed } = sheet;
    const only = plan.pages.filter((page) => isChosen(sheet, page, chosen));
    if (only.length > 0) {
      const joins = pageJoins(plan).map(printedJoin);
      pages.push(...printedPages(placed, only));
      laid.push(
        ...placed.map((one) => {
          const all = laidOn(one, sheet, { joins, number, of });
          if (only.length === plan.pages.length) return all;
          const mends = onPaperAlike(garment, all);
          return mends ? { ...all, mends } : { ...all, names: plan.pages.map(({ label }) => label) };
        }),
      );
    }
    number += plan.pages.length;
  }
  return { ...headOf(made), pages, laid };
}

/** What is remembered when only pages out of date are made, or some once more; `undefined` when there is none. */
export function mendingOf(garment: Garment, made: Made, again?: PagesAgain): Printing | undefined {
  const mended = mendPlan(garment, again);
  if (mended.length === 0) return undefined;
  return {
    ...headOf(made),
    pages: mended.flatMap(({ placed, only }) => printedPages(placed, only)),
    laid: mended.flatMap(laidMended),
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

function laidMended(sheet: MendedSheet): LaidOnSheets[] {
  const { placed, joins, of, on, gone } = sheet;
  return placed.flatMap((one) => {
    const its = on.find(({ piece }) => piece === one.piece);
    if (!its) return [];
    const laid = laidOn(one, sheet, { joins: joins.map(printedJoin), number: its.laid.number, of });
    return [{ ...laid, mends: { printingId: its.printing.id, gone } }];
  });
}

interface Numbered {
  readonly joins: readonly PrintedJoin[];
  readonly number: number;
  readonly of: number;
}

function laidOn(
  { piece, motion }: PlacedPiece,
  { placed, plan }: TapedSheet,
  { joins, number, of }: Numbered,
): LaidOnSheets {
  const [first] = placed;
  const { size, turned, margin, margins, overlap, joins: how, rollWidth, rollLength } = plan.paper;
  return {
    pieceId: piece.id,
    name: piece.name,
    paper: {
      size,
      turned,
      margin,
      ...(margins && { margins }),
      overlap,
      ...(how && { joins: how }),
      ...(rollWidth !== undefined && { rollWidth }),
      ...(rollLength !== undefined && { rollLength }),
    },
    origin: plan.origin,
    ...((motion.angle !== 0 || motion.dx !== 0 || motion.dy !== 0) && { motion }),
    ...(first && placed.length > 1 && { together: first.piece.id }),
    corners: piece.corners.map(({ id, at }) => ({ id, at })),
    joins,
    number,
    of,
  };
}

/** The printing in which a piece is on paper in just this way, its pages and joins the same. */
function onPaperAlike(garment: Garment, laid: LaidOnSheets): LaidOnSheets['mends'] {
  const its = printedPieces(garment).find((one) => one.laid.pieceId === laid.pieceId);
  if (!its) return undefined;
  const way = ({ paper, origin, motion, together, corners }: LaidOnSheets, joins: readonly PrintedJoin[]) =>
    JSON.stringify([paper, origin, motion, together, corners, joins]);
  return way(laid, laid.joins) === way(its.laid, its.joins) ? { printingId: its.printing.id, gone: [] } : undefined;
}

function printedJoin({ over, under, marks }: Join): PrintedJoin {
  return { over: over.label, under: under.label, marks };
}

/** One for each piece on a page; a page with none, that only joins others, is noted with the first. */
function printedPages(placed: readonly PlacedPiece[], pages: readonly Page[]): PrintedPage[] {
  return pages.flatMap(({ label, window }) => {
    const shown = placed.filter(({ marks }) => placed.length === 1 || isShown(marks, window));
    return (shown.length > 0 ? shown : placed.slice(0, 1)).map(({ piece, marks }) => {
      return { name: label, pieceIds: [piece.id], mark: pageMark(marks, window) };
    });
  });
}

const NOTHING = pageMark([], { minX: 0, minY: 0, maxX: 0, maxY: 0 });

function isShown(marks: readonly Mark[], window: Page['window']): boolean {
  const own = marks.filter(
    (mark) => mark.kind === 'stroke' || mark.content.kind === 'label' || mark.content.kind === 'gathers',
  );
  return pageMark(own, window) !== NOTHING;
}
