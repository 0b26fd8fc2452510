import type { Mark } from '../drawing/drawing';
import { lineStyles } from '../drawing/line-styles';
import type { PaperWords } from './paper-words';
import type { PdfDocument } from './pdf-document';
import { Ink } from './pdf-ink';

/** Draws the marks of a piece in table millimetres, as they stand in the one list shared with the screen. */
export function inkMarks(document: PdfDocument, marks: readonly Mark[], words: PaperWords): Ink {
  const ink = new Ink();
  for (const mark of marks) {
    if (mark.kind === 'stroke') {
      const { width, dash } = lineStyles[mark.line];
      ink.pen(width, dash).path(mark.path);
      continue;
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
  return ink;
}

/** How a piece is cut and what is allowed on it, as said on the piece itself. */
export function cutLineOf(marks: readonly Mark[], words: PaperWords): string {
  const said = marks.flatMap((mark) => (mark.kind === 'words' ? [mark.content] : []));
  return said
    .filter(({ kind }) => kind === 'cut' || kind === 'allowance' || kind === 'right-side-up')
    .map(words.content)
    .join(' · ');
}
