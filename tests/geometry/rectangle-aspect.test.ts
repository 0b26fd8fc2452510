import { describe, expect, it } from 'vitest';
import type { Point } from '../../core/geometry/point';
import { rectangleAspect, rectangleAspectWithFocal } from '../../core/geometry/rectangle-aspect';
import { points } from './shapes';

/**
 * Views of a sheet through a camera of 3000 px focal length, image centre (2000, 1500), computed independently with
 * numpy from the turns named (about x, y and z, in degrees). Corners: top left, top right, bottom right, bottom left.
 */
const CENTRE = { x: 2000, y: 1500 };
const VIEWS = [
  {
    name: 'an A4 sheet lying, turned by 35, 20 and 10',
    aspect: 297 / 210,
    corners: points(
      [1268.165267015087, 642.3066242101897],
      [3109.837958759754, 1260.529676886992],
      [2679.2824688314613, 2296.103338018125],
      [1265.7333181177373, 1658.433110143356],
    ),
  },
  {
    name: 'an A4 sheet lying, turned by 12, 8 and 3',
    aspect: 297 / 210,
    corners: points(
      [1149.7341918011084, 810.4602040096686],
      [2995.75731110151, 906.6380994609234],
      [2844.7902683195216, 2185.099299130466],
      [1158.7236445823826, 2001.3082319998127],
    ),
  },
  {
    name: 'an A4 sheet standing, turned by 45, 30 and -15',
    aspect: 210 / 297,
    corners: points(
      [1297.4124700468544, 858.6920536945526],
      [2460.3801732732854, 916.1834597965154],
      [2559.768274066363, 2010.945365444195],
      [1715.9589100314608, 1860.1977149494282],
    ),
  },
] as const;

/** Two views in which one or both pairs of sides stay parallel. */
const ONE_AXIS = points(
  [1022.2223993053406, 873.4169520710028],
  [2977.777600694659, 873.4169520710028],
  [2818.3698140612764, 2024.4307622339688],
  [1181.6301859387236, 2024.4307622339688],
);
const HEAD_ON = points([1109, 870], [2891, 870], [2891, 2130], [1109, 2130]);

type Four = readonly [Point, Point, Point, Point];

describe('rectangleAspect', () => {
  for (const { name, aspect, corners } of VIEWS) {
    it(`recovers aspect and focal length of ${name}`, () => {
      const found = rectangleAspect(corners as unknown as Four, CENTRE);
      if (found.kind !== 'aspect') throw new Error(found.why);
      expect(Math.abs(found.aspect - aspect)).toBeLessThan(1e-9);
      expect(Math.abs(found.focalPx - 3000)).toBeLessThan(1e-6);
    });
  }

  it('says so when sides stay parallel', () => {
    for (const corners of [ONE_AXIS, HEAD_ON]) {
      const found = rectangleAspect(corners as unknown as Four, CENTRE);
      expect(found).toEqual({ kind: 'undetermined', why: 'parallel-sides' });
    }
  });

  it('says so when no camera sees a rectangle like that, and when there is no quadrilateral', () => {
    const leaning = points([0, 0], [1000, 100], [1800, 1500], [200, 900]) as unknown as Four;
    expect(rectangleAspect(leaning, { x: 700, y: 600 })).toEqual({ kind: 'undetermined', why: 'no-real-camera' });
    const flat = points([0, 0], [10, 10], [20, 20], [30, 30]) as unknown as Four;
    expect(rectangleAspect(flat, CENTRE)).toEqual({ kind: 'undetermined', why: 'not-a-quad' });
    const crossed = points([0, 0], [900, 700], [950, 30], [20, 800]) as unknown as Four;
    expect(rectangleAspect(crossed, { x: 450, y: 400 })).toEqual({ kind: 'undetermined', why: 'not-a-quad' });
  });
});

describe('rectangleAspectWithFocal', () => {
  it('gives the aspect in every view, also head-on', () => {
    const views = [...VIEWS, { aspect: 297 / 210, corners: ONE_AXIS }, { aspect: 297 / 210, corners: HEAD_ON }];
    for (const { aspect, corners } of views) {
      const found = rectangleAspectWithFocal(corners as unknown as Four, CENTRE, 3000);
      if (found.kind !== 'aspect') throw new Error(found.why);
      expect(Math.abs(found.aspect - aspect)).toBeLessThan(1e-9);
    }
  });
});
