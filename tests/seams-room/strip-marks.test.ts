import { describe, expect, it } from 'vitest';
import { otherAlong, stripOf } from '../../app/seams/strip-marks';
import { walkOfSeam } from '../../core/seams/seam-walk';
import { inches } from '../../core/units/inch';
import { bandSeam, sideSeam, skirtAndBand } from './skirt-and-band';

const walkOf = (seam: typeof sideSeam) => {
  const walk = walkOfSeam(skirtAndBand(), seam);
  if (!walk) throw new Error('the seam has its edges');
  return walk;
};

describe('stripOf(walk)', () => {
  it('numbers notches that belong together alike, and says which miss and by how much', () => {
    const { longest, one, other } = stripOf(walkOf(sideSeam));
    expect(longest).toBeCloseTo(inches(25.25), 6);
    expect(one.notches.map(({ number, state }) => [number, state])).toEqual([
      [1, 'meets'],
      [2, 'off'],
    ]);
    expect(other.notches.map(({ id, number }) => [id, number])).toEqual([
      ['b8', 1],
      ['b16', 2],
    ]);
    expect(one.notches[1]?.apart).toBeCloseTo(inches(-0.25), 6);
  });

  it('leaves a notch without a partner without a number', () => {
    const garment = skirtAndBand();
    const pieces = garment.pieces.map((piece) => (piece.id === 'back' ? { ...piece, notches: [] } : piece));
    const walk = walkOfSeam({ ...garment, pieces }, sideSeam);
    const notches = walk ? stripOf(walk).one.notches : [];
    expect(notches.map(({ state, number }) => [state, number])).toEqual([
      ['alone', undefined],
      ['alone', undefined],
    ]);
  });

  it('marks where one panel ends and the next begins', () => {
    const { one, other } = stripOf(walkOf(bandSeam));
    expect(one.joins).toHaveLength(1);
    expect(one.joins[0]).toBeCloseTo(inches(7), 6);
    expect(other.joins).toEqual([]);
  });
});

describe('otherAlong(walk, along)', () => {
  it('spreads the ease evenly and stays at the end of the shorter side', () => {
    const eased = walkOf({ ...sideSeam, ease: inches(5) });
    // 25 in eased into 20: each inch takes four fifths of one.
    expect(otherAlong(eased, inches(10))).toBeCloseTo(inches(8), 6);
    const back = walkOf({ ...sideSeam, one: sideSeam.other, other: sideSeam.one });
    expect(otherAlong(back, inches(25.25))).toBeCloseTo(inches(25), 6);
  });
});
