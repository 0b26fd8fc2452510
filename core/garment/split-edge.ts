import { nearestOnPath, pathAtLength, pathLength } from '../geometry/path';
import { distance, type TablePoint } from '../geometry/point';
import type { Path } from '../geometry/segment';
import type { Fullness } from './fullness';
import { shapeThrough } from './new-piece';
import { outlineOf } from './outline';
import type { Edge, EdgeShape, Piece } from './piece';
import { edgeIndex } from './with-piece';

/** How far the line may shift when an edge is cut in two (mm): a sixty-fourth of an inch, the width of a pencil line. */
const LINE_KEPT = 25.4 / 64;

/** A point of a curve nearer than this to the new corner gives way to it (mm). */
const GIVES_WAY = 1;

/** Points added to a half at most. Most cuts need one or two; only a curve that turns sharply beside the cut needs more. */
const MOST_ADDED = 12;

/** Each gap between points is held against the old line at one place fewer than this. */
const SAMPLES = 6;

/**
 * The piece with an edge cut in two, `along` mm from its start: a corner there, and a second edge of the same kind from
 * it on. The points a curve passes are shared out; where that alone would move the line by more than LINE_KEPT, points
 * of the old line are added. A printed length belonged to the whole edge and is left out.
 */
export function splitEdge(
  piece: Piece,
  edgeId: string,
  along: number,
  ids: { readonly cornerId: string; readonly edgeId: string },
): Piece {
  const index = edgeIndex(piece, edgeId);
  const edge = piece.edges[index];
  const path = outlineOf(piece).edges[index];
  if (!edge || !path) return piece;
  let halves = { first: pointsBetween(edge, path, 0, along), second: pointsBetween(edge, path, along, Infinity) };
  const length = pathLength(path);
  let split = assemble(piece, index, pathAtLength(path, along).point, halves, ids);
  if (edge.shape.kind === 'straight') return withMarksShared(split, edgeId, along, ids.edgeId);
  for (let round = 0; round < MOST_ADDED; round++) {
    const { edges } = outlineOf(split);
    const first = mended(path, halves.first, 0, along, edges[index]);
    const second = mended(path, halves.second, along, length, edges[index + 1]);
    if (first === halves.first && second === halves.second) break;
    halves = { first, second };
    split = assemble(piece, index, pathAtLength(path, along).point, halves, ids);
  }
  return withMarksShared(split, edgeId, along, ids.edgeId);
}

/** A point a curve passes, and where along the old line it lies. */
interface Passed {
  readonly along: number;
  readonly point: TablePoint;
}

function pointsBetween(edge: Edge, path: Path, from: number, to: number): readonly Passed[] {
  if (edge.shape.kind === 'straight') return [];
  return edge.shape.through
    .map((point) => ({ along: nearestOnPath(path, point).along, point }))
    .filter((passed) => passed.along > from + (from > 0 ? GIVES_WAY : 0) && passed.along < to - GIVES_WAY);
}

function assemble(
  piece: Piece,
  index: number,
  at: TablePoint,
  halves: { readonly first: readonly Passed[]; readonly second: readonly Passed[] },
  ids: { readonly cornerId: string; readonly edgeId: string },
): Piece {
  const { stated: _, ...edge } = piece.edges[index] as Edge;
  const { shape } = edge;
  const first: Edge = { ...edge, shape: halfShape(shape, halves.first, { meets: 'free' }) };
  const second: Edge = { ...edge, id: ids.edgeId, shape: halfShape(shape, halves.second, { leaves: 'free' }) };
  return {
    ...piece,
    corners: piece.corners.toSpliced(index + 1, 0, { id: ids.cornerId, at }),
    edges: piece.edges.toSpliced(index, 1, first, second),
  };
}

function halfShape(
  shape: EdgeShape,
  passed: readonly Passed[],
  atCorner: { readonly leaves: 'free' } | { readonly meets: 'free' },
): EdgeShape {
  if (shape.kind === 'straight') return shape;
  const half = { ...shape, through: passed.map(({ point }) => point), ...atCorner };
  return half.leaves === 'free' && half.meets === 'free' ? shapeThrough(half.through) : half;
}

/**
 * The points with one more of the old line, in the middle of that gap between them in which the new line leaves the old
 * one furthest; the same points when it does so nowhere by more than may be.
 */
function mended(old: Path, passed: readonly Passed[], from: number, to: number, now: Path | undefined) {
  const stops = [from, ...passed.map(({ along }) => along), to];
  let worst = LINE_KEPT;
  let better = passed;
  for (let gap = 1; now && gap < stops.length; gap++) {
    const [start, end] = [stops[gap - 1] as number, stops[gap] as number];
    for (let i = 1; i < SAMPLES; i++) {
      const { point } = pathAtLength(old, start + ((end - start) * i) / SAMPLES);
      const off = distance(point, nearestOnPath(now, point).point);
      if (off <= worst) continue;
      worst = off;
      const along = (start + end) / 2;
      better = passed.toSpliced(gap - 1, 0, { along, point: pathAtLength(old, along).point });
    }
  }
  return better;
}

function withMarksShared(piece: Piece, edgeId: string, along: number, secondId: string): Piece {
  const moved = <Mark extends { readonly edgeId: string; readonly along: number }>(mark: Mark): Mark =>
    mark.edgeId === edgeId && mark.along > along ? { ...mark, edgeId: secondId, along: mark.along - along } : mark;
  const shared = { ...piece, darts: piece.darts.map(moved), notches: piece.notches.map(moved) };
  if (!piece.fullness) return shared;
  const fullness = piece.fullness.flatMap((one) =>
    one.edgeId === edgeId ? sharedFullness(one, along, secondId) : [one],
  );
  return { ...shared, fullness };
}

/** Gathers across the cut are shared by it, drawn up as closely as before; a pleat goes where its middle lies. */
function sharedFullness(one: Fullness, along: number, secondId: string): readonly Fullness[] {
  if (one.kind === 'pleat') {
    if (one.from + one.takes / 2 <= along) return [one];
    return [{ ...one, edgeId: secondId, from: Math.max(0, one.from - along) }];
  }
  if (one.to <= along) return [one];
  const second = { ...one, edgeId: secondId, from: Math.max(0, one.from - along), to: one.to - along };
  if (one.from >= along) return [second];
  const into = (one.into * (along - one.from)) / (one.to - one.from);
  return [
    { ...one, to: along, into },
    { ...second, id: `${one.id}-${secondId}`, into: one.into - into },
  ];
}
