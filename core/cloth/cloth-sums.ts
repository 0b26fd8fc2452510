/** What a lay comes to: lengths to buy, share used, the least there could be, and whether the cloth at hand is enough. */

import { ringArea } from '../geometry/polygon';
import { MM_PER_METRE, MM_PER_YARD } from '../units/inch';
import type { Cloth } from './cloth';
import { openedLength } from './cloth';
import type { Lay, LayTask } from './lay-task';

/** An eighth of a yard, the least a draper cuts in yards; and a twentieth of a metre. */
export const EIGHTH_OF_YARD = MM_PER_YARD / 8;
export const TWENTIETH_OF_METRE = MM_PER_METRE / 20;

/** A length this little beyond a step is rounding, in mm. */
const ROUNDING = 1e-6;

/** What a lay takes. */
export interface LaySums {
  /** The length of the cloth, opened out. */
  readonly length: number;
  /** The share of the cloth laid on that the pieces fill, 0 to 1; places kept free count as cloth. */
  readonly used: number;
  /** No lay can be shorter than this: the area of the pieces over the width. */
  readonly bound: number;
  /** By how much the lay is longer than that. */
  readonly beyondBound: number;
}

/** The sums of a lay on a cloth. */
export function laySums(task: LayTask, lay: Lay, cloth: Pick<Cloth, 'folded' | 'shape'>): LaySums {
  const area = task.toLay.reduce((sum, { outline, count }) => sum + count * Math.abs(ringArea(outline)), 0);
  const bound = area / task.ground.across;
  const used = lay.length > 0 ? bound / lay.length : 0;
  const length = openedLength(cloth, lay.length);
  return { length, used, bound: openedLength(cloth, bound), beyondBound: length - openedLength(cloth, bound) };
}

/** A length up to the next whole step, as it is bought. */
export function toBuy(length: number, step: number): number {
  return Math.ceil((length - ROUNDING) / step) * step;
}

/** Whether so much cloth is enough, and what is over or short. */
export function againstAtHand(
  needed: number,
  atHand: number,
): { readonly kind: 'enough'; readonly over: number } | { readonly kind: 'short'; readonly by: number } {
  return needed <= atHand + ROUNDING
    ? { kind: 'enough', over: Math.max(0, atHand - needed) }
    : { kind: 'short', by: needed - atHand };
}
