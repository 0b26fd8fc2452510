import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { segmentAt, segmentDerivative } from '../../core/geometry/cubic-curve';
import { feetOnCubic, nearestOnSegment } from '../../core/geometry/nearest-point';
import { distance } from '../../core/geometry/point';
import { line } from '../../core/geometry/segment';
import { cubicOf } from './shapes';

const coordinate = fc.double({ min: -200, max: 200, noNaN: true });
const pair = fc.tuple(coordinate, coordinate);

describe('nearestOnSegment', () => {
  it('drops a perpendicular on a line, or takes its nearer end', () => {
    const base = line({ x: 0, y: 0 }, { x: 30, y: 40 });
    const near = nearestOnSegment(base, { x: 23, y: 14 });
    // (23, 14) is (15, 20) moved 10 along (4, -3)/5.
    expect(distance(near.point, { x: 15, y: 20 })).toBeLessThan(1e-12);
    expect(near.distance).toBeCloseTo(10, 12);
    expect(nearestOnSegment(base, { x: -4, y: -3 })).toEqual({ point: { x: 0, y: 0 }, t: 0, distance: 5 });
  });

  it('is no further than any of many places, for any cubic and point', () => {
    fc.assert(
      fc.property(pair, pair, pair, pair, pair, (a, b, c, d, [x, y]) => {
        const curve = cubicOf(a, b, c, d);
        const near = nearestOnSegment(curve, { x, y });
        for (let i = 0; i <= 200; i++) {
          expect(near.distance).toBeLessThanOrEqual(distance(segmentAt(curve, i / 200), { x, y }) + 1e-9);
        }
        expect(distance(segmentAt(curve, near.t), near.point)).toBe(0);
      }),
      { seed: 7 },
    );
  });

  it('agrees with bezier-js on a gentle curve to what its search can do', () => {
    const curve = cubicOf([0, 0], [0, 70], [40, 110], [120, 115]);
    const other = new Bezier(curve.p0, curve.p1, curve.p2, curve.p3).project({ x: 50, y: 60 });
    expect(Math.abs(nearestOnSegment(curve, { x: 50, y: 60 }).distance - (other.d as number))).toBeLessThan(1e-3);
  });

  it('gives the first of equally near places', () => {
    // The arch is its own mirror image in x = 50.
    expect(nearestOnSegment(cubicOf([0, 0], [0, 100], [100, 100], [100, 0]), { x: 50, y: -10 }).t).toBe(0);
  });

  it('answers for stretches without length and far away', () => {
    const speck = cubicOf([3, 4], [3, 4], [3, 4], [3, 4]);
    expect(nearestOnSegment(speck, { x: 0, y: 0 }).distance).toBe(5);
    expect(nearestOnSegment(line({ x: 3, y: 4 }, { x: 3, y: 4 }), { x: 0, y: 0 }).distance).toBe(5);
    const far = nearestOnSegment(cubicOf([1e6, 0], [1e6, 70], [1e6 + 40, 110], [1e6 + 120, 115]), { x: 0, y: 0 });
    expect(far.distance).toBe(1e6);
  });
});

describe('feetOnCubic', () => {
  it('finds all five perpendiculars where there are five', () => {
    const wave = cubicOf([0, 0], [40, 300], [60, -300], [100, 0]);
    const feet = feetOnCubic(wave, { x: 50, y: 0 });
    expect(feet.length).toBe(5);
    for (const t of feet) {
      const foot = segmentAt(wave, t);
      const { dx, dy } = segmentDerivative(wave, t);
      expect(Math.abs((foot.x - 50) * dx + foot.y * dy)).toBeLessThan(1e-8);
    }
  });
});
