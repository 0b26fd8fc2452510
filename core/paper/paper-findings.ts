import { cutPieces } from '../garment/cut-pieces';
import type { FindingBase } from '../garment/finding';
import type { Garment, PrinterFactors } from '../garment/garment';
import { inches } from '../units/inch';
import { type ScaleCause, scaleCause } from './scale-causes';

/** What can be said against the printed pages. Lengths in mm. */
export type PaperFinding = FindingBase &
  (
    | { readonly kind: 'scale-not-proved' }
    /** The proof was made on other paper, or before pages were corrected as they are now. */
    | { readonly kind: 'scale-proof-stale'; readonly why: 'paper' | 'correction' }
    | {
        readonly kind: 'scale-off';
        /** What the test square or the rules of the check sheet measured, and should. */
        readonly across: number;
        readonly down: number;
        readonly wanted: { readonly across: number; readonly down: number };
        readonly cause: ScaleCause;
      }
  );

/** The side of the test square on every page. */
export const TEST_SQUARE = inches(4);

/** A ruler is read to a thirty-second of an inch, and a hair for rounding; beyond that the square is off. */
const RULER_READS = inches(1 / 32) + 0.01;

/** Whether printed scale is proved. */
export function paperFindings(garment: Garment): PaperFinding[] {
  if (cutPieces(garment).length === 0) return [];
  const place = { kind: 'paper' } as const;
  const proof = garment.scaleProof;
  if (!proof) return [{ kind: 'scale-not-proved', weight: 'warn', place }];
  const stale = staleBy(garment);
  if (stale) return [{ kind: 'scale-proof-stale', weight: 'warn', place, why: stale }];
  const { across, down, wanted = { across: TEST_SQUARE, down: TEST_SQUARE } } = proof;
  if (Math.max(Math.abs(across - wanted.across), Math.abs(down - wanted.down)) <= RULER_READS) return [];
  const cause = scaleCause({ across, down }, wanted, RULER_READS, garment.paper);
  return [{ kind: 'scale-off', weight: 'stop', place, across, down, wanted, cause }];
}

function staleBy({ scaleProof, paper }: Garment): 'paper' | 'correction' | undefined {
  const on = scaleProof?.on;
  // A proof that does not say what it was made on is of pages before any was corrected.
  if (on && on.size !== paper.size) return 'paper';
  const [was, is] = [on?.printer, paper.printer];
  return was?.across === is?.across && was?.down === is?.down ? undefined : 'correction';
}

/** A printer is off by less than this; more is a viewer or a driver that fits pages to the paper. */
const PRINTER_SLIPS = 0.03;

export type PrinterReading =
  | { readonly kind: 'factors'; readonly printer: PrinterFactors }
  /** Off by more than printers are, or by just what fitting to other paper makes. */
  | { readonly kind: 'not-the-printer'; readonly cause: ScaleCause };

/** What a test square that is off says of the printer; nothing where there is none, or it is true or out of date. */
export function printerReading(garment: Garment): PrinterReading | undefined {
  const off = paperFindings(garment).find((finding) => finding.kind === 'scale-off');
  if (!off) return undefined;
  const before = garment.paper.printer ?? { across: 1, down: 1 };
  const across = (before.across * off.across) / off.wanted.across;
  const down = (before.down * off.down) / off.wanted.down;
  const isFitted = off.cause.kind === 'fitted' || off.cause.kind === 'into-margins';
  if (isFitted || Math.max(Math.abs(across - 1), Math.abs(down - 1)) > PRINTER_SLIPS) {
    return { kind: 'not-the-printer', cause: off.cause };
  }
  return { kind: 'factors', printer: { across, down } };
}
