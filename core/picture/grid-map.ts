/** From the squares of a printed grid to the photo and back: a projective map, corrected evenly by polynomials. */

import type { Point } from '../geometry/point';
import { applyHomography, type Homography, invertHomography, type PointPair } from '../geometry/projective';
import { legendre } from './curl-side';
import type { Crossing } from './grid-lattice';
import { median } from './median';
import { bestHomography } from './page-homography';
import { type Equation, leastSquares } from './page-solve';

/** Places on the page are told in squares, from crossing (0, 0). */
export interface SquaresMap {
  readonly kind: 'squares-map';
  readonly columns: number;
  readonly rows: number;
  readonly toPhoto: Homography;
  readonly toSquares: Homography;
  /** Polynomials of degree up to this together correct the projective map; 0 where the page lies flat. */
  readonly degree: number;
  readonly shiftX: readonly number[];
  readonly shiftY: readonly number[];
  /** How far crossings lie off the map, in pixels: root mean square and the worst of those that agree; how many do not. */
  readonly rms: number;
  readonly worst: number;
  readonly leftOut: number;
}

/** Fewer than 3 by 3 crossings or all in a line; or the map would turn a square over. */
export interface NoSquaresMap {
  readonly kind: 'no-squares-map';
  readonly why: 'too-few' | 'folds-over';
}

/** Degrees of the correction that are tried. */
const DEGREES = [0, 2, 3, 4, 5, 6, 7, 8];

/** A higher degree must leave less than this share of the miss at crossings it was not told of. */
const WORTH_IT = 0.9;

/** The map fitted to all crossings, those that disagree weighing nothing. */
export function squaresMap(crossings: readonly Crossing[]): SquaresMap | NoSquaresMap {
  const columns = Math.max(...crossings.map(({ column }) => column));
  const rows = Math.max(...crossings.map(({ row }) => row));
  if (!(crossings.length >= 9 && columns >= 2 && rows >= 2)) return { kind: 'no-squares-map', why: 'too-few' };
  const pairs = crossings.map(({ column, row, at }): PointPair => ({ from: { x: column, y: row }, to: at }));
  const toPhoto = bestHomography(pairs);
  if ('kind' in toPhoto) return { kind: 'no-squares-map', why: 'too-few' };
  const toSquares = invertHomography(toPhoto);
  if (!toSquares) return { kind: 'no-squares-map', why: 'too-few' };
  const base = { kind: 'squares-map', columns, rows, toPhoto, toSquares } as const;
  const missed = pairs.map(({ from, to }) => {
    const seen = applyHomography(toPhoto, from) ?? to;
    return { from, x: to.x - seen.x, y: to.y - seen.y };
  });
  const degree = bestDegree(missed, base);
  const { shiftX, shiftY, weights } = shiftsOf(missed, base, degree);
  const map = { ...base, degree, shiftX, shiftY, rms: 0, worst: 0, leftOut: 0 };
  const misses = pairs.flatMap(({ from, to }, k) => {
    const seen = squaresToPhoto(map, from);
    return (weights[k] as number) > 0 ? [Math.hypot(seen.x - to.x, seen.y - to.y)] : [];
  });
  const rms = Math.sqrt(misses.reduce((sum, each) => sum + each * each, 0) / misses.length);
  const fitted = { ...map, rms, worst: Math.max(...misses), leftOut: pairs.length - misses.length };
  return isOneSided(fitted) ? fitted : { kind: 'no-squares-map', why: 'folds-over' };
}

interface Missed extends Point {
  readonly from: Point;
}

type Size = Pick<SquaresMap, 'columns' | 'rows'>;

/** Products of Legendre polynomials across and down with degrees together up to `degree`. */
function terms({ columns, rows }: Size, degree: number, { x, y }: Point): number[] {
  if (degree === 0) return [];
  const [across, down] = [legendre(x / columns, degree + 1), legendre(y / rows, degree + 1)];
  return across.flatMap((each, i) => down.slice(0, degree + 1 - i).map((other) => each * other));
}

/** The degree that foretells best every fifth crossing from the others. */
function bestDegree(missed: readonly Missed[], size: Size): number {
  const told = missed.filter((_, k) => k % 5 !== 2);
  const kept = missed.filter((_, k) => k % 5 === 2);
  let [best, least] = [0, Number.POSITIVE_INFINITY];
  for (const degree of DEGREES) {
    if (((degree + 1) * (degree + 2)) / 2 > told.length / 2) break;
    const { shiftX, shiftY } = shiftsOf(told, size, degree);
    const miss = median(
      kept.map((each) => {
        const row = terms(size, degree, each.from);
        return Math.hypot(each.x - sumOf(row, shiftX), each.y - sumOf(row, shiftY));
      }),
    );
    if (miss < WORTH_IT * least) [best, least] = [degree, miss];
  }
  return best;
}

/** Least squares weighed anew by Tukey's biweight; nothing below a fifth of a pixel is disagreement. */
function shiftsOf(missed: readonly Missed[], size: Size, degree: number) {
  const rows = missed.map(({ from }) => terms(size, degree, from));
  const count = rows[0]?.length ?? 0;
  let weights = missed.map(() => 1);
  let [shiftX, shiftY]: number[][] = [[], []];
  for (let round = 0; round < 8; round++) {
    const solve = (axis: 'x' | 'y') => {
      const equations = missed.map((each, k): Equation => {
        return { row: rows[k] as number[], right: each[axis], weight: weights[k] as number };
      });
      return count === 0 ? [] : (leastSquares(equations, count, 1e-9) ?? new Array<number>(count).fill(0));
    };
    [shiftX, shiftY] = [solve('x'), solve('y')];
    const off = missed.map(({ x, y }, k) => {
      const row = rows[k] as number[];
      return Math.hypot(x - sumOf(row, shiftX as number[]), y - sumOf(row, shiftY as number[]));
    });
    const cut = 4.7 * Math.max(0.2, 1.2 * median(off));
    weights = off.map((each) => (each < cut ? (1 - (each / cut) ** 2) ** 2 : 0));
  }
  return { shiftX: shiftX as number[], shiftY: shiftY as number[], weights };
}

function sumOf(row: readonly number[], shifts: readonly number[]): number {
  return row.reduce((sum, each, k) => sum + each * (shifts[k] as number), 0);
}

/** Where a place of the grid is seen; the correction goes on beyond the grid as at its edge. */
export function squaresToPhoto(map: SquaresMap, page: Point): Point {
  const seen = applyHomography(map.toPhoto, page) ?? { x: Number.NaN, y: Number.NaN };
  const inside = { x: clamped(page.x, map.columns), y: clamped(page.y, map.rows) };
  const row = terms(map, map.degree, inside);
  return { x: seen.x + sumOf(row, map.shiftX), y: seen.y + sumOf(row, map.shiftY) };
}

function clamped(value: number, most: number): number {
  return Math.min(Math.max(value, 0), most);
}

/** The place of the grid, in squares, seen at a place of the photo; `undefined` beyond the horizon or where none is found. */
export function photoToSquares(map: SquaresMap, photo: Point): Point | undefined {
  let page = applyHomography(map.toSquares, photo);
  for (let round = 0; page && round < 30; round++) {
    const seen = squaresToPhoto(map, page);
    const aim = applyHomography(map.toSquares, {
      x: photo.x - seen.x + (applyHomography(map.toPhoto, page)?.x ?? Number.NaN),
      y: photo.y - seen.y + (applyHomography(map.toPhoto, page)?.y ?? Number.NaN),
    });
    if (!aim) return undefined;
    const moved = Math.hypot(aim.x - page.x, aim.y - page.y);
    page = aim;
    if (moved < 1e-10) return page;
  }
  return undefined;
}

/** Whether every part of the grid is seen the same way up. */
function isOneSided(map: SquaresMap): boolean {
  const cells = 24;
  const at = (i: number, k: number) => squaresToPhoto(map, { x: (map.columns * i) / cells, y: (map.rows * k) / cells });
  for (let i = 0; i < cells; i++) {
    for (let k = 0; k < cells; k++) {
      const [p, q, r] = [at(i, k), at(i + 1, k), at(i, k + 1)];
      if (!((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x) > 0)) return false;
    }
  }
  return true;
}
