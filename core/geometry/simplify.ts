/**
 * From many points to few: the through-points of a spline that runs where the points run.
 *
 * A point is added where the spline is worst, then all are shifted along the run for as long as that betters the whole;
 * and so on until the spline is good everywhere. At the end each point is taken out again if the rest, shifted, can do
 * without it. The answer is short, though not proved to be the shortest.
 */
import { segmentAt } from './cubic-curve';
import { distanceToChord } from './flatten';
import { nearestOnSegment } from './nearest-point';
import { isSamePoint, type Point } from './point';
import type { Cubic } from './segment';
import { closedSplineThrough, splineThrough } from './spline';

/** What the through-points must do. */
export interface ThroughOptions {
  /** The furthest, in mm, that the run may be from the spline, and the spline from the run. */
  readonly within: number;
  /** Whether the run closes on itself (its first point is not repeated). */
  readonly closed?: boolean;
  /** So many points at most: with more needed the run itself comes back, soon. */
  readonly most?: number;
}

/** Places of each spline piece whose distance from the run is looked at. */
const LOOKS = 8;

/** Rounds of shifting all points along the run before another point is added. */
const ROUNDS = 4;

/** The shares of the way to its neighbour by which a point is shifted. */
const SHIFTS = [-0.5, 0.5, -0.2, 0.2, -0.06, 0.06];

/**
 * Few of the run's points, in order, such that the spline through them stays within `within` of the run and the run
 * within `within` of it. An open run keeps its first and last point. The run itself comes back (without repeats) when
 * it has too few points to leave any out, or when nothing less will do; only then may the spline swing wider.
 */
export function throughPointsFor(run: readonly Point[], options: ThroughOptions): Point[] {
  const { within, closed = false, most = Infinity } = options;
  const points = run.filter((point, i) => i === 0 || !isSamePoint(point, run[i - 1] as Point));
  while (closed && points.length > 1 && isSamePoint(points[0] as Point, points[points.length - 1] as Point))
    points.pop();
  const fewest = closed ? 3 : 2;
  if (points.length <= fewest) return points;
  let chosen = closed ? evenThirds(points.length) : [0, points.length - 1];
  let misses = missesOf(points, chosen, closed);
  while (worst(misses).miss > within && chosen.length < points.length) {
    if (chosen.length >= most) return points;
    chosen = shifted(points, withPoint(chosen, misses, points.length), within, closed);
    misses = missesOf(points, chosen, closed);
  }
  return thinned(points, chosen, within, closed).map((index) => points[index] as Point);
}

function evenThirds(count: number): number[] {
  return [0, Math.floor(count / 3), Math.floor((2 * count) / 3)];
}

/** How bad one piece of the spline is, and the point of the run that is furthest off there. */
interface Miss {
  readonly miss: number;
  readonly at: number;
}

/** The misses of each piece, from chosen point to chosen point. */
function missesOf(points: readonly Point[], chosen: readonly number[], closed: boolean): Miss[] {
  const through = chosen.map((index) => points[index] as Point);
  const curves = closed ? closedSplineThrough(through) : splineThrough(through);
  return curves.map((curve, k) => {
    const from = chosen[k] as number;
    const to = chosen[k + 1] ?? (chosen[0] as number) + points.length;
    return missOf(points, from, to, curve);
  });
}

function missOf(points: readonly Point[], from: number, to: number, curve: Cubic): Miss {
  const pointAt = (index: number) => points[index % points.length] as Point;
  let found: Miss = { miss: 0, at: -1 };
  let furthest = 0;
  for (let i = from + 1; i < to; i++) {
    const miss = nearestOnSegment(curve, pointAt(i)).distance;
    if (miss > furthest) {
      furthest = miss;
      found = { miss, at: i % points.length };
    }
  }
  // The other way: a spline may bulge where the run has no point to notice it.
  for (let k = 1; k < LOOKS; k++) {
    const place = segmentAt(curve, k / LOOKS);
    let miss = Infinity;
    let at = -1;
    for (let i = from; i < to; i++) {
      const off = distanceToChord(place, pointAt(i), pointAt(i + 1));
      if (off < miss) {
        miss = off;
        at = i === from ? i + 1 : i;
      }
    }
    if (miss > found.miss) found = { miss, at: at < to ? at % points.length : -1 };
  }
  return found;
}

function worst(misses: readonly Miss[]): Miss {
  return misses.reduce((a, b) => (b.miss > a.miss ? b : a));
}

/** The chosen points with the one at the worst place added; failing that, the middle of the widest gap. */
function withPoint(chosen: readonly number[], misses: readonly Miss[], count: number): number[] {
  const at = misses
    .filter((each) => each.at >= 0 && !chosen.includes(each.at))
    .reduce<Miss | undefined>((a, b) => (a && a.miss >= b.miss ? a : b), undefined)?.at;
  return [...chosen, at ?? middleOfWidestGap(chosen, count)].sort((a, b) => a - b);
}

function middleOfWidestGap(chosen: readonly number[], count: number): number {
  let best = 0;
  let widest = 0;
  chosen.forEach((index, k) => {
    const next = chosen[k + 1] ?? (chosen[0] as number) + count;
    if (next - index > widest && (k + 1 < chosen.length || (index + next) / 2 < count)) {
      widest = next - index;
      best = Math.floor((index + next) / 2) % count;
    }
  });
  return best;
}

/** Points taken out one by one for as long as the others, shifted where that helps, stay within the limit. */
function thinned(points: readonly Point[], chosen: readonly number[], within: number, closed: boolean): number[] {
  let kept = chosen.slice();
  for (;;) {
    const fewer = oneFewer(points, kept, within, closed);
    if (!fewer) return kept;
    kept = fewer;
  }
}

function oneFewer(points: readonly Point[], kept: number[], within: number, closed: boolean): number[] | undefined {
  if (kept.length <= (closed ? 3 : 2)) return undefined;
  const removable = closed ? kept : kept.slice(1, -1);
  const tries = removable
    .map((index) => kept.filter((each) => each !== index))
    .map((rest) => ({ rest, miss: worst(missesOf(points, rest, closed)).miss }))
    .sort((a, b) => a.miss - b.miss);
  for (const { rest } of tries.slice(0, 2)) {
    const moved = shifted(points, rest, within, closed);
    if (worst(missesOf(points, moved, closed)).miss <= within) return moved;
  }
  return undefined;
}

/** The chosen points moved along the run, one after another, until all is within the limit or nothing gets better. */
function shifted(points: readonly Point[], start: readonly number[], within: number, closed: boolean): number[] {
  let chosen = start.slice();
  let misses = missesOf(points, chosen, closed);
  for (let round = 0; round < ROUNDS && worst(misses).miss > within; round++) {
    let better = false;
    for (let k = closed ? 0 : 1; k < chosen.length - (closed ? 0 : 1); k++) {
      for (const share of SHIFTS) {
        const moved = movedAlong(points, chosen, k, share);
        const movedMisses = moved && missesOf(points, moved, closed);
        if (!moved || !movedMisses || badness(movedMisses) >= badness(misses)) continue;
        chosen = moved;
        misses = movedMisses;
        better = true;
      }
    }
    if (!better) break;
  }
  return chosen;
}

/** The worst miss counts most, but the others have a say, so that there is always a downhill. */
function badness(misses: readonly Miss[]): number {
  return misses.reduce((sum, { miss }) => sum + miss ** 4, 0);
}

/** The choice with point `k` moved a share of the way to its neighbour; `undefined` when there is no room. */
function movedAlong(
  points: readonly Point[],
  chosen: readonly number[],
  k: number,
  share: number,
): number[] | undefined {
  const here = chosen[k] as number;
  const before = chosen[k - 1] ?? (chosen[chosen.length - 1] as number) - points.length;
  const after = chosen[k + 1] ?? (chosen[0] as number) + points.length;
  const step = Math.trunc(share < 0 ? share * (here - before) : share * (after - here)) || Math.sign(share);
  const to = here + step;
  if (to <= before || to >= after || to < 0 || to >= points.length) return undefined;
  return chosen.map((each, i) => (i === k ? to : each));
}
