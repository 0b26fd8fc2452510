import { describe, expect, it } from 'vitest';
import { apart, arcOf, at, bend, halves, sideOf, sizeOf, slope } from '../../core/geometry/bezier-arc';
import { segmentAt, segmentDerivative, segmentSecondDerivative } from '../../core/geometry/cubic-curve';
import { cubicOf } from './shapes';

const CURVE = cubicOf([3, 7], [40, -20], [90, 110], [130, 35]);
const ARC = arcOf(CURVE, 3, 7);

describe('arcs in bare numbers', () => {
  it('have the places and derivatives of their cubic, shifted', () => {
    const [place, first, second] = [
      segmentAt(CURVE, 0.3),
      segmentDerivative(CURVE, 0.3),
      segmentSecondDerivative(CURVE, 0.3),
    ];
    expect([at(ARC, 0, 0.3), at(ARC, 1, 0.3)]).toEqual([
      expect.closeTo(place.x - 3, 12),
      expect.closeTo(place.y - 7, 12),
    ]);
    expect([slope(ARC, 0, 0.3), slope(ARC, 1, 0.3)]).toEqual([
      expect.closeTo(first.dx, 11),
      expect.closeTo(first.dy, 11),
    ]);
    expect([bend(ARC, 0, 0.3), bend(ARC, 1, 0.3)]).toEqual([
      expect.closeTo(second.dx, 10),
      expect.closeTo(second.dy, 10),
    ]);
    expect(sizeOf(ARC)).toBe(130);
  });

  it('halve into arcs that lie on the whole', () => {
    const [head, tail] = halves(ARC);
    expect(at(head, 0, 0.5)).toBeCloseTo(at(ARC, 0, 0.25), 12);
    expect(at(tail, 1, 0.5)).toBeCloseTo(at(ARC, 1, 0.75), 12);
  });

  it('know when hulls are apart, also on a slant, and by how much', () => {
    const flat = arcOf(cubicOf([0, 0], [10, 10], [20, 20], [30, 30]), 0, 0);
    const beside = arcOf(cubicOf([0, 2], [10, 12], [20, 22], [30, 32]), 0, 0);
    expect(apart(flat, beside, 0)).toBe(true);
    expect(apart(flat, beside, 1.5)).toBe(false); // they are √2 apart
    expect(apart(flat, arcOf(cubicOf([0, 30], [9, 20], [22, 9], [30, 0]), 0, 0), 0)).toBe(false);
  });

  it('know to which side all directions of another lie', () => {
    const right = arcOf(cubicOf([0, 0], [10, 1], [20, -1], [30, 0]), 0, 0);
    const down = arcOf(cubicOf([0, 0], [1, 10], [-1, 20], [0, 30]), 0, 0);
    expect(sideOf(right, down)).toBe(1);
    expect(sideOf(down, right)).toBe(-1);
    expect(sideOf(right, right)).toBe(0);
  });
});
