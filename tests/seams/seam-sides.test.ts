import { describe, expect, it } from 'vitest';
import { placeOnSide, seamSides } from '../../core/seams/seam-sides';
import { at, pieceOf } from './pieces';
import { edge, foldPanel, garmentWith, seamOf, withNotches } from './seam-garment';

const front = foldPanel('front', 170, [200, 610]);
const back = foldPanel('back', 190, [200, 610]);
const band = {
  ...pieceOf([at(0, 0), at(360, 0), at(360, 50), at(0, 50)], [{}, {}, {}, { role: 'fold' }], [], {
    how: 'fold',
    count: 1,
  }),
  id: 'band',
};

describe('seamSides(garment, seam)', () => {
  it('walks a half garment once and counts it twice', () => {
    const seam = seamOf([edge('front', 'e0', 2), edge('back', 'e0', 2)], [edge('band', 'e2', 2)]);
    const sides = seamSides(garmentWith([front, back, band]), seam);
    expect(sides?.repeats).toBe(2);
    expect(sides?.one.length).toBeCloseTo(360, 9);
    expect(sides?.other.stretches.map(({ backwards }) => backwards)).toEqual([true]);
  });

  it('turns a back that meets the front at the side, when a seam says it does', () => {
    const waist = seamOf([edge('front', 'e0', 2), edge('back', 'e0', 2)], [edge('band', 'e2', 2)]);
    const side = seamOf([edge('front', 'e1')], [edge('back', 'e1')], { id: 'side', way: 'same' });
    const marked = withNotches(back, 'e0', [[30, 2]]);
    const sides = seamSides(garmentWith([front, marked, band], [waist, side]), waist);
    expect(sides?.one.stretches.map(({ backwards }) => backwards)).toEqual([false, true]);
    // 30 from the centre back is 160 from the side, and the side is 170 from the centre front.
    expect(sides?.one.notches.map(({ along }) => along)[0]).toBeCloseTo(330, 9);
    expect(sides && placeOnSide(sides.one, 171).point.x).toBeCloseTo(189, 6);
  });

  it('comes to both halves of a piece on the fold in turn, joined at the fold', () => {
    const gore = { ...pieceOf([at(0, 0), at(340, 0), at(400, 500)], [{ role: 'waist' }]), id: 'gore' };
    const seam = seamOf([edge('front', 'e0', 2)], [edge('gore', 'e0')]);
    const stretches = seamSides(garmentWith([front, gore]), seam)?.one.stretches;
    expect(stretches?.map(({ from, backwards }) => [from, backwards])).toEqual([
      [0, true],
      [170, false],
    ]);
  });

  it('has nothing to say of an edge that is not there', () => {
    expect(seamSides(garmentWith([front]), seamOf([edge('front', 'e1')], [edge('back', 'e1')]))).toBeUndefined();
  });
});
