import { expect, it } from 'vitest';
import { layField, noteAllDepths, totalDepth, usedLength, weightedDepth } from '../../core/cloth/lay-field';
import { layTable } from '../../core/cloth/lay-table';
import type { LayTask } from '../../core/cloth/lay-task';

const block = [
  { x: 0, y: 0 },
  { x: 7, y: 0 },
  { x: 7, y: 5 },
  { x: 0, y: 5 },
];
const stances = [{ turn: 0 }];
const blocks: LayTask = { ground: { across: 30, kept: [] }, toLay: [{ id: 'a', outline: block, count: 2, stances }] };

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
