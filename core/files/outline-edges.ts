/**
 * An outline from a file as the corners and edges of a piece: a corner wherever the direction turns, and from one corner to
 * the next one edge, straight or a smooth curve through few points that runs where the file's line ran.
 */
import type { EndRule } from '../garment/piece';
import { distanceToBox } from '../geometry/bounds';
import { segmentAt, segmentBounds, segmentCurvature } from '../geometry/cubic-curve';
import { distanceToChord, flattenPath } from '../geometry/flatten';
import { nearestOnSegment } from '../geometry/nearest-point';
import { endTangent, pathEnd, pathLength, pathStart, startTangent, subPath } from '../geometry/path';
import {
  dot,
  isSamePoint,
  type Point,
  SAME_POINT,
  turnBetween,
  unit,
  type Vector,
  vectorBetween,
} from '../geometry/point';
import { line, type Path, type Segment } from '../geometry/segment';
import { segmentLength } from '../geometry/segment-length';
import { throughPointsFor } from '../geometry/simplify';
import { splineThrough } from '../geometry/spline';

/** One edge from its corner on. */
export interface OutlineEdge {
  readonly at: Point;
  readonly through: readonly Point[];
  readonly leaves: EndRule;
  readonly meets: EndRule;
  /** How far, in mm, the edge is from the file's line at most, as far as looked. */
  readonly off: number;
}

/** Where the direction turns by more than this there is a corner: half a degree, more than rounding in a file makes. */
const CORNER_TURN = Math.PI / 360;

/** A stretch that bulges less than this from its chord, in mm, is straight. */
const STRAIGHT = 1e-3;

/** An edge stands square to its neighbour when the cosine between them is below this: 0.03 degrees. */
const SQUARE = 5e-4;

/** Knots of the file's own line that are tried as through-points before fewer or others are looked for. */
const MOST_KNOTS = 12;

/** Runs are sampled to this share of the exactness asked for. */
const SAMPLE_SHARE = 0.25;

/** Points are chosen to this share of the exactness, for samples are not the line itself. */
const CHOSEN_SHARE = 0.6;

/** Samples of one run at most when points are chosen; more would take seconds. */
const MOST_SAMPLES = 160;

/** A run of more stretches is cut in two before it is looked at, so that no file can make it take minutes. */
const LONGEST_RUN = 200;

/** How many points are tried to see whether a run can be followed at all by few. */
const COUNTS = [1, 3, 6, 9, 12, 16, 20, 28];

/** Up to so many, fewer and better places are looked for; with more that takes seconds. */
const CHOSEN_BELOW = 9;

/**
 * The edges of a closed path, the first at a corner; fewer than two corners get company halfway round. Where a smooth
 * run cannot be followed within `within` mm by few points it is cut at one of the path's own joints, and where that does
 * not help `off` says by how much it misses. `also` are places that are corners though the direction may not turn.
 * Empty for a path that goes nowhere.
 */
export function outlineEdges(closed: Path, within: number, also: readonly Point[] = []): OutlineEdge[] {
  const path = withoutStandstills(closed).map(straightened);
  if (path.length === 0) return [];
  const runs = cornerRuns(path, also);
  return runs.flatMap((run, index): OutlineEdge[] => {
    const before = runs[(index + runs.length - 1) % runs.length] as Path;
    const after = runs[(index + 1) % runs.length] as Path;
    const square = squareEdge(run, before, after, within);
    if (square) return [square];
    return fittingRuns(run, within).map(({ path: part, through, off }) => {
      return { at: pathStart(part), through, leaves: 'free', meets: 'free', off };
    });
  });
}

/** A run and the points of a free spline that follows it. */
interface FittedRun {
  readonly path: Path;
  readonly through: readonly Point[];
  readonly off: number;
}

/** Stretches that stay put say nothing. */
function withoutStandstills(path: Path): Segment[] {
  return path.filter((segment) =>
    segment.kind === 'line'
      ? !isSamePoint(segment.p0, segment.p1)
      : ![segment.p1, segment.p2, segment.p3].every((point) => isSamePoint(segment.p0, point)),
  );
}

/** A cubic that is straight, as a line. */
function straightened(segment: Segment): Segment {
  if (segment.kind === 'line' || isSamePoint(segment.p0, segment.p3)) return segment;
  const { p0, p1, p2, p3 } = segment;
  const isFlat = distanceToChord(p1, p0, p3) < STRAIGHT && distanceToChord(p2, p0, p3) < STRAIGHT;
  return isFlat ? line(p0, p3) : segment;
}

/** The path cut at its corners and begun at one of them. */
function cornerRuns(path: readonly Segment[], also: readonly Point[]): Path[] {
  const starts = path.flatMap((segment, index) => {
    const before = path[(index + path.length - 1) % path.length] as Segment;
    return isCorner(before, segment) || also.some((point) => isSamePoint(point, segment.p0)) ? [index] : [];
  });
  const first = starts[0];
  if (first === undefined) return halves(path);
  const turned = [...path.slice(first), ...path.slice(0, first)];
  const runs = starts.map((start, i) => turned.slice(start - first, (starts[i + 1] ?? first + path.length) - first));
  return starts.length === 1 ? halves(turned) : runs;
}

/** Two straight lines meet in a corner unless they are one; elsewhere the turn decides. */
function isCorner(before: Segment, after: Segment): boolean {
  if (before.kind === 'line' && after.kind === 'line' && !isSamePoint(before.p0, after.p1)) {
    return distanceToChord(after.p0, before.p0, after.p1) >= STRAIGHT;
  }
  return Math.abs(turnBetween(endTangent([before]), startTangent([after]))) > CORNER_TURN;
}

/** The places of a closed path where its direction turns. */
export function turningPoints(path: Path): Point[] {
  return path.flatMap((segment, index) =>
    isCorner(path[(index + path.length - 1) % path.length] as Segment, segment) ? [segment.p0] : [],
  );
}

function halves(path: Path): Path[] {
  const length = pathLength(path);
  const [one, other] = [subPath(path, 0, length / 2), subPath(path, length / 2, length)];
  return one && other ? [withoutStandstills(one), withoutStandstills(other)] : [path];
}

/** The run as one edge, or cut at joints until each part can be followed. */
function fittingRuns(run: Path, within: number): FittedRun[] {
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
    const few = runThrough(path, throughPointsFor(samples, { within: within * CHOSEN_SHARE }).slice(1, -1), within);
    return few.off <= within && few.through.length < count ? few : spread;
  }
  return undefined;
}

/** Through points spread evenly, or closer towards the ends, where a free spline strays most; the first that will do. */
function spreadRun(path: Path, count: number, within: number): FittedRun {
  const lengths = path.map((segment) => segmentLength(segment));
  const shares = Array.from({ length: count }, (_, i) => (i + 1) / (count + 1));
  const even = runThrough(
    path,
    shares.map((share) => placeAtShare(path, lengths, share)),
    within,
  );
  if (even.off <= within) return even;
  const closer = shares.map((share) => placeAtShare(path, lengths, (1 - Math.cos(Math.PI * share)) / 2));
  return runThrough(path, closer, within);
}

/** The place about a share of the length along a path: exact in the stretch, and near enough within it. */
function placeAtShare(path: Path, lengths: readonly number[], share: number): Point {
  let left = share * lengths.reduce((sum, each) => sum + each, 0);
  let index = 0;
  while (index < path.length - 1 && left > (lengths[index] as number)) left -= lengths[index++] as number;
  const length = lengths[index] as number;
  return segmentAt(path[index] as Segment, length > 0 ? Math.min(1, left / length) : 0);
}

/** `off` is looked for no further than a place that misses by more than `enough`. */
function runThrough(path: Path, through: readonly Point[], enough: number): FittedRun {
  return {
    path,
    through,
    off: furthestApart(path, splineThrough([pathStart(path), ...through, pathEnd(path)]), enough),
  };
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

function isStraight(path: Path): boolean {
  const [start, end] = [pathStart(path), pathEnd(path)];
  return path.every(({ kind, p0 }) => kind === 'line' && distanceToChord(p0, start, end) < STRAIGHT);
}

/**
 * A run that stands square to a straight neighbour and that a spline through its own knots follows when it is ruled to
 * do so: then the edge has that rule, and stays square when she changes the piece.
 */
function squareEdge(run: Path, before: Path, after: Path, within: number): OutlineEdge | undefined {
  const through = run.slice(1).map(({ p0 }) => p0);
  if (isStraight(run) || through.length > MOST_KNOTS) return undefined;
  const chord = vectorBetween(pathStart(run), pathEnd(run));
  const leaving = squareTo(before, startTangent(run), chord);
  const arriving = squareTo(after, endTangent(run), chord);
  if (!leaving && !arriving) return undefined;
  const points = [pathStart(run), ...through, pathEnd(run)];
  const directions = points.map((_, i) => (i === 0 ? leaving : i === points.length - 1 ? arriving : undefined));
  const off = furthestApart(run, splineThrough(points, { directions }), within);
  if (off > within) return undefined;
  const [leaves, meets] = [leaving, arriving].map((way): EndRule => (way ? 'square' : 'free')) as [EndRule, EndRule];
  return { at: pathStart(run), through, leaves, meets, off };
}

/**
 * The direction exactly square to a straight neighbour, if `tangent` is as good as that already. The rule of a piece takes
 * the side on which the chord lies, so the tangent must lie there too.
 */
function squareTo(neighbour: Path, tangent: Vector, chord: Vector): Vector | undefined {
  const along = isStraight(neighbour) ? unit(vectorBetween(pathStart(neighbour), pathEnd(neighbour))) : undefined;
  if (!along || Math.abs(dot(along, tangent)) > SQUARE) return undefined;
  const side = { dx: -along.dy, dy: along.dx };
  const square = dot(side, tangent) < 0 ? { dx: along.dy, dy: -along.dx } : side;
  return dot(square, chord) > SAME_POINT ? square : undefined;
}
