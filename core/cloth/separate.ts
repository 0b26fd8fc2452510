import { depthOf, type LayField, totalDepth } from './lay-field';
import { placeBetter, type Random, type SearchEffort } from './place-search';

/** By how much an overlap that stays comes to count more in a round, for the slightest and the deepest; and one that is gone, less. */
const LEAST_MORE = 1.2;
const MOST_MORE = 2;
const LESS = 0.95;

/**
 * One round of taking pieces apart: every piece that overlaps another, in a chance order, goes where its overlaps count
 * least; then those that are left count more (guided local search; the weights of Gardeyn and Wauters 2025). Gives how
 * deep all pieces still lie in one another; 0 is a lay.
 */
export function separateOnce(field: LayField, effort: SearchEffort, random: Random): number {
  const order: number[] = [];
  for (let i = 0; i < field.count; i++) if (!field.fixed[i] && depthOf(field, i) > 0) order.push(i);
  for (let k = order.length - 1; k > 0; k--) {
    const m = Math.floor(random() * (k + 1));
    [order[k], order[m]] = [order[m] as number, order[k] as number];
  }
  for (const i of order) if (depthOf(field, i) > 0) placeBetter(field, i, effort, random);
  const total = totalDepth(field);
  if (total > 0) changeWeights(field);
  return total;
}

/** All overlaps count alike again. */
export function levelWeights(field: LayField): void {
  field.weight.set(field.worth);
}

function changeWeights({ depth, weight, worth }: LayField): void {
  let deepest = 0;
  for (const each of depth) if (each > deepest) deepest = each;
  for (let k = 0; k < depth.length; k++) {
    const each = depth[k] as number;
    const before = weight[k] as number;
    weight[k] =
      each > 0
        ? before * (LEAST_MORE + (MOST_MORE - LEAST_MORE) * (each / deepest))
        : Math.max(worth[k] as number, before * LESS);
  }
}
