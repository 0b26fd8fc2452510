/**
 * The true parallel of one stretch: where its points lie, and where it turns back on itself.
 *
 * At a curvature k the parallel at distance d travels 1 + d k times as fast as its stretch (k positive for clockwise
 * turning, d positive to the left of travel). Where that is negative it runs backwards, nearer to the stretch than d,
 * and no such part belongs to a cut line.
 *
 * See: R. Levien, Parallel curves of cubic Béziers (2022), on cusps.
 */
import {
  segmentAt,
  segmentDerivative,
  segmentSecondDerivative,
  segmentSize,
  segmentTangent,
  splitSegment,
} from './cubic-curve';
import type { Point, Vector } from './point';
import { polynomialRoots } from './polynomial';
import type { Cubic, Path, Segment } from './segment';

/** A place of a parallel and the unit direction of the stretch it accompanies. */
export interface ParallelPlace {
  readonly point: Point;
  readonly tangent: Vector;
}

/** Part of a stretch, between two of its parameters. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** A curve slower than this share of its size counts as standing still: it has a cusp there, a corner of half a turn. */
const STANDSTILL = 1e-6;

/** Spans shorter than this come of rounding where a stretch ends at a cusp, and are no part of its parallel. */
const NOISE = 1e-7;

/** Even places at which the speed of a parallel is looked at, besides its natural extremes. */
const LOOKS = 12;

/** The place of the parallel that belongs to `t`. */
export function parallelPlace(segment: Segment, offset: number, t: number): ParallelPlace {
  const at = segmentAt(segment, t);
  const tangent = segmentTangent(segment, t) ?? { dx: 1, dy: 0 };
  return { point: { x: at.x + tangent.dy * offset, y: at.y - tangent.dx * offset }, tangent };
}

/** The stretches of a path that go somewhere, split where a curve stands still, so that each has a direction throughout. */
export function steadyStretches(path: Path): Segment[] {
  return path.flatMap((segment) => {
    const size = segmentSize(segment);
    if (!(size > 0)) return [];
    if (segment.kind === 'line') return [segment];
    const parts: Segment[] = [];
    let rest: Segment = segment;
    let done = 0;
    for (const t of standstills(segment, size)) {
      const [head, tail] = splitSegment(rest, (t - done) / (1 - done));
      parts.push(head);
      rest = tail;
      done = t;
    }
    return [...parts, rest];
  });
}

/** Where the parallel of a steady stretch runs forwards, in order; all of it when nothing is too tight. */
export function forwardSpans(segment: Segment, offset: number): Span[] {
  if (segment.kind === 'line') return [{ from: 0, to: 1 }];
  const speed = speedOfParallel(segment, offset);
  if (!speed) return [{ from: 0, to: 1 }];
  const spans: Span[] = [];
  let from = 0;
  let forwards = speed.at(1e-9) > 0;
  for (const t of signChanges(speed)) {
    if (forwards && t > from) spans.push({ from, to: t });
    forwards = !forwards;
    from = t;
  }
  if (forwards && from < 1) spans.push({ from, to: 1 });
  return spans.filter((span) => span.to - span.from > NOISE);
}

/** The inner parameters where a cubic stands still. */
function standstills(curve: Cubic, size: number): number[] {
  if (leastSpeed(curve) > STANDSTILL * size) return [];
  return polynomialRoots(slopeOfSpeedSq(curve)).filter((t) => {
    if (!(t > 1e-6 && t < 1 - 1e-6)) return false;
    const { dx, dy } = segmentDerivative(curve, t);
    return Math.hypot(dx, dy) < STANDSTILL * size;
  });
}

/**
 * A speed the cubic is never below, 0 or less where nothing is sure: its velocity is a mean of three times its legs, so
 * along its chord it advances at least as fast as the slowest of them. Most edges are sure, and need no roots.
 */
function leastSpeed({ p0, p1, p2, p3 }: Cubic): number {
  const chordX = p3.x - p0.x;
  const chordY = p3.y - p0.y;
  const chord = Math.hypot(chordX, chordY);
  if (!(chord > 0)) return 0;
  const first = (p1.x - p0.x) * chordX + (p1.y - p0.y) * chordY;
  const middle = (p2.x - p1.x) * chordX + (p2.y - p1.y) * chordY;
  const last = (p3.x - p2.x) * chordX + (p3.y - p2.y) * chordY;
  return (3 * Math.min(first, middle, last)) / chord;
}

/** The coefficients of B' · B'', a cubic in t: the speed is lowest and highest where it is zero. */
function slopeOfSpeedSq({ p0, p1, p2, p3 }: Cubic): number[] {
  const ax = p1.x - p0.x;
  const bx = 2 * (p2.x - 2 * p1.x + p0.x);
  const cx = p3.x - 3 * p2.x + 3 * p1.x - p0.x;
  const ay = p1.y - p0.y;
  const by = 2 * (p2.y - 2 * p1.y + p0.y);
  const cy = p3.y - 3 * p2.y + 3 * p1.y - p0.y;
  return [
    ax * bx + ay * by,
    bx * bx + by * by + 2 * (ax * cx + ay * cy),
    3 * (bx * cx + by * cy),
    2 * (cx * cx + cy * cy),
  ];
}

interface Speed {
  /** speed³ + d · (B' × B''): has the sign of 1 + d k, and is never infinite. */
  readonly at: (t: number) => number;
  /** Parameters between which it is smooth and simple, rising from 0 to 1. */
  readonly marks: readonly number[];
}

/** The speed of the parallel of a cubic, or `undefined` when it is positive throughout. */
function speedOfParallel(curve: Cubic, offset: number): Speed | undefined {
  // B' × B'' of a cubic is a quadratic: its value at three places gives it.
  const turning = (t: number) => {
    const d = segmentDerivative(curve, t);
    const b = segmentSecondDerivative(curve, t);
    return d.dx * b.dy - d.dy * b.dx;
  };
  const [start, middle, end] = [turning(0), turning(0.5), turning(1)];
  const slope = 4 * middle - 3 * start - end;
  const bend = 2 * (start + end - 2 * middle);
  const vertex = bend !== 0 ? -slope / (2 * bend) : -1;
  const peak = vertex > 0 && vertex < 1 ? start + vertex * (slope + vertex * bend) : start;
  const tightest = Math.min(offset * start, offset * end, offset * peak);
  if (tightest >= 0 || Math.max(0, leastSpeed(curve)) ** 3 + tightest > 0) return undefined;
  const at = (t: number) => {
    const { dx, dy } = segmentDerivative(curve, t);
    return (dx * dx + dy * dy) ** 1.5 + offset * (start + t * (slope + t * bend));
  };
  const marks = new Set([
    0,
    1,
    vertex,
    ...polynomialRoots(slopeOfSpeedSq(curve)),
    ...polynomialRoots([start, slope, bend]),
  ]);
  for (let i = 1; i < LOOKS; i++) marks.add(i / LOOKS);
  marks.add(0.25 / LOOKS).add(1 - 0.25 / LOOKS);
  return { at, marks: [...marks].filter((t) => t >= 0 && t <= 1).sort((a, b) => a - b) };
}

/** Where the speed changes sign, rising; a dip between two marks is followed to its bottom first. */
function signChanges({ at, marks }: Speed): number[] {
  const changes: number[] = [];
  const places = marks.map((t) => ({ t, value: at(t) }));
  // A stretch may begin or end with a handle of no length, where the speed is zero: the sign just inside counts.
  places[0] = { t: 0, value: at(1e-9) };
  places[places.length - 1] = { t: 1, value: at(1 - 1e-9) };
  for (let i = 1; i < places.length; i++) {
    const [before, here, after] = [places[i - 1], places[i], places[i + 1]] as [Look, Look, Look | undefined];
    if (before.value > 0 !== here.value > 0) changes.push(rootBetween(at, before, here));
    if (!after || here.value <= 0 || here.value > before.value || here.value > after.value) continue;
    const bottom = lowest(at, before.t, after.t);
    if (bottom.value > 0) continue;
    // The dip is cut in on the side of `here` where its bottom lies.
    if (bottom.t < here.t) changes.push(rootBetween(at, before, bottom), rootBetween(at, bottom, here));
    else changes.push(rootBetween(at, here, bottom), rootBetween(at, bottom, after));
  }
  return changes.sort((a, b) => a - b);
}

interface Look {
  readonly t: number;
  readonly value: number;
}

function rootBetween(at: (t: number) => number, one: Look, other: Look): number {
  let low = one.t;
  let high = other.t;
  for (let step = 0; step < 52; step++) {
    const middle = (low + high) / 2;
    if (at(middle) > 0 === one.value > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The lowest place between two parameters, by golden section; ends early once below zero. */
function lowest(at: (t: number) => number, from: number, to: number): Look {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  for (let step = 0; step < 24; step++) {
    const [a, b] = [high - golden * (high - low), low + golden * (high - low)];
    const [atA, atB] = [at(a), at(b)];
    if (atA <= 0) return { t: a, value: atA };
    if (atB <= 0) return { t: b, value: atB };
    if (atA < atB) high = b;
    else low = a;
  }
  const t = (low + high) / 2;
  return { t, value: at(t) };
}
