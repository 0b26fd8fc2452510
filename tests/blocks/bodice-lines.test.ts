import { describe, expect, it } from 'vitest';
import { arcPlace } from '../../core/blocks/arc-run';
import { backNeck, dartedSide, frontNeck, neckWidth, sideOf, waistRun } from '../../core/blocks/bodice-lines';
import { distance, dot, turnBetween, vectorBetween } from '../../core/geometry/point';

describe('neckWidth', () => {
  it('is between a sixth and a fifth of the neck, as is common practice, and grows with it', () => {
    for (const neck of [301, 371, 457]) {
      expect(neckWidth(neck)).toBeGreaterThan(neck / 6);
      expect(neckWidth(neck)).toBeLessThan(neck / 5);
      expect(neckWidth(2 * neck)).toBeCloseTo(2 * neckWidth(neck), 9);
    }
  });

  it('has a back and a front with shoulders of the length asked for and of one slope', () => {
    const [back, front] = [backNeck(71, 133), frontNeck(71, 133)];
    expect(distance(back.sideNeck, back.shoulderTip)).toBeCloseTo(133, 9);
    const slopes = [back, front].map(({ sideNeck, shoulderTip }) => vectorBetween(sideNeck, shoulderTip));
    expect(turnBetween(slopes[0] ?? { dx: 0, dy: 1 }, slopes[1] ?? { dx: 1, dy: 0 })).toBeCloseTo(0, 12);
    expect(front.centreNeck.y).toBeGreaterThan(front.sideNeck.y);
  });
});

describe('waistRun', () => {
  it('stands square to a side that is as wide as asked higher up', () => {
    const run = waistRun({ x: 0, y: 430 }, 190, 235, 150);
    const { foot, up } = sideOf(run);
    expect(Math.abs(dot(up, arcPlace(run, run.length).direction))).toBeLessThan(1e-12);
    expect(distance(foot, run.start)).toBeLessThan(190);
    // Each circle about the same centre: so far from it, 150 further out is 235 / 190 as far.
    expect((1 / run.turning + 150) * run.turning).toBeCloseTo(235 / 190, 9);
  });
});

describe('dartedSide', () => {
  const side = { foot: { x: 205, y: 437 }, up: { dx: 0.19, dy: -Math.sqrt(1 - 0.19 ** 2) } };

  it('has even legs, the mouth asked for, and closes to one straight line', () => {
    const { mouth, dartPoint, underarm } = dartedSide(side, { takeUp: 41, below: 130, above: 66, across: 118 });
    const [upper, lower] = mouth;
    expect(distance(upper, lower)).toBeCloseTo(41, 9);
    expect(distance(dartPoint, upper)).toBeCloseTo(distance(dartPoint, lower), 9);
    expect(dartPoint.x).toBeCloseTo(118, 6);
    expect(distance(upper, underarm)).toBeCloseTo(66, 9);
    // Turned about the point by the angle between the legs, the upper part goes on where the lower one ends.
    const legs = turnBetween(vectorBetween(dartPoint, upper), vectorBetween(dartPoint, lower));
    const lean = turnBetween(vectorBetween(upper, underarm), vectorBetween(side.foot, lower));
    expect(lean).toBeCloseTo(legs, 9);
  });
});
