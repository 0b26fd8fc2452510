import type { MeasureName } from '../../../core/garment/measure';

/** The names of the measures, as the notebook writes them. */
export const measureNames: Readonly<Record<MeasureName, string>> = {
  waist: 'Taille',
  highHip: 'Hohe Hüfte',
  hip: 'Hüfte',
  bust: 'Brust',
  chest: 'Oberbrust',
  underbust: 'Unterbrust',
  neck: 'Hals',
  upperArm: 'Oberarm',
  thigh: 'Oberschenkel',
  knee: 'Knie',
  waistToHighHip: 'Taille bis hohe Hüfte',
  waistToHip: 'Hüfttiefe (Taille bis Hüfte)',
  waistToKnee: 'Taille bis Knie',
  waistToFloorFront: 'Taille bis Boden, vorn',
  waistToFloorSide: 'Taille bis Boden, Seite',
  waistToFloorBack: 'Taille bis Boden, hinten',
  bodyRise: 'Sitzhöhe',
  frontWaistLength: 'Vordere Taillenlänge',
  backWaistLength: 'Rückenlänge',
  shoulder: 'Schulterbreite',
  acrossFront: 'Vordere Breite',
  acrossBack: 'Rückenbreite',
  bustDepth: 'Brusttiefe',
  bustSpan: 'Brustpunktabstand',
  armLength: 'Armlänge',
};

/** The field for how far below the waist a girth was taken. */
export function depthOf(girth: string): string {
  return `Wie weit unter der Taille: ${girth}`;
}

/** The field of the room of measures to look for first when a measure is missing, as it is written there. */
export function fieldOf(measure: MeasureName): string {
  return measure === 'waistToHighHip' ? depthOf(measureNames.highHip) : measureNames[measure];
}
