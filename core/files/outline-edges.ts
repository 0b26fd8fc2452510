/**
 * An outline from a file as the corners and edges of a piece: a corner wherever the direction turns, and from one corner to
 * the next one edge, straight or a smooth curve through few points that runs where the file's line ran.
 */
import type { EndRule } from '../garment/piece';
import { distanceToChord } from '../geometry/flatten';
import { endTangent, pathLength, pathStart, startTangent, subPath } from '../geometry/path';
import { isSamePoint, type Point, turnBetween } from '../geometry/point';
import { line, type Path, type Segment } from '../geometry/segment';
import { fittingRuns, STRAIGHT } from './followed-run';
import { squareEdge } from './square-edge';

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
    if (square) return [{ at: pathStart(run), ...square }];
    return fittingRuns(run, within).map(({ path: part, through, off }) => {
      return { at: pathStart(part), through, leaves: 'free', meets: 'free', off };
    });
  });
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
