import { pieceDrawing } from '../drawing/piece-drawing';
import type { Garment, PaperChoice } from '../garment/garment';
import type { Piece } from '../garment/piece';
import { growBox } from '../geometry/bounds';
import { firstPagesCount } from './first-page';
import type { MendedPiece } from './mend-plan';
import { type Furniture, inkFurniture } from './page-furniture';
import { pageJoins } from './page-joins';
import type { MappedPiece } from './page-map';
import { HEADER, planPages, windowSize } from './page-plan';
import { rulerTicks } from './page-rulers';
import { sheetOf } from './page-sizes';
import type { PaperWords } from './paper-words';
import type { PdfDocument, StoredDrawing } from './pdf-document';
import { Ink } from './pdf-ink';
import { cutLineOf, inkMarks } from './piece-ink';

/** The widest a word or a line reaches beyond the drawing's own box (mm). */
const AROUND = 200;

/** A piece with its pages planned and its drawing stored. */
export type PlannedPiece = MappedPiece & { readonly drawing: StoredDrawing };

/** The pieces with their pages, numbered on from the first pages; none when the paper has no room. */
export function plannedPieces(
  document: PdfDocument,
  garment: Garment,
  pieces: readonly Piece[],
  words: PaperWords,
): PlannedPiece[] {
  const planned = pieces.flatMap((piece) => {
    const marks = pieceDrawing(piece);
    const plan = planPages(marks, garment.paper);
    return plan ? [{ piece, marks, plan }] : [];
  });
  let firstNumber = 1 + firstPagesCount(garment, planned.length);
  return planned.map(({ piece, marks, plan }) => {
    const one = { ...storedPiece(document, { piece, marks, plan }, words), firstNumber };
    firstNumber += plan.pages.length;
    return one;
  });
}

export interface PiecePages {
  readonly garment: Garment;
  readonly planned: readonly PlannedPiece[];
  readonly words: PaperWords;
  readonly garmentLine: string;
  /** All pages that are counted. */
  readonly of: number;
}

/** One job for each full-size page, each adding its page to the document: drawing, and all that stands beside it. */
export function piecePages(document: PdfDocument, options: PiecePages): (() => void)[] {
  const { garment, planned, words, garmentLine, of } = options;
  const { paper } = garment;
  const rulers = storedRulers(document, paper);
  return planned.flatMap(({ plan, drawing, name, firstNumber, cutLine }) => {
    const joins = pageJoins(plan);
    const said = { pieceName: name, garmentLine, cutLine };
    return plan.pages.map((page, index) => () => {
      const number = firstNumber + index;
      addSheet(drawing, {
        document,
        words,
        sheet: sheetOf(paper),
        paper,
        plan,
        joins,
        rulers,
        page,
        number,
        of,
        ...said,
      });
    });
  });
}

export interface MendedPages {
  readonly mended: readonly MendedPiece[];
  readonly words: PaperWords;
  readonly garmentLine: string;
}

/** One job for each page that is out of date, on the paper and under the name and number it had. */
export function mendedPages(document: PdfDocument, { mended, words, garmentLine }: MendedPages): (() => void)[] {
  return mended.flatMap(({ piece, paper, plan, joins, only, number, of }) => {
    const rulers = storedRulers(document, paper);
    const { name, drawing, cutLine } = storedPiece(document, { piece, marks: pieceDrawing(piece), plan }, words);
    const said = { pieceName: name, garmentLine, cutLine };
    return only.map((page) => () => {
      const at = { page, number: number(page), of };
      addSheet(drawing, { document, words, sheet: sheetOf(paper), paper, plan, joins, rulers, ...at, ...said });
    });
  });
}

function storedPiece(
  document: PdfDocument,
  { piece, marks, plan }: Pick<MappedPiece, 'piece' | 'marks' | 'plan'>,
  words: PaperWords,
) {
  const drawing = document.store(inkMarks(document, marks, words), growBox(plan.drawn, AROUND));
  const name = piece.name === '' ? words.unnamedPiece : piece.name;
  return { piece, name, marks, plan, drawing, cutLine: cutLineOf(marks, words) };
}

function storedRulers(document: PdfDocument, paper: PaperChoice): StoredDrawing {
  const { width, height } = windowSize(paper);
  return document.store(rulerTicks({ width, height }), { minX: 0, minY: 0, maxX: width, maxY: height });
}

function addSheet(drawing: StoredDrawing, furniture: Furniture): void {
  const { document, paper, page, sheet } = furniture;
  const { width, height } = windowSize(paper);
  const [left, top] = [paper.margin, paper.margin + HEADER];
  const ink = new Ink();
  ink.save().clip(left, top, width, height);
  ink
    .shift(left - page.window.minX, top - page.window.minY)
    .show(drawing.name)
    .restore();
  inkFurniture(ink, furniture);
  document.addPage(sheet, ink);
}
