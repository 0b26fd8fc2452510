import { distance, type Point, turnBetween, vectorBetween } from '../geometry/point';
import { line, type Path } from '../geometry/segment';
import { splineThrough } from '../geometry/spline';

/** A corner sharper than this is one, however short its sides: 30 degrees. */
const SHARPEST = Math.PI / 6;

/** How a corner of a polyline was marked in its file. */
export type PolylineMark = 'turn' | 'curve' | 'unmarked';

/**
 * A run of straight sides with the curves it stands for put back: from one turn to the next a spline through the points
 * between. A point marked as of a curve is none; an unmarked one counts as such when its sides are so short that the
 * spline keeps within about `within` mm of them (a bow over a chord c that turns by a rises c · a/8). The first point of
 * a closed run (which is repeated at its end) is treated like the rest. Fewer than two points give nothing.
 */
export function smoothPolyline(
  points: readonly Point[],
  marks: readonly PolylineMark[],
  { within, closed }: { readonly within: number; readonly closed: boolean },
): Path {
  const last = points.length - 1;
  if (last < 1) return [];
  const isTurn = (i: number): boolean => {
    if (!closed && (i === 0 || i === last)) return true;
    const mark = marks[i % last] as PolylineMark;
    return mark === 'unmarked' ? turnsAt(points, i % last, within) : mark === 'turn';
  };
  const turns = points.flatMap((_, i) => ((i < last || !closed) && isTurn(i) ? [i] : []));
  const first = turns[0] ?? 0;
  const ring = closed ? [...points.slice(first, last), ...points.slice(0, first + 1)] : points;
  const ends = closed ? [...turns.map((i) => i - first), last] : turns;
  const starts = ends[0] === 0 ? ends : [0, ...ends];
  return starts.slice(1).flatMap((end, i): Path => {
    const run = ring.slice(starts[i], end + 1);
    return run.length === 2 ? [line(run[0] as Point, run[1] as Point)] : splineThrough(run);
  });
}

function turnsAt(points: readonly Point[], i: number, within: number): boolean {
  const here = points[i] as Point;
  const before = points[i === 0 ? points.length - 2 : i - 1] as Point;
  const after = points[i + 1] as Point;
  const turn = Math.abs(turnBetween(vectorBetween(before, here), vectorBetween(here, after)));
  const chord = Math.max(distance(before, here), distance(here, after));
  return turn > SHARPEST || (chord * turn) / 8 > within;
}
