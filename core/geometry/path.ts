/** Whole paths: ends, lengths along them, parts of them, the area they enclose. */
import { type Box, distanceToBox, unionBox } from './bounds';
import {
  partOfSegment,
  reverseSegment,
  segmentAt,
  segmentBounds,
  segmentCurvature,
  segmentTangent,
} from './cubic-curve';
import { nearestOnSegment } from './nearest-point';
import { isSamePoint, type Point, type Vector } from './point';
import { cubic, line, type Path, type Segment, segmentEnd } from './segment';
import { LENGTH_ACCURACY, parameterAtLength, partLength, segmentLength } from './segment-length';

/** A place on a path: where it is, the unit direction of travel, and the curvature (positive = clockwise turning). */
export interface PathPlace {
  readonly point: Point;
  readonly tangent: Vector;
  readonly curvature: number;
}

/** The place of a path nearest to some point. */
export interface NearestOnPath {
  readonly point: Point;
  /** The length of path from its start to the place. */
  readonly along: number;
  readonly distance: number;
  readonly segmentIndex: number;
  readonly t: number;
}

/** Where a path begins. */
export function pathStart(path: Path): Point {
  return segmentOf(path, 0).p0;
}

/** Where a path ends. */
export function pathEnd(path: Path): Point {
  return segmentEnd(segmentOf(path, path.length - 1));
}

/** Whether a path ends where it begins, within SAME_POINT. */
export function isClosed(path: Path): boolean {
  return isSamePoint(pathStart(path), pathEnd(path));
}

/**
 * The unit direction in which a path sets out: that of the first stretch that goes anywhere, also when its handle has
 * no length. (1, 0) for a path that stays put, so that no caller meets a missing direction.
 */
export function startTangent(path: Path): Vector {
  for (const segment of path) {
    const tangent = segmentTangent(segment, 0);
    if (tangent) return tangent;
  }
  return { dx: 1, dy: 0 };
}

/** The unit direction in which a path arrives; as {@link startTangent} otherwise. */
export function endTangent(path: Path): Vector {
  for (let i = path.length - 1; i >= 0; i--) {
    const tangent = segmentTangent(segmentOf(path, i), 1);
    if (tangent) return tangent;
  }
  return { dx: 1, dy: 0 };
}

/** The length of a path, within `accuracy` for each of its stretches. */
export function pathLength(path: Path, accuracy = LENGTH_ACCURACY): number {
  let length = 0;
  for (const segment of path) length += segmentLength(segment, accuracy);
  return length;
}

/**
 * The place `length` along a path. Below 0 and beyond the end an open path gives its ends; a closed one is travelled
 * round again. At a corner the direction is that of the stretch that begins there (at the very end, of the last).
 */
export function pathAtLength(path: Path, length: number): PathPlace {
  const { index, t } = placeAtLength(path, length);
  const segment = segmentOf(path, index);
  return {
    point: segmentAt(segment, t),
    tangent: segmentTangent(segment, t) ?? startTangent(path.slice(index)),
    curvature: segmentCurvature(segment, t),
  };
}

/**
 * The part of a path from `from` to `to`, lengths along it. Both are brought inside an open path, and the answer is
 * `undefined` when nothing lies between them. On a closed path they may be any lengths: `to` at or below `from` goes on
 * over the start, so that (10, 10) is the whole round beginning at 10.
 */
export function subPath(path: Path, from: number, to: number): Path | undefined {
  const total = pathLength(path);
  if (!(total > 0)) return undefined;
  if (!isClosed(path)) return stretchBetween(path, Math.max(0, from), Math.min(total, to), total);
  const start = from - total * Math.floor(from / total);
  let end = start + (to - from);
  while (end <= start) end += total * Math.max(1, Math.ceil((start - end) / total));
  end = Math.min(end, start + total);
  if (end <= total) return stretchBetween(path, start, end, total);
  const head = stretchBetween(path, start, total, total);
  const tail = stretchBetween(path, 0, end - total, total);
  return head && tail ? joinPaths([head, tail]) : (head ?? tail);
}

/** The place of a path nearest to `point`; of equally near ones the first along the path. */
export function nearestOnPath(path: Path, point: Point): NearestOnPath {
  // Begun where the box is nearest, few of the others can be nearer.
  const least = path.map((segment) => distanceToBox(segmentBounds(segment), point));
  const first = Math.max(0, least.indexOf(Math.min(...least)));
  let best = { ...nearestOnSegment(segmentOf(path, first), point), segmentIndex: first };
  for (let i = 0; i < path.length; i++) {
    if (i === first || (least[i] as number) > best.distance) continue;
    const here = nearestOnSegment(segmentOf(path, i), point);
    const isNearer = here.distance < best.distance || (here.distance === best.distance && i < best.segmentIndex);
    if (isNearer) best = { ...here, segmentIndex: i };
  }
  const { segmentIndex, t } = best;
  const along = pathLength(path.slice(0, segmentIndex)) + partLength(segmentOf(path, segmentIndex), 0, t);
  return { ...best, along };
}

/** The smallest box round a path. */
export function pathBounds(path: Path): Box {
  return path.map(segmentBounds).reduce(unionBox);
}

/**
 * The area inside a path, positive when it runs clockwise to the eye; an open path is closed by a straight line.
 * Green's theorem, exact for lines and cubics; parts run round both ways cancel.
 */
export function signedArea(path: Path): number {
  const { x: ox, y: oy } = pathStart(path); // measured from the start, so that far-off paths keep their digits
  let twice = 0;
  for (const segment of path) {
    const x0 = segment.p0.x - ox;
    const y0 = segment.p0.y - oy;
    const x1 = segment.p1.x - ox;
    const y1 = segment.p1.y - oy;
    if (segment.kind === 'line') {
      twice += x0 * y1 - x1 * y0;
      continue;
    }
    const x2 = segment.p2.x - ox;
    const y2 = segment.p2.y - oy;
    const x3 = segment.p3.x - ox;
    const y3 = segment.p3.y - oy;
    twice +=
      (x0 * (6 * y1 + 3 * y2 + y3) +
        3 * (x1 * (-2 * y0 + y2 + y3) - x2 * (y0 + y1 - 2 * y3)) -
        x3 * (y0 + 3 * y1 + 6 * y2)) /
      10;
  }
  return twice / 2;
}

/** The same path travelled from its end to its start. */
export function reversePath(path: Path): Path {
  return path.map(reverseSegment).reverse();
}

/**
 * The paths one after another as one. Ends within SAME_POINT are brought together exactly; a wider gap is closed by a
 * straight line. Empty when there is nothing to join.
 */
export function joinPaths(paths: readonly Path[]): Path {
  const joined: Segment[] = [];
  for (const path of paths) {
    for (const segment of path) {
      const last = joined[joined.length - 1];
      const end = last && segmentEnd(last);
      if (end && !isSamePoint(end, segment.p0)) joined.push(line(end, segment.p0));
      joined.push(end && isSamePoint(end, segment.p0) ? startingAt(segment, end) : segment);
    }
  }
  return joined;
}

/** The stretch and its `t` at `length` along a path; lengths outside are brought in as {@link pathAtLength} says. */
export function placeAtLength(path: Path, length: number): { readonly index: number; readonly t: number } {
  const lengths = path.map((segment) => segmentLength(segment));
  const total = lengths.reduce((sum, each) => sum + each, 0);
  let left = length;
  if ((length < 0 || length > total) && total > 0 && isClosed(path)) left -= total * Math.floor(length / total);
  for (let i = 0; i < path.length; i++) {
    const here = lengths[i] as number;
    if (left < here) return { index: i, t: parameterAtLength(segmentOf(path, i), left) };
    left -= here;
  }
  return { index: path.length - 1, t: 1 };
}

/** The part between two lengths with 0 ≤ from, to ≤ total; `undefined` when it has no length. */
function stretchBetween(path: Path, from: number, to: number, total: number): Path | undefined {
  if (!(to > from)) return undefined;
  const first = from <= 0 ? { index: 0, t: 0 } : placeAtLength(path, from);
  const last = to >= total ? { index: path.length - 1, t: 1 } : placeAtLength(path, to);
  const part: Segment[] = [];
  for (let i = first.index; i <= last.index; i++) {
    const start = i === first.index ? first.t : 0;
    const end = i === last.index ? last.t : 1;
    if (end > start) part.push(partOfSegment(segmentOf(path, i), start, end));
  }
  return part.length > 0 ? part : undefined;
}

function startingAt(segment: Segment, start: Point): Segment {
  if (segment.p0.x === start.x && segment.p0.y === start.y) return segment;
  return segment.kind === 'line' ? line(start, segment.p1) : cubic(start, segment.p1, segment.p2, segment.p3);
}

function segmentOf(path: Path, index: number): Segment {
  const segment = path[index];
  if (segment === undefined) throw new RangeError('a path has at least one stretch');
  return segment;
}
