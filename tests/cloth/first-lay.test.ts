import { expect, it } from 'vitest';
import { firstLay, layOn } from '../../core/cloth/first-lay';
import { layField, noteAllDepths, totalDepth, usedLength } from '../../core/cloth/lay-field';
import { layTable } from '../../core/cloth/lay-table';
import { fu, shapes0 } from './published-lays';

// The lengths a plain bottom-left placing of largest pieces first gave when it was written apart from this one.
it.each([
  ['fu', fu, 37.071],
  ['shapes0', shapes0, 70.996],
] as const)(
  'layOn(field, first, until) lays %s without overlap, shorter than another greedy placing',
  (_, task, length) => {
    const field = layField(layTable(task));
    const first = firstLay(field);
    const lengths: number[] = [];
    while (first.tries.length > 0) {
      // A little at a time, as a search does: it goes on where it was.
      if (layOn(field, first, field.table.work + 500) !== 'laid') continue;
      noteAllDepths(field);
      expect(totalDepth(field)).toBe(0);
      lengths.push(usedLength(field));
    }
    expect(lengths).toEqual([...lengths].sort((a, b) => b - a));
    expect(Math.min(...lengths)).toBeLessThan(length);
  },
);
