import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rotationAbout, transformPoint } from '../../core/geometry/affine';
import { distance } from '../../core/geometry/point';
import { isConvexRing, placeInRing, ringArea, ringCrossing, ringLength } from '../../core/geometry/polygon';
import { points, seededRandom } from './shapes';

const ELL = points([0, 0], [60, 0], [60, 20], [20, 20], [20, 60], [0, 60]);

describe('ringArea and ringLength', () => {
  it('measure an L, positive clockwise to the eye', () => {
    expect(ringArea(ELL)).toBe(2000);
    expect(ringArea([...ELL].reverse())).toBe(-2000);
    expect(ringLength(ELL)).toBe(240);
    expect(ringArea(points([3, 4], [5, 6]))).toBe(0);
    expect(ringArea([])).toBe(0);
  });
});

describe('placeInRing', () => {
  it('tells inside, boundary and outside', () => {
    expect(placeInRing(ELL, { x: 10, y: 50 })).toBe('inside');
    expect(placeInRing(ELL, { x: 40, y: 40 })).toBe('outside');
    expect(placeInRing(ELL, { x: 20, y: 35 })).toBe('boundary');
    expect(placeInRing(ELL, { x: 60, y: 20.00009 })).toBe('boundary');
  });

  it('counts no corner twice on the level of the point', () => {
    const diamond = points([0, 10], [20, 0], [40, 10], [20, 20]);
    expect(placeInRing(diamond, { x: 20, y: 10 })).toBe('inside');
    expect(placeInRing(diamond, { x: -5, y: 10 })).toBe('outside');
    expect(placeInRing(diamond, { x: 45, y: 10 })).toBe('outside');
    expect(placeInRing(diamond, { x: 20, y: -7 })).toBe('outside');
  });

  it('agrees with a star of wedges about its middle, turned at will', () => {
    const random = seededRandom(8);
    const radii = Array.from({ length: 11 }, () => 20 + 60 * random());
    const ring = radii.map((r, i) => ({
      x: r * Math.cos((2 * Math.PI * i) / 11),
      y: r * Math.sin((2 * Math.PI * i) / 11),
    }));
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 6.28, noNaN: true }),
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        (angle, share) => {
          const turn = rotationAbout({ x: 0, y: 0 }, angle);
          const turned = ring.map((corner) => transformPoint(turn, corner));
          turned.forEach((corner, i) => {
            const next = turned[(i + 1) % 11] as typeof corner;
            const edge = { x: (corner.x + next.x) / 2, y: (corner.y + next.y) / 2 };
            expect(placeInRing(turned, { x: edge.x * share, y: edge.y * share })).toBe('inside');
            expect(placeInRing(turned, { x: edge.x / share, y: edge.y / share })).toBe('outside');
          });
        },
      ),
      { seed: 7, numRuns: 40 },
    );
  });
});

describe('isConvexRing', () => {
  it('says yes to ovals and corners in line, no to hollows, bows and slivers', () => {
    expect(isConvexRing(points([0, 0], [30, 0], [60, 0], [70, 40], [10, 50]))).toBe(true);
    expect(isConvexRing(points([0, 0], [10, 50], [70, 40], [60, 0]))).toBe(true);
    expect(isConvexRing(ELL)).toBe(false);
    expect(isConvexRing(points([0, 0], [60, 40], [60, 0], [0, 40]))).toBe(false);
    expect(isConvexRing(points([0, 0], [60, 40]))).toBe(false);
    // A pentagram turns one way only, but twice round.
    const star = [0, 2, 4, 1, 3].map((k) => ({
      x: 50 * Math.cos((2 * Math.PI * k) / 5),
      y: 50 * Math.sin((2 * Math.PI * k) / 5),
    }));
    expect(isConvexRing(star)).toBe(false);
  });
});

describe('ringCrossing', () => {
  it('finds nothing in simple rings, repeated corners or not', () => {
    expect(ringCrossing(ELL)).toBeUndefined();
    expect(ringCrossing([...ELL, { x: 0, y: 60 }, { x: 0, y: 0.00001 }])).toBeUndefined();
    expect(ringCrossing(points([0, 0], [7, 3], [2, 9]))).toBeUndefined();
  });

  it('finds where a bow crosses and which sides do', () => {
    const found = ringCrossing(points([0, 0], [60, 40], [60, 0], [0, 40]));
    expect(distance(found?.point ?? { x: 0, y: 0 }, { x: 30, y: 20 })).toBeLessThan(1e-9);
    expect(found?.sides).toEqual([0, 2]);
  });

  it('finds a corner on a side, a side run twice and a spike', () => {
    expect(ringCrossing(points([0, 0], [80, 0], [80, 50], [40, 0], [0, 50]))?.point).toEqual({ x: 40, y: 0 });
    expect(ringCrossing(points([0, 0], [50, 0], [50, 30], [50, -20], [0, -20]))).toBeDefined();
    expect(ringCrossing(points([0, 0], [50, 0], [90, 0], [50, 0], [30, 40]))).toBeDefined();
  });

  it('agrees with looking at every pair of sides, for 300 seeded rings', () => {
    const random = seededRandom(21);
    const side = (a: { x: number; y: number }, b: typeof a, c: typeof a) =>
      Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
    for (let trial = 0; trial < 300; trial++) {
      const ring = Array.from({ length: 5 + (trial % 4) }, () => ({ x: random() * 90, y: random() * 70 }));
      let crosses = false;
      ring.forEach((a, i) => {
        const b = ring[(i + 1) % ring.length] as typeof a;
        for (let j = i + 2; j < ring.length - (i === 0 ? 1 : 0); j++) {
          const [c, d] = [ring[j] as typeof a, ring[(j + 1) % ring.length] as typeof a];
          if (side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b)) crosses = true;
        }
      });
      expect(ringCrossing(ring) !== undefined).toBe(crosses);
    }
  });
});
