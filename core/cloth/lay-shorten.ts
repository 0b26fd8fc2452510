/** The two moves between rounds of taking pieces apart: a shorter cloth after a lay, and a stir after a failure. */
import { goesAcross, placeAcross, placeAlong } from './lay-room';
import type { LayShape } from './lay-table';
import { type Kept, keptOf, type LaySearch, restore } from './search-state';
import { levelWeights } from './separate';

/**
 * The share the cloth is shortened by at first, and at least; * and what a failure makes of it. Found by trial on published sets.
 */
export const FIRST_SHORTER = 0.004;
const LEAST_SHORTER = 0.0005;
const AFTER_FAILURE = 0.7;

/** How often a failure leads back to the lay that is reached, and how many near misses are kept for the other times. */
const BACK_TO_BEST = 0.7;
const MISSES = 12;

/** The largest pieces that together make this share of the area are large; areas within the other share are alike. */
const LARGE_SHARE = 0.75;
const ALIKE = 0.01;

/** Takes a strip out of the length that is reached at a chance place; what lies beyond it moves up. */
export function shortenCloth(search: LaySearch): void {
  const { field, random, reached } = search;
  field.length = Math.max(search.least, reached.length * (1 - search.shorten));
  const by = reached.length - field.length;
  const cut = random() * field.length;
  for (let i = 0; i < field.count; i++) {
    if (field.fixed[i]) continue;
    const shape = field.table.shapes[field.shape[i] as number] as LayShape;
    if ((field.x[i] as number) + shape.wide / 2 > cut) field.x[i] = (field.x[i] as number) - by;
  }
  settle(search);
}

/** After a failure: shorten less, and go on from the lay that is reached or from a near miss with two large pieces changed over. */
export function stir(search: LaySearch): void {
  const { field, random } = search;
  search.shorten = Math.max(LEAST_SHORTER, search.shorten * AFTER_FAILURE);
  search.misses.push(search.nearest);
  search.misses.sort((a, b) => a.depth - b.depth);
  if (search.misses.length > MISSES) search.misses.pop();
  if (random() < BACK_TO_BEST) {
    restore(field, search.reached);
    shortenCloth(search);
    return;
  }
  field.length = Math.max(search.least, search.reached.length * (1 - search.shorten));
  restore(field, search.misses[Math.floor(random() ** 2 * search.misses.length)] as Kept);
  changeOver(search);
  settle(search);
}

/** Two large pieces of different size change places. */
function changeOver({ field, random }: LaySearch): void {
  const { table } = field;
  const area = (i: number) => (table.shapes[field.shape[i] as number] as LayShape).area;
  const free = [...Array(field.count).keys()].filter((i) => !field.fixed[i]).sort((a, b) => area(b) - area(a));
  let sum = 0;
  const large = free.filter((i) => {
    const before = sum;
    sum += area(i);
    return before < LARGE_SHARE * table.area;
  });
  const one = large[Math.floor(random() * large.length)];
  if (one === undefined) return;
  const others = large.filter((i) => Math.abs(area(i) - area(one)) > ALIKE * area(one));
  const other = others[Math.floor(random() * others.length)];
  if (other === undefined) return;
  [field.x[one], field.x[other]] = [field.x[other] as number, field.x[one] as number];
  [field.y[one], field.y[other]] = [field.y[other] as number, field.y[one] as number];
}

/** What lies off the cloth comes onto it, in another stance if need be; and the search for a lay begins afresh. */
function settle(search: LaySearch): void {
  const { field } = search;
  for (let i = 0; i < field.count; i++) {
    if (field.fixed[i]) continue;
    const fits = (number: number) => (field.table.shapes[number] as LayShape).wide <= field.length;
    if (!fits(field.shape[i] as number)) {
      const other = field.table.items[i]?.shapes.find(
        (number) => fits(number) && goesAcross(field.table, field.table.shapes[number] as LayShape),
      );
      if (other !== undefined) field.shape[i] = other;
    }
    const shape = field.table.shapes[field.shape[i] as number] as LayShape;
    field.x[i] = placeAlong(field, shape, field.x[i] as number);
    field.y[i] = placeAcross(field, shape, field.y[i] as number);
  }
  levelWeights(field);
  search.nearest = { ...keptOf(field), depth: Number.POSITIVE_INFINITY };
  search.doing = { kind: 'depths', next: 0 };
  search.rounds = 0;
  search.roundsInVain = 0;
  search.strikes = 0;
}
