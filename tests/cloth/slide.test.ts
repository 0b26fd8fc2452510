import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LayField, layField, weightedDepth } from '../../core/cloth/lay-field';
import { layTable } from '../../core/cloth/lay-table';
import type { LayTask } from '../../core/cloth/lay-task';
import { seededRandom } from '../../core/cloth/seeded-random';
import { levelWeights } from '../../core/cloth/separate';
import { type Spot, slide } from '../../core/cloth/slide';
import { fu, shapes0 } from './published-lays';

const rectangle = (wide: number, high: number) => [
  { x: 0, y: 0 },
  { x: wide, y: 0 },
  { x: wide, y: high },
  { x: 0, y: high },
];

/** Blocks of 7 by 5 on a strip 30 across and 40 long, the first at the origin, the others where they are put. */
function blocks(places: readonly (readonly [number, number])[], ground: Partial<LayTask['ground']> = {}): LayField {
  const toLay = [{ id: 'a', outline: rectangle(7, 5), count: places.length + 1, stances: [{ turn: 0 }] }];
  const field = layField(layTable({ ground: { across: 30, kept: [], ...ground }, toLay }));
  field.length = 40;
  places.forEach(([x, y], k) => {
    field.x[k + 1] = x;
    field.y[k + 1] = y;
  });
  return field;
}

function slid(field: LayField, x: number, y: number, shape = 0, i = 0): Spot {
  const spot = { shape, x, y, depth: weightedDepth(field, i, shape, x, y, Number.POSITIVE_INFINITY) };
  slide(field, i, spot);
  return spot;
}

describe('slide(field, i, spot)', () => {
  it('leaves one neighbour the shortest way', () => {
    expect(slid(blocks([[10, 10]]), 13.5, 12)).toEqual({ shape: 0, x: 13.5, y: 15, depth: 0 });
    expect(slid(blocks([[10, 10]]), 5, 12.1)).toEqual({ shape: 0, x: 3, y: 12.1, depth: 0 });
  });

  it('turns aside where the shortest way out of one leads into another', () => {
    // Up out of the first goes into the second; between the two is no room, so it goes out beside them.
    const between = slid(
      blocks([
        [10, 10],
        [11, 18.5],
      ]),
      5,
      13.2,
    );
    expect(between.depth).toBe(0);
    expect(between.x).toBeLessThanOrEqual(4);
  });

  it('stops at the edge of the cloth', () => {
    const spot = slid(blocks([[10, 3]]), 13, 1);
    expect([spot.x, spot.y]).toEqual([13, 0]);
    expect(spot.depth).toBeCloseTo(2, 9);
  });

  it('stands where the heavier overlap is least when it cannot be clear of both', () => {
    const field = blocks([
      [10, 4.5],
      [10, 11],
    ]);
    field.length = 24;
    field.x.set([0, 8.5, 8.5]);
    field.weight[1] = 3;
    // 1.5 of room between the two for 5: clear of the one that counts three times, 3.5 deep in the other.
    const spot = slid(field, 8.5, 7);
    expect(spot.y).toBeCloseTo(9.5, 9);
    expect(spot.depth).toBeCloseTo(3.5, 9);
  });

  it('keeps to the repeat', () => {
    const field = blocks([[12, 10]], { repeat: { along: 4, across: 0 } });
    const spot = slid(field, 8, 9);
    expect(spot.depth).toBe(0);
    expect(spot.x % 4).toBeCloseTo(0, 9);
  });

  it('never worsens a place, stays on the cloth and tells the depth there, on published sets thrown down by chance', () => {
    const fields = [fu, shapes0].map((task) => {
      const field = layField(layTable(task));
      field.length = (1.5 * field.table.area) / field.table.across;
      levelWeights(field);
      const random = seededRandom(5);
      for (let i = 0; i < field.count; i++) {
        field.x[i] = (field.length - 14) * random();
        field.y[i] = (field.table.across - 14) * random();
      }
      return field;
    });
    const share = fc.integer({ min: 0, max: 999 }).map((n) => n / 1000);
    const total = { before: 0, after: 0 };
    fc.assert(
      fc.property(fc.constantFrom(...fields), fc.nat(), share, share, (field, n, along, across) => {
        const i = n % field.count;
        const shape = field.table.items[i]?.shapes[0] ?? 0;
        const [wide, high] = [field.table.wide[shape] ?? 0, field.table.high[shape] ?? 0];
        const [x, y] = [along * (field.length - wide), across * (field.table.across - high)];
        const before = weightedDepth(field, i, shape, x, y, Number.POSITIVE_INFINITY);
        const spot = slid(field, x, y, shape, i);
        total.before += before;
        total.after += spot.depth;
        expect(spot.depth).toBeLessThanOrEqual(before + 1e-9);
        expect(weightedDepth(field, i, shape, spot.x, spot.y, Number.POSITIVE_INFINITY)).toBeCloseTo(spot.depth, 9);
        expect(
          Math.min(spot.x, spot.y, field.length - wide - spot.x, field.table.across - high - spot.y),
        ).toBeGreaterThan(-1e-9);
      }),
      { seed: 7, numRuns: 1500 },
    );
    expect(total.after).toBeLessThan(0.3 * total.before);
  });
});
