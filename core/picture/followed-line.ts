/**
 * A printed line as a piece's edge wants it: from corner to corner, straight or curved, with the fewest points that keep
 * within the printed line.
 */
import { distanceToChord } from '../geometry/flatten';
import { distance, type PhotoPoint, type Point, turnBetween, vectorBetween } from '../geometry/point';
import { throughPointsFor } from '../geometry/simplify';
import { centreLine, evenStations } from './centre-line';
import type { GreyPicture } from './grey-picture';
import { nearestToLines, straightThrough } from './straight-through';

/** One stretch of a followed line, between sharp corners. */
export interface FollowedStretch {
  readonly shape: 'straight' | 'curved';
  /** Its ends and, for a curve, the points a spline passes through between them. */
  readonly through: readonly PhotoPoint[];
  /** The middle of the line all along, from which the points were taken. */
  readonly middle: readonly PhotoPoint[];
}

/** A corner: the way turns by more than this (40 degrees) ... */
const SHARP = (40 * Math.PI) / 180;

/** ... between arms of this many widths, and by nearly as much between arms half as long, as no round curve does. */
const ARM_WIDTHS = 4;
const STILL_SHARP = 0.72;

/** Near a corner the smoothed middle rounds it off: this many widths are left out and drawn from the straight run before. */
const LEFT_OUT_WIDTHS = 1.2;
const TANGENT_WIDTHS = 5;

/** How much of the half width the spline may use: the rest is for the reading of the middle. */
const WITHIN = 0.5;

/** The middle is handed to the choice of points with at most this many of its own: more takes long and tells no more. */
const MOST_POINTS = 90;

/**
 * The line along a rough way (pixel by pixel, in the pixels of `picture`), as stretches from corner to corner. `widthPx`
 * is the width of the printed line; the spline through the points stays within half of its half width of the middle.
 */
export function followedLine(
  picture: GreyPicture,
  rough: readonly PhotoPoint[],
  options: { readonly widthPx: number },
): readonly FollowedStretch[] {
  const { widthPx } = options;
  const corners = sharpTurns(rough, ARM_WIDTHS * Math.max(widthPx, 2));
  const cuts = [0, ...corners, rough.length - 1];
  const middles = cuts.slice(1).map((end, i) => centreLine(picture, rough.slice(cuts[i], end + 1), { widthPx }));
  const meetings = middles.slice(1).map((after, i) => cornerBetween(middles[i] as readonly Point[], after, widthPx));
  return middles.map((middle, i) => {
    const start = meetings[i - 1];
    const end = meetings[i];
    const run = withEnds(middle, start, end, LEFT_OUT_WIDTHS * widthPx);
    return stretchOf(run, (WITHIN * Math.max(1, widthPx)) / 2);
  });
}

function stretchOf(middle: readonly PhotoPoint[], within: number): FollowedStretch {
  const [from, to] = [middle[0] as Point, middle[middle.length - 1] as Point];
  if (middle.every((point) => distanceToChord(point, from, to) <= within)) {
    return { shape: 'straight', through: [from, to], middle };
  }
  let whole = 0;
  for (let i = 1; i < middle.length; i++) whole += distance(middle[i - 1] as Point, middle[i] as Point);
  const few = middle.length > MOST_POINTS ? evenStations(middle, whole / MOST_POINTS) : middle;
  return { shape: 'curved', through: throughPointsFor(few, { within }), middle };
}

/** The places of a run at which it turns sharply, by index, in order. */
function sharpTurns(run: readonly Point[], armPx: number): number[] {
  const turnAt = (i: number, arm: number): number => {
    const [a, b, c] = [run[i - arm], run[i], run[i + arm]];
    return a && b && c ? Math.abs(turnBetween(vectorBetween(a, b), vectorBetween(b, c))) : 0;
  };
  // The run goes from pixel to pixel, some aslant: an arm of so many steps is a little longer than so many pixels.
  const arm = Math.max(6, Math.round(armPx));
  const found: number[] = [];
  for (let i = 1; i < run.length - 1; i++) {
    const reach = Math.min(arm, i, run.length - 1 - i);
    if (reach < arm / 2) continue;
    const turn = turnAt(i, reach);
    if (turn < SHARP || turnAt(i, Math.ceil(reach / 2)) < STILL_SHARP * turn) continue;
    const last = found[found.length - 1];
    if (last !== undefined && i - last < arm) {
      if (turn > turnAt(last, Math.min(arm, last, run.length - 1 - last))) found[found.length - 1] = i;
    } else found.push(i);
  }
  return found;
}

/** Where the straight runs before and after a corner meet; their ends' mean where they hardly turn. */
function cornerBetween(before: readonly Point[], after: readonly Point[], widthPx: number): PhotoPoint {
  const lines = [tangentFrom([...before].reverse(), widthPx), tangentFrom(after, widthPx)];
  const [end, start] = [before[before.length - 1] as Point, after[0] as Point];
  const middle = { x: (end.x + start.x) / 2, y: (end.y + start.y) / 2 };
  const at = nearestToLines(lines.filter((line) => line !== undefined));
  return at && distance(at, middle) < 3 * Math.max(2, widthPx) ? at : middle;
}

/** The straight line that fits a run best over a few widths from its start, past the rounded beginning. */
function tangentFrom(run: readonly Point[], widthPx: number) {
  const start = run[0] as Point;
  const near = run.filter((point) => {
    const off = distance(start, point);
    return off >= LEFT_OUT_WIDTHS * widthPx && off <= (LEFT_OUT_WIDTHS + TANGENT_WIDTHS) * widthPx;
  });
  const used = near.length >= 3 ? near : run.slice(0, 8);
  return straightThrough(used);
}

/** The run with its ends put where corners are, and what lies nearer to a corner than `leftOut` left out. */
function withEnds(
  middle: readonly Point[],
  start: Point | undefined,
  end: Point | undefined,
  leftOut: number,
): readonly Point[] {
  const inner = middle.filter(
    (point) => (!start || distance(point, start) > leftOut) && (!end || distance(point, end) > leftOut),
  );
  const [first, last] = [start ?? (middle[0] as Point), end ?? (middle[middle.length - 1] as Point)];
  const kept = inner.length > 0 ? inner : [];
  return [...(start || kept.length === 0 ? [first] : []), ...kept, ...(end || kept.length === 0 ? [last] : [])];
}
