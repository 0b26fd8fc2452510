import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reflectionIn, rotationAbout, transformPath } from '../../core/geometry/affine';
import { segmentAt } from '../../core/geometry/cubic-curve';
import { parallelOf } from '../../core/geometry/parallel';
import {
  isClosed,
  nearestOnPath,
  pathAtLength,
  pathEnd,
  pathLength,
  pathStart,
  reversePath,
  signedArea,
  startTangent,
} from '../../core/geometry/path';
import { distance, type Point } from '../../core/geometry/point';
import { line, type Path, type Segment } from '../../core/geometry/segment';
import { cubicLoop, selfCrossings } from '../../core/geometry/self-crossing';
import { closedSplineThrough, splineThrough } from '../../core/geometry/spline';
import { errorAlongNormals, errorOfMissing, trueParallel } from './parallel-error';
import { arcPath, closedPolygon, cubicOf, points, ROOMS, seededRandom } from './shapes';

const ARCH = cubicOf([0, 0], [0, 100], [100, 100], [100, 0]);
const ARMHOLE = cubicOf([0, 0], [0, 70], [40, 110], [120, 115]);

/** The parallel of a path that has one. */
function parallel(path: Path, offset: number, accuracy?: number): Path {
  const found = parallelOf(path, offset, accuracy === undefined ? {} : { accuracy });
  if (!found) throw new Error('nothing left');
  return found;
}

/** Area between a path and its parallel, by going out along one and home along the other. */
function areaBetween(path: Path, other: Path): number {
  const home = reversePath(other);
  const across = line(pathEnd(path), pathStart(home));
  return Math.abs(signedArea([...path, across, ...home, line(pathEnd(home), pathStart(path))]));
}

const isJoined = (path: Path) =>
  path.every((segment, i) => {
    const next = path[i + 1];
    return !next || distance(segmentAt(segment, 1), next.p0) === 0;
  });

describe('parallelOf a smooth edge', () => {
  // Lengths and areas by the tube (Steiner) formula: L - d·turning and dL - d²·turning/2, with mpmath's L and turning.
  // Those numbers run y upwards with the parallel to the left, which in a y-down plane is the right: the other sign here.
  const tubes = [
    { name: 'arch, outside', curve: ARCH, offset: -10, length: 231.41592653589794, area: 2157.07963267949 },
    { name: 'arch, inside', curve: ARCH, offset: 10, length: 168.58407346410206, area: 1842.9203673205102 },
    { name: 'armhole, outside', curve: ARMHOLE, offset: -15, length: 210.2302086362392, area: 2983.7606589037073 },
  ];
  for (const { name, curve, offset, length, area } of tubes) {
    it(`has the length and encloses the area of the tube formula: ${name}`, () => {
      const found = parallel([curve], offset, 1e-4);
      expect(Math.abs(pathLength(found) - length)).toBeLessThan(1e-3);
      expect(Math.abs(areaBetween([curve], found) - area)).toBeLessThan(0.02);
    });
  }

  it('passes through places computed with mpmath', () => {
    const places = points([-10, 0], [7.625, 62.25], [50, 85], [92.375, 62.25], [110, 0]);
    expect(errorOfMissing(places, parallel([ARCH], -10))).toBeLessThan(0.01);
    const around = points([-15, 0], [-6.587476200011702, 51.94886629600428], [19.56307176259482, 92.6486033418376]);
    expect(errorOfMissing(around, parallel([ARMHOLE], -15))).toBeLessThan(0.01);
  });

  it('needs few pieces', () => {
    expect(parallel([ARCH], -10).length).toBeLessThanOrEqual(2);
    expect(parallel([ARMHOLE], -15).length).toBeLessThanOrEqual(4);
  });

  it('comes as near as asked, with ever more pieces', () => {
    for (const accuracy of [0.1, 0.01, 1e-3, 1e-5]) {
      const found = parallel([ARMHOLE], 12, accuracy);
      expect(errorAlongNormals([ARMHOLE], found, 12)).toBeLessThanOrEqual(accuracy);
      expect(errorOfMissing(trueParallel([ARMHOLE], 12), found)).toBeLessThanOrEqual(accuracy);
    }
  });

  it('lies to the left of travel for a positive distance: outside an outline run clockwise', () => {
    const rightwards = parallel([line({ x: 0, y: 5 }, { x: 40, y: 5 })], 3);
    expect(rightwards).toEqual([line({ x: 0, y: 2 }, { x: 40, y: 2 })]);
    const outline = closedSplineThrough(points([0, 0], [100, 10], [120, 90], [20, 80]));
    expect(signedArea(outline)).toBeGreaterThan(0);
    expect(signedArea(parallel(outline, 8))).toBeGreaterThan(signedArea(outline));
  });

  it('keeps straight straight, also where a cubic draws the line', () => {
    const flat = splineThrough(points([0, 0], [30, 40]));
    expect(parallel(flat, 5).map(({ kind }) => kind)).toEqual(['line']);
    expect(distance(pathStart(parallel(flat, 5)), { x: 4, y: -3 })).toBeLessThan(1e-9);
  });

  it('of an arc is the arc of the other radius', () => {
    const arc = arcPath({ x: 4, y: 9 }, 100, 0.3, 2.5);
    for (const [offset, radius] of [
      [25, 125],
      [-40, 60],
    ] as const) {
      for (const segment of parallel(arc, offset)) {
        for (let i = 0; i <= 10; i++) {
          expect(Math.abs(distance(segmentAt(segment, i / 10), { x: 4, y: 9 }) - radius)).toBeLessThan(0.01);
        }
      }
    }
  });

  it('is nothing where the distance exceeds the radius of an arc throughout', () => {
    expect(parallelOf(arcPath({ x: 4, y: 9 }, 30, 0.3, 1.5), -31)).toBeUndefined();
  });

  it('of a parallel is the parallel of the sum', () => {
    const edge = splineThrough(points([0, 0], [80, 25], [150, -10], [260, 30]));
    const twice = parallel(parallel(edge, 9), 6);
    expect(errorAlongNormals(edge, twice, 15)).toBeLessThan(0.02);
    expect(errorAlongNormals(parallel(edge, 9), parallel(edge, 15), 6)).toBeLessThan(0.02);
    expect(errorAlongNormals(edge, parallel(parallel(edge, -9), -6), -15)).toBeLessThan(0.02);
  });

  it('sets out square to the ends of its edge', () => {
    const edge = splineThrough(points([0, 0], [80, 25], [150, -10], [260, 30]));
    const found = parallel(edge, 16);
    const direction = startTangent(edge);
    expect(distance(pathStart(found), { x: direction.dy * 16, y: -direction.dx * 16 })).toBeLessThan(1e-9);
    expect(Math.abs(pathAtLength(found, 0).tangent.dx - direction.dx)).toBeLessThan(1e-9);
  });

  it('turns and mirrors with its edge', () => {
    const edge = splineThrough(points([0, 0], [80, 25], [150, -10], [260, 30]));
    const turn = rotationAbout({ x: 70, y: 3 }, 1.1);
    const mirror = reflectionIn({ x: 0, y: 4 }, { x: 9, y: 1 }) ?? turn;
    for (const [map, side] of [
      [turn, 1],
      [mirror, -1],
    ] as const) {
      const moved = parallel(transformPath(map, edge), 16 * side);
      const expected = transformPath(map, parallel(edge, 16));
      expect(Math.abs(pathLength(moved) - pathLength(expected))).toBeLessThan(0.01);
      for (const { p0 } of moved) expect(nearestOnPath(expected, p0).distance).toBeLessThan(0.02);
    }
  });
});

describe('parallelOf splines such as edges are', () => {
  it('is within 0.01 mm both ways and free of crossings, for 40 seeded edges on both sides', () => {
    const random = seededRandom(77);
    for (let i = 0; i < 40; i++) {
      const edge = splineThrough(
        Array.from({ length: 4 + (i % 3) }, (_, k) => ({ x: k * 70 + 30 * random(), y: 120 * (random() - 0.5) })),
      );
      for (const offset of [16, -16]) {
        const found = parallel(edge, offset);
        expect(errorAlongNormals(edge, found, offset, 8)).toBeLessThanOrEqual(0.01);
        expect(errorOfMissing(trueParallel(edge, offset, 12), found)).toBeLessThanOrEqual(0.01);
        expect(selfCrossings(found)).toEqual([]);
      }
    }
  });
});

describe('parallelOf an edge tighter than the distance', () => {
  it('cuts a swallowtail off at its crossing', () => {
    // The parabola y = x²/80 as an exact cubic; its parallel 60 inside, to the right, crosses itself on the axis. The crossing is
    // where the normal of length 60 meets x = 0: 60 = 40·√(1 + x²/1600), so x² = 2000 and y = 2000/80 + 40 = 65.
    const parabola = cubicOf([-120, 180], [-40, -60], [40, -60], [120, 180]);
    const found = parallel([parabola], -60);
    expect(selfCrossings(found)).toEqual([]);
    expect(errorAlongNormals([parabola], found, -60)).toBeLessThan(0.01);
    expect(Math.min(...found.map(({ p0 }) => distance(p0, { x: 0, y: 65 })))).toBeLessThan(1e-3);
  });

  it('keeps its distance from all of a narrow bend', () => {
    const bend = splineThrough(points([0, 0], [100, -6], [112, 6], [100, 18], [0, 12]));
    // A hairpin 12 wide: on the inside nothing can be 20 away from both legs except beyond the ends.
    const inside = parallelOf(bend, -20);
    if (inside) expect(errorAlongNormals(bend, inside, -20)).toBeLessThan(0.01);
    expect(errorAlongNormals(bend, parallel(bend, 20), 20)).toBeLessThan(0.01);
  });

  it('is within 0.01 mm both ways, joined and free of loops for 300 seeded curves at distances large and small', () => {
    const random = seededRandom(3);
    const place = () => [random() * 300, random() * 300] as const;
    let measured = 0;
    while (measured < 300) {
      const curve = cubicOf(place(), place(), place(), place());
      if (cubicLoop(curve)) continue;
      measured++;
      for (const offset of [16, -16, 45]) {
        const found = parallelOf([curve], offset);
        if (!found) continue;
        expect(isJoined(found)).toBe(true);
        expect(selfCrossings(found)).toEqual([]);
        expect(errorAlongNormals([curve], found, offset, 10)).toBeLessThanOrEqual(0.01);
        if (offset !== 45) {
          expect(errorOfMissing(trueParallel([curve], offset, 24), found)).toBeLessThanOrEqual(0.01);
        }
      }
    }
  });
});

describe('parallelOf a path with corners', () => {
  it('mitres an outer corner and cuts an inner one', () => {
    const corner = [line({ x: 0, y: 0 }, { x: 60, y: 0 }), line({ x: 60, y: 0 }, { x: 60, y: 80 })];
    const outside = parallel(corner, 10);
    expect(outside.map(({ p0 }) => p0).concat(pathEnd(outside))).toEqual(
      points([0, -10], [60, -10], [70, -10], [70, 0], [70, 80]),
    );
    const inside = parallel(corner, -10);
    expect(inside.length).toBe(2);
    expect(distance(pathEnd([inside[0] as Segment]), { x: 50, y: 10 })).toBeLessThan(1e-6);
  });

  it('rounds a corner too sharp to mitre', () => {
    const spike = [line({ x: 0, y: 0 }, { x: 100, y: 0 }), line({ x: 100, y: 0 }, { x: 0, y: 8 })];
    const outside = parallel(spike, 10);
    expect(outside.some(({ kind }) => kind === 'cubic')).toBe(true);
    const reach = Math.max(...outside.map(({ p0 }) => p0.x));
    expect(reach).toBeLessThanOrEqual(110.01);
    for (const segment of outside) {
      for (let i = 0; i <= 10; i++) {
        expect(nearestOnPath(spike, segmentAt(segment, i / 10)).distance).toBeGreaterThan(9.99);
      }
    }
  });

  it('offsets a square by the areas of geometry, out with mitres and in', () => {
    const square = closedPolygon([0, 0], [100, 0], [100, 100], [0, 100]);
    expect(signedArea(parallel(square, 10))).toBeCloseTo(14400, 6);
    expect(signedArea(parallel(square, -10))).toBeCloseTo(6400, 3);
    expect(isClosed(parallel(square, -10))).toBe(true);
    expect(parallelOf(square, -51)).toBeUndefined();
  });

  it('offsets an L by 5 to 3,300 square millimetres', () => {
    const ell = closedPolygon([0, 0], [60, 0], [60, 20], [20, 20], [20, 60], [0, 60]);
    expect(signedArea(parallel(ell, 5))).toBeCloseTo(3300, 3);
  });

  it('follows the tube formula round a closed smooth outline: L + 2πd and A + dL + πd²', () => {
    const outline = closedSplineThrough(points([0, 0], [140, 10], [160, 120], [20, 100]));
    const [length, area] = [pathLength(outline), signedArea(outline)];
    for (const offset of [25, 7, -9]) {
      const found = parallel(outline, offset, 1e-4);
      expect(Math.abs(pathLength(found) - (length + 2 * Math.PI * offset))).toBeLessThan(0.01);
      expect(Math.abs(signedArea(found) - (area + length * offset + Math.PI * offset ** 2))).toBeLessThan(0.1);
    }
  });

  it('keeps the larger ring where a neck is too narrow', () => {
    // 6 in from the walls the passage is shut.
    expect(signedArea(parallel(ROOMS, -6))).toBeCloseTo(48 * 48, 2);
  });
});

describe('parallelOf whatever it is given', () => {
  it('answers at distance 0 with the path, and nothing for a path without length', () => {
    expect(parallelOf([ARCH], 0)).toEqual([ARCH]);
    expect(parallelOf([cubicOf([5, 5], [5, 5], [5, 5], [5, 5])], 4)).toBeUndefined();
    expect(parallelOf([line({ x: 2, y: 3 }, { x: 2, y: 3 })], 4)).toBeUndefined();
  });

  it('never leaves the finite', () => {
    const wild = fc.oneof(
      fc.constantFrom(0, 5, 5, 1e6, 1e-9),
      fc.double({ min: -200, max: 200, noNaN: true }),
      fc.double({ min: -1e-9, max: 1e-9, noNaN: true }),
    );
    const pair = fc.tuple(wild, wild);
    fc.assert(
      fc.property(pair, pair, pair, pair, pair, fc.constantFrom(10, -10, 300, -1e-3), (a, b, c, d, e, offset) => {
        const curve = cubicOf(a, b, c, d);
        const path = [curve, line(curve.p3, { x: e[0], y: e[1] })];
        for (const edge of [[curve], path]) {
          const found = parallelOf(edge, offset) ?? [];
          expect(isJoined(found)).toBe(true);
          const places = found.flatMap((segment) => Object.values(segment)).filter((each) => typeof each === 'object');
          expect(places.every(({ x, y }: Point) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
        }
      }),
      { seed: 7, numRuns: 150 },
    );
  });
});
