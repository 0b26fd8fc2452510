import type { PaperChoice } from '../garment/garment';
import { inches, MM_PER_INCH } from '../units/inch';
import { homeSheet, type Sheet } from './page-sizes';
import type { PaperWords } from './paper-words';
import { type PaperFonts, PdfDocument } from './pdf-document';
import { Ink } from './pdf-ink';
import { fitsOf } from './scale-causes';
import { textLines } from './text-lines';

/** Kept clear about the sheet, the steps along its sides aside (mm): more than any home printer loses. */
const CLEAR = 16;

/** Rules are as long as 10 in, or as many whole inches as the sheet holds. */
const LONGEST = 10;

/** How long the two rules of the check sheet are (mm): 10 in where the sheet holds that, 7 in across on A4 and Letter. */
export function checkRules(paper: Pick<PaperChoice, 'size' | 'turned'>): {
  readonly across: number;
  readonly down: number;
} {
  const { width, height } = homeSheet(paper);
  const whole = (side: number) => inches(Math.min(LONGEST, Math.floor((side - 2 * 10) / MM_PER_INCH)));
  return { across: whole(width), down: whole(height) };
}

export interface CheckSheet {
  readonly paper: PaperChoice;
  readonly shownIn: 'in' | 'cm';
  readonly words: PaperWords;
  readonly fonts: PaperFonts;
  /** YYYY-MM-DD */
  readonly today: string;
}

/** One page that shows whether a printer and its viewer print true, and how near the edge they reach. */
export async function checkSheetPdf(options: CheckSheet): Promise<Uint8Array> {
  const { paper, words, fonts, today } = options;
  const sheet = homeSheet(paper);
  const document = await PdfDocument.begin({
    fonts,
    title: words.check.title,
    made: new Date(`${today}T12:00:00Z`),
    printer: paper.printer,
  });
  const ink = new Ink();
  rules(ink, document, sheet, options);
  for (const side of ['top', 'bottom', 'left', 'right'] as const) stairs(ink, document, sheet, side, options);
  said(ink, document, sheet, options);
  document.addPage(sheet, ink);
  return document.finish();
}

/** A rule across and one down that share their zero, in eighths of an inch. */
function rules(ink: Ink, document: PdfDocument, sheet: Sheet, { paper, words }: CheckSheet): void {
  const { across, down } = checkRules(paper);
  const [left, top] = [(sheet.width - across) / 2, (sheet.height - down) / 2];
  const [x, y] = [left + RULE_INSET, top + RULE_INSET];
  ink
    .pen(0.3)
    .line(left, y, left + across, y)
    .line(x, top, x, top + down);
  for (let k = 0; k <= Math.round((across / MM_PER_INCH) * 8); k++) {
    const at = left + inches(k / 8);
    ink.line(at, y, at, y + tick(k, across));
    if (k % 8 === 0 && k > 8) document.text(ink, String(k / 8), at, y + 9.4, { size: 3, align: 'middle' });
  }
  for (let k = 0; k <= Math.round((down / MM_PER_INCH) * 8); k++) {
    const at = top + inches(k / 8);
    ink.line(x, at, x + tick(k, down), at);
    if (k % 8 === 0 && k > 8) document.text(ink, String(k / 8), x + 7.4, at + 1.1, { size: 3 });
  }
  const bold = { size: 3.6, weight: 'bold' } as const;
  const middle = { ...bold, align: 'middle' } as const;
  document.text(ink, words.check.rule(words.length(across), 'across'), left + across / 2, y + 14.6, middle);
  document.text(ink, words.check.rule(words.length(down), 'down'), x + 15, top + down / 2, {
    ...middle,
    angle: -Math.PI / 2,
  });
}

/** Each rule crosses the other so far from its zero: away from the ends, which are what is measured. */
const RULE_INSET = inches(3 / 4);

function tick(k: number, length: number): number {
  const isEnd = k === 0 || k === Math.round((length / MM_PER_INCH) * 8);
  if (isEnd) return 7;
  return k % 8 === 0 ? 5 : k % 4 === 0 ? 3.4 : 2;
}

/** How far apart steps stand along a side, and how long each is (mm). */
const STAIR = { every: 9, wide: 6, figure: 15.5 } as const;

/** Short lines at growing distances from an edge of the sheet; the first that is whole tells what the printer loses there. */
function stairs(
  ink: Ink,
  document: PdfDocument,
  sheet: Sheet,
  side: 'top' | 'bottom' | 'left' | 'right',
  { shownIn, words }: CheckSheet,
): void {
  const steps = shownIn === 'in' ? [1, 2, 3, 4, 5, 6, 7, 8].map((k) => inches(k / 16)) : [2, 3, 4, 5, 6, 8, 10, 12];
  const isLevel = side === 'top' || side === 'bottom';
  const along = isLevel ? sheet.width : sheet.height;
  const start = along / 2 - (steps.length * STAIR.every) / 2;
  const from = (distance: number) => {
    if (side === 'top' || side === 'left') return distance;
    return (isLevel ? sheet.height : sheet.width) - distance;
  };
  steps.forEach((step, index) => {
    const at = start + index * STAIR.every;
    ink.pen(0.3);
    if (isLevel) ink.line(at, from(step), at + STAIR.wide, from(step));
    else ink.line(from(step), at, from(step), at + STAIR.wide);
    const middle = at + STAIR.wide / 2;
    const [x, y] = isLevel ? [middle, from(STAIR.figure) + 0.8] : [from(STAIR.figure), middle + 0.8];
    document.text(ink, words.figure(step), x, y, { size: 2.9, align: 'middle' });
  });
}

const TEXT = 3.1;
const LEADING = 4.3;

/** A rule of 10 in and one that is off by less than this share cannot be told apart: 1/32 in. */
const TOLD_APART = 1 / 320;

function said(ink: Ink, document: PdfDocument, sheet: Sheet, { paper, words }: CheckSheet): void {
  const { check } = words;
  const { across, down } = checkRules(paper);
  const left = (sheet.width - across) / 2 + RULE_INSET + 26;
  const width = sheet.width - left - CLEAR - 10;
  let y = (sheet.height - down) / 2 + RULE_INSET + 30;
  const line = (text: string, size: number, weight: 'plain' | 'bold') => {
    for (const part of textLines(document, text, width, size, weight)) {
      document.text(ink, part, left, y, { size, weight });
      y += size * (LEADING / TEXT);
    }
  };
  line(check.title, 6, 'bold');
  y += 1;
  for (const text of check.how) {
    line(text, TEXT, 'plain');
    y += 1.2;
  }
  if (paper.printer) line(words.corrected(paper.printer), TEXT, 'bold');
  y += 3;
  line(check.marginTitle, 4.2, 'bold');
  for (const text of check.marginHow) line(text, TEXT, 'plain');
  // What comes out as large as it was is no fit to be told by measuring.
  const fits = fitsOf(paper).filter(({ share }) => share > 0.85 && share < 1.12 && Math.abs(share - 1) > TOLD_APART);
  if (fits.length === 0) return;
  y += 3;
  line(check.fitsTitle, 4.2, 'bold');
  const long = Math.max(across, down);
  for (const { cause, share } of fits) line(check.fit(cause, share, words.length(long * share)), TEXT, 'plain');
}
