import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import { areaFactor, transformPath, transformPoint } from '../../core/geometry/affine';
import { pathBounds, signedArea } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { sewnPlaces, walkOfSeam, walkPose } from '../../core/seams/seam-walk';
import { at, pieceOf } from './pieces';
import { edge, foldPanel, garmentWith, seamOf, withNotches } from './seam-garment';

const front = foldPanel('front', 170, [200, 610]);
const back = foldPanel('back', 190, [215, 610]);
const side = seamOf([edge('front', 'e1')], [edge('back', 'e1')], { way: 'same' });
const walked = (pieces = [front, back], seam = side) => {
  const walk = walkOfSeam(garmentWith(pieces, [seam]), seam);
  if (!walk) throw new Error('no walk');
  return walk;
};

describe('walkOfSeam(garment, seam)', () => {
  it('sums several edges a side, each as often as it comes', () => {
    const plank = (id: string, length: number) => ({ ...pieceOf([at(0, 0), at(length, 0), at(length, 90)], []), id });
    const seam = seamOf([edge('a', 'e0', 2), edge('b', 'e0', 4)], [edge('c', 'e0', 2)], { ease: 12 });
    const { totals, repeats } = walked([plank('a', 101), plank('b', 53), plank('c', 199)], seam);
    expect(repeats).toBe(2);
    expect(totals).toEqual({ one: 414, other: 398, difference: 16, beyondEase: 4 });
  });

  it('says between which notches the sides part', () => {
    const strip = (id: string, length: number) => ({ ...pieceOf([at(0, 0), at(length, 0), at(length, 70)], []), id });
    const one = withNotches(strip('a', 400), 'e0', [
      [100, 1],
      [205, 2],
    ]);
    const other = withNotches(strip('b', 395), 'e0', [
      [195, 2],
      [295, 1],
    ]);
    const { partings } = walked([one, other], seamOf([edge('a', 'e0')], [edge('b', 'e0')]));
    expect(partings).toHaveLength(1);
    expect(partings[0]).toMatchObject({ one: [100, 205], other: [100, 200] });
    expect(partings[0]?.by).toBeCloseTo(5, 9);
  });
});

describe('walkPose(walk, along)', () => {
  it('lays the second piece against the first at every length: the places meet, the lines touch, the pieces lie apart', () => {
    const walk = walked();
    for (const along of [0, 87, 301, 600]) {
      const { one, other } = sewnPlaces(walk, along);
      const pose = walkPose(walk, along);
      expect(distance(transformPoint(pose, other.point), one.point)).toBeLessThan(1e-9);
      const tip = transformPoint(pose, {
        x: other.point.x + other.direction.dx,
        y: other.point.y + other.direction.dy,
      });
      expect(distance(tip, { x: one.point.x + one.direction.dx, y: one.point.y + one.direction.dy })).toBeLessThan(
        1e-9,
      );
    }
    // Both are drawn on the fold at the left, so that one is turned over to meet the other, and lies to its right.
    const pose = walkPose(walk, 0);
    expect(areaFactor(pose)).toBeCloseTo(-1, 12);
    const laid = transformPath(pose, outlineOf(back).whole);
    expect(signedArea(laid)).toBeLessThan(0);
    expect(pathBounds(laid).maxX).toBeGreaterThan(300);
  });

  it('turns without mirroring when the partners run opposite ways', () => {
    const gore = { ...pieceOf([at(0, 0), at(120, 0), at(170, 500), at(-40, 480)], []), id: 'gore' };
    const walk = walked([front, gore], seamOf([edge('front', 'e1')], [edge('gore', 'e3')]));
    expect(areaFactor(walkPose(walk, 240))).toBeCloseTo(1, 12);
  });
});
