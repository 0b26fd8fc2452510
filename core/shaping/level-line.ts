import { neighbourIndex, outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { netAlong, takenUp } from '../garment/taken-up';
import { edgeIndex } from '../garment/with-piece';
import { flattenPath } from '../geometry/flatten';
import { intersectPaths } from '../geometry/intersect';
import { parallelOf } from '../geometry/parallel';
import {
  endTangent,
  joinPaths,
  nearestOnPath,
  pathAtLength,
  pathBounds,
  pathEnd,
  pathLength,
  pathStart,
  signedArea,
  startTangent,
  subPath,
} from '../geometry/path';
import { move } from '../geometry/point';
import { placeInRing } from '../geometry/polygon';
import { line, type Path } from '../geometry/segment';

/** The line round the body at some depth below the waist, as it runs over one piece. */
export interface LevelLine {
  /** The runs inside the piece: one, unless the outline cuts in between. */
  readonly runs: readonly Path[];
  /** The length of the runs less what darts take up there, and at the waist itself pleats and gathers (mm). */
  readonly length: number;
}

/** How finely the outline is followed to tell inside from outside (mm): only middles of runs are asked for. */
const INSIDE_FLATNESS = 0.1;

const remembered = new WeakMap<Piece, Map<string, LevelLine | undefined>>();

/**
 * The level `depth` mm below the waist edges of a piece, measured along the piece: the parallel of the waist, run on
 * straight at its ends and cut off at the outline. Depth 0 is the waist itself as it is sewn. With `edgeId` it is measured
 * from that edge, and from those of its name and kind that run on from it, instead of from the waist. `undefined` for a
 * piece without such an edge, or one that does not reach so far down. Remembered per piece, edge and depth.
 */
export function levelLine(piece: Piece, depth: number, edgeId?: string): LevelLine | undefined {
  let known = remembered.get(piece);
  if (!known) {
    known = new Map();
    remembered.set(piece, known);
  }
  const key = `${depth} ${edgeId ?? ''}`;
  if (!known.has(key)) known.set(key, workOut(piece, depth, edgesFrom(piece, edgeId)));
  return known.get(key);
}

/** The edges a level is measured from, by their place in the piece. */
function edgesFrom(piece: Piece, edgeId: string | undefined): ReadonlySet<number> {
  const { edges } = piece;
  if (edgeId === undefined) return new Set(edges.flatMap(({ role }, index) => (role === 'waist' ? [index] : [])));
  const first = edgeIndex(piece, edgeId);
  const found = new Set(first < 0 ? [] : [first]);
  const isLike = (index: number) =>
    edges[index]?.role === edges[first]?.role && edges[index]?.name === edges[first]?.name;
  for (const step of [-1, 1] as const) {
    let at = neighbourIndex(piece, first, step);
    while (first >= 0 && !found.has(at) && edges[first]?.name !== '' && isLike(at)) {
      found.add(at);
      at = neighbourIndex(piece, at, step);
    }
  }
  return found;
}

function workOut(piece: Piece, depth: number, top: ReadonlySet<number>): LevelLine | undefined {
  const outline = outlineOf(piece);
  const inward = signedArea(outline.whole) > 0 ? -1 : 1;
  const runs = waistRuns(piece, top).flatMap((waist) =>
    depth === 0 ? [waist] : runsBelow(waist, outline.whole, depth * inward, depth),
  );
  if (runs.length === 0) return undefined;
  const length = runs.reduce((sum, run) => sum + pathLength(run), 0);
  return { runs, length: Math.max(0, length - (depth === 0 ? sewnUp(piece, top) : dartsAt(piece, depth, top))) };
}

/** The edges measured from as paths; edges that follow one another are one run. */
function waistRuns(piece: Piece, top: ReadonlySet<number>): Path[] {
  const { edges } = outlineOf(piece);
  const isWaist = (index: number) => top.has(index) && pathLength(edges[index] ?? []) > 0;
  const runs: Path[][] = [];
  edges.forEach((path, index) => {
    if (!isWaist(index)) return;
    if (index > 0 && isWaist(index - 1)) runs.at(-1)?.push(path);
    else runs.push([path]);
  });
  const [first, last] = [runs[0], runs.at(-1)];
  const goesRound = first && last && first !== last && isWaist(0) && isWaist(edges.length - 1);
  if (goesRound) runs.splice(0, 1, [...last, ...first]);
  return (goesRound ? runs.slice(0, -1) : runs).map(joinPaths);
}

function runsBelow(waist: Path, outline: Path, offset: number, depth: number): Path[] {
  const parallel = parallelOf(waist, offset);
  if (!parallel) return [];
  const box = pathBounds(outline);
  const reach = box.maxX - box.minX + (box.maxY - box.minY) + depth;
  const [start, end] = [pathStart(parallel), pathEnd(parallel)];
  const extended = [
    line(move(start, startTangent(parallel), -reach), start),
    ...parallel,
    line(end, move(end, endTangent(parallel), reach)),
  ];
  const own = { from: reach, to: reach + pathLength(parallel) };
  const meetings = intersectPaths(extended, outline);
  const cuts = meetings
    .flatMap((meeting) => (meeting.kind === 'overlap' ? [meeting.fromA, meeting.toA] : [meeting.alongA]))
    .sort((a, b) => a - b);
  const polygon = flattenPath(outline, INSIDE_FLATNESS);
  const runs: Path[] = [];
  for (let i = 1; i < cuts.length; i++) {
    const [from, to] = [cuts[i - 1] as number, cuts[i] as number];
    if (to - from < 1e-6 || to <= own.from || from >= own.to) continue;
    const lies = meetings.some((each) => each.kind === 'overlap' && each.fromA <= from && each.toA >= to);
    if (!lies && placeInRing(polygon, pathAtLength(extended, (from + to) / 2).point) === 'outside') continue;
    const run = subPath(extended, from, to);
    if (run) runs.push(run);
  }
  return runs;
}

/** What darts, pleats and gathers take up of the edges measured from. Below the waist pleats and gathers hang free. */
function sewnUp(piece: Piece, top: ReadonlySet<number>): number {
  if (piece.darts.length === 0 && !piece.fullness?.length) return 0;
  return outlineOf(piece).edges.reduce((sum, path, index) => {
    const edge = piece.edges[index];
    if (!edge || !top.has(index)) return sum;
    const length = pathLength(path);
    return sum + length - netAlong(takenUp(piece, edge.id, length), length);
  }, 0);
}

/** What the darts of those edges still take up at a depth: all of their width at the edge, nothing at their point. */
function dartsAt(piece: Piece, depth: number, top: ReadonlySet<number>): number {
  const { edges } = outlineOf(piece);
  let taken = 0;
  for (const dart of piece.darts) {
    const index = edgeIndex(piece, dart.edgeId);
    const waist = edges[index];
    if (!waist || !top.has(index)) continue;
    const reach = nearestOnPath(waist, dart.point).distance;
    if (reach > depth) taken += dart.width * (1 - depth / reach);
  }
  return taken;
}
