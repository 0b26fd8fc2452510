/** The parallel of one stretch in cubics as few and as long as the accuracy allows: each the longest that will do. */
import { arcOfCircle } from './arc';
import { segmentAt } from './cubic-curve';
import { fittedPiece } from './parallel-fit';
import { type ParallelPlace, parallelPlace, type Span } from './parallel-source';
import { distance, type Point, turnBetween } from './point';
import { cubic, line, type Segment } from './segment';

/** The share of the accuracy that is given to the fit: between the places it measures the error is a little larger. */
const FIT_SHARE = 0.8;

/** The share of a span below which no shorter piece is tried: the stretch turns on the spot there. */
const SHORTEST = 1e-9;

/** Parameters nearer than this may be one and the same. */
const ROUNDING = 1e-15;

/** A piece this much better than it need be is lengthened, if a longer one has failed before. */
const ROOM = 0.1;

/** Lengthenings of one piece; each halves what is still open. */
const MOST_LENGTHENINGS = 24;

/**
 * The parallel of a stretch over `span`, where it runs forwards, within `accuracy`. A line gives one line; a cubic
 * gives pieces that meet exactly. Each end is exact.
 */
export function parallelPieces(segment: Segment, offset: number, span: Span, accuracy: number): Segment[] {
  const end = { t: span.to, place: parallelPlace(segment, offset, span.to) };
  let start: End = { t: span.from, place: parallelPlace(segment, offset, span.from) };
  if (segment.kind === 'line') return [line(start.place.point, end.place.point)];
  const pieces: Segment[] = [];
  let step = span.to - span.from;
  let shortest = Math.max(SHORTEST * step, ROUNDING);
  while (start.t < end.t) {
    const found = longestPiece({ segment, offset, accuracy: accuracy * FIT_SHARE, end }, start, step, shortest);
    if (found.piece) {
      pieces.push(found.piece);
      step = Math.min(2 * (found.stop.t - start.t), end.t - found.stop.t);
    } else {
      pieces.push(...pivot(segmentAt(segment, start.t), start.place, found.stop.place, accuracy));
      step = end.t - found.stop.t;
      shortest *= 8; // so that a parallel which cannot be followed at all is soon done with
    }
    start = found.stop;
  }
  return pieces;
}

interface End {
  readonly t: number;
  readonly place: ParallelPlace;
}

interface Course {
  readonly segment: Segment;
  readonly offset: number;
  readonly accuracy: number;
  readonly end: End;
}

interface Found {
  /** Missing when not even the shortest piece will do. */
  readonly piece?: Segment;
  readonly stop: End;
}

/** The longest piece from `start` that is good enough, about `step` long to begin with. */
function longestPiece(course: Course, start: End, step: number, shortest: number): Found {
  const { segment, offset, accuracy, end } = course;
  let length = step;
  let failedAt = Infinity;
  let best: Found | undefined;
  for (let lengthenings = 0; ; ) {
    const stop = endAt(course, start.t + length);
    const { piece, error } = fittedPiece(segment, offset, start.t, start.place, stop.t, stop.place, accuracy);
    if (error !== undefined && error <= accuracy) {
      best = { piece, stop };
      if (stop === end || failedAt === Infinity || error > ROOM * accuracy) return best;
    } else {
      if (!best && length <= shortest) return { stop };
      failedAt = stop.t;
    }
    if (!best) length *= shrinkage(error, accuracy);
    else if (++lengthenings > MOST_LENGTHENINGS) return best;
    else length = (best.stop.t + failedAt) / 2 - start.t;
  }
}

function endAt({ segment, offset, end }: Course, t: number): End {
  return t > end.t - 1e-12 ? end : { t, place: parallelPlace(segment, offset, t) };
}

/** By how much to shorten a piece that missed: the error falls with the sixth power of the length. */
function shrinkage(error: number | undefined, accuracy: number): number {
  if (error === undefined || !(error < Infinity)) return 0.5;
  return Math.min(0.9, Math.max(0.25, 0.9 * (accuracy / error) ** (1 / 6)));
}

/** All but a point of the stretch: its parallel turns about it, like a pair of compasses, if it turns at all. */
function pivot(about: Point, start: ParallelPlace, stop: ParallelPlace, accuracy: number): Segment[] {
  const turn = turnBetween(start.tangent, stop.tangent);
  if (distance(start.point, stop.point) <= accuracy) return [line(start.point, stop.point)];
  const arc = arcOfCircle(about, start.point, turn, accuracy);
  const last = arc[arc.length - 1];
  if (!last) return [line(start.point, stop.point)];
  return [...arc.slice(0, -1), cubic(last.p0, last.p1, last.p2, stop.point)];
}
