/**
 * Parallels of paths: the line everywhere the same distance away, as a cut line is from a stitch line.
 *
 * A positive distance lies to the left of travel as the eye sees it, so that for an outline run clockwise
 * (`signedArea` > 0) positive is outward.
 *
 * Limits: a path that crosses itself keeps or loses parts round the crossing as clearance decides. Of several separate
 * rings (a bulb beyond a neck narrower than twice the distance) only the run from start to end, or the largest ring,
 * is given.
 */

import { arcOfCircle } from './arc';
import { segmentTangent } from './cubic-curve';
import { parallelPieces } from './parallel-pieces';
import { type Course, followsOn, pivotBetween, runOfParts } from './parallel-run';
import { steadyStretches } from './parallel-source';
import { allParts, type Kept, keptParts, type Source, sourcesOf } from './parallel-trim';
import { isClosed } from './path';
import { distance, move, type Point, turnBetween, type Vector } from './point';
import { cubic, line, type Path, type Segment, segmentEnd } from './segment';

/** The distance in mm a parallel may be off its true place: a fifth of the thinnest pen line. */
export const PARALLEL_ACCURACY = 0.01;

/** No parallel is made finer than this, in mm: rounding would have a say. */
const FINEST = 1e-8;

/** How a parallel is to be made. */
export interface ParallelOptions {
  /** The most the answer may be off the true parallel, in mm; {@link PARALLEL_ACCURACY} unless said. */
  readonly accuracy?: number;
}

/**
 * A mitre reaches at most this many times the distance from its corner (a corner of 29 degrees); a sharper corner is
 * rounded, for its mitre would run far out. The limit common to drawing standards (SVG 1.1, stroke-miterlimit).
 */
const MITRE_LIMIT = 4;

/** The share of the accuracy that goes into the fit; the rest is for kinks too slight to be corners. */
const FIT_SHARE = 0.75;

/**
 * The parallel of a path at `offset` (mm, positive to the left of travel), within the accuracy of the true parallel
 * everywhere. Straight stays straight; loops, cusps and whatever lies nearer to the path than the distance are cut
 * away, so the answer may begin after the path does and end before it, and is `undefined` when nothing is left. Corners
 * on the outer side are mitred (the sharpest rounded). A closed path has a closed parallel.
 */
export function parallelOf(path: Path, offset: number, options: ParallelOptions = {}): Path | undefined {
  const accuracy = Math.max(options.accuracy ?? PARALLEL_ACCURACY, FINEST);
  const stretches = steadyStretches(path);
  if (stretches.length === 0) return undefined;
  if (offset === 0) return path;
  const closed = isClosed(path);
  const sources = sourcesOf(stretches, offset);
  const turns = turnsBetween(stretches, closed);
  const slight = ((1 - FIT_SHARE) * accuracy) / Math.abs(offset);
  const course: Course = { sources, offset, accuracy, turns, slight, closed };
  const parts = mayLoop(course) ? runOfParts(course, keptParts(sources, offset)) : allParts(sources);
  return parts.length > 0 ? drawn(course, parts) : undefined;
}

function turnsBetween(stretches: readonly Segment[], closed: boolean): number[] {
  const turns: number[] = [];
  const count = closed ? stretches.length : stretches.length - 1;
  for (let i = 0; i < count; i++) {
    const arriving = segmentTangent(stretches[i] as Segment, 1);
    const leaving = segmentTangent(stretches[(i + 1) % stretches.length] as Segment, 0);
    turns.push(arriving && leaving ? turnBetween(arriving, leaving) : 0);
  }
  return turns;
}

/**
 * Whether anything could need cutting away. Not when nothing runs backwards, no corner is hollow, and the directions
 * span less than half a turn (such a parallel always advances along some line), or a ring only ever turns outward.
 */
function mayLoop({ sources, offset, turns, slight, closed }: Course): boolean {
  if (sources.some(({ spans }) => spans.length !== 1 || spans[0]?.from !== 0 || spans[0].to !== 1)) return true;
  if (turns.some((turn) => turn * Math.sign(offset) < -slight)) return true;
  let angle = 0;
  let least = 0;
  let most = 0;
  let outward = true;
  const turnBy = (turn: number) => {
    angle += turn;
    least = Math.min(least, angle);
    most = Math.max(most, angle);
    outward &&= turn * offset >= -1e-9;
  };
  sources.forEach(({ segment }, i) => {
    if (segment.kind === 'cubic') {
      const legs = legsOf(segment.p0, segment.p1, segment.p2, segment.p3);
      for (let k = 1; k < legs.length; k++) turnBy(turnBetween(legs[k - 1] as Vector, legs[k] as Vector));
    }
    turnBy(turns[i] ?? 0);
  });
  if (most - least < 0.99 * Math.PI) return false;
  return !(closed && outward && most - least < 2 * Math.PI + 1e-6);
}

function legsOf(...points: readonly Point[]): Vector[] {
  return points
    .slice(1)
    .map((point, i) => ({ dx: point.x - (points[i] as Point).x, dy: point.y - (points[i] as Point).y }))
    .filter(({ dx, dy }) => dx !== 0 || dy !== 0);
}

/** The parts as cubics and lines, joined: corners mitred, crossings brought together. */
function drawn(course: Course, parts: readonly Kept[]): Path {
  const { sources, offset, accuracy, closed } = course;
  const runs = parts.map(({ index, span }) =>
    parallelPieces((sources[index] as Source).segment, offset, span, accuracy * FIT_SHARE),
  );
  const path: Segment[] = [];
  runs.forEach((run, i) => {
    const next = runs[i + 1] ?? (closed ? runs[0] : undefined);
    const first = path.length === 0 ? run : startingAt(run, segmentEnd(path[path.length - 1] as Segment));
    path.push(...first);
    if (!next) return;
    path.push(...joint(course, parts[i] as Kept, parts[(i + 1) % parts.length] as Kept, path, next));
  });
  if (closed) closeUp(path);
  return path;
}

/** What stands between two runs: nothing where they meet, else a mitre, an arc or a straight line. */
function joint(course: Course, one: Kept, other: Kept, path: readonly Segment[], next: readonly Segment[]): Segment[] {
  const last = path[path.length - 1] as Segment;
  const end = segmentEnd(last);
  const start = (next[0] as Segment).p0;
  if (distance(end, start) <= course.accuracy) return [];
  const turn = course.turns[one.index] ?? Math.PI;
  if (followsOn(course, one, other) && 1 <= MITRE_LIMIT * Math.cos(turn / 2)) {
    const tangent = segmentTangent((course.sources[one.index] as Source).segment, 1) as Vector;
    const tip = move(end, tangent, Math.abs(course.offset * Math.tan(turn / 2)));
    return [line(end, tip), line(tip, start)];
  }
  const pivot = pivotBetween(course, one, other);
  return pivot ? arcOfCircle(pivot.corner, end, pivot.sweep, course.accuracy) : [line(end, start)];
}

/** A run moved on to begin exactly at `start`, which is within the accuracy of where it begins anyway. */
function startingAt(run: readonly Segment[], start: Point): Segment[] {
  const [first, ...rest] = run as readonly [Segment, ...Segment[]];
  const moved =
    first.kind === 'line'
      ? line(start, first.p1)
      : cubic(start, shifted(first.p1, first.p0, start), first.p2, first.p3);
  return [moved, ...rest];
}

function shifted(point: Point, from: Point, to: Point): Point {
  return { x: point.x + to.x - from.x, y: point.y + to.y - from.y };
}

/** Brings the end of a ring exactly to its start. */
function closeUp(path: Segment[]): void {
  const last = path[path.length - 1] as Segment;
  const start = (path[0] as Segment).p0;
  const end = segmentEnd(last);
  if (distance(end, start) === 0) return;
  path[path.length - 1] =
    last.kind === 'line' ? line(last.p0, start) : cubic(last.p0, last.p1, shifted(last.p2, end, start), start);
}
