import type { PaperChoice } from '../garment/garment';
import type { PaperSize } from '../garment/sheet-choice';
import { inches } from '../units/inch';
import { UPRIGHT } from './page-sizes';

type SheetSize = Exclude<PaperSize, 'roll'>;

/** What makes a viewer or printer print larger or smaller by just so much. */
export type ScaleCause =
  /** Pages of one size fitted to sheets of another; or to what the printer reaches on them, when it `loses` so much (mm). */
  | { readonly kind: 'fitted'; readonly page: SheetSize; readonly to: SheetSize; readonly loses?: number }
  /** Shrunk on its own paper into what the printer reaches. */
  | { readonly kind: 'into-margins'; readonly page: SheetSize; readonly loses: number }
  | { readonly kind: 'uneven' }
  | { readonly kind: 'unknown' };

/** A cause with what it prints for 1. */
export interface Fit {
  readonly cause: ScaleCause;
  readonly share: number;
}

/** Sheets that are in home printers. */
const AT_HOME: readonly SheetSize[] = ['letter', 'a4', 'legal', 'a3', 'tabloid'];

/** What many printers lose along an edge where nobody has measured hers (common practice). */
const USUALLY_LOSES = inches(1 / 4);

/**
 * What fitting makes of pages of the paper chosen, likeliest first: to other sheets whole, into what the printer reaches
 * on its own, and both at once. Fitting keeps proportions, so the tighter way decides: A4 pages on Letter print at
 * 279.4 / 297 = 94.1 %, Letter pages on A4 at 210 / 215.9 = 97.3 % (sizes of ISO 216 and ANSI Y14.1).
 */
export function fitsOf({ size, loses = USUALLY_LOSES }: Pick<PaperChoice, 'size' | 'loses'>): Fit[] {
  if (size === 'roll' || size === 'a0') return [];
  const others = AT_HOME.filter((to) => to !== size);
  return [
    ...others.map((to): Fit => ({ cause: { kind: 'fitted', page: size, to }, share: fitShare(size, to, 0) })),
    { cause: { kind: 'into-margins', page: size, loses }, share: fitShare(size, size, loses) },
    ...others.map(
      (to): Fit => ({
        cause: { kind: 'fitted', page: size, to, loses },
        share: fitShare(size, to, loses),
      }),
    ),
  ];
}

function fitShare(page: SheetSize, to: SheetSize, loses: number): number {
  const [from, sheet] = [UPRIGHT[page], UPRIGHT[to]];
  return Math.min((sheet.width - 2 * loses) / from.width, (sheet.height - 2 * loses) / from.height);
}

interface Ways {
  readonly across: number;
  readonly down: number;
}

/** What is behind lengths that measured otherwise than wanted, read to within `reads` mm. */
export function scaleCause(
  measured: Ways,
  wanted: Ways,
  reads: number,
  paper: Pick<PaperChoice, 'size' | 'loses'>,
): ScaleCause {
  const [across, down] = [measured.across / wanted.across, measured.down / wanted.down];
  const within = reads / wanted.across + reads / wanted.down;
  if (Math.abs(across - down) > within) return { kind: 'uneven' };
  // The longer of the two is read the more finely.
  const share = (measured.across + measured.down) / (wanted.across + wanted.down);
  const found = likely(paper)
    .map((fit) => ({ ...fit, off: Math.abs(fit.share - share) }))
    .filter(({ off }) => off <= within / 2 + 1e-9)
    .sort((a, b) => a.off - b.off);
  // Fitted to what a printer reaches on other paper is taken for the cause only where nothing simpler explains it.
  const simple = found.find(({ cause }) => cause.kind === 'into-margins' || isTo()(cause));
  return (simple ?? found[0])?.cause ?? { kind: 'unknown' };
}

/** The fits of the paper chosen, and the two commonest of all, for she may have changed her mind about the paper since. */
function likely(paper: Pick<PaperChoice, 'size' | 'loses'>): Fit[] {
  const fitted = (page: SheetSize, to: SheetSize) => fitsOf({ size: page }).filter(({ cause }) => isTo(to)(cause));
  return [...fitsOf(paper), ...fitted('letter', 'a4'), ...fitted('a4', 'letter')];
}

/** Fitted to a whole sheet: of one size, or of any. */
function isTo(size?: SheetSize): (cause: ScaleCause) => boolean {
  return (cause) => cause.kind === 'fitted' && cause.loses === undefined && (size === undefined || cause.to === size);
}
