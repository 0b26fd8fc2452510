/**
 * Ten cubics with their length, area, box and places, computed with mpmath at 40 digits and rounded to double.
 * y runs up in these numbers; curvature and area only change sign with it, so they read the same in a y-down plane.
 */
import type { Cubic } from '../../core/geometry/segment';
import { cubicOf } from './shapes';

export interface ReferenceCurve {
  readonly name: string;
  readonly curve: Cubic;
  readonly length: number;
  /** Half the integral of x dy - y dx over the open curve. */
  readonly areaFromOrigin: number;
  readonly box: readonly [minX: number, minY: number, maxX: number, maxY: number];
  readonly at03: readonly [number, number];
  readonly curvatureAt025?: number;
  readonly halfwayT?: number;
}

const KAPPA = 0.5522847498307935;

export const REFERENCE_CURVES: readonly ReferenceCurve[] = [
  {
    name: 'quarter circle',
    curve: cubicOf([1, 0], [1, KAPPA], [KAPPA, 1], [0, 1]),
    length: 1.5710166980738558,
    areaFromOrigin: 0.7856180831641267,
    box: [0, 0, 1, 1],
    at03: [0.8883818177180199, 0.4595575746753799],
    curvatureAt025: 1.0062133221584524,
    halfwayT: 0.5,
  },
  {
    name: 'quarter circle, arms 0.5519',
    curve: cubicOf([1, 0], [1, 0.551915024494], [0.551915024494, 1], [0, 1]),
    length: 1.5708561799040759,
    areaFromOrigin: 0.7854574855570681,
    box: [0, 0, 1, 1],
    at03: [0.888311939629366, 0.459394525801854],
    curvatureAt025: 1.006073301791513,
    halfwayT: 0.5,
  },
  {
    name: 'hip curve',
    curve: cubicOf([0, 0], [0.35, 2.75], [1.75, 5.25], [1.75, 8]),
    length: 8.213657246140457,
    areaFromOrigin: 0.695625,
    box: [0, 0, 1.75, 8],
    at03: [0.53235, 2.421],
    curvatureAt025: -0.04003191315277218,
    halfwayT: 0.4971929395916528,
  },
  {
    name: 'armhole',
    curve: cubicOf([0, 0], [0, 70], [40, 110], [120, 115]),
    length: 187.60454588425512,
    areaFromOrigin: -4260,
    box: [0, 0, 120, 115],
    at03: [10.8, 54.765],
    curvatureAt025: -0.009496484633054171,
    halfwayT: 0.5246413164210504,
  },
  {
    name: 'S curve',
    curve: cubicOf([0, 0], [100, 0], [0, 100], [100, 100]),
    length: 167.65426274202858,
    areaFromOrigin: 0,
    box: [0, 0, 100, 100],
    at03: [46.8, 21.6],
    curvatureAt025: 0.03641108980350222,
    halfwayT: 0.5,
  },
  {
    name: 'loop',
    curve: cubicOf([0, 0], [150, 100], [-50, 100], [100, 0]),
    length: 211.85463666161536,
    areaFromOrigin: -1500,
    box: [0, 0, 100, 75],
    at03: [59.4, 63],
    curvatureAt025: 0.030099348904502617,
    halfwayT: 0.5,
  },
  {
    name: 'cusp',
    curve: cubicOf([0, 0], [100, 100], [0, 100], [100, 0]),
    length: 182.84271247461902,
    areaFromOrigin: -3000,
    box: [0, 0, 100, 75],
    at03: [46.8, 63],
  },
  {
    name: 'straight, unevenly travelled',
    curve: cubicOf([0, 0], [10, 10], [20, 20], [100, 100]),
    length: 141.4213562373095,
    areaFromOrigin: 0,
    box: [0, 0, 100, 100],
    at03: [10.89, 10.89],
    curvatureAt025: 0,
    halfwayT: 0.7360822297623107,
  },
  {
    name: 'arch',
    curve: cubicOf([0, 0], [0, 100], [100, 100], [100, 0]),
    length: 200,
    areaFromOrigin: -6000,
    box: [0, 0, 100, 75],
    at03: [21.6, 63],
    curvatureAt025: -0.017066666666666667,
    halfwayT: 0.5,
  },
  {
    name: 'nearly flat metre',
    curve: cubicOf([0, 0], [300, 1], [700, -1], [1000, 0]),
    length: 1000.0009298300391,
    areaFromOrigin: 0,
    box: [0, -0.28867513459481287, 1000, 0.28867513459481287],
    at03: [291.6, 0.252],
    curvatureAt025: -8.670763173808596e-6,
    halfwayT: 0.5,
  },
];
