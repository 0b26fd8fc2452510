/** The cut line edge by edge: each edge's parallel at its own width, joined to its neighbours at the corners. */
import { outlineOf } from '../garment/outline';
import type { Corner, Edge, Piece } from '../garment/piece';
import { parallelOf } from '../geometry/parallel';
import { endTangent, isClosed, pathEnd, pathLength, pathStart, startTangent, subPath } from '../geometry/path';
import { cross, isSamePoint, type Point, turnBetween, vectorBetween } from '../geometry/point';
import { cubic, line, type Path, type Segment, segmentEnd } from '../geometry/segment';
import { goesSomewhere, windingOf } from './corner-angle';
import { finishBetween } from './corner-finish';
import { jointAt } from './corner-joint';
import { type CornerPlace, type Joint, linesThrough, type Strip } from './corner-place';

/** How far off the true parallel a cut line may be, in mm. */
const CUT_ACCURACY = 0.008;

/** One edge's part of the cut line, from its share of one corner to its share of the next; it may be empty. */
export interface AllowanceStrip {
  readonly edgeIndex: number;
  readonly stitch: Path;
  readonly width: number;
  readonly cut: Path;
  /** Whether its end is joined to the next strip, which then begins there. */
  readonly leadsOn: boolean;
}

/** All strips of a piece, in order, without edges that have no length. */
export interface AllowanceStrips {
  readonly strips: readonly AllowanceStrip[];
  /** Whether every strip leads on to the next, so that together they are one closed line. */
  readonly joined: boolean;
  /** Indexes of corners whose mitre was cut off. */
  readonly blunted: readonly number[];
}

/** The width by which an edge is cut larger: none at a fold, `undefined` where she has not said. */
export function allowanceOf(edge: Edge): number | undefined {
  if (edge.role === 'fold') return 0;
  return edge.allowance === undefined ? undefined : Math.max(0, edge.allowance);
}

interface LiveEdge {
  readonly index: number;
  readonly edge: Edge;
  readonly stitch: Path;
  readonly strip: Strip | undefined;
  readonly width: number;
}

/**
 * The strips of a piece, allowances not said counting as 0. Where a corner cannot be joined plainly, or an edge is
 * swallowed by its neighbours' corners, the strips end square to the stitch line there and `joined` is false.
 */
export function allowanceStrips(piece: Piece): AllowanceStrips {
  const outward = windingOf(piece);
  const live = liveEdges(piece, outward);
  const joints = live.map((after, i) => joined(piece, live.at(i - 1) as LiveEdge, after, outward));
  const cuts = live.map(({ strip }, i) => {
    const start = joints[i];
    const end = joints[(i + 1) % joints.length];
    return strip && start && end && cutBetween(strip.path, start, end);
  });
  const strips = live.map((edge, i): AllowanceStrip => {
    const { index, stitch, width } = edge;
    const next = (i + 1) % live.length;
    const cut = cuts[i] ?? squareEnded(edge, joints[i], joints[next]);
    return { edgeIndex: index, stitch, width, cut, leadsOn: cuts[i] !== undefined && cuts[next] !== undefined };
  });
  const blunted = live.flatMap(({ index }, i) => (joints[i]?.blunted ? [index] : []));
  return { strips, joined: live.length > 0 && !cuts.includes(undefined), blunted };
}

function liveEdges(piece: Piece, outward: 1 | -1): LiveEdge[] {
  const outline = outlineOf(piece);
  const live: LiveEdge[] = [];
  piece.edges.forEach((edge, index) => {
    const stitch = outline.edges[index] as Path;
    if (!goesSomewhere(stitch)) return;
    const width = allowanceOf(edge) ?? 0;
    const path = width > 0 ? parallelKept(stitch, outward * width) : stitch;
    const open = path && (isClosed(stitch) || !isClosed(path)) ? path : undefined;
    live.push({ index, edge, stitch, width, strip: open && { path: open, width, isHem: edge.role === 'hem' } });
  });
  return live;
}

const remembered = new WeakMap<Path, { readonly offset: number; readonly path: Path | undefined }>();

/** The parallel of a stitch line, remembered with it: while a point is dragged most edges keep their very lines. */
function parallelKept(stitch: Path, offset: number): Path | undefined {
  const known = remembered.get(stitch);
  if (known?.offset === offset) return known.path;
  const path = parallelOf(stitch, offset, { accuracy: CUT_ACCURACY });
  remembered.set(stitch, { offset, path });
  return path;
}

function joined(piece: Piece, before: LiveEdge, after: LiveEdge, outward: 1 | -1): Joint | undefined {
  if (!before.strip || !after.strip) return undefined;
  const arriving = endTangent(before.stitch);
  const leaving = startTangent(after.stitch);
  const turn = outward * turnBetween(arriving, leaving);
  const place: CornerPlace = { at: pathStart(after.stitch), arriving, leaving, outward, turn };
  const finish = finishBetween(before.edge, after.edge, piece.corners[after.index] as Corner, Math.PI - turn);
  return jointAt(place, before.strip, after.strip, finish);
}

/** A strip between its two joints; `undefined` when they take all of it. */
function cutBetween(path: Path, start: Joint, end: Joint): Path | undefined {
  let middle: Path | undefined = path;
  if (start.after.taken > 0 || end.before.taken > 0) {
    const length = pathLength(path);
    const [from, to] = [start.after.taken, length - end.before.taken];
    middle = to > from ? openPart(path, from, to) : undefined;
  }
  if (!middle) return undefined;
  let cut = straightened([...start.after.extra, ...middle, ...end.before.extra]);
  if (start.meet) cut = startingAt(cut, start.meet);
  if (end.meet) cut = endingAt(cut, end.meet);
  return cut;
}

/** Part of a path, also of one that happens to end where it begins, without going on over its start. */
function openPart(path: Path, from: number, to: number): Path | undefined {
  return from <= 0 && isClosed(path) ? subPath(path, 0, to) : subPath(path, from, to);
}

/** A strip that ends square to the stitch line wherever it is not joined. */
function squareEnded({ stitch, strip }: LiveEdge, start: Joint | undefined, end: Joint | undefined): Path {
  if (!strip) return [];
  const { path } = strip;
  const first = start && start.after.taken === 0 ? start.after.extra : linesThrough(pathStart(stitch), pathStart(path));
  const last = end && end.before.taken === 0 ? end.before.extra : linesThrough(pathEnd(path), pathEnd(stitch));
  return straightened([...first, ...path, ...last]);
}

/** A path in which straight stretches in line with one another are one, and whose ends meet exactly. */
function straightened(path: Path): Path {
  const result: Segment[] = [];
  for (const segment of path) {
    const last = result[result.length - 1];
    if (!last) result.push(segment);
    else if (last.kind === 'line' && segment.kind === 'line' && isInLine(last.p0, last.p1, segment.p1)) {
      result[result.length - 1] = line(last.p0, segment.p1);
    } else result.push(...startingAt([segment], segmentEnd(last)));
  }
  return result;
}

function isInLine(from: Point, middle: Point, to: Point): boolean {
  const one = vectorBetween(from, middle);
  const other = vectorBetween(middle, to);
  const lengths = Math.hypot(one.dx, one.dy) * Math.hypot(other.dx, other.dy);
  return Math.abs(cross(one, other)) <= 1e-9 * lengths && one.dx * other.dx + one.dy * other.dy > 0;
}

/** A path moved to begin exactly at `start`, which is next to where it begins; its direction there stays. */
export function startingAt(path: Path, start: Point): Path {
  const [first, ...rest] = path;
  if (!first || (first.p0.x === start.x && first.p0.y === start.y)) return path;
  if (first.kind === 'line') return isSamePoint(start, first.p1) ? path : [line(start, first.p1), ...rest];
  return [cubic(start, shifted(first.p1, first.p0, start), first.p2, first.p3), ...rest];
}

function endingAt(path: Path, end: Point): Path {
  const last = path[path.length - 1];
  if (!last) return path;
  if (last.kind === 'line') return [...path.slice(0, -1), line(last.p0, end)];
  return [...path.slice(0, -1), cubic(last.p0, last.p1, shifted(last.p2, last.p3, end), end)];
}

function shifted(point: Point, from: Point, to: Point): Point {
  return { x: point.x + to.x - from.x, y: point.y + to.y - from.y };
}
