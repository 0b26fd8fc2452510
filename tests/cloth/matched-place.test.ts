import { describe, expect, it } from 'vitest';
import { layFaults } from '../../core/cloth/lay-check';
import { matchedPlace } from '../../core/cloth/matched-place';
import { yoke } from './rings';

describe('matchedPlace(piece, stance, repeat, at)', () => {
  const repeat = { along: 70, across: 40 };
  const piece = { id: 'a', outline: yoke, match: { x: 12, y: 8 }, count: 1, stances: [{ turn: 0 }, { turn: Math.PI }] };

  it.each([0, 1])('goes to the nearest place the check finds matched (stance %d)', (stance) => {
    const how = piece.stances[stance];
    if (!how) throw new Error('it has two');
    const wanted = { x: 217, y: 133 };
    const at = matchedPlace(piece, how, repeat, wanted);
    expect(Math.abs(at.x - wanted.x)).toBeLessThanOrEqual(35);
    expect(Math.abs(at.y - wanted.y)).toBeLessThanOrEqual(20);
    const lay = { placed: [{ id: 'a', copy: 0, stance, at }], length: 900 };
    const task = { ground: { across: 900, kept: [], repeat }, toLay: [piece] };
    expect(layFaults(task, lay)).toEqual([]);
    expect(layFaults(task, { ...lay, placed: [{ id: 'a', copy: 0, stance, at: wanted }] })).toHaveLength(1);
  });

  it('leaves a direction without a repeat free, and what is on the fold on it', () => {
    const [how] = piece.stances;
    if (!how) throw new Error('it has two');
    expect(matchedPlace(piece, how, { along: 0, across: 40 }, { x: 217, y: 133 }).x).toBe(217);
    expect(matchedPlace({ ...piece, onFold: 'along' }, how, repeat, { x: 217, y: 13 }).y).toBe(0);
  });
});
