/** Text taken apart into what the document's own fonts can set and what must be drawn as a picture. */

export type TextRun =
  | { readonly kind: 'set'; readonly text: string }
  /** One or more letters the font lacks, or a text that runs from right to left, which must be shaped as a whole. */
  | { readonly kind: 'drawn'; readonly text: string };

/** Scripts that run from right to left (Unicode Standard Annex 9, classes R and AL), in the planes people write in. */
const RIGHT_TO_LEFT = /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u;

const letters = new Intl.Segmenter(undefined, { granularity: 'grapheme' });

/** A text on one line, its accents composed, in runs. A letter with its marks is never taken apart. */
export function textRuns(text: string, has: (codePoint: number) => boolean): TextRun[] {
  const whole = oneLine(text);
  if (whole === '') return [];
  if (RIGHT_TO_LEFT.test(whole)) return [{ kind: 'drawn', text: whole }];
  const isSettable = (part: string) => [...part].every((sign) => has(sign.codePointAt(0) ?? 0));
  if (isSettable(whole)) return [{ kind: 'set', text: whole }];
  const runs: { kind: TextRun['kind']; text: string }[] = [];
  for (const { segment } of letters.segment(whole)) {
    const kind = isSettable(segment) ? 'set' : 'drawn';
    const last = runs.at(-1);
    const before = runs.at(-2);
    // A space between two drawn words is drawn with them, so that they stand as the script wants it.
    if (kind === 'drawn' && last?.kind === 'set' && last.text === ' ' && before?.kind === 'drawn') {
      runs.pop();
      before.text += ` ${segment}`;
    } else if (last?.kind === kind) last.text += segment;
    else runs.push({ kind, text: segment });
  }
  return runs;
}

/** As many boxes as there are letters, for where nothing can draw them. */
export function boxes(text: string): string {
  return [...letters.segment(text)].map(({ segment }) => (segment === ' ' ? ' ' : '□')).join('');
}

export function oneLine(text: string): string {
  return text.normalize('NFC').replace(/[\s\p{Cc}]+/gu, ' ');
}
