import { describe, expect, it } from 'vitest';
import { biasRun, biasStrips, squareForStrip, stripFromSquare } from '../../core/cloth/bias-strips';
import { inches } from '../../core/units/inch';

describe('strips on the bias', () => {
  it('a square gives its area over the width of the strip (bias binding charts: mydecozo.com, sew-whats-new.com)', () => {
    expect(stripFromSquare(inches(20), inches(2))).toBeCloseTo(inches(200), 9);
    expect(stripFromSquare(inches(36), inches(2))).toBeCloseTo(inches(648), 9);
    // With a quarter of an inch lost to the seam: 21 3/4 squared is 473.
    expect(stripFromSquare(inches(22), inches(1), inches(0.25))).toBeCloseTo(inches(473.0625), 9);
    expect(stripFromSquare(300, 0)).toBe(0);
  });

  it('the square for a wanted strip (the same charts: 22.36 and 18.71 in, cut 23 and 19)', () => {
    expect(squareForStrip(inches(250), inches(2)) / inches(1)).toBeCloseTo(22.36, 2);
    expect(squareForStrip(inches(100), inches(3.5)) / inches(1)).toBeCloseTo(18.71, 2);
  });

  it.each([
    [27, 38.2],
    [32, 45.3],
    [36, 50.9],
    [39, 55.2],
    [45, 63.6],
    [54, 76.4],
    [60, 84.9],
  ])('the longest run across %d in is %f in: the diagonal of a square', (across, run) => {
    expect(Math.abs(biasRun(across) - run)).toBeLessThanOrEqual(0.05);
  });

  it('counts strips, joins and the cloth they take', () => {
    // 36 in cloth: 50.912 in a strip; joins of 1/4 in take 0.707 in each. 150 in need (150 - .707) / 50.205 = 2.97 strips.
    const wanted = { length: inches(150), width: inches(2), joinAllowance: inches(0.25) };
    const found = biasStrips(inches(36), wanted);
    expect(found?.strips).toBe(3);
    expect(found?.joins).toBe(2);
    expect((found?.clothLength ?? 0) / inches(1)).toBeCloseTo(36 + 3 * 2 * Math.SQRT2, 9);
    expect(biasStrips(inches(36), { ...wanted, length: inches(152) })?.strips).toBe(4);
    expect(biasStrips(inches(36), { ...wanted, length: inches(50) })?.joins).toBe(0);
    expect(biasStrips(inches(36), { ...wanted, joinAllowance: inches(20) })).toBeUndefined();
  });
});
