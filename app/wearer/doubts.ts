import type { Garment } from '../../core/garment/garment';
import type { MeasureName } from '../../core/garment/measure';
import { measureFindings } from '../../core/garment/measure-check';
import { currentSet } from '../../core/garment/measure-value';
import { findingSentence } from '../words/findings';

/**
 * What is worth asking about each measure of the set in use, in words. That a field is empty or guessed is left out:
 * the field itself shows it.
 */
export function doubtsOf(garment: Garment): ReadonlyMap<MeasureName, readonly string[]> {
  const doubts = new Map<MeasureName, string[]>();
  for (const finding of measureFindings(currentSet(garment))) {
    if (finding.kind === 'measure-needed' || finding.kind === 'measure-guessed') continue;
    if (finding.place.kind !== 'measure') continue;
    const { measure } = finding.place;
    doubts.set(measure, [...(doubts.get(measure) ?? []), findingSentence(finding, garment)]);
  }
  return doubts;
}
