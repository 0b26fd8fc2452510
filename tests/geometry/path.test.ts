import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reflectionIn, rotationAbout, transformPath, translation } from '../../core/geometry/affine';
import {
  endTangent,
  isClosed,
  joinPaths,
  nearestOnPath,
  pathAtLength,
  pathBounds,
  pathEnd,
  pathLength,
  pathStart,
  reversePath,
  signedArea,
  startTangent,
  subPath,
} from '../../core/geometry/path';
import { distance, type Point } from '../../core/geometry/point';
import { line, type Path } from '../../core/geometry/segment';
import { REFERENCE_CURVES } from './reference-curves';
import { arcPath, closedPolygon, cubicOf } from './shapes';

const CIRCLE = arcPath({ x: 10, y: 20 }, 50, 0, 2 * Math.PI);
/** A line of 50, then an arch of exactly 200. */
const OPEN: Path = [line({ x: -30, y: 40 }, { x: 0, y: 0 }), cubicOf([0, 0], [0, 100], [100, 100], [100, 0])];
const RECTANGLE = closedPolygon([0, 0], [30, 0], [30, 20], [0, 20]);

const isNear = (found: Point, x: number, y: number, within = 1e-6) =>
  expect(distance(found, { x, y })).toBeLessThan(within);

describe('pathLength and pathAtLength', () => {
  it('add the stretches up', () => {
    expect(Math.abs(pathLength(OPEN) - 250)).toBeLessThan(1e-6);
    expect(Math.abs(pathLength(CIRCLE) - 100 * Math.PI)).toBeLessThan(1e-5);
  });

  it('give place, direction and curvature', () => {
    const halfway = pathAtLength(OPEN, 150); // the top of the arch
    isNear(halfway.point, 50, 75);
    isNear({ x: halfway.tangent.dx, y: halfway.tangent.dy }, 1, 0);
    expect(Math.abs(halfway.curvature - -0.02666666666666667)).toBeLessThan(1e-8);
    isNear(pathAtLength(OPEN, 25).point, -15, 20, 1e-12);
  });

  it('take the direction of the stretch that begins at a corner, and of the last at the end', () => {
    expect(pathAtLength(RECTANGLE, 30).tangent).toEqual({ dx: 0, dy: 1 });
    expect(pathAtLength(RECTANGLE, 100).tangent).toEqual({ dx: 0, dy: -1 });
  });

  it('stop at the ends of an open path and go round a closed one', () => {
    expect(pathAtLength(OPEN, -5).point).toEqual({ x: -30, y: 40 });
    expect(pathAtLength(OPEN, 999).point).toEqual({ x: 100, y: 0 });
    isNear(pathAtLength(RECTANGLE, 112).point, 12, 0, 1e-12);
    isNear(pathAtLength(RECTANGLE, -5).point, 0, 5, 1e-12);
  });
});

describe('subPath', () => {
  it('has the length asked for and keeps to the path', () => {
    const part = subPath(OPEN, 20, 180) as Path;
    expect(Math.abs(pathLength(part) - 160)).toBeLessThan(1e-5);
    isNear(pathStart(part), pathAtLength(OPEN, 20).point.x, pathAtLength(OPEN, 20).point.y);
    isNear(pathEnd(part), pathAtLength(OPEN, 180).point.x, pathAtLength(OPEN, 180).point.y);
    isNear(pathAtLength(part, 100).point, pathAtLength(OPEN, 120).point.x, pathAtLength(OPEN, 120).point.y, 1e-5);
  });

  it('is cut to an open path, and nothing where nothing is left', () => {
    expect(subPath(OPEN, -10, 1e4)).toEqual(OPEN);
    expect(subPath(OPEN, 80, 80)).toBeUndefined();
    expect(subPath(OPEN, 300, 400)).toBeUndefined();
    expect(subPath([line({ x: 1, y: 2 }, { x: 1, y: 2 })], 0, 5)).toBeUndefined();
  });

  it('goes on over the start of a closed path, and once round when both lengths are one', () => {
    const over = subPath(RECTANGLE, 90, 40) as Path;
    expect(pathLength(over)).toBeCloseTo(50, 9);
    isNear(pathStart(over), 0, 10, 1e-9);
    isNear(pathEnd(over), 30, 10, 1e-9);
    const round = subPath(RECTANGLE, 10, 10) as Path;
    expect(pathLength(round)).toBeCloseTo(100, 9);
    expect(isClosed(round)).toBe(true);
    expect(signedArea(round)).toBeCloseTo(600, 9);
    isNear(pathStart(subPath(RECTANGLE, -5, 20) as Path), 0, 5, 1e-9);
  });

  it('cuts a circle into parts whose lengths add up', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 300, noNaN: true }),
        fc.double({ min: 0.1, max: 300, noNaN: true }),
        (a, b) => {
          if (Math.abs(a - b) < 0.01) return;
          const sum = pathLength(subPath(CIRCLE, a, b) as Path) + pathLength(subPath(CIRCLE, b, a) as Path);
          expect(Math.abs(sum - pathLength(CIRCLE))).toBeLessThan(1e-4);
        },
      ),
      { seed: 7, numRuns: 40 },
    );
  });
});

describe('nearestOnPath', () => {
  it('names the place, the length up to it and the stretch', () => {
    const near = nearestOnPath(OPEN, { x: 50, y: 200 });
    expect(near.segmentIndex).toBe(1);
    isNear(near.point, 50, 75);
    expect(Math.abs(near.along - 150)).toBeLessThan(1e-5);
    expect(near.distance).toBeCloseTo(125, 9);
    expect(near.t).toBeCloseTo(0.5, 9);
  });

  it('agrees with the circle it is asked about', () => {
    const near = nearestOnPath(CIRCLE, { x: 10 + 7, y: 20 + 24 });
    isNear(near.point, 10 + 14, 20 + 48, 1e-5);
    expect(Math.abs(near.along - 50 * Math.atan2(24, 7))).toBeLessThan(1e-4);
  });
});

describe('signedArea', () => {
  it('is positive clockwise to the eye: right, down, left, up', () => {
    expect(signedArea(RECTANGLE)).toBe(600);
    expect(signedArea(reversePath(RECTANGLE))).toBe(-600);
    expect(Math.abs(signedArea(CIRCLE) - 2500 * Math.PI)).toBeLessThan(1e-4);
  });

  for (const { name, curve, areaFromOrigin } of REFERENCE_CURVES) {
    it(`of the ${name} closed through the origin is that of mpmath`, () => {
      const { p0, p3 } = curve;
      const origin = { x: 0, y: 0 };
      expect(Math.abs(signedArea([line(origin, p0), curve, line(p3, origin)]) - areaFromOrigin)).toBeLessThan(1e-9);
    });
  }

  it('keeps under shifts, turns and its digits far off, and changes sign under mirrors', () => {
    const path = [...OPEN, line({ x: 100, y: 0 }, { x: -30, y: 40 })];
    const area = signedArea(path);
    expect(Math.abs(signedArea(transformPath(translation({ dx: 1e6, dy: -1e6 }), path)) - area)).toBeLessThan(1e-6);
    expect(Math.abs(signedArea(transformPath(rotationAbout({ x: 3, y: 4 }, 2), path)) - area)).toBeLessThan(1e-9);
    const mirror = reflectionIn({ x: 0, y: 1 }, { x: 5, y: 2 });
    if (mirror) expect(Math.abs(signedArea(transformPath(mirror, path)) + area)).toBeLessThan(1e-9);
  });
});

describe('ends and directions', () => {
  it('look past stretches and handles without length', () => {
    const stay = line({ x: 0, y: 0 }, { x: 0, y: 0 });
    const path = [stay, cubicOf([0, 0], [0, 0], [30, 40], [60, 0]), line({ x: 60, y: 0 }, { x: 60, y: 0 })];
    isNear({ x: startTangent(path).dx, y: startTangent(path).dy }, 0.6, 0.8, 1e-12);
    isNear({ x: endTangent(path).dx, y: endTangent(path).dy }, 0.6, -0.8, 1e-12);
    expect(startTangent([stay])).toEqual({ dx: 1, dy: 0 });
    expect(endTangent([stay])).toEqual({ dx: 1, dy: 0 });
  });

  it('reversePath exchanges them', () => {
    expect(pathStart(reversePath(OPEN))).toEqual(pathEnd(OPEN));
    const [back, on] = [startTangent(reversePath(OPEN)), endTangent(OPEN)];
    expect(Math.hypot(back.dx + on.dx, back.dy + on.dy)).toBeLessThan(1e-15);
  });

  it('isClosed allows a ten-thousandth of a millimetre', () => {
    expect(isClosed(RECTANGLE)).toBe(true);
    expect(isClosed(OPEN)).toBe(false);
    expect(isClosed([line({ x: 0, y: 0 }, { x: 5, y: 0 }), line({ x: 5, y: 0 }, { x: 0.00009, y: 0 })])).toBe(true);
  });
});

describe('joinPaths and pathBounds', () => {
  it('brings near ends together exactly and closes a gap by a line', () => {
    const joined = joinPaths([
      [line({ x: 0, y: 0 }, { x: 10, y: 5 })],
      [cubicOf([10.00005, 5], [20, 9], [30, 1], [40, 7])],
      [line({ x: 43, y: 11 }, { x: 50, y: 60 })],
    ]);
    expect(joined.map(({ kind }) => kind)).toEqual(['line', 'cubic', 'line', 'line']);
    expect(joined[1]?.p0).toEqual({ x: 10, y: 5 });
    expect(joined[2]).toEqual(line({ x: 40, y: 7 }, { x: 43, y: 11 }));
    expect(joinPaths([])).toEqual([]);
  });

  it('pathBounds holds the whole path and no more', () => {
    expect(pathBounds(OPEN)).toEqual({ minX: -30, minY: 0, maxX: 100, maxY: 75 });
  });
});
