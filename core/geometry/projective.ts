/**
 * Maps between a flat page and a photo of it: straight lines stay straight, parallels may meet.
 *
 * See: R. Hartley & A. Zisserman, Multiple View Geometry in Computer Vision, chapter 4 (normalised direct linear
 * transform); R. Hartley, In Defense of the Eight-Point Algorithm, PAMI 19 (1997) on why the normalisation matters.
 */
import type { Affine } from './affine';
import { distance, type Point } from './point';
import { symmetricEigen } from './symmetric-eigen';

/**
 * The nine numbers of the map by rows: x' = (a x + b y + c) / w, y' = (d x + e y + f) / w, w = g x + h y + i.
 * Scaled so that i is 1, unless the origin goes to infinity.
 */
export type Homography = readonly [
  a: number,
  b: number,
  c: number,
  d: number,
  e: number,
  f: number,
  g: number,
  h: number,
  i: number,
];

/** A place and where it goes. */
export interface PointPair {
  readonly from: Point;
  readonly to: Point;
}

/**
 * Why pairs give no map: too few, two in one place, three in one line (for more than four pairs: nearly all), or four
 * whose corners do not go round alike on both sides, crossed like a bow or with one corner pushed inside the others.
 */
export interface DegeneratePairs {
  readonly kind: 'degenerate';
  readonly why: 'fewer-than-four' | 'coincident' | 'three-in-line' | 'crossed' | 'concave';
}

/** Points nearer than this share of the size of their set are one place. */
const COINCIDENT = 1e-6;

/** Three points are in line when their triangle is flatter than this share of its longest side. */
const IN_LINE = 1e-6;

/** The size of w, as a share of its terms, below which a place lies on the horizon. */
const ON_HORIZON = 1e-12;

/** The second smallest eigenvalue below which more than one map fits the pairs equally well. */
const UNDETERMINED = 1e-12;

/**
 * The map that takes each pair's `from` to its `to`: exactly for four pairs, by least squares (of the algebraic errors
 * in normalised coordinates) for more. All places must lie on one side of the horizon, as everything in a photo does.
 */
export function homographyFrom(pairs: readonly PointPair[]): Homography | DegeneratePairs {
  if (pairs.length < 4) return { kind: 'degenerate', why: 'fewer-than-four' };
  const froms = pairs.map((pair) => pair.from);
  const tos = pairs.map((pair) => pair.to);
  const why = pairs.length === 4 ? (quadTrouble(froms) ?? quadTrouble(tos) ?? orderTrouble(froms, tos)) : undefined;
  if (why) return { kind: 'degenerate', why };
  const before = normalising(froms);
  const after = normalising(tos);
  if (!before || !after) return { kind: 'degenerate', why: 'coincident' };
  const [best, second] = symmetricEigen(normalMatrix(pairs, before, after));
  if (!best || !second || second.value < UNDETERMINED * pairs.length) {
    return { kind: 'degenerate', why: 'three-in-line' };
  }
  const back: Homography = [1 / after.scale, 0, after.x, 0, 1 / after.scale, after.y, 0, 0, 1];
  const inner: Homography = [
    before.scale,
    0,
    -before.scale * before.x,
    0,
    before.scale,
    -before.scale * before.y,
    0,
    0,
    1,
  ];
  const map = composeHomography(composeHomography(back, best.vector as unknown as Homography), inner);
  const sides = new Set(froms.map((point) => Math.sign(depthAt(map, point))));
  return sides.size === 1 && !sides.has(0) ? map : { kind: 'degenerate', why: 'crossed' };
}

/** Where the map takes a place; `undefined` on the horizon, which goes to infinity. */
export function applyHomography(map: Homography, { x, y }: Point): Point | undefined {
  const w = depthAt(map, { x, y });
  if (w === 0) return undefined;
  return { x: (map[0] * x + map[1] * y + map[2]) / w, y: (map[3] * x + map[4] * y + map[5]) / w };
}

/** The map that does `first` and then `second`. */
export function composeHomography(second: Homography, first: Homography): Homography {
  const entry = (row: 0 | 3 | 6, column: 0 | 1 | 2) =>
    second[row] * first[column] +
    second[(row + 1) as 1] * first[(column + 3) as 3] +
    second[(row + 2) as 2] * first[(column + 6) as 6];
  return scaled([
    entry(0, 0),
    entry(0, 1),
    entry(0, 2),
    entry(3, 0),
    entry(3, 1),
    entry(3, 2),
    entry(6, 0),
    entry(6, 1),
    entry(6, 2),
  ]);
}

/** The map back; `undefined` when `map` flattens the plane. */
export function invertHomography(map: Homography): Homography | undefined {
  const [a, b, c, d, e, f, g, h, i] = map;
  const cofactors: Homography = [
    e * i - f * h,
    c * h - b * i,
    b * f - c * e,
    f * g - d * i,
    a * i - c * g,
    c * d - a * f,
    d * h - e * g,
    b * g - a * h,
    a * e - b * d,
  ];
  const det = a * cofactors[0] + b * cofactors[3] + c * cofactors[6];
  const size = Math.abs(a * e * i) + Math.abs(b * f * g) + Math.abs(c * d * h) + Math.abs(c * e * g);
  return Math.abs(det) > 1e-15 * size ? scaled(cofactors) : undefined;
}

/**
 * How the map acts close to `point`: the affine map that agrees with it there in place and first derivatives (its
 * Jacobian). `undefined` on the horizon.
 */
export function jacobianAt(map: Homography, point: Point): Affine | undefined {
  const image = applyHomography(map, point);
  if (!image) return undefined;
  const w = depthAt(map, point);
  const a = (map[0] - image.x * map[6]) / w;
  const b = (map[3] - image.y * map[6]) / w;
  const c = (map[1] - image.x * map[7]) / w;
  const d = (map[4] - image.y * map[7]) / w;
  return { a, b, c, d, e: image.x - a * point.x - c * point.y, f: image.y - b * point.x - d * point.y };
}

/** What divides both coordinates: it has one sign on each side of the horizon, and is 0 on it. */
function depthAt(map: Homography, { x, y }: Point): number {
  const w = map[6] * x + map[7] * y + map[8];
  return Math.abs(w) > ON_HORIZON * (Math.abs(map[6] * x) + Math.abs(map[7] * y) + Math.abs(map[8])) ? w : 0;
}

function scaled(map: Homography): Homography {
  const size = Math.hypot(...map);
  const by = Math.abs(map[8]) > 1e-12 * size ? map[8] : size;
  return map.map((each) => each / by) as unknown as Homography;
}

/** What is wrong with four points by themselves. */
function quadTrouble(points: readonly Point[]): DegeneratePairs['why'] | undefined {
  const size = Math.max(...points.map((point) => distance(points[0] as Point, point)));
  for (let i = 0; i < 4; i++) {
    for (let j = 0; j < i; j++) {
      if (distance(points[i] as Point, points[j] as Point) <= COINCIDENT * size) return 'coincident';
    }
  }
  return triples(points).some(([a, b, c]) => {
    const longest = Math.max(distance(a, b), distance(b, c), distance(a, c));
    return Math.abs(doubleArea(a, b, c)) <= IN_LINE * longest * longest;
  })
    ? 'three-in-line'
    : undefined;
}

/** Four pairs lie on one side of the horizon when all four triangles turn alike, or all are mirrored. */
function orderTrouble(froms: readonly Point[], tos: readonly Point[]): DegeneratePairs['why'] | undefined {
  const images = triples(tos);
  const alike = triples(froms).filter((each, k) => {
    return doubleArea(...each) > 0 === doubleArea(...(images[k] as typeof each)) > 0;
  }).length;
  if (alike === 2) return 'crossed';
  return alike === 1 || alike === 3 ? 'concave' : undefined;
}

type Triple = readonly [Point, Point, Point];

function triples(points: readonly Point[]): Triple[] {
  const [a, b, c, d] = points as readonly [Point, Point, Point, Point];
  return [
    [a, b, c],
    [b, c, d],
    [c, d, a],
    [d, a, b],
  ];
}

function doubleArea(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

interface Normalising {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

/** Centroid to the origin, mean distance √2. */
function normalising(points: readonly Point[]): Normalising | undefined {
  const x = points.reduce((sum, point) => sum + point.x, 0) / points.length;
  const y = points.reduce((sum, point) => sum + point.y, 0) / points.length;
  const mean = points.reduce((sum, point) => sum + distance(point, { x, y }), 0) / points.length;
  return mean > 0 ? { x, y, scale: Math.SQRT2 / mean } : undefined;
}

/** AᵀA of the direct linear transform, two rows of A a pair. */
function normalMatrix(pairs: readonly PointPair[], before: Normalising, after: Normalising): number[][] {
  const sum = Array.from({ length: 9 }, () => new Array<number>(9).fill(0));
  for (const { from, to } of pairs) {
    const x = (from.x - before.x) * before.scale;
    const y = (from.y - before.y) * before.scale;
    const u = (to.x - after.x) * after.scale;
    const v = (to.y - after.y) * after.scale;
    for (const row of [
      [-x, -y, -1, 0, 0, 0, u * x, u * y, u],
      [0, 0, 0, -x, -y, -1, v * x, v * y, v],
    ]) {
      row.forEach((one, i) => {
        row.forEach((other, j) => {
          (sum[i] as number[])[j] = ((sum[i] as number[])[j] as number) + one * other;
        });
      });
    }
  }
  return sum;
}
