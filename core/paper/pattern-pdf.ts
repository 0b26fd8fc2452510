import { pieceDrawing } from '../drawing/piece-drawing';
import type { Garment } from '../garment/garment';
import type { Piece } from '../garment/piece';
import { growBox } from '../geometry/bounds';
import { addFirstPages, firstPagesCount } from './first-page';
import { inkFurniture } from './page-furniture';
import { pageJoins } from './page-joins';
import type { MappedPiece } from './page-map';
import { HEADER, type PagePlan, planPages } from './page-plan';
import { sheetOf } from './page-sizes';
import type { PaperWords } from './paper-words';
import { type PaperFonts, PdfDocument, type StoredDrawing } from './pdf-document';
import { Ink } from './pdf-ink';
import { cutLineOf, inkMarks } from './piece-ink';
import { addSquaresPages } from './squares-page';

export interface PatternPdfOptions {
  readonly garment: Garment;
  /** Which pieces, in the order of the garment; all of them when left out. */
  readonly pieceIds?: readonly string[];
  /** Full-size pages, the squares sheets, or both. */
  readonly what: 'pages' | 'squares' | 'both';
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
  | { readonly kind: 'pdf'; readonly bytes: Uint8Array; readonly pages: number }
  /** There is no piece to print, or paper and margins leave no room for any. */
  | { readonly kind: 'nothing-to-print'; readonly why: 'no-piece' | 'no-room' }
  | { readonly kind: 'stopped' };

/** The widest a word or a line reaches beyond the drawing's own box (mm). */
const AROUND = 200;

/** Letters of the garment's name that go on every page. */
const LONGEST_NAME = 30;

/**
 * The pattern as a PDF: a page that proves the scale and shows which sheet goes where, then every sheet of every piece at
 * full size, then the squares sheets. A piece's drawing is stored once and shown through each page's window. The same
 * garment on the same day makes the same bytes.
 */
export async function patternPdf(options: PatternPdfOptions): Promise<PatternPdf> {
  const { garment, pieceIds, what, words, fonts, today, onProgress, signal } = options;
  const chosen = garment.pieces.filter((piece) => !pieceIds || pieceIds.includes(piece.id));
  if (chosen.length === 0) return { kind: 'nothing-to-print', why: 'no-piece' };
  const title = garment.name === '' ? words.unnamedGarment : garment.name;
  const document = await PdfDocument.begin({ fonts, title, made: new Date(`${today}T12:00:00Z`) });
  const garmentLine = words.garmentLine(shortened(title), words.date(today));
  const planned = what === 'squares' ? [] : plannedPieces(document, chosen, options);
  if (!planned) return { kind: 'nothing-to-print', why: 'no-room' };
  const sheets = planned.reduce((sum, { plan }) => sum + plan.pages.length, 0);
  const firsts = planned.length === 0 ? 0 : firstPagesCount(garment, planned.length);
  const of = firsts + sheets;
  const squares = what === 'pages' ? [] : chosen;
  const all = of + squares.length;
  let done = 0;
  const pageDone = async (): Promise<'go-on' | 'stop'> => {
    done += 1;
    await onProgress?.(done / all);
    return signal?.aborted ? 'stop' : 'go-on';
  };
  if (firsts > 0) {
    addFirstPages(document, { garment, pieces: planned, words, today, of });
    done = firsts - 1;
    if ((await pageDone()) === 'stop') return { kind: 'stopped' };
  }
  for (const one of planned) {
    const joins = pageJoins(one.plan);
    for (const [index, page] of one.plan.pages.entries()) {
      const number = one.firstNumber + index;
      const { paper } = garment;
      const ink = shownThrough(one.plan, page.window, one.drawing, paper.margin);
      inkFurniture(ink, {
        document,
        words,
        sheet: sheetOf(paper),
        paper,
        plan: one.plan,
        joins,
        page,
        number,
        of,
        pieceName: one.name,
        garmentLine,
        cutLine: one.cutLine,
      });
      document.addPage(sheetOf(paper), ink);
      if ((await pageDone()) === 'stop') return { kind: 'stopped' };
    }
  }
  for (const piece of squares) {
    addSquaresPages({ document, garment, piece, words, garmentLine });
    if ((await pageDone()) === 'stop') return { kind: 'stopped' };
  }
  return { kind: 'pdf', bytes: await document.finish(), pages: document.pageCount };
}

/** A name short enough that the date after it is never cut off. */
function shortened(name: string): string {
  return name.length <= LONGEST_NAME ? name : `${name.slice(0, LONGEST_NAME - 1).trimEnd()}…`;
}

type PlannedPiece = MappedPiece & { readonly drawing: StoredDrawing };

/** `undefined` when there is no room for any of them on the paper. */
function plannedPieces(
  document: PdfDocument,
  pieces: readonly Piece[],
  { garment, words }: PatternPdfOptions,
): readonly PlannedPiece[] | undefined {
  const planned = pieces.flatMap((piece) => {
    const marks = pieceDrawing(piece);
    const plan = planPages(marks, garment.paper);
    return plan ? [{ piece, marks, plan }] : [];
  });
  if (planned.length === 0) return undefined;
  let firstNumber = 1 + firstPagesCount(garment, planned.length);
  return planned.map(({ piece, marks, plan }) => {
    const drawing = document.store(inkMarks(document, marks, words), growBox(plan.drawn, AROUND));
    const name = piece.name === '' ? words.unnamedPiece : piece.name;
    const one = { piece, name, marks, plan, drawing, firstNumber, cutLine: cutLineOf(marks, words) };
    firstNumber += plan.pages.length;
    return one;
  });
}

function shownThrough(
  plan: PagePlan,
  window: { minX: number; minY: number },
  drawing: StoredDrawing,
  margin: number,
): Ink {
  const [left, top] = [margin, margin + HEADER];
  const ink = new Ink();
  ink.save().clip(left, top, plan.window.width, plan.window.height);
  return ink
    .shift(left - window.minX, top - window.minY)
    .raw(`/${drawing.name} Do`)
    .restore();
}
