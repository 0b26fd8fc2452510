import { describe, expect, it } from 'vitest';
import { foundationSkirt } from '../../core/blocks/foundation-skirt';
import { inches } from '../../core/units/inch';
import { expectInches, expectPlaces } from './in-inches';

/** Laura I. Baldt, Clothing for Women (1916), circular foundation: her formulas for W 26, H 40, 40 and 40 1/2 long, hem 72. */
const sizes = {
  waist: inches(26),
  hip: inches(40),
  hipDepth: inches(7),
  hem: inches(72),
  front: inches(40),
  side: inches(40.5),
};

describe('foundationSkirt', () => {
  it('has the letters and the waist circle of the formulas, and asks about its axes', () => {
    const draft = foundationSkirt(sizes);
    if (draft.kind !== 'foundation-skirt') throw new Error(draft.why);
    expectPlaces(draft.letters, { A: [0, 0], B: [15.5, 0], C: [0, -3.6], D: [7.75, -3.6], E: [7.75, -3.1] });
    expectInches(draft.waistCircle.centre.x, 2.246);
    expectInches(-draft.waistCircle.centre.y, 21.897);
    expectInches(draft.waistCircle.radius, 25.596);
    expectInches(draft.waistCircle.arc, 16.181);
    expectInches(draft.takeOut, 3.181);
    expectInches(draft.toHip, 6.5);
    expectInches(draft.halfHem, 36);
    expect(draft.questions).toEqual([{ kind: 'figure-missing', what: 'axes' }]);
  });

  it('refuses a hem too wide for the hip and a waist larger than its line', () => {
    const why = (changed: Partial<typeof sizes>) => {
      const made = foundationSkirt({ ...sizes, ...changed });
      return made.kind === 'no-foundation-skirt' ? made.why : made.kind;
    };
    expect(why({ hem: inches(330) })).toBe('hem-too-wide');
    expect(why({ waist: inches(36) })).toBe('waist-over-hip');
    expect(why({ hip: 0 })).toBe('not-positive');
  });
});
