import { pieceBounds } from '../drawing/piece-bounds';
import { cutPieces } from '../garment/cut-pieces';
import type { Garment, PaperChoice } from '../garment/garment';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import type { VersionSaid } from '../garment/version-said';
import { transformPath } from '../geometry/affine';
import { unionBox } from '../geometry/bounds';
import type { LabelWords } from './label-words';
import type { Area } from './page-map';
import { homeSheet } from './page-sizes';
import { type PaperFonts, PdfDocument, type StoredPicture } from './pdf-document';
import { Ink } from './pdf-ink';
import { fittedText, textLines } from './text-lines';

export interface LabelOptions {
  readonly garment: Garment;
  readonly version: VersionSaid;
  readonly words: LabelWords;
  readonly fonts: PaperFonts;
  /** YYYY-MM-DD */
  readonly today: string;
  /** A photo as JPEG; the pieces are drawn where there is none. */
  readonly picture?: Uint8Array;
}

/** One face of the label (mm): it lies on an envelope of 6 by 9 in and on a C5 one of 162 by 229 mm. */
const FACE = { width: 150, height: 110 };
const INSET = 6;
const PICTURE = 56;
const ROW = 5.4;
const COLUMNS = 2;

/** A face holds so many rows of pieces below its title. */
const ROWS = Math.floor((FACE.height - 2 * INSET - 14) / ROW);

/**
 * The label of the envelope a pattern is filed in: cut out, folded in the middle and hung over the envelope's upper edge,
 * with picture, source, version and measures in front and the pieces with their cut counts behind. Pieces for which there
 * is no room there stand on more labels. The same garment on the same day makes the same bytes.
 */
export async function labelPdf(options: LabelOptions): Promise<{ readonly bytes: Uint8Array; readonly pages: number }> {
  const { garment, words, fonts, today } = options;
  const title = garment.name === '' ? words.unnamedGarment : garment.name;
  const document = await PdfDocument.begin({ fonts, title, made: new Date(`${today}T12:00:00Z`) });
  const picture = options.picture && (await document.picture(options.picture));
  const pieces = cutPieces(garment);
  const faces = Array.from({ length: Math.max(1, Math.ceil(pieces.length / (ROWS * COLUMNS))) }, (_, i) =>
    pieces.slice(i * ROWS * COLUMNS, (i + 1) * ROWS * COLUMNS),
  );
  const order: readonly Face[] = [
    (ink) => inkFront(ink, document, { ...options, title }, picture),
    ...faces.map(
      (list, index): Face =>
        (ink) =>
          inkPieces(ink, document, list, words, index === 0 ? words.piecesTitle : words.goesOn(title)),
    ),
  ];
  for (let at = 0; at < order.length; at += 2) {
    document.addPage(
      homeSheet(upright(garment.paper)),
      labelInk(document, garment.paper, words, order[at], order[at + 1]),
    );
  }
  return { bytes: await document.finish(), pages: document.pageCount };
}

type Face = (ink: Ink) => void;

function upright(paper: PaperChoice): PaperChoice {
  return { ...paper, turned: 'upright' };
}

/** The back stands on its head above the front, so that it is read upright when it hangs behind. */
function labelInk(document: PdfDocument, paper: PaperChoice, words: LabelWords, front?: Face, back?: Face): Ink {
  const sheet = homeSheet(upright(paper));
  const left = (sheet.width - FACE.width) / 2;
  const top = (sheet.height - 2 * FACE.height) / 2;
  const fold = top + FACE.height;
  const ink = new Ink();
  ink.pen(0.3).rectangle(left, top, FACE.width, 2 * FACE.height);
  ink.pen(0.25, [3, 2], 0.35).line(left, fold, left + FACE.width, fold);
  for (const [index, line] of textLines(document, words.howToFold, FACE.width, 2.8, 'plain').entries()) {
    document.text(ink, line, left, top - 10 + index * 4, { size: 2.8, grey: 0.25 });
  }
  ink.save().shift(left, fold);
  front?.(ink);
  ink.restore();
  ink.save().ops('cm', -1, 0, 0, -1, left + FACE.width, fold);
  back?.(ink);
  return ink.restore();
}

interface Front extends LabelOptions {
  readonly title: string;
}

function inkFront(ink: Ink, document: PdfDocument, front: Front, picture: StoredPicture | undefined): void {
  const { garment, version, words, today, title } = front;
  const pieces = cutPieces(garment);
  const box = { left: INSET, top: INSET, width: PICTURE, height: FACE.height - 2 * INSET };
  if (picture) inkPicture(ink, picture, box);
  else inkSmall(ink, pieces, box);
  const left = 2 * INSET + PICTURE;
  const width = FACE.width - left - INSET;
  const bottom = FACE.height - INSET;
  let y = INSET;
  const write = (text: string, size: number, weight: 'plain' | 'bold', most: number, grey = 0) => {
    const lines = textLines(document, text, width, size, weight);
    for (const [index, line] of lines.slice(0, most).entries()) {
      if (y + size * 1.25 > bottom - 6) return;
      y += size * 1.25;
      const whole = index === most - 1 && lines.length > most ? `${line}…` : line;
      const fitted = fittedText(document, whole, { width, size, least: size * 0.6, weight });
      document.text(ink, fitted.text, left, y, { size: fitted.size, weight, grey });
    }
  };
  write(title, 7, 'bold', 3);
  y += 2.5;
  for (const line of words.source(garment.source)) write(line, 3.4, 'plain', 3);
  y += 2.5;
  write(words.version(version, today), 3.4, 'bold', 3);
  y += 2.5;
  for (const line of words.wearer(garment)) write(line, 3.4, 'plain', 4);
  y += 2.5;
  for (const line of words.needs(garment)) write(line, 3, 'plain', 4, 0.15);
  const count = pieces.reduce((sum, { cut }) => sum + cut.count, 0);
  const inside = fittedText(document, words.inside(pieces.length, count), {
    width,
    size: 3.6,
    least: 2.4,
    weight: 'bold',
  });
  document.text(ink, inside.text, left, bottom, { size: inside.size, weight: 'bold' });
}

function inkPieces(ink: Ink, document: PdfDocument, pieces: readonly Piece[], words: LabelWords, title: string): void {
  const whole = FACE.width - 2 * INSET;
  const fitted = fittedText(document, title, { width: whole, size: 5, least: 3.4, weight: 'bold' });
  document.text(ink, fitted.text, INSET, INSET + 5, { size: fitted.size, weight: 'bold' });
  ink.pen(0.3).line(INSET, INSET + 8, INSET + whole, INSET + 8);
  const columns = pieces.length > ROWS ? COLUMNS : 1;
  const width = (whole - (columns - 1) * INSET) / columns;
  const rows = columns === 1 ? ROWS : Math.ceil(pieces.length / columns);
  pieces.forEach((piece, index) => {
    const left = INSET + Math.floor(index / rows) * (width + INSET);
    const y = INSET + 13.5 + (index % rows) * ROW;
    const cut = words.cut(piece.cut);
    const size = columns === 1 ? 3.6 : 3;
    const cutWidth = document.textWidth(cut, size);
    const name = fittedText(document, piece.name === '' ? words.unnamedPiece : piece.name, {
      width: width - cutWidth - 4,
      size,
      least: size * 0.7,
      weight: 'bold',
    });
    document.text(ink, name.text, left, y, { size: name.size, weight: 'bold' });
    document.text(ink, cut, left + width, y, { size, align: 'end' });
    ink.pen(0.18, [], 0.55).line(left, y + 1.5, left + width, y + 1.5);
  });
}

/** As large as the box allows, in its middle. */
function inkPicture(ink: Ink, { name, width, height }: StoredPicture, box: Area): void {
  const scale = Math.min(box.width / width, box.height / height);
  const [wide, high] = [width * scale, height * scale];
  const [left, top] = [box.left + (box.width - wide) / 2, box.top + (box.height - high) / 2];
  ink
    .save()
    .ops('cm', wide, 0, 0, -high, left, top + high)
    .show(name)
    .restore();
  ink.pen(0.2, [], 0.4).rectangle(left, top, wide, high);
}

/** The pieces as they lie on the table. */
function inkSmall(ink: Ink, pieces: readonly Piece[], box: Area): void {
  if (pieces.length === 0) return;
  const { minX, minY, maxX, maxY } = pieces.map(pieceBounds).reduce(unionBox);
  const [width, height] = [Math.max(maxX - minX, 1), Math.max(maxY - minY, 1)];
  const scale = Math.min(box.width / width, box.height / height);
  const [left, top] = [box.left + (box.width - width * scale) / 2, box.top + (box.height - height * scale) / 2];
  const small = { a: scale, b: 0, c: 0, d: scale, e: left - minX * scale, f: top - minY * scale };
  for (const piece of pieces) {
    const { edges } = outlineOf(piece);
    piece.edges.forEach((edge, index) => {
      ink.pen(0.4, edge.role === 'fold' ? [2.5, 0.8] : []).path(transformPath(small, edges[index] ?? []));
    });
  }
}
