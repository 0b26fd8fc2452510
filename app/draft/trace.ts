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

/** The trace without its last point. */
export function withoutLast(trace: Trace): Trace {
  return trace.slice(0, -1);
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
