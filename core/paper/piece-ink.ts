import type { LineKind, Mark } from '../drawing/drawing';
import { lineStyles } from '../drawing/line-styles';
import { olderLine } from './older-lines';
import type { PaperWords } from './paper-words';
import type { PdfDocument } from './pdf-document';
import type { Ink } from './pdf-ink';

/** Draws the marks of a piece in millimetres, as they stand in the one list shared with the screen, in three layers. */
export function inkMarks(ink: Ink, document: PdfDocument, marks: readonly Mark[], words: PaperWords): void {
  const { layers } = words;
  for (const [name, isIn] of [
    [layers.cut, isLine('cut')],
    [layers.stitch, isLine('stitch')],
    [layers.marks, (mark: Mark) => !isLine('cut')(mark) && !isLine('stitch')(mark)],
  ] as const) {
    const here = marks.filter(isIn);
    if (here.length === 0) continue;
    document.beginLayer(ink, name);
    for (const mark of here) inkMark(ink, document, mark, words);
    document.endLayer(ink);
  }
}

function isLine(line: LineKind): (mark: Mark) => boolean {
  return (mark) => mark.kind === 'stroke' && mark.line === line;
}

/** Draws one mark with the pen of its kind. */
export function inkMark(ink: Ink, document: PdfDocument, mark: Mark, words: PaperWords): void {
  if (mark.kind === 'stroke') {
    const { width, dash } = lineStyles[mark.line];
    ink.pen(width, dash).path(mark.path);
    return;
  }
  // Words are centred on their place: down by about a third of their height from the base line's.
  const drop = mark.size * 0.36;
  document.text(
    ink,
    words.content(mark.content),
    mark.at.x - drop * Math.sin(mark.angle),
    mark.at.y + drop * Math.cos(mark.angle),
    { size: mark.size, weight: mark.weight, align: 'middle', angle: mark.angle },
  );
}

/** The lines of an older version, the how manieth is told by `index`, in a layer of their own. */
export function inkOlder(
  ink: Ink,
  document: PdfDocument,
  marks: readonly Mark[],
  { index, layer }: { readonly index: number; readonly layer: string },
): void {
  const { width, dash } = olderLine(index);
  document.beginLayer(ink, layer);
  for (const mark of marks) {
    if (mark.kind === 'stroke') ink.pen(width, dash).path(mark.path);
  }
  document.endLayer(ink);
}

/** How a piece is cut and what is allowed on it, as said on the piece itself. */
export function cutLineOf(marks: readonly Mark[], words: PaperWords): string {
  const said = marks.flatMap((mark) => (mark.kind === 'words' ? [mark.content] : []));
  return said
    .filter(({ kind }) => kind === 'cut' || kind === 'allowance' || kind === 'right-side-up')
    .map(words.content)
    .join(' · ');
}
