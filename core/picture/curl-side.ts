/** A side of a page or a printed frame: straight, or bowed by a bent page. */

import type { Point } from '../geometry/point';
import { median } from './median';
import { leastSquares } from './page-solve';

/**
 * From `from` to `to`, and off the straight line between them by `bow`: Legendre polynomials of the share of the way,
 * from degree 0 upwards, in pixels towards the left of the way as it is seen.
 */
export interface Side {
  readonly from: Point;
  readonly to: Point;
  readonly bow: readonly number[];
}

/** A place found on a side: its share of the way along the straight line, how far off it lies, how much it counts. */
export interface OnSide {
  readonly along: number;
  readonly off: number;
  readonly weight: number;
}

/** A bow through places, how far they lie off it (root mean square of those that agree), and the share that agrees. */
export interface FittedBow {
  readonly bow: readonly number[];
  readonly rms: number;
  readonly agree: number;
}

/** Legendre polynomials at a share of the way, lowest first. */
export function legendre(along: number, count: number): number[] {
  const x = 2 * along - 1;
  const values = [1, x];
  for (let k = 2; k < count; k++) {
    values.push(((2 * k - 1) * x * (values[k - 1] as number) - (k - 1) * (values[k - 2] as number)) / k);
  }
  return values.slice(0, count);
}

/** The place at a share of the way, a little beyond 0 and 1 too. */
export function sideAt({ from, to, bow }: Side, along: number): Point {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(dx, dy);
  const off = legendre(along, bow.length).reduce((sum, value, k) => sum + value * (bow[k] as number), 0);
  return { x: from.x + dx * along + (dy / length) * off, y: from.y + dy * along - (dx / length) * off };
}

/** The same run of a side told from another straight line near its own, for instance after its corners were found anew. */
export function withEnds(side: Side, from: Point, to: Point): Side {
  const degree = side.bow.length - 1;
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const equations = Array.from({ length: 2 * degree + 25 }, (_, k) => {
    const p = sideAt(side, k / (2 * degree + 24));
    const along = ((p.x - from.x) * dx + (p.y - from.y) * dy) / square;
    const right = ((p.x - from.x) * dy - (p.y - from.y) * dx) / Math.sqrt(square);
    return { row: legendre(along, degree + 1), right, weight: 1 };
  });
  return { from, to, bow: leastSquares(equations, degree + 1) ?? side.bow };
}

/** The farthest a side lies from the straight line between its own ends, in pixels. */
export function bowOf(side: Side): number {
  const [a, b] = [sideAt(side, 0), sideAt(side, 1)];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  let most = 0;
  for (let k = 1; k < 32; k++) {
    const p = sideAt(side, k / 32);
    most = Math.max(most, Math.abs(((p.x - a.x) * (b.y - a.y) - (p.y - a.y) * (b.x - a.x)) / length));
  }
  return most;
}

/** Rounds of weighing anew; most often the weights settle sooner. */
const ROUNDS = 12;

/** Weights (contrasts, at most 1) that change by less than this have settled. */
const SETTLED = 1e-4;

/** Places farther off than this many times the usual miss count for nothing (Tukey's biweight). */
const CUT_OFF = 4.7;

/**
 * The bow of a degree that most places agree with: least squares weighed anew by Tukey's biweight, with the scale from the
 * median miss and never below `least` px. See: P. Huber & E. Ronchetti, Robust Statistics, chapter 7. `undefined` when too
 * few places lie well apart.
 */
export function fittedBow(places: readonly OnSide[], degree: number, least: number): FittedBow | undefined {
  const equations = places.map(({ along, off, weight }) => {
    return { row: legendre(along, degree + 1), right: off, weight };
  });
  const misses = new Float64Array(places.length);
  let bow: number[] | undefined;
  let scale = least;
  for (let round = 0; round < ROUNDS; round++) {
    if (equations.filter(({ weight }) => weight > 0).length < 2 * (degree + 1)) return undefined;
    const next = leastSquares(equations, degree + 1);
    if (!next) return undefined;
    bow = next;
    for (const [i, { row, right }] of equations.entries()) {
      let off = right;
      for (let k = 0; k <= degree; k++) off -= (row[k] as number) * (next[k] as number);
      misses[i] = Math.abs(off);
    }
    scale = Math.max(least, 1.4826 * median(misses));
    let changed = 0;
    for (const [i, { weight }] of places.entries()) {
      const equation = equations[i] as { weight: number };
      const share = (misses[i] as number) / (CUT_OFF * scale);
      const anew = share < 1 ? weight * (1 - share * share) ** 2 : 0;
      changed = Math.max(changed, Math.abs(anew - equation.weight));
      equation.weight = anew;
    }
    if (changed < SETTLED) break;
  }
  const agreeing = misses.filter((miss) => miss < CUT_OFF * scale);
  if (!bow || agreeing.length === 0) return undefined;
  const rms = Math.sqrt(agreeing.reduce((sum, miss) => sum + miss * miss, 0) / agreeing.length);
  return { bow, rms, agree: misses.filter((miss) => miss < CUT_OFF * least).length / places.length };
}

/** Degrees tried for a bowed side: a spine's quick rise asks for the higher ones. */
const DEGREES = [1, 2, 3, 5, 7, 9];

/** A higher degree is taken only when it leaves less than this share of the miss. */
const WORTH_IT = 0.88;

/** The bow of the lowest degree up to `most` that no higher one betters by much. */
export function simplestBow(places: readonly OnSide[], most: number, least: number): FittedBow | undefined {
  const fits = DEGREES.filter((degree) => degree <= most).flatMap((degree) => fittedBow(places, degree, least) ?? []);
  const best = (rest: readonly FittedBow[]) => Math.min(...rest.map(({ rms, agree }) => missOf(rms, agree)));
  return fits.find(
    (fit, k) => k === fits.length - 1 || missOf(fit.rms, fit.agree) * WORTH_IT <= best(fits.slice(k + 1)),
  );
}

/** A miss with a floor of a twentieth of a pixel, and worse the fewer agree. */
function missOf(rms: number, agree: number): number {
  return Math.max(rms, 0.05) / Math.max(agree, 0.05);
}

/**
 * Where one side ends and the next begins: the crossing of the two curves near there, by Newton's method.
 * `undefined` when they run nearly alike.
 */
export function cornerBetween(ending: Side, beginning: Side): Point | undefined {
  let [s, t] = [1, 0];
  const step = 1e-3;
  for (let round = 0; round < 12; round++) {
    const [p, q] = [sideAt(ending, s), sideAt(beginning, t)];
    const [p2, q2] = [sideAt(ending, s + step), sideAt(beginning, t + step)];
    const [ax, ay, bx, by] = [p2.x - p.x, p2.y - p.y, q2.x - q.x, q2.y - q.y];
    const det = ax * by - ay * bx;
    if (Math.abs(det) < 0.05 * Math.hypot(ax, ay) * Math.hypot(bx, by)) return undefined;
    const [dx, dy] = [q.x - p.x, q.y - p.y];
    const ds = ((dx * by - dy * bx) / det) * step;
    const dt = ((dx * ay - dy * ax) / det) * step;
    s += ds;
    t += dt;
    if (Math.abs(s - 1) > 0.3 || Math.abs(t) > 0.3) return undefined;
    if (Math.abs(ds) + Math.abs(dt) < 1e-9) break;
  }
  return sideAt(ending, s);
}

/** Places are kept at least this share of the way apart, and from the ends: closer together a curve through them swings. */
const APART = 0.02;

/**
 * The side from one corner to another through the places between them, in order: the polynomial of lowest degree, one
 * degree above their number. `undefined` where a place runs back, or lies next to another or to a corner.
 */
export function sideThrough(from: Point, to: Point, places: readonly Point[]): Side | undefined {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const told = places.map(({ x, y }) => ({
    along: ((x - from.x) * dx + (y - from.y) * dy) / square,
    off: ((x - from.x) * dy - (y - from.y) * dx) / Math.sqrt(square),
  }));
  const all = [{ along: 0, off: 0 }, ...told, { along: 1, off: 0 }];
  if (!all.every(({ along }, k) => k === 0 || along - (all[k - 1] as { along: number }).along >= APART))
    return undefined;
  const count = places.length + 2;
  const bow = leastSquares(
    all.map(({ along, off }) => ({ row: legendre(along, count), right: off, weight: 1 })),
    count,
  );
  return bow && { from, to, bow };
}

/**
 * Places that a side passes through between its corners, one fewer than its degree and at least two, spread so that
 * {@link sideThrough} gives the same side back: T. Chebyshev's extreme points.
 */
export function placesOn(side: Side): Point[] {
  const degree = Math.max(3, side.bow.length - 1);
  return Array.from({ length: degree - 1 }, (_, k) => sideAt(side, (1 - Math.cos((Math.PI * (k + 1)) / degree)) / 2));
}
