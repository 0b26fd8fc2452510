import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reflectionIn, rotationAbout, transformSegment, transformVector } from '../../core/geometry/affine';
import {
  partOfSegment,
  reverseSegment,
  segmentAt,
  segmentBounds,
  segmentCurvature,
  segmentDerivative,
  segmentSecondDerivative,
  segmentTangent,
  splitSegment,
} from '../../core/geometry/cubic-curve';
import { distance, type Vector } from '../../core/geometry/point';
import { type Cubic, line } from '../../core/geometry/segment';
import { REFERENCE_CURVES } from './reference-curves';
import { cubicOf } from './shapes';

const STRAIGHT = line({ x: 3, y: 4 }, { x: 9, y: 12 });
const CURVE = cubicOf([3, 7], [40, -20], [90, 110], [130, 35]);
const parameter = fc.double({ min: 0, max: 1, noNaN: true });

const asBezier = ({ p0, p1, p2, p3 }: Cubic) => new Bezier(p0, p1, p2, p3);
/** The published types leave `curvature` out. */
const bezierCurvature = (curve: Cubic, t: number) =>
  (asBezier(curve) as unknown as { curvature(t: number): { k: number } }).curvature(t).k;
const angleBetween = (a: Vector | undefined, b: Vector | undefined) =>
  a && b ? Math.abs(Math.atan2(a.dx * b.dy - a.dy * b.dx, a.dx * b.dx + a.dy * b.dy)) : Infinity;

describe('segmentAt, segmentCurvature and segmentBounds against mpmath', () => {
  for (const { name, curve, at03, curvatureAt025, box } of REFERENCE_CURVES) {
    it(`hold for the ${name}`, () => {
      expect(distance(segmentAt(curve, 0.3), { x: at03[0], y: at03[1] })).toBeLessThan(1e-12);
      if (curvatureAt025 !== undefined) {
        expect(Math.abs(segmentCurvature(curve, 0.25) - curvatureAt025)).toBeLessThan(1e-13);
      }
      const { minX, minY, maxX, maxY } = segmentBounds(curve);
      [minX, minY, maxX, maxY].forEach((each, i) => {
        expect(Math.abs(each - (box[i] as number))).toBeLessThan(1e-12);
      });
    });
  }
});

describe('segmentAt', () => {
  it('gives both ends exactly', () => {
    for (const segment of [STRAIGHT, CURVE]) {
      expect(segmentAt(segment, 0)).toEqual(segment.p0);
      expect(segmentAt(segment, 1)).toEqual(segment.kind === 'line' ? segment.p1 : segment.p3);
    }
  });
});

describe('segmentDerivative and segmentSecondDerivative', () => {
  it('agree with finite differences', () => {
    const h = 1e-5;
    for (const segment of [STRAIGHT, CURVE]) {
      const [before, at, after] = [0.4 - h, 0.4, 0.4 + h].map((t) => segmentAt(segment, t));
      if (!before || !at || !after) throw new Error('no place');
      const first = segmentDerivative(segment, 0.4);
      expect(Math.abs(first.dx - (after.x - before.x) / (2 * h))).toBeLessThan(1e-6);
      expect(Math.abs(first.dy - (after.y - before.y) / (2 * h))).toBeLessThan(1e-6);
      const second = segmentSecondDerivative(segment, 0.4);
      expect(Math.abs(second.dx - (after.x - 2 * at.x + before.x) / (h * h))).toBeLessThan(1e-2);
      expect(Math.abs(second.dy - (after.y - 2 * at.y + before.y) / (h * h))).toBeLessThan(1e-2);
    }
  });
});

describe('segmentCurvature', () => {
  it('is positive where the path turns clockwise to the eye', () => {
    // To the right, then down the page: y grows downwards.
    expect(segmentCurvature(cubicOf([0, 0], [50, 0], [90, 40], [90, 95]), 0.5)).toBeGreaterThan(0.005);
  });

  it('agrees with bezier-js on a gentle curve, and keeps its size when turned and changes sign when mirrored', () => {
    fc.assert(
      fc.property(parameter, fc.double({ min: -3, max: 3, noNaN: true }), (t, angle) => {
        const plain = segmentCurvature(CURVE, t);
        expect(Math.abs(plain - bezierCurvature(CURVE, t))).toBeLessThan(1e-9);
        const turned = transformSegment(rotationAbout({ x: 5, y: 6 }, angle), CURVE);
        expect(Math.abs(segmentCurvature(turned, t) - plain)).toBeLessThan(1e-12);
        const mirror = reflectionIn({ x: 1, y: 0 }, { x: 4, y: 9 });
        if (mirror) expect(Math.abs(segmentCurvature(transformSegment(mirror, CURVE), t) + plain)).toBeLessThan(1e-12);
      }),
      { seed: 7 },
    );
  });

  it('is 0, not endless, for lines, at cusps and where a handle has no length', () => {
    expect(segmentCurvature(STRAIGHT, 0.5)).toBe(0);
    expect(segmentCurvature(cubicOf([0, 0], [100, 100], [0, 100], [100, 0]), 0.5)).toBe(0);
    expect(segmentCurvature(cubicOf([5, 5], [5, 5], [20, 40], [70, 30]), 0)).toBe(0);
    expect(segmentCurvature(cubicOf([5, 5], [5, 5], [5, 5], [5, 5]), 0.3)).toBe(0);
  });
});

describe('segmentTangent', () => {
  it('is the unit derivative where there is speed', () => {
    const { dx, dy } = segmentDerivative(CURVE, 0.7);
    expect(angleBetween(segmentTangent(CURVE, 0.7), { dx, dy })).toBeLessThan(1e-14);
    expect(segmentTangent(STRAIGHT, 0.2)).toEqual({ dx: 0.6, dy: 0.8 });
  });

  it('looks past handles without length at both ends', () => {
    const blunt = cubicOf([5, 5], [5, 5], [20, 40], [20, 40]);
    expect(angleBetween(segmentTangent(blunt, 0), { dx: 15, dy: 35 })).toBeLessThan(1e-12);
    expect(angleBetween(segmentTangent(blunt, 1), { dx: 15, dy: 35 })).toBeLessThan(1e-12);
    const nearly = cubicOf([5, 5], [5 + 1e-12, 5], [20, 40], [70, 30]);
    expect(angleBetween(segmentTangent(nearly, 0), { dx: 15, dy: 35 })).toBeLessThan(1e-12);
  });

  it('goes on at a cusp the way the curve does', () => {
    // At t = 1/2 the curve arrives upwards and leaves downwards (in its own numbers: y rises, then falls).
    const cusp = cubicOf([0, 0], [100, 100], [0, 100], [100, 0]);
    expect(angleBetween(segmentTangent(cusp, 0.5), { dx: 0, dy: -1 })).toBeLessThan(1e-6);
  });

  it('is missing for a stretch that stays put', () => {
    expect(segmentTangent(cubicOf([5, 6], [5, 6], [5, 6], [5, 6]), 0.5)).toBeUndefined();
    expect(segmentTangent(line({ x: 5, y: 6 }, { x: 5, y: 6 }), 0)).toBeUndefined();
  });

  it('turns with its stretch', () => {
    const map = rotationAbout({ x: 5, y: 6 }, 2.1);
    const turned = segmentTangent(transformSegment(map, CURVE), 0.35);
    expect(angleBetween(turned, transformVector(map, segmentTangent(CURVE, 0.35) as Vector))).toBeLessThan(1e-12);
  });
});

describe('splitSegment, partOfSegment and reverseSegment', () => {
  it('splits into parts that meet exactly and lie on the whole, as bezier-js does', () => {
    fc.assert(
      fc.property(parameter, (t) => {
        const [head, tail] = splitSegment(CURVE, t) as [Cubic, Cubic];
        expect(head.p3).toEqual(tail.p0);
        expect(distance(segmentAt(head, 0.5), segmentAt(CURVE, t / 2))).toBeLessThan(1e-11);
        expect(distance(segmentAt(tail, 0.5), segmentAt(CURVE, (1 + t) / 2))).toBeLessThan(1e-11);
        const other = asBezier(CURVE).split(t).left.points[2] as { x: number; y: number };
        expect(distance(head.p2, other)).toBeLessThan(1e-11);
      }),
      { seed: 7 },
    );
    expect(splitSegment(STRAIGHT, 0.25)).toEqual([
      line({ x: 3, y: 4 }, { x: 4.5, y: 6 }),
      line({ x: 4.5, y: 6 }, { x: 9, y: 12 }),
    ]);
  });

  it('takes parts with exact outer ends', () => {
    const part = partOfSegment(CURVE, 0.2, 0.7) as Cubic;
    expect(distance(segmentAt(part, 0.5), segmentAt(CURVE, 0.45))).toBeLessThan(1e-12);
    expect(partOfSegment(CURVE, 0, 1)).toEqual(CURVE);
    expect((partOfSegment(CURVE, 0.6, 1) as Cubic).p3).toEqual(CURVE.p3);
  });

  it('travels the other way', () => {
    expect(distance(segmentAt(reverseSegment(CURVE), 0.3), segmentAt(CURVE, 0.7))).toBeLessThan(1e-12);
    expect(reverseSegment(STRAIGHT)).toEqual(line(STRAIGHT.p1, STRAIGHT.p0));
  });
});

describe('every question about a stretch', () => {
  it('has a finite answer for hostile points', () => {
    const wild = fc.oneof(
      fc.constantFrom(0, 1e6, -1e6, 1e-9, 3),
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.double({ min: -1e-9, max: 1e-9, noNaN: true }),
    );
    const pair = fc.tuple(wild, wild);
    fc.assert(
      fc.property(pair, pair, pair, pair, parameter, (a, b, c, d, t) => {
        const curve = cubicOf(a, b, c, d);
        const box = segmentBounds(curve);
        const tangent = segmentTangent(curve, t) ?? { dx: 1, dy: 0 };
        const numbers = [segmentCurvature(curve, t), tangent.dx, tangent.dy, ...Object.values(box)];
        expect(numbers.every(Number.isFinite)).toBe(true);
        const { x, y } = segmentAt(curve, t);
        const slack = 1e-9 * (1 + Math.abs(x) + Math.abs(y));
        expect(x).toBeGreaterThanOrEqual(box.minX - slack);
        expect(y).toBeLessThanOrEqual(box.maxY + slack);
      }),
      { seed: 7 },
    );
  });
});
