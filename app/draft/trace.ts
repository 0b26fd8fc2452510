import type { TracedCorner } from '../../core/garment/new-piece';
import { pathLength } from '../../core/geometry/path';
import { distance, type TablePoint } from '../../core/geometry/point';
import { line, type Path } from '../../core/geometry/segment';
import { splineThrough } from '../../core/geometry/spline';
import { inches } from '../../core/units/inch';

/** A point put down while tracing: a corner ends one edge and begins the next, a curve point lies along one. */
export interface TracedPoint {
  readonly at: TablePoint;
  readonly kind: 'corner' | 'curve';
  /** It was not put down itself: the printed line was followed over it to the next point that was. */
  readonly followed?: true;
}

/** The points of a piece in the making, in the order they were put down. The first is always a corner. */
export type Trace = readonly TracedPoint[];

/** Two taps nearer than this were one tap: a sixty-fourth of an inch at full size. */
export const ONE_TAP = inches(1 / 64);

/** The trace with one more point; the same trace when the point lies on the one before. */
export function withPoint(trace: Trace, at: TablePoint, kind: TracedPoint['kind']): Trace {
  const last = trace[trace.length - 1];
  if (last && distance(last.at, at) < ONE_TAP) return trace;
  return [...trace, { at, kind: last ? kind : 'corner' }];
}

/** The trace with a point that a printed line was followed to, and before it those that keep to the line. */
export function withFollowed(
  trace: Trace,
  over: readonly Omit<TracedPoint, 'followed'>[],
  at: TablePoint,
  kind: TracedPoint['kind'],
): Trace {
  const last = trace[trace.length - 1];
  if (!last || distance(last.at, at) < ONE_TAP) return withPoint(trace, at, kind);
  return [...trace, ...over.map((point) => ({ ...point, followed: true as const })), { at, kind }];
}

/** The trace without the last point that was put down, and without those a line was followed over on the way to it. */
export function withoutLast(trace: Trace): Trace {
  return trace.slice(0, trace.findLastIndex((point, index) => index < trace.length - 1 && !point.followed) + 1);
}

/** Whether a press at `place` leads back to the first corner along a printed line, which may bring corners with it. */
export function followsBackTo(trace: Trace, place: TablePoint, reach: number): boolean {
  const first = trace[0];
  return first !== undefined && trace.length >= 2 && distance(first.at, place) <= reach;
}

/** Whether the points make a piece already: three corners, or two and something curved between them. */
export function canClose(trace: Trace): boolean {
  const corners = trace.filter((point) => point.kind === 'corner').length;
  return corners >= 3 || (corners === 2 && trace.length > corners);
}

/** Whether a press at `place` closes the trace: on its first corner, and enough points put down. */
export function closesAt(trace: Trace, place: TablePoint, reach: number): boolean {
  const first = trace[0];
  return first !== undefined && canClose(trace) && distance(first.at, place) <= reach;
}

/** The trace as a closed ring of corners; `undefined` while it cannot close. */
export function ringOf(trace: Trace): readonly TracedCorner[] | undefined {
  if (!canClose(trace)) return undefined;
  const ring: { at: TablePoint; through: TablePoint[] }[] = [];
  for (const { at, kind } of trace) {
    if (kind === 'corner') ring.push({ at, through: [] });
    else ring[ring.length - 1]?.through.push(at);
  }
  return ring;
}

/** The edges traced so far, the one that is being drawn last, with the pointer's place as its end if there is one. */
export function pathsOf(trace: Trace, pointer: TablePoint | undefined): readonly Path[] {
  const paths: Path[] = [];
  let run: TablePoint[] = [];
  const close = () => {
    if (run.length === 2) paths.push([line(run[0] as TablePoint, run[1] as TablePoint)]);
    else if (run.length > 2) paths.push(splineThrough(run));
  };
  for (const { at, kind } of trace) {
    run.push(at);
    if (kind === 'corner') {
      close();
      run = [at];
    }
  }
  if (pointer) run.push(pointer);
  close();
  return paths;
}

/** How long the edge is that is being drawn, up to the pointer; `undefined` before it has begun to be one. */
export function lengthBeingDrawn(trace: Trace, pointer: TablePoint | undefined): number | undefined {
  const last = trace[trace.length - 1];
  if (!last || (last.kind === 'corner' && !pointer)) return undefined;
  const path = pathsOf(trace, pointer).at(-1);
  const length = path && pathLength(path);
  return length === undefined || length < ONE_TAP ? undefined : length;
}

/** How long a way over many places is. */
export function lengthOfWay(way: readonly TablePoint[]): number {
  return way.reduce((sum, place, index) => sum + (index > 0 ? distance(place, way[index - 1] as TablePoint) : 0), 0);
}
