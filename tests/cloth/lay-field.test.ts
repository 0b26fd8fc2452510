import fc from 'fast-check';
import { expect, it } from 'vitest';
import { convexParts } from '../../core/cloth/convex-parts';
import { depthIn, layField, noteAllDepths, totalDepth, usedLength, weightedDepth } from '../../core/cloth/lay-field';
import { layTable, noFitOf } from '../../core/cloth/lay-table';
import type { LayTask } from '../../core/cloth/lay-task';
import { depthInConvex, noFit } from '../../core/cloth/no-fit';
import { shapes0 } from './published-lays';

const block = [
  { x: 0, y: 0 },
  { x: 7, y: 0 },
  { x: 7, y: 5 },
  { x: 0, y: 5 },
];
const stances = [{ turn: 0 }];
const blocks: LayTask = { ground: { across: 30, kept: [] }, toLay: [{ id: 'a', outline: block, count: 2, stances }] };

it('depthIn(area, dx, dy) is the shortest way out: for two blocks, the least of the four ways', () => {
  const table = layTable(blocks);
  const area = noFitOf(table, 0, 0);
  expect(depthIn(area, 5, 1)).toBeCloseTo(2, 12);
  expect(depthIn(area, -1, 3.5)).toBeCloseTo(1.5, 12);
  expect(depthIn(area, 7, 0)).toBe(0);
  expect(depthIn(area, 3, -5)).toBe(0);
});

it('depthIn(area, dx, dy) is 0 just where no two convex parts overlap, level with a corner or not', () => {
  const table = layTable(shapes0);
  const sums = table.shapes.map((a) => table.shapes.map((b) => noFit(a.parts, b.parts).parts));
  const place = fc.double({ min: -16, max: 16, noNaN: true });
  const level = fc.integer({ min: -16, max: 16 });
  const index = fc.integer({ min: 0, max: 3 });
  fc.assert(
    fc.property(index, index, fc.oneof(place, level), fc.oneof(place, level), (stays, moves, dx, dy) => {
      const area = noFitOf(table, stays, moves);
      const depth = Math.max(...(sums[stays]?.[moves] ?? []).map((part) => depthInConvex(part, { x: dx, y: dy })));
      if (depth > 1e-6) expect(depthIn(area, dx, dy)).toBeGreaterThan(depth - 1e-6);
      if (depth < -1e-6) expect(depthIn(area, dx, dy)).toBe(0);
    }),
    { seed: 7, numRuns: 2000 },
  );
  expect(convexParts(table.shapes[0]?.ring ?? [])).toHaveLength(3);
});

it('weightedDepth and totalDepth count an overlap by its weight, each two once', () => {
  const field = layField(layTable(blocks));
  field.x[1] = 4;
  field.y[1] = 3;
  noteAllDepths(field);
  expect(totalDepth(field)).toBeCloseTo(2, 9);
  expect(usedLength(field)).toBe(11);
  field.weight[2] = 3;
  expect(weightedDepth(field, 1, 0, 4, 3, Number.POSITIVE_INFINITY)).toBeCloseTo(6, 9);
  expect(weightedDepth(field, 1, 0, 7, 3, Number.POSITIVE_INFINITY)).toBe(0);
});
