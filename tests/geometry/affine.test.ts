import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Affine,
  areaFactor,
  composeAffine,
  IDENTITY,
  invertAffine,
  reflectionIn,
  rotationAbout,
  scaling,
  transformPath,
  transformPoint,
  transformVector,
  translation,
} from '../../core/geometry/affine';
import { segmentAt } from '../../core/geometry/cubic-curve';
import { distance, type Point } from '../../core/geometry/point';
import { line, type Segment } from '../../core/geometry/segment';
import { cubicOf } from './shapes';

const near = (found: Point, x: number, y: number) => expect(distance(found, { x, y })).toBeLessThan(1e-12);

describe('affine maps', () => {
  it('translation moves places and leaves moves alone', () => {
    const map = translation({ dx: 7, dy: -2 });
    expect(transformPoint(map, { x: 1, y: 3 })).toEqual({ x: 8, y: 1 });
    expect(transformVector(map, { dx: 1, dy: 3 })).toEqual({ dx: 1, dy: 3 });
  });

  it('rotationAbout turns clockwise to the eye about its centre', () => {
    // A quarter turn clockwise takes what lies to the right of the centre to below it.
    near(transformPoint(rotationAbout({ x: 10, y: 20 }, Math.PI / 2), { x: 13, y: 20 }), 10, 23);
    near(transformPoint(rotationAbout({ x: 10, y: 20 }, 1.234), { x: 10, y: 20 }), 10, 20);
  });

  it('scaling stretches across and down about the point that stays', () => {
    near(transformPoint(scaling(2, 3, { x: 1, y: 5 }), { x: 4, y: 7 }), 7, 11);
    near(transformPoint(scaling(2, 3), { x: 4, y: 7 }), 8, 21);
  });

  it('reflectionIn mirrors in a slanting line and keeps its points', () => {
    // The mirror line y = x/2 + 1 takes (4, 8) to (8, 0): middle (6, 4), square to (2, 1).
    const map = reflectionIn({ x: 0, y: 1 }, { x: 2, y: 2 }) as Affine;
    near(transformPoint(map, { x: 4, y: 8 }), 8, 0);
    near(transformPoint(map, { x: 6, y: 4 }), 6, 4);
    expect(areaFactor(map)).toBeCloseTo(-1, 12);
    expect(reflectionIn({ x: 3, y: 4 }, { x: 3, y: 4 })).toBeUndefined();
  });

  it('composeAffine does the second after the first', () => {
    const map = composeAffine(scaling(2, 3), translation({ dx: 1, dy: 10 }));
    near(transformPoint(map, { x: 4, y: 5 }), 10, 45);
  });

  it('invertAffine undoes any map that does not flatten, large and tiny ones too', () => {
    const entry = fc.integer({ min: -5000, max: 5000 }).map((n) => n / 97);
    fc.assert(
      fc.property(entry, entry, entry, entry, entry, fc.constantFrom(1, 1e-6, 1e6), (a, b, c, d, e, size) => {
        const map = { a: a * size, b: b * size, c: c * size, d: d * size, e, f: -3 };
        const inverse = invertAffine(map);
        const sine = Math.abs(areaFactor(map)) / (Math.hypot(map.a, map.b) * Math.hypot(map.c, map.d) || 1);
        if (!inverse) expect(sine).toBeLessThan(1e-12);
        else if (sine > 1e-3 && Math.min(Math.hypot(a, b), Math.hypot(c, d)) > 1e-3) {
          const back = transformPoint(inverse, transformPoint(map, { x: 17, y: -29 }));
          expect(distance(back, { x: 17, y: -29 })).toBeLessThan(1e-5);
        }
      }),
      { seed: 7 },
    );
    near(transformPoint(invertAffine(IDENTITY) as Affine, { x: 3, y: 8 }), 3, 8);
    expect(invertAffine({ a: 1, b: 2, c: 2, d: 4, e: 5, f: 6 })).toBeUndefined();
    expect(invertAffine({ a: 0, b: 0, c: 0, d: 0, e: 5, f: 6 })).toBeUndefined();
  });

  it('transformPath maps every place of lines and cubics', () => {
    const map = { a: 1.5, b: 0.25, c: -0.5, d: 2, e: 3, f: -4 };
    const path = [line({ x: 0, y: 1 }, { x: 5, y: 9 }), cubicOf([5, 9], [8, 2], [11, 30], [20, 4])];
    const moved = transformPath(map, path);
    path.forEach((segment, i) => {
      const image = transformPoint(map, segmentAt(segment, 0.3));
      near(segmentAt(moved[i] as Segment, 0.3), image.x, image.y);
    });
  });
});
