import { inches } from '../units/inch';
import { bodyFigures } from './body-figures';
import type { FindingBase } from './finding';
import { GIRTHS, type GirthName, MEASURES, type MeasureName, type MeasureSet } from './measure';
import { canBeHalved, halvesOf } from './measure-halves';
import { depthMeasure, depthOf, measureOf } from './measure-value';

/** What is worth asking about a measure. Nothing here is refused: bodies differ. Lengths in mm. */
export type MeasureFinding = FindingBase &
  (
    | {
        readonly kind: 'measure-unlikely';
        readonly measure: MeasureName;
        readonly value: number;
        readonly low: number;
        readonly high: number;
      }
    | { readonly kind: 'waist-over-hip'; readonly waist: number; readonly hip: number }
    /** The second must lie further down than the first. */
    | { readonly kind: 'lengths-out-of-order'; readonly upper: MeasureName; readonly lower: MeasureName }
    | { readonly kind: 'sides-differ'; readonly measure: MeasureName; readonly by: number }
    | { readonly kind: 'measure-guessed'; readonly measure: MeasureName }
    | { readonly kind: 'measure-needed'; readonly measure: MeasureName }
  );

/** Sides that differ by more than this are measured again before they are believed. */
const SIDES_APART = inches(1.5);

/** Without these no skirt can be checked against a body. */
const NEEDED: readonly MeasureName[] = ['waist', 'hip', 'waistToHip'];

const ORDER: readonly (readonly [MeasureName, MeasureName])[] = [
  ['waistToHighHip', 'waistToHip'],
  ['waistToHip', 'waistToKnee'],
  ['waistToKnee', 'waistToFloorFront'],
  ['waistToKnee', 'waistToFloorSide'],
  ['waistToKnee', 'waistToFloorBack'],
];

/** Everything worth asking about a set of measures, each with the measure to look at first. */
export function measureFindings(set: MeasureSet): MeasureFinding[] {
  const values = new Map(MEASURES.map((name) => [name, measureOf(set, name)]));
  return [
    ...NEEDED.filter((name) => isMissing(set, name)).map(
      (measure): MeasureFinding => ({ kind: 'measure-needed', ...warnAt(measure), measure }),
    ),
    ...MEASURES.flatMap((measure) => singleFindings(set, measure)),
    ...GIRTHS.flatMap((girth) => notedDepthFindings(set, girth)),
    ...waistOverHip(values.get('waist'), values.get('hip')),
    ...ORDER.flatMap(([upper, lower]): MeasureFinding[] => {
      const [above, below] = [values.get(upper), values.get(lower)];
      if (above === undefined || below === undefined || above < below) return [];
      return [{ kind: 'lengths-out-of-order', ...warnAt(lower), upper, lower }];
    }),
  ];
}

/** The way down to the hip is known too when it was noted with the hip. */
function isMissing(set: MeasureSet, name: MeasureName): boolean {
  return (name === 'waistToHip' ? depthOf(set, 'hip') : measureOf(set, name)) === undefined;
}

function singleFindings(set: MeasureSet, measure: MeasureName): MeasureFinding[] {
  const taken = set.measures[measure];
  const value = measureOf(set, measure);
  if (!taken || value === undefined) return [];
  const found = unlikely(measure, value, measure);
  const sides = canBeHalved(measure) ? halvesOf(taken) : { left: taken.length, right: taken.right ?? taken.length };
  const by = sides ? Math.abs(sides.right - sides.left) : 0;
  if (by > SIDES_APART) found.push({ kind: 'sides-differ', ...warnAt(measure), measure, by });
  if (taken.guessed) found.push({ kind: 'measure-guessed', ...warnAt(measure), measure });
  return found;
}

/** A depth noted with a girth is asked about beside that girth. */
function notedDepthFindings(set: MeasureSet, girth: GirthName): MeasureFinding[] {
  const [depth, measure] = [set.measures[girth]?.depth, depthMeasure[girth]];
  return depth === undefined || !measure ? [] : unlikely(measure, depth, girth);
}

function unlikely(measure: MeasureName, value: number, mendedAt: MeasureName): MeasureFinding[] {
  const usual = bodyFigures[measure];
  if (!usual || (value >= usual.low && value <= usual.high)) return [];
  return [{ kind: 'measure-unlikely', ...warnAt(mendedAt), measure, value, low: usual.low, high: usual.high }];
}

function waistOverHip(waist: number | undefined, hip: number | undefined): MeasureFinding[] {
  if (waist === undefined || hip === undefined || waist <= hip) return [];
  return [{ kind: 'waist-over-hip', ...warnAt('waist'), waist, hip }];
}

function warnAt(measure: MeasureName) {
  return { weight: 'warn', place: { kind: 'measure', measure } } as const;
}
