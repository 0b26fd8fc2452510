import { cutPieces } from '../garment/cut-pieces';
import type { FindingBase } from '../garment/finding';
import type { Garment } from '../garment/garment';
import { inches } from '../units/inch';

/** What can be said against the printed pages. Lengths in mm. */
export type PaperFinding = FindingBase &
  (
    | { readonly kind: 'scale-not-proved' }
    | {
        readonly kind: 'scale-off';
        /** What the test square measured, and should. */
        readonly across: number;
        readonly down: number;
        readonly wanted: number;
        readonly cause: ScaleCause;
      }
  );

/** What makes a printer or viewer shrink by just so much. */
export type ScaleCause = 'letter-fit-to-a4' | 'a4-fit-to-letter' | 'uneven' | 'unknown';

/** The side of the test square on every page. */
export const TEST_SQUARE = inches(4);

/** A ruler is read to a thirty-second of an inch, and a hair for rounding; beyond that the square is off. */
const RULER_READS = inches(1 / 32) + 0.01;

/**
 * Whether printed scale is proved. Letter's width fitted to A4 prints at 97.3 %, an A4 sheet fitted to Letter at 94.1 %
 * (computed from ISO 216 and ANSI sizes).
 */
export function paperFindings(garment: Garment): PaperFinding[] {
  if (cutPieces(garment).length === 0) return [];
  const place = { kind: 'paper' } as const;
  const proof = garment.scaleProof;
  if (!proof) return [{ kind: 'scale-not-proved', weight: 'warn', place }];
  const { across, down } = proof;
  if (Math.max(Math.abs(across - TEST_SQUARE), Math.abs(down - TEST_SQUARE)) <= RULER_READS) return [];
  return [
    { kind: 'scale-off', weight: 'stop', place, across, down, wanted: TEST_SQUARE, cause: causeOf(across, down) },
  ];
}

function causeOf(across: number, down: number): ScaleCause {
  if (Math.abs(across - down) > RULER_READS) return 'uneven';
  const share = (across + down) / 2 / TEST_SQUARE;
  if (Math.abs(share - 210 / 215.9) < 0.006) return 'letter-fit-to-a4';
  if (Math.abs(share - 279.4 / 297) < 0.006) return 'a4-fit-to-letter';
  return 'unknown';
}
