/**
 * A photo laid flat by all crossings of a printed grid in it: the best flat view of them, and over it a smooth bending
 * that takes up what a curled page leaves.
 *
 * Limits: good inside the grid; beyond its outermost lines the bending runs wild, and only the flat view is kept there.
 */
import { distance, type PhotoPoint, type Point } from '../geometry/point';
import { applyHomography, type Homography, homographyFrom, invertHomography } from '../geometry/projective';
import { leastSquares } from '../picture/least-squares';

/** A crossing of the grid, counted in squares from its top left corner, and where it is in the photo. */
export interface CountedPlace {
  readonly grid: Point;
  readonly photo: PhotoPoint;
}

export interface GridMap {
  readonly kind: 'grid';
  readonly columns: number;
  readonly rows: number;
  /** The flat view: from squares to the photo, and back. */
  readonly toPhoto: Homography;
  readonly toGrid: Homography;
  /** The bending, in pixels of the photo, as polynomials over the grid; of degree 0 (none) to 5. */
  readonly degree: number;
  readonly bendX: readonly number[];
  readonly bendY: readonly number[];
  /** How far the crossings lie from the map: root of the mean square, in pixels, allowing for what was fitted. */
  readonly offPx: number;
}

/** Degrees of bending tried: each must better the one before by this share, or the simpler one stands. */
const DEGREES = [2, 3, 4, 5];
const BETTER = 0.15;

/** Crossings off by more than this many times the usual are left out, once: a letter on a line can pull one away. */
const WILD = 5;

/** Steps of Newton's method back to the grid. */
const ROUNDS = 8;

/** The map fitted to all crossings; `undefined` for fewer than four, or all in one line. */
export function gridMap(places: readonly CountedPlace[]): GridMap | undefined {
  const first = fitted(places);
  if (!first) return undefined;
  const offs = places.map((place) => offOf(first, place));
  const usual = offs.slice().sort((a, b) => a - b)[Math.floor(offs.length / 2)] ?? 0;
  const tame = places.filter((_, i) => (offs[i] as number) <= WILD * Math.max(usual, 0.05));
  return tame.length < places.length ? (fitted(tame) ?? first) : first;
}

/** Where a place of the grid (in squares) is seen; `undefined` beyond the horizon. */
export function gridToPhoto(map: GridMap, grid: Point): PhotoPoint | undefined {
  const flat = applyHomography(map.toPhoto, grid);
  if (!flat) return undefined;
  const [u, v] = onUnits(map, grid);
  return { x: flat.x + bendAt(map.bendX, map.degree, u, v), y: flat.y + bendAt(map.bendY, map.degree, u, v) };
}

/** Where a place of the photo lies on the grid, in squares, to 1e-6 of one, by Newton's method from the flat view. */
export function photoToGrid(map: GridMap, photo: PhotoPoint): Point | undefined {
  let at = applyHomography(map.toGrid, photo);
  for (let round = 0; at && round < ROUNDS; round++) {
    const step = 1e-3;
    const here = gridToPhoto(map, at);
    const across = gridToPhoto(map, { x: at.x + step, y: at.y });
    const down = gridToPhoto(map, { x: at.x, y: at.y + step });
    if (!here || !across || !down) return undefined;
    const [a, b] = [(across.x - here.x) / step, (down.x - here.x) / step];
    const [c, d] = [(across.y - here.y) / step, (down.y - here.y) / step];
    const size = a * d - b * c;
    const [ex, ey] = [photo.x - here.x, photo.y - here.y];
    const next: Point = { x: at.x + (d * ex - b * ey) / size, y: at.y + (a * ey - c * ex) / size };
    if (!Number.isFinite(next.x) || !Number.isFinite(next.y)) return undefined;
    const moved = distance(next, at);
    at = next;
    if (moved < 1e-9) break;
  }
  return at;
}

function fitted(places: readonly CountedPlace[]): GridMap | undefined {
  const toPhoto = homographyFrom(places.map(({ grid, photo }) => ({ from: grid, to: photo })));
  if ('kind' in toPhoto) return undefined;
  const toGrid = invertHomography(toPhoto);
  if (!toGrid) return undefined;
  const columns = Math.max(...places.map(({ grid }) => grid.x));
  const rows = Math.max(...places.map(({ grid }) => grid.y));
  const flat: GridMap = { kind: 'grid', columns, rows, toPhoto, toGrid, degree: 0, bendX: [], bendY: [], offPx: 0 };
  let best = { ...flat, offPx: misfit(flat, places, 4) };
  for (const degree of DEGREES) {
    const bent = withBend(flat, places, degree);
    if (bent && bent.offPx < best.offPx * (1 - BETTER)) best = bent;
  }
  return best;
}

function withBend(flat: GridMap, places: readonly CountedPlace[], degree: number): GridMap | undefined {
  const size = termsOf(degree);
  // Half again as many crossings as numbers fitted, or the fit follows their slips.
  if (places.length < 1.5 * size) return undefined;
  const rows = new Float64Array(places.length * size);
  const [x, y] = [new Float64Array(places.length), new Float64Array(places.length)];
  places.forEach(({ grid, photo }, i) => {
    const plain = applyHomography(flat.toPhoto, grid) ?? photo;
    x[i] = photo.x - plain.x;
    y[i] = photo.y - plain.y;
    const [u, v] = onUnits(flat, grid);
    fillTerms(rows.subarray(i * size, (i + 1) * size), degree, u, v);
  });
  const even = new Float64Array(places.length).fill(1);
  const [bendX, bendY] = [leastSquares(rows, x, even), leastSquares(rows, y, even)];
  if (!bendX || !bendY) return undefined;
  const bent = { ...flat, degree, bendX, bendY };
  return { ...bent, offPx: misfit(bent, places, size) };
}

function misfit(map: GridMap, places: readonly CountedPlace[], fittedNumbers: number): number {
  const sum = places.reduce((total, place) => total + offOf(map, place) ** 2, 0);
  return Math.sqrt(sum / Math.max(1, places.length - fittedNumbers));
}

function offOf(map: GridMap, { grid, photo }: CountedPlace): number {
  const seen = gridToPhoto(map, grid);
  return seen ? distance(seen, photo) : Number.MAX_VALUE;
}

/** The grid on -1 to 1 both ways; places beyond its edge count as on it. */
function onUnits({ columns, rows }: GridMap, { x, y }: Point): readonly [number, number] {
  const clamp = (t: number) => Math.min(1, Math.max(-1, t));
  return [clamp((2 * x) / columns - 1), clamp((2 * y) / rows - 1)];
}

function termsOf(degree: number): number {
  return ((degree + 1) * (degree + 2)) / 2;
}

function fillTerms(terms: Float64Array, degree: number, u: number, v: number): void {
  let at = 0;
  for (let i = 0; i <= degree; i++) {
    for (let j = 0; j <= degree - i; j++) terms[at++] = Math.cos(i * Math.acos(u)) * Math.cos(j * Math.acos(v));
  }
}

function bendAt(bend: readonly number[], degree: number, u: number, v: number): number {
  let [sum, at] = [0, 0];
  for (let i = 0; bend.length > 0 && i <= degree; i++) {
    for (let j = 0; j <= degree - i; j++) {
      sum += (bend[at++] as number) * Math.cos(i * Math.acos(u)) * Math.cos(j * Math.acos(v));
    }
  }
  return sum;
}
