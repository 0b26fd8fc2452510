import { describe, expect, it } from 'vitest';
import { childsDrawers, schoolDrawers, topRoundOf, yokeDrawers } from '../../core/blocks/drawers-on-fold';
import { between, distance } from '../../core/geometry/point';
import { inches } from '../../core/units/inch';
import { expectInches, expectPlaces } from './in-inches';

/** Carrie Crane Ingalls, Text-Book on Domestic Art (1911), drawers: her model, waist 24, hip 39, side 17 without ruffle. */
describe('yokeDrawers', () => {
  const model = { waist: inches(24), hip: inches(39), side: inches(17) };

  it('has the places and lengths of Ingalls 1911', () => {
    const leg = yokeDrawers(model);
    if (leg.kind !== 'drawers') throw new Error(leg.why);
    const { foldTop, backTop, frontTop, crotch, legHem, foldHem, placket } = leg;
    expectPlaces(
      { foldTop, backTop, frontTop, crotch, legHem, foldHem, placket: placket ?? foldHem },
      {
        foldTop: [0, 17],
        backTop: [12, 19],
        frontTop: [10, 16],
        crotch: [17, 5.667],
        legHem: [12, 0],
        foldHem: [0, 0],
        placket: [0, 10],
      },
      19,
    );
    expectInches(distance(foldTop, backTop), 12.166);
    expectInches(distance(foldTop, frontTop), 10.05);
    expectInches(distance(backTop, crotch), 14.24);
    expectInches(distance(frontTop, crotch), 12.481);
    expectInches(distance(crotch, legHem), 7.557);
    expectInches(topRoundOf(leg), 44.43, 0.011);
  });

  it('refuses a waist wider than the leg and a side shorter than its placket', () => {
    expect(yokeDrawers({ ...model, waist: inches(35) })).toEqual({ kind: 'no-drawers', why: 'waist-too-wide' });
    expect(yokeDrawers({ ...model, side: inches(6) })).toEqual({ kind: 'no-drawers', why: 'side-too-short' });
    expect(yokeDrawers({ ...model, hip: 0 })).toEqual({ kind: 'no-drawers', why: 'not-positive' });
  });
});

/**
 * Ida R. and Myron G. Burton, School Sewing Based on Home Problems (1910s), drawers; sizes hip 40, side 23 of Garments for
 * Girls (1910s).
 */
describe('schoolDrawers', () => {
  it('has the letters and lengths of the Burtons', () => {
    const leg = schoolDrawers({ hip: inches(40), side: inches(23) });
    if (leg.kind !== 'drawers') throw new Error(leg.why);
    const { letters } = leg;
    expectPlaces(letters, {
      L: [0, -3],
      M: [0, -4],
      N: [10, -4],
      O: [0, -18.333],
      P: [18, -18.333],
      Q: [0, -26],
      R: [18, -26],
      S: [16, -18.333],
      T: [15, -18.333],
      U: [9, -4],
      V: [7.047, 0],
    });
    expectInches(distance(letters.L, letters.N), 10.05);
    expectInches(distance(letters.L, letters.V), 7.659);
    expectInches(distance(letters.N, letters.P), 16.415);
    expectInches(distance(letters.V, letters.S), 20.403);
    expectInches(2 * distance(letters.Q, letters.R), 36);
  });

  it('refuses a side so short that the crotch lies above the hip line', () => {
    expect(schoolDrawers({ hip: inches(40), side: inches(1) })).toEqual({ kind: 'no-drawers', why: 'side-too-short' });
    expect(schoolDrawers({ hip: inches(4), side: inches(23) })).toEqual({ kind: 'no-drawers', why: 'not-positive' });
    expect(schoolDrawers({ hip: inches(7), side: inches(23) })).toEqual({ kind: 'no-drawers', why: 'waist-too-wide' });
  });
});

/** Olive C. Hapgood, School Needlework (1890s), child's drawers, age 8: waist 22, leg 17, knee 13. */
describe('childsDrawers', () => {
  it('has the places and lengths of Hapgood', () => {
    const leg = childsDrawers({ leg: inches(17) });
    if (leg.kind !== 'drawers') throw new Error(leg.why);
    const { foldTop, backTop, crotch, legHem, foldHem, innerLeg } = leg;
    expectPlaces(
      { H: foldTop, I: backTop, G: crotch, J: legHem, E: foldHem },
      { H: [0, 19], I: [10, 22], G: [14, 9.5], J: [8.5, 2], E: [0, 2] },
      22,
    );
    expectInches(distance(foldTop, foldHem), 17);
    expectInches(distance(foldTop, backTop), 10.44);
    expectInches(distance(backTop, crotch), 13.124);
    expectInches(distance(crotch, legHem), 9.301);
    expectInches(distance(innerLeg[0] ?? crotch, between(crotch, legHem, 0.5)), 1);
    expectInches(2 * legHem.x, 17);
    expectInches(topRoundOf(leg), 41.76);
  });

  it('refuses a leg no longer than what lies below the crotch', () => {
    expect(childsDrawers({ leg: inches(7) })).toEqual({ kind: 'no-drawers', why: 'side-too-short' });
    expect(childsDrawers({ leg: 0 })).toEqual({ kind: 'no-drawers', why: 'not-positive' });
  });
});
