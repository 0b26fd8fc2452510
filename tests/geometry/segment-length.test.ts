import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splitSegment } from '../../core/geometry/cubic-curve';
import { distance } from '../../core/geometry/point';
import { type Cubic, line } from '../../core/geometry/segment';
import { parameterAtLength, partLength, segmentLength } from '../../core/geometry/segment-length';
import { REFERENCE_CURVES } from './reference-curves';
import { cubicOf } from './shapes';

const coordinate = fc.double({ min: -300, max: 300, noNaN: true });
const pair = fc.tuple(coordinate, coordinate);
const anyCubic = fc.tuple(pair, pair, pair, pair).map((four) => cubicOf(...four));

/** The length of ever finer chords, made better by Richardson's step: slow, plain, and independent. */
function lengthOfChords({ p0, p1, p2, p3 }: Cubic, count: number): number {
  const at = (t: number) => {
    const s = 1 - t;
    const [b0, b1, b2, b3] = [s ** 3, 3 * s * s * t, 3 * s * t * t, t ** 3] as const;
    return { x: b0 * p0.x + b1 * p1.x + b2 * p2.x + b3 * p3.x, y: b0 * p0.y + b1 * p1.y + b2 * p2.y + b3 * p3.y };
  };
  const chords = (n: number) => {
    let sum = 0;
    for (let i = 0; i < n; i++) sum += distance(at(i / n), at((i + 1) / n));
    return sum;
  };
  const [coarse, fine] = [chords(count), chords(2 * count)];
  return fine + (fine - coarse) / 3;
}

describe('segmentLength', () => {
  for (const { name, curve, length } of REFERENCE_CURVES) {
    it(`of the ${name} is right to 1e-6 mm, and to 1e-10 when asked`, () => {
      expect(Math.abs(segmentLength(curve) - length)).toBeLessThan(1e-6);
      expect(Math.abs(segmentLength(curve, 1e-10) - length)).toBeLessThan(2e-10);
    });
  }

  it('of a line is the distance of its ends', () => {
    expect(segmentLength(line({ x: 1, y: 2 }, { x: 31, y: 42 }))).toBe(50);
  });

  it('keeps its promise close to a cusp, where even sums agree by chance', () => {
    // Curves ever closer to the cusp above; checked against ten times the accuracy and against plain chords.
    for (let k = 0; k <= 12; k++) {
      const e = 3 * 10 ** -k;
      const curve = cubicOf([0, 0], [100 + e, 101], [-e / 7, 99], [100, e]);
      expect(Math.abs(segmentLength(curve) - segmentLength(curve, 1e-9))).toBeLessThan(1e-6);
      expect(Math.abs(segmentLength(curve) - lengthOfChords(curve, 4000))).toBeLessThan(1e-3);
    }
  });

  it('lies between chord and control polygon, and agrees with plain chords, whatever the curve', () => {
    fc.assert(
      fc.property(anyCubic, (curve) => {
        const { p0, p1, p2, p3 } = curve;
        const length = segmentLength(curve);
        expect(length).toBeGreaterThanOrEqual(distance(p0, p3) - 1e-6);
        expect(length).toBeLessThanOrEqual(distance(p0, p1) + distance(p1, p2) + distance(p2, p3) + 1e-6);
        expect(Math.abs(length - lengthOfChords(curve, 500))).toBeLessThan(1e-2);
      }),
      { seed: 7 },
    );
  });

  it('agrees with bezier-js 6.1.4 on gentle curves', () => {
    const gentle = [cubicOf([0, 0], [0, 70], [40, 110], [120, 115]), cubicOf([3, 7], [60, 20], [130, 90], [160, 170])];
    for (const curve of gentle) {
      expect(Math.abs(segmentLength(curve) - new Bezier(curve.p0, curve.p1, curve.p2, curve.p3).length())).toBeLessThan(
        1e-6,
      );
    }
  });

  it('of the parts adds up to that of the whole', () => {
    fc.assert(
      fc.property(anyCubic, fc.double({ min: 0, max: 1, noNaN: true }), (curve, t) => {
        const [head, tail] = splitSegment(curve, t);
        expect(Math.abs(segmentLength(head) + segmentLength(tail) - segmentLength(curve))).toBeLessThan(3e-6);
        expect(Math.abs(partLength(curve, 0, t) - segmentLength(head))).toBeLessThan(2e-6);
        expect(Math.abs(partLength(curve, t, 1) - segmentLength(tail))).toBeLessThan(2e-6);
      }),
      { seed: 7 },
    );
  });

  it('is finite for hostile points and 0 for none at all', () => {
    expect(segmentLength(cubicOf([5, 5], [5, 5], [5, 5], [5, 5]))).toBe(0);
    // There and back along one line: out to 75 at halfway, and home again.
    expect(segmentLength(cubicOf([0, 0], [100, 0], [100, 0], [0, 0]))).toBeCloseTo(150, 6);
    expect(segmentLength(cubicOf([0, 0], [0, 0], [0, 0], [3e-9, 4e-9]))).toBeCloseTo(5e-9, 15);
    const far = cubicOf([1e6, 1e6], [1e6 + 300, 1e6 + 1], [1e6 + 700, 1e6 - 1], [1e6 + 1000, 1e6]);
    expect(segmentLength(far)).toBeCloseTo(1000.0009298300391, 6);
    // Straight lines at constant speed, from a standing start, and from a longer one.
    expect(segmentLength(cubicOf([0, 0], [1, 2], [2, 4], [3, 6]))).toBeCloseTo(Math.hypot(3, 6), 9);
    expect(segmentLength(cubicOf([0, 0], [0, 0], [1, 2], [3, 6]))).toBeCloseTo(Math.hypot(3, 6), 9);
    expect(segmentLength(cubicOf([0, 0], [0, 0], [0, 0], [30, 60]))).toBeCloseTo(Math.hypot(30, 60), 9);
  });
});

describe('parameterAtLength', () => {
  for (const { name, curve, length, halfwayT } of REFERENCE_CURVES) {
    if (halfwayT === undefined) continue;
    it(`halves the ${name} where mpmath does`, () => {
      // The parameter is as exact as the speed there allows.
      const t = parameterAtLength(curve, length / 2);
      expect(Math.abs(t - halfwayT) * length).toBeLessThan(3e-6);
    });
  }

  it('undoes partLength within a millionth of a millimetre', () => {
    fc.assert(
      fc.property(anyCubic, fc.double({ min: 0, max: 1, noNaN: true }), (curve, share) => {
        const wanted = share * segmentLength(curve);
        expect(Math.abs(partLength(curve, 0, parameterAtLength(curve, wanted)) - wanted)).toBeLessThan(3e-6);
      }),
      { seed: 7 },
    );
  });

  it('answers with the ends outside the stretch, also when it has no length', () => {
    const curve = cubicOf([0, 0], [10, 50], [60, 80], [90, 20]);
    expect(parameterAtLength(curve, -3)).toBe(0);
    expect(parameterAtLength(curve, 1e4)).toBe(1);
    expect(parameterAtLength(line({ x: 2, y: 3 }, { x: 2, y: 3 }), 0)).toBe(0);
    expect(parameterAtLength(cubicOf([5, 5], [5, 5], [5, 5], [5, 5]), 1)).toBe(1);
  });
});
