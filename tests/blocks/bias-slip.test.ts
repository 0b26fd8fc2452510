import { describe, expect, it } from 'vitest';
import { biasSlip, biasSlipPieces } from '../../core/blocks/bias-slip';
import { outlineOf } from '../../core/garment/outline';
import { pathLength, signedArea } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { selfCrossings } from '../../core/geometry/self-crossing';
import { plainNames } from './body-checks';
import { expectInches, expectPlaces } from './in-inches';

/** Magic Bias Slip, a home-dressmaking leaflet of the 1930s (dressmakingresearch.com, 1930s under dress). */
describe('biasSlip', () => {
  it('has the letters and lengths of the leaflet', () => {
    const { letters } = biasSlip();
    expectPlaces(letters, {
      a: [0, 0],
      b: [0, -15],
      c: [0, -27],
      d: [7.884, -25.824],
      e: [27, 0],
      f: [24, 0],
      g: [19.092, -19.092],
    });
    expectInches(distance(letters.b, letters.d), 13.39);
    expectInches(distance(letters.f, letters.g), 19.713);
  });
});

describe('biasSlipPieces', () => {
  it('gives four lower pieces, hemmed along 13.206 in of the arc, and four squares of 15', () => {
    const [lower, upper] = biasSlipPieces(plainNames());
    if (!lower || !upper) throw new Error('two pieces');
    expect([lower.cut.count, upper.cut.count]).toEqual([4, 4]);
    const hem = lower.edges.findIndex(({ role }) => role === 'hem');
    expectInches(pathLength(outlineOf(lower).edges[hem] ?? []), 13.206, 0.001);
    expectInches(Math.sqrt(signedArea(outlineOf(upper).whole)), 15, 1e-6);
    expect(signedArea(outlineOf(lower).whole)).toBeGreaterThan(0);
    expect(selfCrossings(outlineOf(lower).whole)).toEqual([]);
  });
});
