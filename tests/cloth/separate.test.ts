import { describe, expect, it } from 'vitest';
import { type LayField, layField, noteAllDepths, totalDepth } from '../../core/cloth/lay-field';
import { layTable } from '../../core/cloth/lay-table';
import { placeBetter, type Random, type SearchEffort } from '../../core/cloth/place-search';
import { seededRandom } from '../../core/cloth/seeded-random';
import { levelWeights, roundOf, separate } from '../../core/cloth/separate';
import { fu } from './published-lays';

const EFFORT = { anywhere: 6, near: 6, touching: 8, bettered: 2 };

/** One whole round. */
function separateOnce(field: LayField, effort: SearchEffort, random: Random): number {
  return separate(field, roundOf(field, random), effort, random, Number.POSITIVE_INFINITY) ?? Number.NaN;
}

/** All of fu in a heap, on a strip with room to spare. */
function heap() {
  const field = layField(layTable(fu));
  field.length = 60;
  levelWeights(field);
  noteAllDepths(field);
  return field;
}

describe('placeBetter(field, i, shapes, effort, random)', () => {
  it('moves one piece where it overlaps less, and leaves all others', () => {
    const field = heap();
    const before = totalDepth(field);
    const others = [...field.x].slice(1);
    expect(placeBetter(field, 0, [0], EFFORT, seededRandom(2))).toBe(true);
    expect(totalDepth(field)).toBeLessThan(before);
    expect([...field.x].slice(1)).toEqual(others);
  });
});

describe('separate(field, round, effort, random, until)', () => {
  it('takes a heap apart where there is room, in a few rounds', () => {
    const field = heap();
    const random = seededRandom(9);
    let rounds = 0;
    while (separateOnce(field, EFFORT, random) > 0 && rounds < 60) rounds++;
    expect(totalDepth(field)).toBe(0);
    expect(rounds).toBeLessThan(60);
  });

  it('makes the overlaps that stay count more, until weights are levelled', () => {
    const field = heap();
    field.length = 20;
    separateOnce(field, EFFORT, seededRandom(9));
    const stubborn = field.depth.findIndex((depth) => depth > 0);
    expect(field.weight[stubborn]).toBeGreaterThan(1.19 * (field.worth[stubborn] ?? Number.NaN));
    levelWeights(field);
    expect(field.weight[stubborn]).toBe(field.worth[stubborn]);
  });
});
