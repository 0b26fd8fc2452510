import fc from 'fast-check';
import { expect, it } from 'vitest';
import { applyChange, changeBetween, type Json, reverseChange } from '../../core/garment/change';

const json = fc.jsonValue({ maxDepth: 4 }).map((value) => value as Json);

it('applyChange leads from the value before to the value after, and reversed back, for any two values', () => {
  fc.assert(
    fc.property(json, json, (before, after) => {
      const change = changeBetween(before, after);
      expect(applyChange(before, change)).toEqual(after);
      expect(applyChange(after, reverseChange(change))).toEqual(before);
    }),
    { seed: 7, numRuns: 1000 },
  );
});

it('applyChange follows lists that grew, shrank and were turned round, for any two lists', () => {
  const list = fc.array(fc.record({ id: fc.nat(9), at: fc.array(fc.nat(3), { maxLength: 3 }) }), { maxLength: 7 });
  fc.assert(
    fc.property(list, list, (before, after) => {
      const change = changeBetween(before, after);
      expect(applyChange(before, change)).toEqual(after);
      expect(applyChange(after, reverseChange(change))).toEqual(before);
    }),
    { seed: 11, numRuns: 1000 },
  );
});

it('a change survives being written as JSON and read back', () => {
  fc.assert(
    fc.property(json, json, (before, after) => {
      // JSON has one zero only.
      const [from, to] = [JSON.parse(JSON.stringify(before)) as Json, JSON.parse(JSON.stringify(after)) as Json];
      const kept = JSON.parse(JSON.stringify(changeBetween(from, to)));
      expect(applyChange(from, kept)).toEqual(to);
    }),
    { seed: 13, numRuns: 500 },
  );
});

it('changeBetween finds nothing between alike values, however they were made', () => {
  fc.assert(
    fc.property(json, (value) => {
      expect(changeBetween(value, structuredClone(value) as Json)).toEqual([]);
    }),
    { seed: 17 },
  );
});

it('changeBetween never looks into what both sides share', () => {
  const shared = { x: 3, y: 8 };
  const watched = new Proxy(shared, {
    ownKeys() {
      throw new Error('looked into');
    },
  });
  expect(changeBetween([watched, 1], [watched, 2])).toEqual([{ kind: 'value', at: [1], before: 1, after: 2 }]);
});

it('one more item in a list of 400 is stored as that item alone', () => {
  const before = Array.from({ length: 400 }, (_, index) => ({ id: `piece ${index}` }));
  const change = changeBetween(before, before.toSpliced(120, 0, { id: 'gusset' }));
  expect(change).toEqual([{ kind: 'run', at: [], from: 120, gone: [], come: [{ id: 'gusset' }] }]);
});

it('applyChange keeps what it does not touch the same object', () => {
  const before = { left: { length: 7 }, right: { length: 11 } };
  const after = applyChange(before, changeBetween(before, { ...before, left: { length: 8 } })) as typeof before;
  expect(after.right).toBe(before.right);
});

it.each([
  ['another value', { length: 7 }, { length: 8 }, { length: 9 }],
  ['a list too short', [1, 2, 3], [1, 2, 3, 4], [1]],
  ['a key already there', {}, { ease: 5 }, { ease: 6 }],
  ['no such key', { edge: { ease: 5 } }, { edge: { ease: 6 } }, {}],
  ['another kind of value', { edge: [5] }, { edge: [6] }, { edge: 'hem' }],
])('applyChange throws rather than change a value it was not made for: %s', (_, before, after, other) => {
  expect(() => applyChange(other as Json, changeBetween(before as Json, after as Json))).toThrow(/does not belong/);
});
