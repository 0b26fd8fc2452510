import type { PdfDocument, Weight } from './pdf-document';

/** A text in lines no wider than `width` mm at letters of `size` mm; a single word that is wider stays whole, as does a length. */
export function textLines(document: PdfDocument, text: string, width: number, size: number, weight: Weight): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/[^\S\u00a0]+/)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && document.textWidth(longer, size, weight) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === '' ? lines : [...lines, line];
}

/** A text that fits `width`: as it is, smaller down to `least`, and then cut short with an ellipsis. */
export function fittedText(
  document: PdfDocument,
  text: string,
  { width, size, least, weight }: { width: number; size: number; least: number; weight: Weight },
): { readonly text: string; readonly size: number } {
  const whole = document.textWidth(text, size, weight);
  if (whole <= width) return { text, size };
  const smaller = Math.max(least, (size * width) / whole);
  let fitted = text;
  while (fitted.length > 1 && document.textWidth(fitted, smaller, weight) > width) {
    fitted = `${fitted.replace(/…$/, '').slice(0, -1).trimEnd()}…`;
  }
  return { text: fitted, size: smaller };
}
