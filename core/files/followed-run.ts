/** A smooth run of a file's line as a spline through few points, or as several where one cannot follow it. */
import { distanceToBox } from '../geometry/bounds';
import { segmentAt, segmentBounds, segmentCurvature } from '../geometry/cubic-curve';
import { distanceToChord, flattenPath } from '../geometry/flatten';
import { nearestOnSegment } from '../geometry/nearest-point';
import { endTangent, pathEnd, pathStart, startTangent } from '../geometry/path';
import { type Point, turnBetween, type Vector } from '../geometry/point';
import type { Path, Segment } from '../geometry/segment';
import { segmentLength } from '../geometry/segment-length';
import { throughPointsFor } from '../geometry/simplify';
import { splineThrough } from '../geometry/spline';

/** A stretch that bulges less than this from its chord, in mm, is straight. */
export const STRAIGHT = 1e-3;

/** Knots of the file's own line that are tried as through-points before fewer or others are looked for. */
export const MOST_KNOTS = 12;

/** Runs are sampled to this share of the exactness asked for. */
const SAMPLE_SHARE = 0.25;

/** Points are chosen to this share of the exactness, for samples are not the line itself. */
const CHOSEN_SHARE = 0.6;

/** Samples of one run at most when points are chosen; more would take seconds. */
const MOST_SAMPLES = 160;

/** A run of more stretches is cut in two before it is looked at, so that no file can make it take minutes. */
const LONGEST_RUN = 200;

/** How many points are tried to see whether a run can be followed at all by few. */
export const COUNTS = [1, 3, 6, 9, 12, 16, 20, 28];

/** Up to so many, fewer and better places are looked for; with more that takes seconds. */
const CHOSEN_BELOW = 9;

/** A run and the points of a free spline that follows it. */
export interface FittedRun {
  readonly path: Path;
  readonly through: readonly Point[];
  readonly off: number;
}

/**
 * The run as one edge, or cut at joints until each part can be followed within `within` mm; `off` is larger only where
 * not even a single stretch can be.
 */
export function fittingRuns(run: Path, within: number): FittedRun[] {
  const fitted = run.length > LONGEST_RUN ? undefined : fittedRun(run, within);
  if (fitted) return [fitted];
  if (run.length === 1) return [spreadRun(run, COUNTS[COUNTS.length - 1] as number, Infinity)];
  const cut = run.length > LONGEST_RUN ? Math.floor(run.length / 2) : sharpestJoint(run);
  return [...fittingRuns(run.slice(0, cut), within), ...fittingRuns(run.slice(cut), within)];
}

/** The joint where a straight stretch meets a curve, else where direction or bend jump most, of equals the middle one. */
function sharpestJoint(run: Path): number {
  const score = (index: number): number => {
    const [before, after] = [run[index - 1] as Segment, run[index] as Segment];
    const turn = Math.abs(turnBetween(endTangent([before]), startTangent([after])));
    const jump = Math.abs(segmentCurvature(before, 1) - segmentCurvature(after, 0));
    return (before.kind === after.kind ? 0 : 10) + turn + jump - 1e-4 * Math.abs(index - run.length / 2);
  };
  let best = 1;
  for (let index = 2; index < run.length; index++) if (score(index) > score(best)) best = index;
  return best;
}

/**
 * The run through its own knots if they are few and do; else through few points, once points spread along it have shown
 * that it can be done. `undefined` when it takes too many.
 */
function fittedRun(path: Path, within: number): FittedRun | undefined {
  if (isStraight(path)) return { path, through: [], off: 0 };
  const knots = path.slice(1).map(({ p0 }) => p0);
  const byKnots = knots.length <= MOST_KNOTS ? runThrough(path, knots, within) : undefined;
  if (byKnots && byKnots.off <= within) return byKnots;
  for (const count of COUNTS) {
    const spread = spreadRun(path, count, within);
    if (spread.off > within) continue;
    if (count > CHOSEN_BELOW) return spread;
    const samples = samplesOf(path, within * SAMPLE_SHARE);
    const fewer = throughPointsFor(samples, { within: within * CHOSEN_SHARE, most: count + 1 }).slice(1, -1);
    if (fewer.length >= count) return spread;
    const few = runThrough(path, fewer, within);
    return few.off <= within ? few : spread;
  }
  return undefined;
}

/** Through points spread evenly, or closer towards the ends, where a free spline strays most; the first that will do. */
export function spreadRun(path: Path, count: number, within: number, ends: EndDirections = {}): FittedRun {
  const lengths = path.map((segment) => segmentLength(segment));
  const shares = Array.from({ length: count }, (_, i) => (i + 1) / (count + 1));
  const even = runThrough(
    path,
    shares.map((share) => placeAtShare(path, lengths, share)),
    within,
    ends,
  );
  if (even.off <= within) return even;
  const closer = shares.map((share) => placeAtShare(path, lengths, (1 - Math.cos(Math.PI * share)) / 2));
  return runThrough(path, closer, within, ends);
}

/** The place about a share of the length along a path: exact in the stretch, and near enough within it. */
function placeAtShare(path: Path, lengths: readonly number[], share: number): Point {
  let left = share * lengths.reduce((sum, each) => sum + each, 0);
  let index = 0;
  while (index < path.length - 1 && left > (lengths[index] as number)) left -= lengths[index++] as number;
  const length = lengths[index] as number;
  return segmentAt(path[index] as Segment, length > 0 ? Math.min(1, left / length) : 0);
}

/** The directions an edge is ruled to have at its ends; free where there is none. */
export interface EndDirections {
  readonly leaving?: Vector | undefined;
  readonly arriving?: Vector | undefined;
}

/** `off` is looked for no further than a place that misses by more than `enough`. */
export function runThrough(
  path: Path,
  through: readonly Point[],
  enough: number,
  { leaving, arriving }: EndDirections = {},
): FittedRun {
  const points = [pathStart(path), ...through, pathEnd(path)];
  const directions = [leaving, ...through.map(() => undefined), arriving];
  return { path, through, off: furthestApart(path, splineThrough(points, { directions }), enough) };
}

/** Points along a path whose chords bulge less than `flatness`, or as many as there may be, ends included. */
function samplesOf(path: Path, flatness: number): Point[] {
  for (let coarser = flatness; ; coarser *= 2) {
    const points = flattenPath(path, coarser);
    if (points.length <= Math.max(MOST_SAMPLES, path.length + 1)) return points;
  }
}

/** Looks along each stretch when two paths are compared. */
const LOOKS = 12;
const FEW_LOOKS = 4;

/** A path of more stretches than this is looked at in fewer places of each. */
const MANY_STRETCHES = 24;

/** How far two paths are apart at most, looked at from both sides at places along every stretch, until `enough` is seen. */
function furthestApart(one: Path, other: Path, enough: number): number {
  const furthest = furthestFrom(one, other, enough);
  return furthest > enough ? furthest : Math.max(furthest, furthestFrom(other, one, enough));
}

function furthestFrom(path: Path, target: Path, enough: number): number {
  const looks = path.length > MANY_STRETCHES ? FEW_LOOKS : LOOKS;
  let furthest = 0;
  for (const segment of path) {
    for (let i = 1; i <= looks; i++) {
      const distance = nearestDistance(target, segmentAt(segment, i / looks));
      if (distance > furthest) furthest = distance;
      if (furthest > enough) return furthest;
    }
  }
  return furthest;
}

/** As nearestOnPath, without the length along the path, which costs more than all the rest. */
function nearestDistance(path: Path, place: Point): number {
  let nearest = Infinity;
  for (const segment of path) {
    if (distanceToBox(segmentBounds(segment), place) >= nearest) continue;
    nearest = Math.min(nearest, nearestOnSegment(segment, place).distance);
  }
  return nearest;
}

export function isStraight(path: Path): boolean {
  const [start, end] = [pathStart(path), pathEnd(path)];
  return path.every(({ kind, p0 }) => kind === 'line' && distanceToChord(p0, start, end) < STRAIGHT);
}
