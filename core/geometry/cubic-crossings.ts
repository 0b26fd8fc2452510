/**
 * Where two cubics meet away from their ends.
 *
 * Both are halved until their hulls part, or until every direction of one lies to the same side of every direction of
 * the other: then they meet at most once, and Newton's method finds where. Where they run nearly alike the point at
 * which they run exactly alike is sought instead, and counts as touching when the gap there is within `TOUCHING`.
 *
 * Limits: meetings nearer together than the gap can show (see `sameTouch`) are told as one touch. Curves that share a
 * stretch are the business of the caller.
 */
import { type Arc, apart, arcOf, at, bend, halves, sideOf, sizeOf, slope } from './bezier-arc';
import { SAME_POINT } from './point';
import type { Cubic } from './segment';

/** Curves that come this near meet: a millionth of a millimetre, well above rounding and well below SAME_POINT. */
export const TOUCHING = 1e-6;

/** A meeting of two stretches by their parameters; `touching` when they run in the same direction there. */
export interface ParameterPair {
  readonly ta: number;
  readonly tb: number;
  readonly touching: boolean;
}

/** Arcs both smaller than this, in mm, are halved no more once they may only touch. */
const LEAF = 0.02;

/** Arcs both smaller than this are never halved again. */
const SMALLEST = 1e-7;

/** Nor are arcs of so small a share of their curve, however far it reaches: numbers are no finer. */
const FINEST = 1e-15;

/** Pairs of arcs looked at before giving up: some hundred times what an ordinary pair of curves needs. */
const MOST_PAIRS = 40_000;

/** Two different cubics have nine places in common at most; so many finds are rounding, on curves that reach too far for it. */
const MOST_FOUND = 200;

/** Nothing is looked for on curves that reach further than this, in mm, or are no numbers: squares would overflow. */
const TOO_FAR = 1e100;

interface Search {
  readonly a: Arc;
  readonly b: Arc;
  /** How far apart two equal places may come out by rounding. */
  readonly rounding: number;
  readonly found: ParameterPair[];
  pairs: number;
}

/** The places where two cubics cross or touch, unordered, some perhaps twice; at shared ends they may be missing. */
export function cubicCrossings(first: Cubic, second: Cubic): ParameterPair[] {
  const a = arcOf(first, first.p0.x, first.p0.y);
  const b = arcOf(second, first.p0.x, first.p0.y);
  const size = Math.max(...a.map(Math.abs), ...b.map(Math.abs));
  if (!(size < TOO_FAR)) return [];
  const search: Search = { a, b, rounding: 1e-14 * size, found: [], pairs: 0 };
  seek(search, a, 0, 1, b, 0, 1);
  return withoutDoubles(search);
}

function seek(search: Search, a: Arc, a0: number, a1: number, b: Arc, b0: number, b1: number): void {
  if (++search.pairs > MOST_PAIRS || search.found.length > MOST_FOUND || apart(a, b, TOUCHING)) return;
  const sizeA = sizeOf(a);
  const sizeB = sizeOf(b);
  if (sideOf(a, b) !== 0 && cross(search, a0, a1, b0, b1)) return;
  if (sizeA < LEAF && sizeB < LEAF && touch(search, a0, a1, b0, b1)) return;
  const halvesA = sizeA >= SMALLEST && a1 - a0 > FINEST;
  const halvesB = sizeB >= SMALLEST && b1 - b0 > FINEST;
  if (!halvesA && !halvesB) return;

  if (halvesA && (sizeA >= sizeB / 2 || !halvesB)) {
    const am = (a0 + a1) / 2;
    const [head, tail] = halves(a);
    if (halvesB && sizeB >= sizeA / 2) {
      const bm = (b0 + b1) / 2;
      const [early, late] = halves(b);
      seek(search, head, a0, am, early, b0, bm);
      seek(search, head, a0, am, late, bm, b1);
      seek(search, tail, am, a1, early, b0, bm);
      seek(search, tail, am, a1, late, bm, b1);
    } else {
      seek(search, head, a0, am, b, b0, b1);
      seek(search, tail, am, a1, b, b0, b1);
    }
  } else {
    const bm = (b0 + b1) / 2;
    const [early, late] = halves(b);
    seek(search, a, a0, a1, early, b0, bm);
    seek(search, a, a0, a1, late, bm, b1);
  }
}

/** Newton's method on A(s) = B(t) from the middle of both arcs; true when it ends on a meeting inside them. */
function cross(search: Search, a0: number, a1: number, b0: number, b1: number): boolean {
  let s = (a0 + a1) / 2;
  let t = (b0 + b1) / 2;
  const slackA = 1e-3 * (a1 - a0) + 1e-12;
  const slackB = 1e-3 * (b1 - b0) + 1e-12;
  for (let step = 0; step < 12; step++) {
    const gapX = at(search.b, 0, t) - at(search.a, 0, s);
    const gapY = at(search.b, 1, t) - at(search.a, 1, s);
    if (Math.abs(gapX) + Math.abs(gapY) <= search.rounding) break;
    const ax = slope(search.a, 0, s);
    const ay = slope(search.a, 1, s);
    const bx = slope(search.b, 0, t);
    const by = slope(search.b, 1, t);
    const turn = ax * by - ay * bx;
    s += (gapX * by - gapY * bx) / turn;
    t += (gapX * ay - gapY * ax) / turn;
    // Outside by more than the arcs themselves: not this pair's meeting, if any.
    if (!(s > 2 * a0 - a1 && s < 2 * a1 - a0 && t > 2 * b0 - b1 && t < 2 * b1 - b0)) return false;
  }
  if (s < a0 - slackA || s > a1 + slackA || t < b0 - slackB || t > b1 + slackB) return false;
  s = Math.min(1, Math.max(0, s));
  t = Math.min(1, Math.max(0, t));
  if (!(gapBetween(search, s, t) <= 100 * search.rounding)) return false;
  search.found.push({ ta: s, tb: t, touching: false });
  return true;
}

/**
 * Newton's method for the places where both curves run alike, A' × B' = 0, and stand opposite one another,
 * (A - B) · A' = 0. True when there is one near by with no gap to speak of: a touch, which is recorded. Arcs that run
 * alike for their whole length may have theirs further off; they are done with in any case.
 */
function touch(search: Search, a0: number, a1: number, b0: number, b1: number): boolean {
  const { a, b } = search;
  let s = (a0 + a1) / 2;
  let t = (b0 + b1) / 2;
  const alike = runAlike(search, s, t);
  for (let step = 0; step < 20; step++) {
    const gapX = at(a, 0, s) - at(b, 0, t);
    const gapY = at(a, 1, s) - at(b, 1, t);
    const ax = slope(a, 0, s);
    const ay = slope(a, 1, s);
    const bx = slope(b, 0, t);
    const by = slope(b, 1, t);
    const axx = bend(a, 0, s);
    const ayy = bend(a, 1, s);
    const turn = ax * by - ay * bx;
    const foot = gapX * ax + gapY * ay;
    const turnS = axx * by - ayy * bx;
    const turnT = ax * bend(b, 1, t) - ay * bend(b, 0, t);
    const footS = ax * ax + ay * ay + gapX * axx + gapY * ayy;
    const footT = -(bx * ax + by * ay);
    const det = turnS * footT - turnT * footS;
    const ds = (turn * footT - turnT * foot) / det;
    const dt = (turnS * foot - turn * footS) / det;
    if (!(Number.isFinite(ds) && Number.isFinite(dt))) break;
    s -= ds;
    t -= dt;
    const near = s > 3 * a0 - 2 * a1 && s < 3 * a1 - 2 * a0 && t > 3 * b0 - 2 * b1 && t < 3 * b1 - 2 * b0;
    if (!near && !alike) return false;
    if (!(s >= 0 && s <= 1 && t >= 0 && t <= 1)) return alike; // the ends are looked at by themselves
    if (Math.abs(ds) + Math.abs(dt) < 1e-15) break;
  }
  if (gapBetween(search, s, t) > TOUCHING) return alike;
  search.found.push({ ta: s, tb: t, touching: true });
  return true;
}

/** Whether two small arcs lie within `TOUCHING` of one another side by side, so that halving could never part them. */
function runAlike({ a, b }: Search, s: number, t: number): boolean {
  const ax = slope(a, 0, s);
  const ay = slope(a, 1, s);
  const bx = slope(b, 0, t);
  const by = slope(b, 1, t);
  const speed = Math.hypot(bx, by);
  const sine = (ax * by - ay * bx) / (Math.hypot(ax, ay) * speed);
  const off = ((at(a, 0, s) - at(b, 0, t)) * by - (at(a, 1, s) - at(b, 1, t)) * bx) / speed;
  return Math.abs(sine) * LEAF <= TOUCHING && Math.abs(off) <= TOUCHING;
}

function gapBetween({ a, b }: Search, s: number, t: number): number {
  return Math.hypot(at(a, 0, s) - at(b, 0, t), at(a, 1, s) - at(b, 1, t));
}

/** Each meeting once: a touch stands for the crossings too near to it to be told apart. */
function withoutDoubles({ a, b, found }: Search): ParameterPair[] {
  const kept: ParameterPair[] = [];
  for (const one of found.sort((x, y) => Number(y.touching) - Number(x.touching))) {
    const near = kept.some((other) => {
      const reach = other.touching ? sameTouch(a, b, other) : SAME_POINT;
      return near1(a, one.ta, other.ta, reach) && near1(b, one.tb, other.tb, reach);
    });
    if (!near) kept.push(one);
  }
  return kept;
}

function near1(arc: Arc, t: number, u: number, reach: number): boolean {
  const speed = Math.max(Math.hypot(slope(arc, 0, (t + u) / 2), slope(arc, 1, (t + u) / 2)), 1e-9);
  return Math.abs(t - u) * speed <= reach;
}

/** How far along from a touch the gap stays within `TOUCHING`, from the difference of the two curvatures. */
function sameTouch(a: Arc, b: Arc, { ta, tb }: ParameterPair): number {
  const along = slope(a, 0, ta) * slope(b, 0, tb) + slope(a, 1, ta) * slope(b, 1, tb);
  const difference = Math.abs(bendOver(a, ta) - Math.sign(along) * bendOver(b, tb));
  return Math.min(2 * Math.sqrt((2 * TOUCHING) / Math.max(difference, 1e-12)) + SAME_POINT, 1);
}

function bendOver(arc: Arc, t: number): number {
  const dx = slope(arc, 0, t);
  const dy = slope(arc, 1, t);
  const speed = Math.hypot(dx, dy);
  return speed > 0 ? (dx * bend(arc, 1, t) - dy * bend(arc, 0, t)) / speed ** 3 : 0;
}
