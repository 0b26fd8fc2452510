import { type FitFinding, fitFindings } from '../fit/fit-findings';
import { newFindings } from '../garment/finding';
import type { Garment } from '../garment/garment';

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
