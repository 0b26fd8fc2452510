import { describe, expect, it } from 'vitest';
import { type GoreGirths, type GoreRule, type GoreShares, goreShares } from '../../core/blocks/gore-shares';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { expectInches } from './in-inches';

function shared(rule: GoreRule, girths: GoreGirths, hem?: 'as-asked' | 'as-printed'): GoreShares {
  const made = goreShares(rule, girths, hem);
  if (made.kind !== 'gore-shares') throw new Error(made.why);
  return made;
}

const widths = ({ gores }: GoreShares, of: 'waist' | 'hip' | 'hem') => gores.map((gore) => gore[of] / MM_PER_INCH);
const sum = (all: readonly number[]) => all.reduce((a, b) => a + b, 0);

/** Ella A. Bennett, The Perfect Dressmaking System (1914): waist 25, hip 40, hem 2 1/4 yd. */
describe('goreShares of five equal gores', () => {
  const bennett = { waist: inches(25), hip: inches(40), hem: inches(81) };

  it('has the widths of Bennett 1914', () => {
    const made = shared('five-equal', bennett);
    expect(widths(made, 'waist')).toEqual([2.5, 5, 5]);
    expect(widths(made, 'hip')).toEqual([4, 8, 8]);
    widths(made, 'hem').forEach((hem, i) => {
      expect(hem).toBeCloseTo([5, 17.75, 17.75][i] ?? 0, 9);
    });
    expect(made.questions).toEqual([]);
  });

  it('asks about the hem as it is printed, an inch short of what was asked', () => {
    const made = shared('five-equal', bennett, 'as-printed');
    expect(widths(made, 'hem')).toEqual([5, 17.5, 17.5]);
    const [question] = made.questions;
    if (question?.kind !== 'sum-clash') throw new Error('no question');
    expectInches(question.asked, 81);
    expectInches(question.sum, 80);
    expect(question.answers).toEqual(['as-asked', 'as-printed']);
  });
});

/** Carrie Crane Ingalls, Text-Book on Domestic Art (1911): waist 24; hip 39 and 40. */
describe('goreShares by the proportions of Ingalls 1911', () => {
  it('makes nine gores of 1 1/2, thrice 2 2/3, and 2 1/2, and of 2 1/4, thrice 4, and 5 1/4', () => {
    const made = shared('nine', { waist: inches(24), hip: inches(39), hem: inches(100) });
    const side = 8 / 3;
    [1.5, side, side, side, 2.5].forEach((wanted, i) => {
      expectInches(made.gores[i]?.waist, wanted, 1e-9);
    });
    [2.25, 4, 4, 4, 5.25].forEach((wanted, i) => {
      expectInches(made.gores[i]?.hip, wanted, 1e-9);
    });
    expect(sum(widths(made, 'waist'))).toBeCloseTo(12, 9);
    expect(sum(widths(made, 'hip'))).toBeCloseTo(19.5, 9);
    expect(sum(widths(made, 'hem'))).toBeCloseTo(50, 9);
    // Produced to 38 in below the waist, a side gore is 11.111 wide.
    expect(side + (38 * (4 - side)) / 6).toBeCloseTo(11.111, 3);
  });

  it('makes five gores of 3, 4 and 5, and of 4, 6 and 10', () => {
    const made = shared('five-proportional', { waist: inches(24), hip: inches(40), hem: inches(110) });
    [3, 4, 5].forEach((wanted, i) => {
      expectInches(made.gores[i]?.waist, wanted, 1e-9);
    });
    [4, 6, 10].forEach((wanted, i) => {
      expectInches(made.gores[i]?.hip, wanted, 1e-9);
    });
  });
});

/** Laura I. Baldt, Clothing for Women (1916): half a panel is a twelfth of the hip, at the hem twice that. */
describe('goreShares of panels', () => {
  it('makes six gores of hip 3.333, 6.667, 6.667, 3.333 and hem 6.667, 11.333, 11.333, 6.667', () => {
    const made = shared('six-panels', { waist: inches(26), hip: inches(40), hem: inches(72) });
    expect(made.gores.map(({ place, drawn }) => `${place} ${drawn}`)).toEqual([
      'front half',
      'side whole',
      'side whole',
      'back half',
    ]);
    [3.3333, 6.6667, 6.6667, 3.3333].forEach((wanted, i) => {
      expectInches(made.gores[i]?.hip, wanted, 1e-3);
    });
    [6.6667, 11.3333, 11.3333, 6.6667].forEach((wanted, i) => {
      expectInches(made.gores[i]?.hem, wanted, 1e-3);
    });
    expect(shared('four-panels', { waist: 650, hip: 1010, hem: 1830 }).gores).toHaveLength(3);
  });
});

describe('goreShares', () => {
  it('refuses where the fixed parts take more than there is, and what is no girth', () => {
    const small = { waist: inches(30), hip: inches(31), hem: inches(70) };
    expect(goreShares('nine', small)).toEqual({ kind: 'no-gore-shares', why: 'share-left-over' });
    expect(goreShares('nine', { ...small, hip: 0 })).toEqual({ kind: 'no-gore-shares', why: 'not-positive' });
  });
});
