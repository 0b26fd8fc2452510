import { type FitFinding, fitFindings, SEWING_TOLERANCE } from '../fit/fit-findings';
import { type GirthAtLevel, girthsOf } from '../fit/round-body';
import { newFindings } from '../garment/finding';
import type { Garment, Ring } from '../garment/garment';

/** What of a garment does not fit, and whether it did on the body it was taken up from. */
export interface DoesNotFit {
  readonly finding: FitFinding;
  readonly didFit: boolean;
}

/** Every fit check, run on the garment as taken up for another body, ring by ring and level by level. */
export function doesNotFit(first: Garment, takenUp: Garment): DoesNotFit[] {
  const found = fitFindings(takenUp);
  const fresh = new Set(newFindings(fitFindings(first), found));
  return found.map((finding) => ({ finding, didFit: fresh.has(finding) }));
}

/** A level of what goes round the body, on the body it is taken up for. */
export interface LevelBeside {
  readonly ring: Ring;
  readonly girth: GirthAtLevel;
  /** Beyond body and ease (mm), less than 0 where it is short; `undefined` where one of them is not known. */
  readonly over: number | undefined;
  /** The same on the first body. */
  readonly firstOver: number | undefined;
  /** Tighter than wanted here and not on the first body, or less than the body here and only than wanted there. */
  readonly newlyShort: boolean;
}

/** Every level with its numbers, ring by ring and the highest first; those whose place is not known come last. */
export function levelsBeside(first: Garment, takenUp: Garment): LevelBeside[] {
  const before = first.rings.flatMap((ring) => girthsOf(first, ring).map((girth) => ({ ring, girth })));
  return takenUp.rings.flatMap((ring) =>
    girthsOf(takenUp, ring)
      .toSorted((a, b) => placeOf(a) - placeOf(b))
      .map((girth) => {
        const had = before.find((one) => one.ring.id === ring.id && one.girth.level.id === girth.level.id);
        const [over, firstOver] = [overOf(girth), had && overOf(had.girth)];
        const newlyShort = tightness(girth) > (had ? tightness(had.girth) : 0);
        return { ring, girth, over, firstOver, newlyShort };
      }),
  );
}

function placeOf(girth: GirthAtLevel): number {
  return girth.kind === 'no-depth' ? Number.MAX_VALUE : girth.depth;
}

/** Where no piece reaches the level nothing can be said of it. */
function overOf(girth: GirthAtLevel): number | undefined {
  return girth.kind === 'measured' && girth.total > 0 ? girth.total - girth.wanted : undefined;
}

/** 0 where the girth is large enough or not known, 1 where it lacks ease, 2 where it is less than the body. */
function tightness(girth: GirthAtLevel): 0 | 1 | 2 {
  if (girth.kind !== 'measured' || girth.total === 0) return 0;
  if (girth.total < girth.body - SEWING_TOLERANCE) return 2;
  return girth.total < girth.wanted - SEWING_TOLERANCE ? 1 : 0;
}
