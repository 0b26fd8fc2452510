/** The measures of a body, taken on a day over something worn. Lengths are millimetres. */

/** Measures taken round the body. Each may say at what depth below the waist it was taken. */
export const GIRTHS = [
  'waist',
  'highHip',
  'hip',
  'bust',
  'chest',
  'underbust',
  'neck',
  'upperArm',
  'thigh',
  'knee',
] as const;

/** Measures taken along the body. */
export const LENGTHS = [
  'waistToHighHip',
  'waistToHip',
  'waistToKnee',
  'waistToFloorFront',
  'waistToFloorSide',
  'waistToFloorBack',
  'bodyRise',
  'frontWaistLength',
  'backWaistLength',
  'shoulder',
  'acrossFront',
  'acrossBack',
  'bustDepth',
  'bustSpan',
  'armLength',
] as const;

export type GirthName = (typeof GIRTHS)[number];
export type LengthName = (typeof LENGTHS)[number];
export type MeasureName = GirthName | LengthName;

export const MEASURES: readonly MeasureName[] = [...GIRTHS, ...LENGTHS];

/**
 * One measure. Where the two sides of the body differ, `length` is the wearer's left and `right` her right; of a girth
 * round the body each is what a body with two such halves would measure.
 */
export interface Measure {
  readonly length: number;
  readonly right?: number;
  /** For a girth: how far below the waist it was taken. */
  readonly depth?: number;
  /** Filled in by the program, not by a tape. */
  readonly guessed?: true;
}

/** Measures taken on one day, over the same clothes. */
export interface MeasureSet {
  readonly id: string;
  /** YYYY-MM-DD */
  readonly date: string;
  /** What the tape lay over: "shift", "corset and one petticoat". */
  readonly wornOver: string;
  readonly measures: Readonly<Partial<Record<MeasureName, Measure>>>;
}

/** Who the garment is for: her sets of measures and the one in use. */
export interface Wearer {
  readonly name: string;
  readonly sets: readonly MeasureSet[];
  readonly currentSetId: string;
}
