import { describe, expect, it } from 'vitest';
import { pleatedWidth } from '../../core/blocks/pleated-width';
import { inches } from '../../core/units/inch';
import { expectInches } from './in-inches';

describe('pleatedWidth', () => {
  it('leaves 30, 24 and 16 1/2 in to pleat (A Complete Course in Dressmaking, vol. 5, Skirts, early 1920s)', () => {
    const made = pleatedWidth({ joinedHalf: inches(44), waist: inches(28), hip: inches(40), hem: inches(55) });
    expectInches(made.waist, 30);
    expectInches(made.hip, 24);
    expectInches(made.hem, 16.5);
  });

  it('comes out below nothing where the cloth does not go round', () => {
    expect(pleatedWidth({ joinedHalf: 400, waist: 700, hip: 1000, hem: 1200 }).hip).toBe(-100);
  });
});
