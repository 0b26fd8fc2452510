import { describe, expect, it } from 'vitest';
import type { Cloth } from '../../core/cloth/cloth';
import { clothTask } from '../../core/cloth/cloth-task';
import { layFaults } from '../../core/cloth/lay-check';
import { bestLay, layStep, startLay } from '../../core/cloth/lay-search';
import { seededRandom } from '../../core/cloth/seeded-random';
import { inches } from '../../core/units/inch';
import { wrongs } from './seen-from-outside';

const cloth: Cloth = {
  id: 'c',
  name: 'Cloth',
  width: inches(39),
  selvedge: inches(0.5),
  folded: 'open',
  nap: 'none',
  flaws: [],
};

describe('strips with sides of a yard, against one another on the bias', () => {
  it.each([1, 2, 3])('hide no overlap in their length, seed %i', (seed) => {
    const strips = [
      { id: 'facing', name: 'facing', length: inches(36), width: inches(2), count: 19, cut: 'bias' },
      { id: 'placket', name: 'placket', length: inches(20), width: inches(3), count: 23, cut: 'along' },
    ] as const;
    const made = clothTask({ pieces: [], strips }, cloth, { grain: 'straight', tolerance: 0.5 });
    if (made.kind !== 'task') throw new Error('they go on the cloth');
    const search = startLay(made.task, seededRandom(seed));
    if (search.kind !== 'search') throw new Error('they go on the cloth');
    for (let step = 0; step < 400; step++) {
      if (layStep(search) !== 'better') continue;
      const lay = bestLay(search);
      expect(layFaults(made.task, lay)).toEqual([]);
      expect(wrongs(cloth, made.task, lay)).toEqual([]);
    }
    const lay = bestLay(search);
    // Each moved by a hundredth of a millimetre square to its sides: what then lies in a neighbour is told.
    const moved = lay.placed.flatMap((one) => {
      const at = { x: one.at.x + 0.007, y: one.at.y - 0.007 };
      return layFaults(made.task, {
        ...lay,
        placed: lay.placed.map((each) => (each === one ? { ...each, at } : each)),
      });
    });
    expect(moved.map(({ kind }) => kind)).toContain('overlap');
  });
});
