import { move, type Point, unit, type Vector, vectorBetween } from '../geometry/point';
import type { Grey } from './grey';
import { greyAt } from './ink-profile';

/** Places along a bar where a stroke stands or where its shade changes, in pixels from its first end, in order. */
export type Strokes = readonly number[];

/** What one row of pixels along a bar tells, `off` pixels to the right of the bar as one goes along it. */
export interface BarRow {
  readonly off: number;
  /** By the middles of dark stretches, by both their ends, and by the middles of the short and the ends of the long. */
  readonly ways: readonly Strokes[];
}

/** How far beside a bar its strokes are looked for, as a share of its length, and the bounds of that in pixels. */
const BESIDE = 0.15;
const [LEAST_BESIDE, MOST_BESIDE] = [8, 48];

/** How far beyond its ends, in the same way. */
const BEYOND = 0.04;
const LEAST_BEYOND = 3;

const STEP = 0.5;

/** Fainter than this is paper, grey from 0 to 1. */
const LEAST_DEPTH = 0.12;

/** A row whose darkest place is paler than this share of the darkest of all says nothing. */
const PALE = 0.35;

/** A shadow over the page changes little within so many pixels. */
const SHADOW_PX = 8;

/** The rows along a bar from one end to the other; none where there is no ink. */
export function barRows(grey: Grey, from: Point, to: Point): BarRow[] {
  const run = vectorBetween(from, to);
  const along = unit(run);
  const length = Math.hypot(run.dx, run.dy);
  if (!along || length < 2 * LEAST_BESIDE) return [];
  const beyond = Math.max(LEAST_BEYOND, BEYOND * length);
  const beside = Math.round(Math.min(MOST_BESIDE, Math.max(LEAST_BESIDE, BESIDE * length)));
  const count = Math.floor((length + 2 * beyond) / STEP) + 1;
  const start = move(from, along, -beyond);
  const shades = Array.from({ length: 2 * beside + 1 }, (_, k) => shadesAlong(grey, start, along, k - beside, count));
  const paper = paperAlong(shades, count);
  const depths = shades.map((row) => row.map((shade, i) => (paper[i] as number) - shade));
  const darkest = depths.map((row) => row.reduce((most, each) => Math.max(most, each), 0));
  const most = Math.max(...darkest);
  if (most < LEAST_DEPTH) return [];
  return depths.flatMap((row, k) => {
    const deep = darkest[k] as number;
    if (deep < PALE * most) return [];
    const dark = darkStretches(row, deep).map(([a, b]) => [a * STEP - beyond, b * STEP - beyond] as const);
    return [{ off: k - beside, ways: waysToRead(dark, length) }];
  });
}

function shadesAlong(grey: Grey, start: Point, along: Vector, off: number, count: number): Float32Array {
  const row = new Float32Array(count);
  const side = { dx: -along.dy, dy: along.dx };
  const first = move(start, side, off);
  for (let i = 0; i < count; i++) row[i] = greyAt(grey, move(first, along, i * STEP));
  return row;
}

/** The lightest there is across the bar, at each place along it and close by. */
function paperAlong(rows: readonly Float32Array[], count: number): Float32Array {
  const lightest = new Float32Array(count);
  for (const row of rows)
    for (let i = 0; i < count; i++) lightest[i] = Math.max(lightest[i] as number, row[i] as number);
  const reach = SHADOW_PX / STEP;
  return lightest.map((_, i) =>
    lightest.subarray(Math.max(0, i - reach), i + reach + 1).reduce((a, b) => Math.max(a, b), 0),
  );
}

/** A stroke is at least so dark and a space at most so dark, as shares of the darkest place of the row; else it is grain. */
const [STROKE, SPACE] = [0.56, 0.44];

/** Where a row is dark: from and to, at half the depth, in its own steps and parts of one. */
function darkStretches(row: Float32Array, deepest: number): (readonly [number, number])[] {
  const found: [number, number][] = [];
  const limit = deepest / 2;
  let from: number | undefined;
  let passed = 0;
  let isDark = false;
  for (let i = 0; i < row.length; i++) {
    const [before, here] = [row[Math.max(0, i - 1)] as number, row[i] as number];
    if (before > limit !== here > limit) passed = i - 1 + (limit - before) / (here - before);
    if (!isDark && here > STROKE * deepest) {
      isDark = true;
      from = passed;
    } else if (isDark && here < SPACE * deepest) {
      isDark = false;
      found.push([from ?? 0, passed]);
    }
  }
  if (isDark) found.push([from ?? 0, row.length - 1]);
  return found;
}

/** A stroke is at most this share of the usual way from one edge to the next; a longer stretch is a filled part. */
const SHORT = 0.35;

function waysToRead(dark: readonly (readonly [number, number])[], length: number): Strokes[] {
  const middles = dark.map(([a, b]) => (a + b) / 2);
  const edges = dark.flat();
  // Edges that lie beyond the bar, of a line that runs on, are none of its own.
  const gaps = edges.slice(1).map((edge, i) => edge - (edges[i] as number));
  const usual = gaps.toSorted((a, b) => b - a)[Math.floor(gaps.length / 4)] ?? length;
  const mixed = dark.flatMap(([a, b]) => (b - a < SHORT * usual ? [(a + b) / 2] : [a, b]));
  return [middles, edges, mixed];
}
