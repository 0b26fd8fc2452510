import type { GirthName, MeasureName } from '../../core/garment/measure';

/** What a skirt or drawers cannot do without, in the order of taking them. */
export const essentialMeasures: readonly MeasureName[] = [
  'waist',
  'highHip',
  'hip',
  'waistToHip',
  'waistToKnee',
  'waistToFloorSide',
];

/** Everything else, by where the tape goes. */
export const furtherMeasures = {
  round: ['thigh', 'knee'],
  along: ['waistToHighHip', 'waistToFloorFront', 'waistToFloorBack', 'bodyRise'],
  bodice: [
    'bust',
    'chest',
    'underbust',
    'neck',
    'upperArm',
    'frontWaistLength',
    'backWaistLength',
    'shoulder',
    'acrossFront',
    'acrossBack',
    'bustDepth',
    'bustSpan',
    'armLength',
  ],
} as const satisfies Readonly<Record<string, readonly MeasureName[]>>;

/** The girths that mean little without the depth at which they were taken; that of the hip is a measure of its own. */
const withDepth: readonly MeasureName[] = ['highHip'] satisfies readonly GirthName[];

export function wantsDepth(measure: MeasureName): boolean {
  return withDepth.includes(measure);
}

/** The measures that are taken on one side of the body and may differ on the other. */
const oneSided: readonly MeasureName[] = [
  'upperArm',
  'thigh',
  'knee',
  'waistToHighHip',
  'waistToHip',
  'waistToKnee',
  'waistToFloorSide',
  'bodyRise',
  'frontWaistLength',
  'shoulder',
  'bustDepth',
  'armLength',
];

export function hasTwoSides(measure: MeasureName): boolean {
  return oneSided.includes(measure);
}
