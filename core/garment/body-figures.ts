import type { MeasureName } from './measure';

/**
 * How real bodies are spread: the smallest and largest of 98 in 100, and the middle (mm). From ANSUR II, the US Army
 * Natick Soldier Research, Development and Engineering Center's survey of 2012 (Gordon et al.), 1,986 women. There the
 * waist is taken at the navel, wider and about 40 mm lower than a dressmaker's, from whose waist the hip lies 7 to 9 in
 * down (common practice). So `waist` reaches 60 mm further down, and what runs down from the waist has its middle and its
 * largest moved by 40 mm, the largest to the floor by 80 for the way over the body and for shoes, and the smallest to the hip
 * is 4 in. These are differences of two heights in the survey; a body rise taken sitting cannot be had from it.
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
  waistToHip: { low: 101.6, middle: 187, high: 241 },
  waistToKnee: { low: 464, middle: 571, high: 640 },
  waistToFloorFront: { low: 869, middle: 1017.5, high: 1179 },
  waistToFloorSide: { low: 869, middle: 1017.5, high: 1179 },
  waistToFloorBack: { low: 869, middle: 1017.5, high: 1179 },
  backWaistLength: { low: 365, middle: 424.5, high: 494 },
  shoulder: { low: 114, middle: 135, high: 160 },
  acrossBack: { low: 307, middle: 373, high: 445 },
};

/** How many were measured. */
export const BODIES_MEASURED = 1986;

/** Of these women, how many had a waist larger than the hip. */
export const WAIST_OVER_HIP = 17;

/**
 * How the girth of the shoulders, arms hanging, stands to that of the bust: the means of the same survey, 1028.2 and
 * 946.9 mm. Nobody measures her shoulders round; it is what a closed garment must pass.
 */
export const SHOULDERS_TO_BUST = 1028.2 / 946.9;

/** The straight line of least squares between hip and waist in the same survey (mm), both ways. */
export const hipFromWaist = { slope: 0.6095, start: 496.5 } as const;
export const waistFromHip = { slope: 1.0567, start: -218.2 } as const;
