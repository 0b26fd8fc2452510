import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { transformPoint } from '../../core/geometry/affine';
import { distance, type Point } from '../../core/geometry/point';
import {
  applyHomography,
  composeHomography,
  type DegeneratePairs,
  type Homography,
  homographyFrom,
  invertHomography,
  jacobianAt,
} from '../../core/geometry/projective';
import { points, seededRandom } from './shapes';

const pairsOf = (froms: readonly Point[], tos: readonly Point[]) =>
  froms.map((from, i) => ({ from, to: tos[i] as Point }));

/** The map of pairs that are known to have one. */
function mapOf(froms: readonly Point[], tos: readonly Point[]): Homography {
  const map = homographyFrom(pairsOf(froms, tos));
  if ('kind' in map) throw new Error(map.why);
  return map;
}

/** Why pairs have no map; `undefined` when they have one. */
function whyNot(froms: readonly Point[], tos: readonly Point[]): DegeneratePairs['why'] | undefined {
  const map = homographyFrom(pairsOf(froms, tos));
  return 'kind' in map ? map.why : undefined;
}

const off = (map: Homography, from: Point, to: Point) =>
  distance(applyHomography(map, from) ?? { x: Infinity, y: Infinity }, to);

const SHEET = points([0, 0], [200, 0], [200, 300], [0, 300]);
/** Exact images of SHEET under [[2, 1/2, 10], [3/10, 9/5, 20], [1/1000, 1/500, 1]], worked out in fractions. */
const SHEET_SEEN = points([10, 20], [1025 / 3, 200 / 3], [2800 / 9, 3100 / 9], [100, 350]);

describe('homographyFrom', () => {
  it('finds a map with exact fractions', () => {
    const map = mapOf(SHEET, SHEET_SEEN);
    [2, 0.5, 10, 0.3, 1.8, 20, 0.001, 0.002, 1].forEach((wanted, i) => {
      expect(Math.abs((map[i] as number) - wanted)).toBeLessThan(1e-11);
    });
    expect(off(map, { x: 100, y: 150 }, { x: 1425 / 7, y: 1600 / 7 })).toBeLessThan(1e-10);
    expect(off(map, { x: 50, y: 75 }, { x: 1475 / 12, y: 425 / 3 })).toBeLessThan(1e-10);
    expect(off(map, { x: 37, y: 211 }, { x: 189500 / 1459, y: 410900 / 1459 })).toBeLessThan(1e-10);
  });

  it('takes the centre of a square to the crossing of the diagonals', () => {
    // The unit square to a page in a photo; numbers computed independently with numpy, and equal to the square-to-quad
    // formulas of P. Heckbert, Fundamentals of Texture Mapping and Image Warping (1989).
    const quad = points([120, 80], [1830, 140], [1690, 2410], [260, 2290]);
    const map = mapOf(points([0, 0], [1, 0], [1, 1], [0, 1]), quad);
    const wanted = [
      1643.0344172362009, 189.97762726409024, 120, 54.87694995249625, 2650.1875632106407, 80, -0.036593214625026814,
      0.19222164332342395, 1,
    ];
    wanted.forEach((each, i) => {
      expect(Math.abs((map[i] as number) - each)).toBeLessThan(1e-9 * Math.max(1, Math.abs(each)));
    });
    expect(off(map, { x: 0.5, y: 0.5 }, { x: 961.6741071428571, y: 1329.1087067788897 })).toBeLessThan(1e-9);
  });

  it('finds an affine map as one, its third row 0 0 1', () => {
    const map = mapOf(
      points([0, 0], [100, 0], [100, 100], [0, 100]),
      points([30, 40], [230, 15], [280, 165], [80, 190]),
    );
    expect(Math.abs(map[6])).toBeLessThan(1e-14);
    expect(Math.abs(map[7])).toBeLessThan(1e-14);
    expect(off(map, { x: 50, y: 50 }, { x: 155, y: 102.5 })).toBeLessThan(1e-10);
  });

  it('squares up a photo to a rectangle of 10 by 14 inches', () => {
    // A squaring exercise of our own; the eight numbers and three places computed independently with numpy.
    const photo = points([100, 120], [1080, 150], [1030, 1500], [140, 1460]);
    const map = mapOf(photo, points([0, 0], [10, 0], [10, 14], [0, 14]));
    const wanted = [
      0.0102494147, -0.000305952677, -0.988227147, -0.000288870608, 0.00943643987, -1.10348572, 1.271993e-5,
      -6.80849543e-5,
    ];
    wanted.forEach((each, i) => {
      expect(Math.abs((map[i] as number) / each - 1)).toBeLessThan(1e-6);
    });
    expect(off(map, { x: 600, y: 800 }, { x: 5.1583, y: 6.5806 })).toBeLessThan(1e-4);
    expect(off(map, { x: 580, y: 135 }, { x: 4.9241, y: 0.0029 })).toBeLessThan(1e-4);
    expect(off(map, { x: 300, y: 400 }, { x: 2.0113, y: 2.6464 })).toBeLessThan(1e-4);
  });

  it('is the same map whatever unit and origin the coordinates have', () => {
    const shift = (point: Point) => ({ x: point.x * 0.001 + 5e4, y: point.y * 0.001 - 3e4 });
    const map = mapOf(SHEET.map(shift), SHEET_SEEN);
    expect(off(map, shift({ x: 100, y: 150 }), { x: 1425 / 7, y: 1600 / 7 })).toBeLessThan(1e-5);
  });

  it('mirrors when its pairs do', () => {
    const map = mapOf(SHEET, points([200, 0], [0, 0], [0, 300], [200, 300]));
    expect(off(map, { x: 30, y: 70 }, { x: 170, y: 70 })).toBeLessThan(1e-10);
  });

  it('comes nearer to the truth with more pairs, by least squares', () => {
    const random = seededRandom(5);
    const truth = mapOf(SHEET, SHEET_SEEN);
    const noise = () => (random() - 0.5) * 2;
    const missWith = (many: number) => {
      let worst = 0;
      for (let trial = 0; trial < 40; trial++) {
        const froms = Array.from({ length: many }, (_, i) =>
          i < 4 ? (SHEET[i] as Point) : { x: random() * 200, y: random() * 300 },
        );
        const tos = froms.map((from) => {
          const seen = applyHomography(truth, from) as Point;
          return { x: seen.x + noise(), y: seen.y + noise() };
        });
        worst += off(mapOf(froms, tos), { x: 140, y: 90 }, applyHomography(truth, { x: 140, y: 90 }) as Point) / 40;
      }
      return worst;
    };
    expect(missWith(60)).toBeLessThan(missWith(4) / 2);
  });

  it('names what is wrong with pairs that have no map', () => {
    expect(whyNot(SHEET.slice(0, 3), SHEET_SEEN)).toBe('fewer-than-four');
    expect(whyNot(SHEET, points([0, 0], [9, 1], [9, 1], [0, 7]))).toBe('coincident');
    expect(whyNot(SHEET, points([0, 0], [4, 2], [8, 4], [0, 7]))).toBe('three-in-line');
    expect(whyNot(points([0, 0], [4, 2], [8, 4], [0, 7]), SHEET)).toBe('three-in-line');
    expect(whyNot(SHEET, points([0, 0], [200, 290], [190, 0], [5, 300]))).toBe('crossed');
    expect(whyNot(SHEET, points([0, 0], [200, 0], [50, 60], [0, 300]))).toBe('concave');
    const inLine = Array.from({ length: 7 }, (_, i) => ({ x: i * 3, y: i * 5 }));
    expect(whyNot(inLine, inLine)).toBe('three-in-line');
    expect(
      whyNot(
        inLine.map(() => ({ x: 2, y: 3 })),
        inLine,
      ),
    ).toBe('coincident');
  });

  it('takes every corner home for any two convex quadrilaterals', () => {
    const unitSquare = points([0, 0], [1, 0], [1, 1], [0, 1]);
    const nudge = fc.double({ min: -0.3, max: 0.3, noNaN: true });
    const quad = fc.array(fc.tuple(nudge, nudge), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(quad, quad, fc.constantFrom(1, 1e-3, 4000), (a, b, scale) => {
        const corners = (nudges: [number, number][]) =>
          nudges.map(([dx, dy], i) => ({
            x: scale * ((unitSquare[i] as Point).x + dx),
            y: scale * ((unitSquare[i] as Point).y + dy),
          }));
        const [froms, tos] = [corners(a), corners(b)];
        const map = homographyFrom(pairsOf(froms, tos));
        if ('kind' in map) return;
        const back = invertHomography(map) as Homography;
        for (let i = 0; i < 4; i++) {
          expect(off(map, froms[i] as Point, tos[i] as Point)).toBeLessThan(1e-7 * scale);
          expect(off(back, tos[i] as Point, froms[i] as Point)).toBeLessThan(1e-7 * scale);
        }
      }),
      { seed: 7 },
    );
  });
});

describe('composeHomography, invertHomography and jacobianAt', () => {
  const map = mapOf(SHEET, SHEET_SEEN);

  it('undo and follow one another', () => {
    const both = composeHomography(invertHomography(map) as Homography, map);
    [1, 0, 0, 0, 1, 0, 0, 0, 1].forEach((each, i) => {
      expect(Math.abs((both[i] as number) - each)).toBeLessThan(1e-12);
    });
    const twice = composeHomography(map, map);
    const once = applyHomography(map, { x: 12, y: 34 }) as Point;
    expect(off(twice, { x: 12, y: 34 }, applyHomography(map, once) as Point)).toBeLessThan(1e-10);
  });

  it('agree with finite differences', () => {
    const at = { x: 83, y: 140 };
    const near = jacobianAt(map, at);
    if (!near) throw new Error('no Jacobian');
    expect(off(map, at, transformPoint(near, at))).toBeLessThan(1e-12);
    const h = 1e-3;
    for (const step of points([h, 0], [0, h])) {
      const moved = { x: at.x + step.x, y: at.y + step.y };
      expect(off(map, moved, transformPoint(near, moved))).toBeLessThan(1e-8);
    }
  });

  it('give nothing on the horizon and for a map that flattens', () => {
    const tilted: Homography = [1, 0, 0, 0, 1, 0, 0.01, 0, 1];
    expect(applyHomography(tilted, { x: -100, y: 7 })).toBeUndefined();
    expect(jacobianAt(tilted, { x: -100, y: 7 })).toBeUndefined();
    expect(invertHomography([1, 2, 3, 2, 4, 6, 0, 0, 1])).toBeUndefined();
  });
});
