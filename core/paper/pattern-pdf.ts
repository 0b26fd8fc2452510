import { cutPieces } from '../garment/cut-pieces';
import type { Garment } from '../garment/garment';
import type { Piece } from '../garment/piece';
import { type VersionSaid, versionSaid } from '../garment/version-said';
import { addFirstPages, firstPagesCount } from './first-page';
import { mendPlan, type PagesAgain } from './mend-plan';
import type { PaperWords } from './paper-words';
import { type PaperFonts, PdfDocument } from './pdf-document';
import { mendedPages, plannedSheets, sheetPages } from './piece-pages';
import type { TapedSheet } from './placed-piece';
import type { ChosenPages } from './printing-of';
import { addSquaresPages } from './squares-page';
import { tapedSheets } from './taped-sheets';

export interface PatternPdfOptions {
  readonly garment: Garment;
  /** Which pieces, in the order of the garment; all of them when left out. */
  readonly pieceIds?: readonly string[];
  /** Full-size pages, the squares sheets, or both; or of the pages on paper only those that are out of date. */
  readonly what: 'pages' | 'squares' | 'both' | 'out-of-date';
  /** Where the pieces lie on pages, where that is known already. */
  readonly sheets?: readonly TapedSheet[] | undefined;
  /** Only these of the full-size pages, without the page that goes before them. */
  readonly chosen?: ChosenPages | undefined;
  /** Instead of the pages out of date these of the pages on paper. */
  readonly again?: PagesAgain | undefined;
  /** Older versions of the pieces, laid under them in dots, and what they are called. */
  readonly under?: readonly { readonly said: string; readonly pieces: readonly Piece[] }[] | undefined;
  /** Which version it is; without one the mark of the pieces alone. */
  readonly version?: VersionSaid;
  readonly words: PaperWords;
  readonly fonts: PaperFonts;
  /** Printed on every page, YYYY-MM-DD. */
  readonly today: string;
  /** Told the share done, 0 to 1, after every page; waited for, so that it can let others have a turn. */
  readonly onProgress?: (share: number) => void | Promise<void>;
  /** Looked at after every page. */
  readonly signal?: { readonly aborted: boolean };
}

export type PatternPdf =
  /** `leftOut` are pieces for which the paper has no room. */
  | {
      readonly kind: 'pdf';
      readonly bytes: Uint8Array;
      readonly pages: number;
      readonly leftOut: readonly Piece[];
    }
  /** There is no piece to print, or paper and margins leave no room for any. */
  | { readonly kind: 'nothing-to-print'; readonly why: 'no-piece' | 'no-room' }
  | { readonly kind: 'stopped' };

/** Letters of the names of garment and version that go on every page, so few that what follows is not cut off. */
const LONGEST_NAME = 30;
const LONGEST_VERSION = 24;

/**
 * The pattern as a PDF: a page that proves the scale and shows which sheet goes where, then every sheet of every piece at
 * full size, then the squares sheets. A piece's drawing is stored once and shown through each page's window. The same
 * garment on the same day makes the same bytes.
 */
export async function patternPdf(options: PatternPdfOptions): Promise<PatternPdf> {
  const { garment, pieceIds, what, words, fonts, today, onProgress, signal } = options;
  const version = options.version ?? versionSaid([], garment);
  const chosen = cutPieces(garment).filter((piece) => !pieceIds || pieceIds.includes(piece.id));
  if (chosen.length === 0) return { kind: 'nothing-to-print', why: 'no-piece' };
  const title = garment.name === '' ? words.unnamedGarment : garment.name;
  const document = await PdfDocument.begin({
    fonts,
    title,
    made: new Date(`${today}T12:00:00Z`),
    printer: garment.paper.printer,
  });
  const called = version.kind === 'kept' ? { ...version, name: shortened(version.name, LONGEST_VERSION) } : version;
  const garmentLine = words.garmentLine(shortened(title, LONGEST_NAME), words.date(today), called);
  const { printer } = garment.paper;
  // On a squares sheet there is room for it; a full-size page says it in its test square.
  const squaresLine = printer ? `${garmentLine} · ${words.corrected(printer)}` : garmentLine;
  const { under = [] } = options;
  const said = { garment, words, garmentLine, olderSaid: under.map((one) => one.said) };
  const jobs: (() => void)[] = [];
  let leftOut: readonly Piece[] = [];
  if (what === 'out-of-date') {
    const mended = mendPlan(garment, options.again).filter(({ placed }) =>
      placed.some(({ piece }) => chosen.includes(piece)),
    );
    if (mended.length === 0) return { kind: 'nothing-to-print', why: 'no-piece' };
    jobs.push(...mendedPages(document, mended, said));
  }
  if (what === 'pages' || what === 'both') {
    const laid =
      options.sheets ?? tapedSheets(chosen, garment.paper, { under: under.map(({ pieces }) => pieces) }).sheets;
    leftOut = chosen.filter(({ id }) => !laid.some(({ placed }) => placed.some(({ piece }) => piece.id === id)));
    if (laid.length === 0) return { kind: 'nothing-to-print', why: 'no-room' };
    const planned = plannedSheets(document, laid, said);
    const of = firstPagesCount(garment, laid.length) + laid.reduce((sum, { plan }) => sum + plan.pages.length, 0);
    if (!options.chosen)
      jobs.push(() => addFirstPages(document, { garment, pieces: planned, version: called, words, today, of }));
    jobs.push(...sheetPages(document, { ...said, planned, of, chosen: options.chosen }));
  }
  if (what === 'squares' || what === 'both') {
    jobs.push(
      ...chosen.map((piece) => () => addSquaresPages({ document, garment, piece, words, garmentLine: squaresLine })),
    );
  }
  for (const [index, job] of jobs.entries()) {
    job();
    await onProgress?.((index + 1) / jobs.length);
    if (signal?.aborted) return { kind: 'stopped' };
  }
  return { kind: 'pdf', bytes: await document.finish(), pages: document.pageCount, leftOut };
}

function shortened(name: string, longest: number): string {
  return name.length <= longest ? name : `${name.slice(0, longest - 1).trimEnd()}…`;
}
