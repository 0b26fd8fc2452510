import { bodyFigures, hipFromWaist, waistFromHip } from './body-figures';
import type { Measure, MeasureName, MeasureSet } from './measure';
import { depthOf, measureOf } from './measure-value';

/**
 * A stand-in for a measure that was not taken, marked as a guess: waist and hip from one another by the straight line of
 * the survey in body-figures.ts, the high hip half way between them (common practice), the way down to a girth from the
 * depth noted with it, other measures by the middle of that survey. `undefined` where there is nothing to go on.
 */
export function guessMeasure(set: MeasureSet, name: MeasureName): Measure | undefined {
  const length = guessedLength(set, name);
  return length === undefined ? undefined : { length: Math.round(length), guessed: true };
}

function guessedLength(set: MeasureSet, name: MeasureName): number | undefined {
  const waist = measureOf(set, 'waist');
  const hip = measureOf(set, 'hip');
  const toHip = depthOf(set, 'hip');
  switch (name) {
    case 'waist':
      return hip === undefined ? undefined : waistFromHip.start + waistFromHip.slope * hip;
    case 'hip':
      return waist === undefined ? undefined : hipFromWaist.start + hipFromWaist.slope * waist;
    case 'highHip':
      return waist === undefined || hip === undefined ? undefined : (waist + hip) / 2;
    case 'waistToHighHip':
      return depthOf(set, 'highHip') ?? (toHip === undefined ? undefined : toHip / 2);
    case 'waistToHip':
      return toHip ?? bodyFigures.waistToHip?.middle;
    case 'waistToKnee':
      return depthOf(set, 'knee') ?? bodyFigures.waistToKnee?.middle;
    default:
      return bodyFigures[name]?.middle;
  }
}
