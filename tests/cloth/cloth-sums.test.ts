import { describe, expect, it } from 'vitest';
import { againstAtHand, EIGHTH_OF_YARD, laySums, TWENTIETH_OF_METRE, toBuy } from '../../core/cloth/cloth-sums';
import type { LayTask } from '../../core/cloth/lay-task';
import { inches, MM_PER_YARD } from '../../core/units/inch';

describe('laySums(task, lay, cloth)', () => {
  const outline = [
    { x: 0, y: 0 },
    { x: 700, y: 0 },
    { x: 700, y: 300 },
    { x: 0, y: 300 },
  ];
  const task: LayTask = {
    ground: { across: 800, kept: [] },
    toLay: [{ id: 'a', outline, count: 4, stances: [{ turn: 0 }] }],
  };

  it('gives the share used, the bound by area and how far the lay is beyond it', () => {
    const sums = laySums(task, { placed: [], length: 1400 }, { folded: 'open' });
    expect(sums.bound).toBe((4 * 700 * 300) / 800);
    expect(sums.used).toBeCloseTo(1050 / 1400, 12);
    expect(sums.beyondBound).toBe(350);
    expect(laySums(task, { placed: [], length: 1400 }, { folded: 'crosswise' }).length).toBe(2800);
  });
});

describe('what to buy', () => {
  it('goes up to the next eighth of a yard or twentieth of a metre', () => {
    expect(toBuy(2.26 * MM_PER_YARD, EIGHTH_OF_YARD)).toBeCloseTo(2.375 * MM_PER_YARD, 9);
    expect(toBuy(2.25 * MM_PER_YARD, EIGHTH_OF_YARD)).toBeCloseTo(2.25 * MM_PER_YARD, 9);
    expect(toBuy(1301, TWENTIETH_OF_METRE)).toBe(1350);
  });

  it('two half circles of waist 28 and length 26 in take 121.8 in, 3 1/2 yd as bought (2 pi r = 28; four radii)', () => {
    const radius = inches(28) / (2 * Math.PI) + inches(26);
    expect((4 * radius) / inches(1)).toBeCloseTo(121.8, 1);
    expect(toBuy(4 * radius, EIGHTH_OF_YARD) / MM_PER_YARD).toBeCloseTo(3.5, 9);
  });

  it('says what is over or short of the cloth at hand', () => {
    expect(againstAtHand(inches(87), inches(90))).toEqual({ kind: 'enough', over: inches(90) - inches(87) });
    expect(againstAtHand(inches(95), inches(90))).toEqual({ kind: 'short', by: inches(95) - inches(90) });
  });
});
