import { describe, expect, it } from 'vitest';
import { layFaults } from '../../core/cloth/lay-check';
import type { LayTask, Placed } from '../../core/cloth/lay-task';
import { ringArea } from '../../core/geometry/polygon';

const block = [
  { x: 0, y: 0 },
  { x: 70, y: 0 },
  { x: 70, y: 40 },
  { x: 0, y: 40 },
];

const task: LayTask = {
  ground: {
    across: 150,
    repeat: { along: 25, across: 0 },
    kept: [
      [
        { x: 200, y: 0 },
        { x: 230, y: 0 },
        { x: 230, y: 20 },
        { x: 200, y: 20 },
      ],
    ],
  },
  toLay: [
    { id: 'block', outline: block, count: 2, stances: [{ turn: 0 }, { turn: Math.PI / 2 }] },
    { id: 'half', outline: block, count: 1, stances: [{ turn: 0 }], onFold: 'along', match: { x: 10, y: 7 } },
  ],
};

function placed(id: string, copy: number, stance: number, x: number, y: number): Placed {
  return { id, copy, stance, at: { x, y } };
}

describe('layFaults(task, lay)', () => {
  it('finds nothing wrong with a good lay', () => {
    const good = [placed('block', 0, 0, 10, 40), placed('block', 1, 1, 90, 45), placed('half', 0, 0, 15, 0)];
    expect(layFaults(task, { placed: good, length: 130 })).toEqual([]);
  });

  it('says of two blocks by how much they overlap, and where', () => {
    const heaped = [placed('block', 0, 0, 10, 40), placed('block', 1, 0, 60, 70), placed('half', 0, 0, 15, 0)];
    const [fault, ...rest] = layFaults(task, { placed: heaped, length: 130 });
    expect(rest).toEqual([]);
    if (fault?.kind !== 'overlap') throw new Error('they overlap');
    // 80 - 60 along, 80 - 70 across.
    expect(fault.area).toBeCloseTo(20 * 10, 3);
    expect(fault.at.reduce((sum, ring) => sum + ringArea(ring), 0)).toBeCloseTo(200, 3);
  });

  it('says what is off the cloth, off the fold, on a flaw, off the repeat, missing or in no stance of its own', () => {
    const kinds = (all: Placed[], length = 300) => layFaults(task, { placed: all, length }).map(({ kind }) => kind);
    const block0 = placed('block', 0, 0, 10, 40);
    const block1 = placed('block', 1, 1, 90, 45);
    const half = placed('half', 0, 0, 15, 0);
    expect(kinds([block0, placed('block', 1, 1, 90, 81), half])).toEqual(['off-cloth']);
    expect(kinds([block0, block1, half], 120)).toEqual(['off-cloth']);
    expect(kinds([placed('block', 0, 0, 10, 60), block1, placed('half', 0, 0, 15, 3)])).toEqual(['off-fold']);
    expect(kinds([block0, placed('block', 1, 0, 165, 5), half])).toEqual(['on-kept']);
    expect(kinds([block0, block1, placed('half', 0, 0, 19, 0)])).toEqual(['unmatched']);
    expect(kinds([block0, half])).toEqual(['count']);
    expect(kinds([block0, placed('block', 0, 1, 90, 45), half])).toEqual(['count']);
    expect(kinds([block0, placed('block', 1, 7, 90, 45), half])).toEqual(['no-such-stance']);
  });
});
