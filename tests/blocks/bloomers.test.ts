import { describe, expect, it } from 'vitest';
import { bloomers, bloomersPieces, bloomersWidths } from '../../core/blocks/bloomers';
import { distance } from '../../core/geometry/point';
import { inches } from '../../core/units/inch';
import { plainNames } from './body-checks';
import { expectInches, expectPlaces } from './in-inches';

/** I. Rosenfeld, The Practical Designer for Women's and Misses' Underwear (1918), lesson 411, the 36 figure. */
const figure36 = { waist: inches(25), hip: inches(43), rise: inches(12), outside: inches(26) };

describe('bloomers', () => {
  it('has the letters and lengths of Rosenfeld 1918', () => {
    const draft = bloomers(figure36);
    if (draft.kind !== 'bloomers') throw new Error(draft.why);
    expectPlaces(draft.letters, {
      B: [0, -12],
      C: [0, -26],
      H: [10.75, -12],
      I: [14.375, -12],
      R: [10.75, 0],
      O: [4.5, 0],
      P: [2.5, 0],
      Q: [2.5, 0.5],
      X: [10.75, -0.5],
      U: [-1.5, -12],
      J: [10.75, -8.375],
      M: [12.5625, -10.1875],
      N: [12.209, -10.541],
      V: [13.875, -12],
      T: [13.875, -26],
    });
    const { waist, hip, knee } = bloomersWidths(draft);
    expectInches(waist, 8.31);
    expectInches(hip, 15.875);
    expectInches(knee, 13.875);
    expectInches(distance(draft.letters.J, draft.letters.I), 5.126);
  });

  it('refuses a leg shorter than the rise and a waist that would pass the side', () => {
    expect(bloomers({ ...figure36, outside: inches(11) })).toEqual({ kind: 'no-bloomers', why: 'rise-below-hem' });
    expect(bloomers({ ...figure36, waist: inches(42) })).toEqual({ kind: 'no-bloomers', why: 'waist-over-hip' });
    expect(bloomers({ ...figure36, rise: 0 })).toEqual({ kind: 'no-bloomers', why: 'not-positive' });
  });
});

describe('bloomersPieces', () => {
  it('gives the front with its seams in the lines, and asks for the back', () => {
    const made = bloomersPieces(figure36, plainNames());
    if (made.kind !== 'bloomers-pieces') throw new Error(made.why);
    expect(made.pieces.map(({ drawnAs, cut }) => [drawnAs, cut.how])).toEqual([['included', 'pair']]);
    expect(made.questions.map(({ kind }) => kind)).toEqual(['source-ends']);
  });
});
