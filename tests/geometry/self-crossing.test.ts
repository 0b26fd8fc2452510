import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { segmentAt } from '../../core/geometry/cubic-curve';
import { distance } from '../../core/geometry/point';
import { cubicLoop, selfCrossings } from '../../core/geometry/self-crossing';
import { splineThrough } from '../../core/geometry/spline';
import { arcPath, closedPolygon, cubicOf, points } from './shapes';

describe('cubicLoop', () => {
  it('finds where the loop of a symmetric cubic closes', () => {
    // The curve is its own mirror image in x = 50, so it crosses itself there, at t and 1 - t.
    const loop = cubicOf([0, 0], [150, 100], [-50, 100], [100, 0]);
    const [s, t] = cubicLoop(loop) as readonly [number, number];
    expect(s + t).toBeCloseTo(1, 12);
    expect(segmentAt(loop, s).x).toBeCloseTo(50, 10);
    expect(distance(segmentAt(loop, s), segmentAt(loop, t))).toBeLessThan(1e-10);
  });

  it('finds none in an arch, a line or a speck', () => {
    expect(cubicLoop(cubicOf([0, 0], [0, 100], [100, 100], [100, 0]))).toBeUndefined();
    expect(cubicLoop(cubicOf([0, 0], [10, 10], [20, 20], [100, 100]))).toBeUndefined();
    expect(cubicLoop(cubicOf([5, 5], [5, 5], [5, 5], [5, 5]))).toBeUndefined();
  });

  it('brings any cubic it finds a loop in to one place twice', () => {
    const coordinate = fc.integer({ min: -50, max: 50 });
    const pair = fc.tuple(coordinate, coordinate);
    fc.assert(
      fc.property(pair, pair, pair, pair, (a, b, c, d) => {
        const curve = cubicOf(a, b, c, d);
        const loop = cubicLoop(curve);
        if (loop) expect(distance(segmentAt(curve, loop[0]), segmentAt(curve, loop[1]))).toBeLessThan(1e-6);
      }),
      { seed: 7, numRuns: 500 },
    );
  });
});

describe('selfCrossings', () => {
  it('finds the crossing of a bow, and how far along both visits are', () => {
    // (0,0)-(60,40)-(60,0)-(0,40): the two slanting sides cross in the middle.
    const [only, ...rest] = selfCrossings(closedPolygon([0, 0], [60, 40], [60, 0], [0, 40]));
    expect(rest).toEqual([]);
    expect(distance(only?.point ?? { x: 0, y: 0 }, { x: 30, y: 20 })).toBeLessThan(1e-9);
    expect(only?.first).toBeCloseTo(Math.hypot(30, 20), 9);
    expect(only?.second).toBeCloseTo(3 * Math.hypot(30, 20) + 40, 9);
  });

  it('finds none in a simple outline, at its joints or where it closes', () => {
    expect(selfCrossings(closedPolygon([0, 0], [60, 10], [50, 40], [7, 33]))).toEqual([]);
    expect(selfCrossings(arcPath({ x: 3, y: 4 }, 70, 0, 2 * Math.PI))).toEqual([]);
    expect(selfCrossings(splineThrough(points([0, 0], [60, 40], [40, 90], [10, 70])))).toEqual([]);
  });

  it('finds where a spline runs over itself', () => {
    const crossings = selfCrossings(splineThrough(points([0, 0], [80, 60], [100, 20], [60, 5], [10, 70])));
    expect(crossings.length).toBe(1);
  });

  it('finds a corner that rests on another side', () => {
    const touching = selfCrossings(closedPolygon([0, 0], [80, 0], [80, 50], [40, 0], [0, 50]));
    expect(touching.map(({ point }) => point)).toEqual([{ x: 40, y: 0 }]);
  });
});
