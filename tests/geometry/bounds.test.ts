import { describe, expect, it } from 'vitest';
import {
  boxCentre,
  boxContains,
  boxesMeet,
  boxOfPoints,
  commonBox,
  distanceToBox,
  growBox,
  unionBox,
} from '../../core/geometry/bounds';
import { points } from './shapes';

const BOX = { minX: 1, minY: 2, maxX: 5, maxY: 12 };

describe('boxes', () => {
  it('boxOfPoints is the smallest that holds them all, and nothing for none', () => {
    expect(boxOfPoints(points([5, 2], [1, 7], [3, 12]))).toEqual(BOX);
    expect(boxOfPoints([])).toBeUndefined();
  });

  it('unionBox holds both', () => {
    expect(unionBox(BOX, { minX: -3, minY: 4, maxX: 0, maxY: 20 })).toEqual({ minX: -3, minY: 2, maxX: 5, maxY: 20 });
  });

  it('commonBox is what both cover, and nothing where that has no area', () => {
    expect(commonBox(BOX, { minX: -3, minY: 4, maxX: 3, maxY: 20 })).toEqual({ minX: 1, minY: 4, maxX: 3, maxY: 12 });
    expect(commonBox(BOX, { minX: 5, minY: 4, maxX: 9, maxY: 7 })).toBeUndefined();
    expect(commonBox(BOX, { minX: 6, minY: 4, maxX: 9, maxY: 7 })).toBeUndefined();
  });

  it('growBox widens every side, and narrows no further than the middle', () => {
    expect(growBox(BOX, 2)).toEqual({ minX: -1, minY: 0, maxX: 7, maxY: 14 });
    expect(growBox(BOX, -3)).toEqual({ minX: 3, minY: 5, maxX: 3, maxY: 9 });
  });

  it('boxContains counts the edge as inside', () => {
    expect(boxContains(BOX, { x: 1, y: 12 })).toBe(true);
    expect(boxContains(BOX, { x: 0.999, y: 5 })).toBe(false);
  });

  it('boxesMeet allows the gap it is given', () => {
    const right = { minX: 6, minY: 0, maxX: 9, maxY: 3 };
    expect(boxesMeet(BOX, right)).toBe(false);
    expect(boxesMeet(BOX, right, 1)).toBe(true);
  });

  it('distanceToBox is 0 inside and straight outside', () => {
    expect(distanceToBox(BOX, { x: 2, y: 3 })).toBe(0);
    expect(distanceToBox(BOX, { x: 8, y: 16 })).toBe(5);
    expect(boxCentre(BOX)).toEqual({ x: 3, y: 7 });
  });
});
