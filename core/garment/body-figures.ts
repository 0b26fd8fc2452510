import type { MeasureName } from './measure';

/**
 * How real bodies are spread: the smallest and largest of 98 in 100, and the middle (mm). From ANSUR II, the US Army
 * Natick Soldier Research, Development and Engineering Center's survey of 2012 (Gordon et al.), 1,986 women. There the
 * waist is taken at the navel, a little lower and wider than a dressmaker's, so `waist` reaches 60 mm further down. Waist to
 * hip is the difference of two heights there; a tape laid over the curve from a higher waist reads more, so `waistToHip`
 * reaches 40 mm further up.
 */
export const bodyFigures: Readonly<
  Partial<Record<MeasureName, { readonly low: number; readonly middle: number; readonly high: number }>>
> = {
  waist: { low: 605, middle: 852, high: 1115 },
  hip: { low: 867, middle: 1018.5, high: 1206 },
  bust: { low: 784, middle: 940, high: 1160 },
  neck: { low: 329, middle: 370, high: 423 },
  upperArm: { low: 244, middle: 304, high: 388 },
  thigh: { low: 495, middle: 613, high: 757 },
  waistToHip: { low: 81, middle: 147, high: 241 },
  waistToKnee: { low: 464, middle: 531, high: 600 },
  waistToFloorFront: { low: 869, middle: 977.5, high: 1130 },
  waistToFloorSide: { low: 869, middle: 977.5, high: 1130 },
  waistToFloorBack: { low: 869, middle: 977.5, high: 1130 },
  bodyRise: { low: 149, middle: 198, high: 280 },
  backWaistLength: { low: 365, middle: 424.5, high: 494 },
  shoulder: { low: 114, middle: 135, high: 160 },
  acrossBack: { low: 307, middle: 373, high: 445 },
};

/** How many were measured. */
export const BODIES_MEASURED = 1986;

/** Of these women, how many had a waist larger than the hip. */
export const WAIST_OVER_HIP = 17;

/** The straight line of least squares between hip and waist in the same survey (mm), both ways. */
export const hipFromWaist = { slope: 0.6095, start: 496.5 } as const;
export const waistFromHip = { slope: 1.0567, start: -218.2 } as const;
