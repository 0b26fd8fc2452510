import fc from 'fast-check';
import { expect, it } from 'vitest';
import { crowdOf } from '../../core/paper/crowd';

const place = fc.record({ x: fc.integer({ min: -43, max: 57 }), y: fc.integer({ min: -31, max: 67 }) });

it('counts the places nearer than the room asked for, as looking at each of them does', () => {
  fc.assert(
    fc.property(fc.array(place), place, fc.integer({ min: 0, max: 23 }), (places, at, room) => {
      const each = places.filter(({ x, y }) => (x - at.x) ** 2 + (y - at.y) ** 2 < room ** 2).length;
      expect(crowdOf(places)(at, room)).toBe(each);
    }),
    { seed: 5 },
  );
});
