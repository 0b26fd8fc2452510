import type { Garment } from './garment';
import type { GirthName, LengthName, MeasureName, MeasureSet } from './measure';
import { canBeHalved, type Halves, halvesOf } from './measure-halves';

/** The set of measures in use. A garment that passed its schema always has one. */
export function currentSet(garment: Garment): MeasureSet {
  const { sets, currentSetId } = garment.wearer;
  const set = sets.find((one) => one.id === currentSetId);
  if (!set) throw new Error(`garment ${garment.id} has no set ${currentSetId}`);
  return set;
}

/** A measure in mm; where the two sides of the body differ, the mean of both, as a whole girth or length needs. */
export function measureOf(set: MeasureSet, name: MeasureName): number | undefined {
  const measure = set.measures[name];
  if (!measure) return undefined;
  return measure.right === undefined ? measure.length : (measure.length + measure.right) / 2;
}

/**
 * The two halves of a girth, from centre front round the side to centre back (mm), where both were taped apart. `undefined`
 * where one figure stands for both, and for what does not go round the body.
 */
export function halfGirths(set: MeasureSet, girth: GirthName): Halves | undefined {
  const measure = set.measures[girth];
  return measure && canBeHalved(girth) ? halvesOf(measure) : undefined;
}

/** The measures that say how far below the waist a girth is taken. */
export const depthMeasure: Readonly<Partial<Record<GirthName, LengthName>>> = {
  highHip: 'waistToHighHip',
  hip: 'waistToHip',
  knee: 'waistToKnee',
};

/** How far below the waist a girth was taken (mm): as noted with it, else by the measure that says so. */
export function depthOf(set: MeasureSet, girth: GirthName): number | undefined {
  const noted = set.measures[girth]?.depth;
  if (noted !== undefined) return noted;
  const along = depthMeasure[girth];
  return girth === 'waist' ? 0 : along && measureOf(set, along);
}
