import { expect, it } from 'vitest';
import { layFirst } from '../../core/cloth/first-lay';
import { layField, noteAllDepths, totalDepth, usedLength } from '../../core/cloth/lay-field';
import { layTable } from '../../core/cloth/lay-table';
import { fu, shapes0 } from './published-lays';

// The lengths a plain bottom-left placing of largest pieces first gave when it was written apart from this one.
it.each([
  ['fu', fu, 37.071],
  ['shapes0', shapes0, 70.996],
] as const)('layFirst(field) lays %s without overlap, hardly longer than another greedy placing', (_, task, length) => {
  const field = layField(layTable(task));
  expect(layFirst(field)).toEqual([]);
  noteAllDepths(field);
  expect(totalDepth(field)).toBe(0);
  expect(usedLength(field)).toBeLessThan(length * 1.1);
});
