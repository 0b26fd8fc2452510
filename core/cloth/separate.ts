import { depthOf, knowNoFits, type LayField, totalDepth } from './lay-field';
import { placeBetter, type Random, type SearchEffort, shapesToTry } from './place-search';

/** By how much an overlap that stays comes to count more in a round, for the slightest and the deepest; and one that is gone, less. */
const LEAST_MORE = 1.2;
const MOST_MORE = 2;
const LESS = 0.95;

/** A round under way: the pieces that overlapped when it began, in a chance order, which is next, and in what shapes. */
export interface Round {
  readonly order: readonly number[];
  next: number;
  shapes?: readonly number[] | undefined;
}

/** Begins a round of taking pieces apart. */
export function roundOf(field: LayField, random: Random): Round {
  const order = field.all.filter((i) => !field.fixed[i] && depthOf(field, i) > 0);
  for (let k = order.length - 1; k > 0; k--) {
    const m = Math.floor(random() * (k + 1));
    [order[k], order[m]] = [order[m] as number, order[k] as number];
  }
  return { order, next: 0 };
}

/**
 * Goes on with a round until so much is worked out in all: every piece goes where its overlaps count least; then those
 * that are left count more (guided local search; the weights of Gardeyn and Wauters 2025). When the round is through it
 * gives how deep all pieces still lie in one another, 0 for a lay; before that nothing.
 */
export function separate(
  field: LayField,
  round: Round,
  effort: SearchEffort,
  random: Random,
  until: number,
): number | undefined {
  for (; round.next < round.order.length; round.next++) {
    const i = round.order[round.next] as number;
    if (depthOf(field, i) === 0) continue;
    round.shapes ??= shapesToTry(field, i, random);
    if (!knowNoFits(field, round.shapes, field.all, until)) return undefined;
    placeBetter(field, i, round.shapes, effort, random);
    round.shapes = undefined;
  }
  const total = totalDepth(field);
  if (total > 0) changeWeights(field);
  return total;
}

/** All overlaps count alike again. */
export function levelWeights(field: LayField): void {
  field.weight.set(field.worth);
}

function changeWeights({ depth, weight, worth, count }: LayField): void {
  let deepest = 0;
  for (let k = 0; k < depth.length; k++) if ((depth[k] as number) > deepest) deepest = depth[k] as number;
  const more = (MOST_MORE - LEAST_MORE) / deepest;
  for (let i = 1; i < count; i++) {
    for (let j = 0; j < i; j++) {
      const k = i * count + j;
      const each = depth[k] as number;
      const before = weight[k] as number;
      const least = worth[k] as number;
      if (each === 0 && before === least) continue;
      const now = each > 0 ? before * (LEAST_MORE + more * each) : Math.max(least, before * LESS);
      weight[k] = now;
      weight[j * count + i] = now;
    }
  }
}
