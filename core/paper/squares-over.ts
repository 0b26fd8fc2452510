import { MM_PER_CENTIMETRE, MM_PER_INCH } from '../units/inch';
import type { PagePlan } from './page-plan';
import type { PaperWords } from './paper-words';
import type { PdfDocument } from './pdf-document';
import type { Ink } from './pdf-ink';

/** Half a point and a little, so that draft mode keeps it (mm); every sixth inch and fifth centimetre is wider. */
const FINE = 0.18;
const COUNTED = 0.3;
const GREY = 0.55;

/** Fine squares over all pages of a sheet, running on from page to page. */
export function inkSquares(
  ink: Ink,
  document: PdfDocument,
  plan: PagePlan,
  squares: 'inch' | 'centimetre',
  words: PaperWords,
): void {
  const [side, counted] = squares === 'inch' ? [MM_PER_INCH, 6] : [MM_PER_CENTIMETRE, 5];
  const left = plan.origin.x;
  const top = plan.origin.y;
  const right = left + (plan.columns - 1) * plan.step.across + plan.window.width;
  const bottom = top + (plan.rows - 1) * plan.step.down + plan.window.height;
  document.beginLayer(ink, words.layers.squares);
  for (let i = Math.ceil(left / side); i * side <= right; i++) {
    ink.pen(i % counted === 0 ? COUNTED : FINE, [], GREY).line(i * side, top, i * side, bottom);
  }
  for (let i = Math.ceil(top / side); i * side <= bottom; i++) {
    ink.pen(i % counted === 0 ? COUNTED : FINE, [], GREY).line(left, i * side, right, i * side);
  }
  document.endLayer(ink);
}
