import type { SeamCorners } from '../../core/seams/true-corners';
import { seamsWords as words } from '../words/seams';
import { writeNumber } from '../words/written';

/** Both angles at an end of a seam and what they come to, in degrees to a tenth: 92.0° and 88.0°: 180.0°. */
export function anglesWords({ one, other }: SeamCorners): string {
  return words.angles(degrees(one), degrees(other), degrees(one + other));
}

function degrees(angle: number): string {
  return `${writeNumber((angle * 180) / Math.PI, 1)}°`;
}
