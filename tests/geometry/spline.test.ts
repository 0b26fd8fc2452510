import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reflectionIn, rotationAbout, transformPoint, transformSegment } from '../../core/geometry/affine';
import { segmentAt, segmentTangent } from '../../core/geometry/cubic-curve';
import { distance, type Point, turnBetween, type Vector } from '../../core/geometry/point';
import type { Cubic } from '../../core/geometry/segment';
import { closedSplineThrough, splineThrough } from '../../core/geometry/spline';
import { type Arms, CLOSED, FIVE, OPEN } from './metapost-curves';
import { points } from './shapes';

const coordinate = fc.double({ min: -500, max: 500, noNaN: true });
const somePoints = (minLength: number) =>
  fc.array(fc.record({ x: coordinate, y: coordinate }), { minLength, maxLength: 9 });
const isFinitePoint = ({ x, y }: Point) => Number.isFinite(x) && Number.isFinite(y);
const allPoints = (curves: readonly Cubic[]) => curves.flatMap(({ p0, p1, p2, p3 }) => [p0, p1, p2, p3]);

/** The largest distance between control points of two splines of the same points. */
function largestShift(a: readonly Cubic[], b: readonly Cubic[]): number {
  const [as, bs] = [allPoints(a), allPoints(b)];
  return Math.max(...as.map((point, i) => distance(point, bs[i] as Point)));
}

describe('splineThrough', () => {
  for (const { path, through, directions, arms } of OPEN) {
    it(`draws ${path} as MetaPost 2.02 does, within 1e-6`, () => {
      const curves = splineThrough(through, directions ? { directions } : {});
      expect(curves.length).toBe(arms.length);
      curves.forEach(({ p0, p1, p2, p3 }, i) => {
        const [x1, y1, x2, y2] = arms[i] as Arms[number];
        expect(distance(p1, { x: x1, y: y1 })).toBeLessThan(1e-6);
        expect(distance(p2, { x: x2, y: y2 })).toBeLessThan(1e-6);
        expect([p0, p3]).toEqual([through[i], through[i + 1]]);
      });
    });
  }

  it('draws two free points as a straight cubic with arms of a third', () => {
    const [curve] = splineThrough(points([3, 5], [33, 65]));
    expect(distance((curve as Cubic).p1, { x: 13, y: 25 })).toBeLessThan(1e-12);
    expect(distance((curve as Cubic).p2, { x: 23, y: 45 })).toBeLessThan(1e-12);
  });

  it('keeps points in line on the line', () => {
    const curves = splineThrough(points([0, 0], [10, 20], [11, 22], [400, 800]));
    for (const { x, y } of allPoints(curves)) expect(Math.abs(y - 2 * x)).toBeLessThan(1e-9);
  });

  it('gives nothing for one point or none', () => {
    expect(splineThrough([])).toEqual([]);
    expect(splineThrough(points([7, 9]))).toEqual([]);
  });

  it('follows a given direction on both sides of an inner point', () => {
    const across = { dx: 2, dy: -3 };
    const [before, after] = splineThrough(points([0, 0], [50, 10], [80, 90]), { directions: [undefined, across] });
    expect(turnBetween(segmentTangent(before as Cubic, 1) as Vector, across)).toBeCloseTo(0, 12);
    expect(turnBetween(segmentTangent(after as Cubic, 0) as Vector, across)).toBeCloseTo(0, 12);
  });

  it('counts points within a ten-thousandth of a millimetre as one and gives their cubic no length', () => {
    const curves = splineThrough(points([0, 0], [40, 30], [40.00005, 30], [90, 20], [90, 20.00002]));
    expect(curves.length).toBe(4);
    const plain = splineThrough(points([0, 0], [40, 30], [90, 20.00002]));
    expect(curves[0]).toEqual(plain[0]);
    expect(curves[2]).toEqual(plain[1]);
    expect(distance((curves[1] as Cubic).p0, (curves[1] as Cubic).p3)).toBe(0);
    expect((curves[3] as Cubic).p3).toEqual({ x: 90, y: 20.00002 });
  });

  it('moves far parts less than the dragged point, and less the further off', () => {
    const row = Array.from({ length: 11 }, (_, i) => ({ x: i * 40, y: 6 * Math.sin(i) }));
    const dragged = row.map((point, i) => (i === 5 ? { x: point.x + 1, y: point.y + 3 } : point));
    const [before, after] = [splineThrough(row), splineThrough(dragged)];
    const drag = Math.hypot(1, 3);
    const shiftOf = (k: number) =>
      Math.max(
        ...[0.25, 0.5, 0.75].map((t) => distance(segmentAt(before[k] as Cubic, t), segmentAt(after[k] as Cubic, t))),
      );
    expect(shiftOf(6)).toBeLessThan(0.3 * drag);
    expect(shiftOf(7)).toBeLessThan(0.08 * drag);
    expect(shiftOf(8)).toBeLessThan(0.025 * drag);
    expect(shiftOf(9)).toBeLessThan(0.008 * drag);
  });

  it('turns and mirrors with its points', () => {
    const quarter = rotationAbout({ x: 13, y: -7 }, 0.83);
    const mirror = reflectionIn({ x: 1, y: 2 }, { x: 9, y: -4 }) ?? quarter;
    for (const map of [quarter, mirror]) {
      const moved = splineThrough(FIVE.map((point) => transformPoint(map, point)));
      const expected = splineThrough(FIVE).map((curve) => transformSegment(map, curve) as Cubic);
      expect(largestShift(moved, expected)).toBeLessThan(1e-10);
    }
  });

  it('runs back along itself when its points are reversed', () => {
    const back = splineThrough([...FIVE].reverse()).reverse();
    const turned = back.map(({ p0, p1, p2, p3 }): Cubic => ({ kind: 'cubic', p0: p3, p1: p2, p2: p1, p3: p0 }));
    expect(largestShift(splineThrough(FIVE), turned)).toBeLessThan(1e-10);
  });

  it('never jumps in direction and never leaves the finite, whatever the points', () => {
    fc.assert(
      fc.property(somePoints(2), (through) => {
        const curves = splineThrough(through);
        expect(curves.length).toBe(through.length - 1);
        expect(allPoints(curves).every(isFinitePoint)).toBe(true);
        for (let i = 1; i < curves.length; i++) {
          const arriving = segmentTangent(curves[i - 1] as Cubic, 1);
          const leaving = segmentTangent(curves[i] as Cubic, 0);
          if (arriving && leaving) expect(Math.abs(turnBetween(arriving, leaving))).toBeLessThan(1e-6);
        }
      }),
      { seed: 7 },
    );
  });

  it('keeps its arms within four chords for hostile points', () => {
    const hostile = [
      points([0, 0], [100, 0], [0, 0], [100, 0]),
      points([0, 0], [1e-3, 0], [0, 1e-3], [100, 40]),
      points([1e6, 1e6], [1e6 + 2e-4, 1e6], [-1e6, 3]),
      points([0, 0], [1e-9, 0], [2e-9, 1e-9]),
      points([5, 5], [5, 5], [5, 5]),
      points([0, 0], [50, 0], [50, 0], [20, 0], [20, 1e-4]),
    ];
    for (const through of hostile) {
      for (const curves of [splineThrough(through), closedSplineThrough(through)]) {
        for (const { p0, p1, p2, p3 } of curves) {
          const chord = distance(p0, p3);
          expect(distance(p0, p1)).toBeLessThanOrEqual(4.0001 * chord);
          expect(distance(p2, p3)).toBeLessThanOrEqual(4.0001 * chord);
        }
      }
    }
  });
});

describe('closedSplineThrough', () => {
  for (const { path, through, arms } of CLOSED) {
    it(`draws ${path} as MetaPost 2.02 does, within 1e-6`, () => {
      const curves = closedSplineThrough(through);
      expect(curves.length).toBe(arms.length);
      curves.forEach(({ p1, p2, p3 }, i) => {
        const [x1, y1, x2, y2] = arms[i] as Arms[number];
        expect(distance(p1, { x: x1, y: y1 })).toBeLessThan(1e-6);
        expect(distance(p2, { x: x2, y: y2 })).toBeLessThan(1e-6);
        expect(p3).toEqual(through[(i + 1) % through.length]);
      });
    });
  }

  it('gives the same curve whichever point it begins at', () => {
    const turned = closedSplineThrough([...FIVE.slice(2), ...FIVE.slice(0, 2)]);
    expect(largestShift([...turned.slice(3), ...turned.slice(0, 3)], closedSplineThrough(FIVE))).toBeLessThan(1e-10);
  });

  it('keeps a direction its free curve has anyway, at any point, without changing the curve', () => {
    const free = closedSplineThrough(FIVE);
    for (let at = 0; at < FIVE.length; at++) {
      const directions = FIVE.map((_, i) => (i === at ? segmentTangent(free[i] as Cubic, 0) : undefined));
      expect(largestShift(closedSplineThrough(FIVE, { directions }), free)).toBeLessThan(1e-9);
    }
  });

  it('leaves out a last point that lies on the first', () => {
    const curves = closedSplineThrough([...FIVE, { x: 0, y: 0.00003 }]);
    expect(curves.slice(0, 5)).toEqual(closedSplineThrough(FIVE));
    expect((curves[5] as Cubic).p3).toEqual({ x: 0, y: 0 });
  });

  it('stays finite and closed whatever the points', () => {
    fc.assert(
      fc.property(somePoints(1), (through) => {
        const curves = closedSplineThrough(through);
        expect(curves.length).toBe(through.length);
        expect(allPoints(curves).every(isFinitePoint)).toBe(true);
        curves.forEach(({ p3 }, i) => {
          expect(distance(p3, (curves[(i + 1) % curves.length] as Cubic).p0)).toBe(0);
        });
      }),
      { seed: 7 },
    );
  });
});
