import type { Garment } from '../../core/garment/garment';
import type { MeasureName } from '../../core/garment/measure';
import { measureFindings } from '../../core/garment/measure-check';
import { currentSet, measureOf } from '../../core/garment/measure-value';

/** The measures to write down next: those a known length waits for, then those no skirt can be checked without. */
export function wantedOf(garment: Garment): ReadonlySet<MeasureName> {
  const set = currentSet(garment);
  const forLengths = garment.diagrams.flatMap(({ knownLengths }) =>
    knownLengths.flatMap(({ says }) =>
      says.kind === 'share' && measureOf(set, says.measure) === undefined ? says.measure : [],
    ),
  );
  if (forLengths.length > 0) return new Set(forLengths);
  return new Set(measureFindings(set).flatMap((finding) => (finding.kind === 'measure-needed' ? finding.measure : [])));
}
