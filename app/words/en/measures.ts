import type { MeasureName } from '../../../core/garment/measure';

/** The names of the measures, as the notebook writes them. */
export const measureNames: Readonly<Record<MeasureName, string>> = {
  waist: 'Waist',
  highHip: 'High hip',
  hip: 'Hip',
  bust: 'Bust',
  chest: 'Chest above the bust',
  underbust: 'Under the bust',
  neck: 'Neck',
  upperArm: 'Upper arm',
  thigh: 'Thigh',
  knee: 'Knee',
  waistToHighHip: 'Waist to high hip',
  waistToHip: 'Waist to hip',
  waistToKnee: 'Waist to knee',
  waistToFloorFront: 'Waist to floor, front',
  waistToFloorSide: 'Waist to floor, side',
  waistToFloorBack: 'Waist to floor, back',
  bodyRise: 'Body rise',
  frontWaistLength: 'Front waist length',
  backWaistLength: 'Back waist length',
  shoulder: 'Shoulder',
  acrossFront: 'Across the front',
  acrossBack: 'Across the back',
  bustDepth: 'Bust depth',
  bustSpan: 'Bust span',
  armLength: 'Arm length',
};

/** The field for how far below the waist a girth was taken. */
export function depthOf(girth: string): string {
  return `How far below the waist: ${girth.toLowerCase()}`;
}

/** The field of the Wearer room to look for first when a measure is missing, as it is written there. */
export function fieldOf(measure: MeasureName): string {
  return measure === 'waistToHighHip' ? depthOf(measureNames.highHip) : measureNames[measure];
}
