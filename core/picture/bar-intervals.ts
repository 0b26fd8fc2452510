/** A printed scale bar read: how many equal intervals lie between its ends. Intervals are counted, never strokes. */

import { between, distance, type Point } from '../geometry/point';
import { type BarRow, barRows, type Strokes } from './bar-strokes';
import type { Grey } from './grey';
import { median } from './median';

export interface BarReading {
  readonly intervals: number;
  /** The ends as they were given, brought to the strokes there; where a bar runs on plain, to its outermost stroke. */
  readonly from: Point;
  readonly to: Point;
  /** An end was given on a plain tail beyond the outermost stroke. */
  readonly tail: boolean;
  /** Rows of pixels that tell so. */
  readonly rows: number;
}

const MOST_INTERVALS = 120;

/** A stroke is taken for one of the bar's within this share of an interval. */
const NEAR = 0.22;

/** An end that moves by more than this share of an interval was given on a tail. */
const ON_TAIL = 0.35;

/** Of the strokes a count asks for, and of the strokes there are, so many must agree. */
const AGREES = 0.8;

/** A count by the outermost strokes must agree so much better before the ends that were given are left. */
const BETTER = 0.05;

/** How much wider the first interval may look than the last, in a photo taken aslant: squared, about 1.5 either way. */
const ASLANT = [0, 0.04, -0.04, 0.08, -0.08, 0.12, -0.12, 0.18, -0.18, 0.24, -0.24];

/** Fewer rows than this are lettering that happens to stand evenly. */
const LEAST_ROWS = 2;

/** So few intervals are easily chance: they must be seen in more rows, stand closer, and cannot tell a slant. */
const FEW = { intervals: 4, rows: 4, near: 0.08 };

/**
 * What a scale bar between two places of a grey picture shows: ticked, ruled, or in parts alternately filled, straight or
 * aslant. The likeliest count comes first; others are finer or coarser divisions of the same bar. Empty where nothing even
 * is seen, and for a bar of a single interval.
 */
export function barIntervals(grey: Grey, from: Point, to: Point): BarReading[] {
  const length = distance(from, to);
  const read = barRows(grey, from, to).flatMap((row) => readRow(row, length) ?? []);
  const counts = [...new Set(read.map(({ intervals }) => intervals))];
  const readings = counts.flatMap((intervals) => {
    const rows = read.filter((row) => row.intervals === intervals);
    if (rows.length < (intervals < FEW.intervals ? FEW.rows : LEAST_ROWS)) return [];
    // Strokes may lean; near the line itself they stand where they belong.
    const nearest = rows.toSorted((a, b) => Math.abs(a.off) - Math.abs(b.off)).slice(0, Math.max(5, rows.length / 2));
    const [start, end] = [median(nearest.map((row) => row.start)), median(nearest.map((row) => row.end))];
    const one = (end - start) / intervals;
    const tail = Math.max(Math.abs(start), Math.abs(end - length)) > ON_TAIL * one;
    const at = (t: number) => between(from, to, t / length);
    return [
      { intervals, from: at(start), to: at(end), tail, rows: rows.length, sure: sum(rows.map((row) => row.agrees)) },
    ];
  });
  const [best, ...others] = readings.toSorted((a, b) => b.sure - a.sure).map(({ sure: _, ...reading }) => reading);
  return best ? [best, ...others.filter((other) => isSameBar(best, other))] : [];
}

/** Whether another count divides the same bar more finely or more coarsely; else its evenness is chance. */
function isSameBar(best: BarReading, other: BarReading): boolean {
  const [coarse, fine] = best.intervals < other.intervals ? [best, other] : [other, best];
  const near = (ON_TAIL * distance(fine.from, fine.to)) / fine.intervals;
  const sameEnds = distance(best.from, other.from) < near && distance(best.to, other.to) < near;
  return fine.intervals % coarse.intervals === 0 && sameEnds;
}

interface RowRead {
  readonly off: number;
  readonly intervals: number;
  readonly start: number;
  readonly end: number;
  readonly agrees: number;
}

function readRow({ off, ways }: BarRow, length: number): RowRead | undefined {
  let best: RowRead | undefined;
  for (const strokes of ways) {
    const given = bestCount(strokes, 0, length);
    const outermost = bestCount(strokes, strokes[0] ?? 0, strokes.at(-1) ?? length);
    const better = !given || (outermost && outermost.agrees > given.agrees + BETTER) ? outermost : given;
    if (better && better.agrees > AGREES && weightOf(better) > (best ? weightOf(best) : 0)) best = { off, ...better };
  }
  return best;
}

type Counted = Omit<RowRead, 'off'>;

/** One stroke in the middle says less than seven that agree a little less. */
function weightOf({ agrees, intervals }: Counted): number {
  return agrees * (1 - 0.5 / intervals);
}

/** The count of intervals between two places that the strokes agree with best. */
function bestCount(strokes: Strokes, first: number, last: number): Counted | undefined {
  if (!(last - first > 4)) return undefined;
  // An end that was given lies beside its stroke, not on it.
  const start = nearEnd(strokes, first, last);
  const end = nearEnd(strokes, last, first);
  const inside = strokes.filter((at) => at > start && at < end);
  let best: Counted | undefined;
  for (const intervals of countsToTry(inside, start, end)) {
    for (const aslant of intervals < FEW.intervals ? [0] : ASLANT) {
      const agrees = agreement(inside, { start, end, intervals, aslant });
      if (agrees > (best?.agrees ?? 0) + 1e-9) best = { intervals, start, end, agrees };
    }
  }
  return best;
}

function nearEnd(strokes: Strokes, end: number, other: number): number {
  const gaps = strokes.slice(1).map((at, i) => at - (strokes[i] as number));
  const usual = gaps.toSorted((a, b) => a - b)[gaps.length >> 1] ?? Math.abs(other - end);
  const near = strokes.toSorted((a, b) => Math.abs(a - end) - Math.abs(b - end))[0];
  return near !== undefined && Math.abs(near - end) < ON_TAIL * usual ? near : end;
}

function countsToTry(inside: Strokes, start: number, end: number): Set<number> {
  const all = [start, ...inside, end];
  const counts = new Set<number>();
  for (let i = 1; i < all.length; i++) {
    const gap = (all[i] as number) - (all[i - 1] as number);
    const about = gap > 1 ? Math.round((end - start) / gap) : 0;
    for (const count of [about - 1, about, about + 1]) if (count >= 2 && count <= MOST_INTERVALS) counts.add(count);
  }
  return counts;
}

/** How well strokes and a count agree: 1 where each stands where the other wants it and none is over on either side. */
function agreement(
  inside: Strokes,
  { start, end, intervals, aslant }: { start: number; end: number; intervals: number; aslant: number },
): number {
  const near = ((intervals < FEW.intervals ? FEW.near : NEAR) * (end - start)) / intervals;
  let met = 0;
  for (let i = 1; i < intervals; i++) {
    const u = i / intervals;
    const wanted = start + ((end - start) * u * (1 + aslant)) / (1 + aslant * u);
    const off = inside.reduce((least, at) => Math.min(least, Math.abs(at - wanted)), Number.POSITIVE_INFINITY);
    if (off < near) met += 1 - 0.2 * (off / near) ** 2;
  }
  return (2 * met) / (intervals - 1 + inside.length);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, each) => total + each, 0);
}
