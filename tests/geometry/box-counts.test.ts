import fc from 'fast-check';
import { expect, it } from 'vitest';
import { boxCounts } from '../../core/geometry/box-counts';
import { sortedPlaces } from '../../core/geometry/sorted-places';

/** Places in the middles of cells of 1 mm, so that no cell is only touched. */
const coordinate = fc.integer({ min: -30, max: 60 }).map((whole) => whole + 0.5);
const place = fc.record({ x: coordinate, y: coordinate });
const side = fc.tuple(fc.integer({ min: -40, max: 70 }), fc.integer({ min: 1, max: 50 }));
const box = fc.tuple(side, side).map(([[x, wide], [y, high]]) => ({
  minX: x + 0.1,
  minY: y + 0.1,
  maxX: x + wide - 0.1,
  maxY: y + high - 0.1,
}));

it('counts the places in a box as looking at each of them does, by sums and by squares', () => {
  fc.assert(
    fc.property(fc.array(place), box, fc.integer({ min: 1, max: 40 }), (places, asked, sorted) => {
      const each = places.filter(
        ({ x, y }) => x >= asked.minX && x <= asked.maxX && y >= asked.minY && y <= asked.maxY,
      );
      expect(boxCounts(places, { minX: -30, minY: -30, maxX: 61, maxY: 61 }, 1)(asked)).toBe(each.length);
      const found: (typeof each)[number][] = [];
      sortedPlaces(places, sorted).eachIn(asked, (one) => found.push(one));
      expect(new Set(found)).toEqual(new Set(each));
      expect(found).toHaveLength(each.length);
    }),
    { seed: 7 },
  );
});

it('leaves out what lies outside its bounds', () => {
  const countIn = boxCounts(
    [
      { x: 4, y: 4 },
      { x: 12, y: 4 },
    ],
    { minX: 0, minY: 0, maxX: 10, maxY: 10 },
    2,
  );
  expect(countIn({ minX: -5, minY: -5, maxX: 50, maxY: 50 })).toBe(1);
});
