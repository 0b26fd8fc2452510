import { segmentCurvature, segmentDerivative } from './cubic-curve';
import { type ParallelPlace, parallelPlace, type Span } from './parallel-source';
import { cross, distance, type Vector, vectorBetween } from './point';
import type { Segment } from './segment';

/** Chords along each parallel among which a crossing is first sought. */
const CHORDS = 48;

/** A forward part of the parallel of a stretch. */
export interface ForwardPart {
  readonly segment: Segment;
  readonly span: Span;
}

/** The parameters of two stretches at which their parallels at one distance cross. */
export interface ParallelCrossing {
  readonly first: number;
  readonly second: number;
}

/**
 * Where the parallel of `first` last crosses that of `second`, on the true parallels and to rounding; `undefined` when
 * they do not cross. Crossings closer together than a fiftieth of either part may be missed.
 */
export function lastCrossing(first: ForwardPart, second: ForwardPart, offset: number): ParallelCrossing | undefined {
  const one = chordPoints(first, offset);
  const other = chordPoints(second, offset);
  for (let i = CHORDS; i >= 1; i--) {
    for (let j = 1; j <= CHORDS; j++) {
      const share = chordsCross(one, i, other, j);
      if (!share) continue;
      const guess = {
        first: atShare(first.span, (i - 1 + share.first) / CHORDS),
        second: atShare(second.span, (j - 1 + share.second) / CHORDS),
      };
      return refined(first, second, offset, guess);
    }
  }
  return undefined;
}

function atShare({ from, to }: Span, share: number): number {
  return from + (to - from) * share;
}

function chordPoints({ segment, span }: ForwardPart, offset: number): ParallelPlace[] {
  return Array.from({ length: CHORDS + 1 }, (_, i) => parallelPlace(segment, offset, atShare(span, i / CHORDS)));
}

function chordsCross(one: readonly ParallelPlace[], i: number, other: readonly ParallelPlace[], j: number) {
  const [a, b, c, d] = [one[i - 1], one[i], other[j - 1], other[j]] as [
    ParallelPlace,
    ParallelPlace,
    ParallelPlace,
    ParallelPlace,
  ];
  const along = vectorBetween(a.point, b.point);
  const beside = vectorBetween(c.point, d.point);
  const between = vectorBetween(a.point, c.point);
  const turn = cross(along, beside);
  const first = cross(between, beside) / turn;
  const second = cross(between, along) / turn;
  return first >= 0 && first <= 1 && second >= 0 && second <= 1 ? { first, second } : undefined;
}

/** Newton's method on the difference of the two true parallels; the guess itself where that leads astray. */
function refined(first: ForwardPart, second: ForwardPart, offset: number, guess: ParallelCrossing): ParallelCrossing {
  let { first: s, second: t } = guess;
  for (let step = 0; step < 20; step++) {
    const gap = vectorBetween(
      parallelPlace(first.segment, offset, s).point,
      parallelPlace(second.segment, offset, t).point,
    );
    const along = travel(first.segment, offset, s);
    const beside = travel(second.segment, offset, t);
    const turn = cross(along, beside);
    const ds = cross(gap, beside) / turn;
    const dt = cross(gap, along) / turn;
    if (!(Math.abs(ds) < 1 && Math.abs(dt) < 1)) return guess;
    s = Math.min(first.span.to, Math.max(first.span.from, s + ds));
    t = Math.min(second.span.to, Math.max(second.span.from, t + dt));
    if (Math.abs(ds) + Math.abs(dt) < 1e-14) break;
  }
  const apart = ({ first: a, second: b }: ParallelCrossing) =>
    distance(parallelPlace(first.segment, offset, a).point, parallelPlace(second.segment, offset, b).point);
  const found = { first: s, second: t };
  return apart(found) <= apart(guess) ? found : guess;
}

/** The derivative of the parallel. */
function travel(segment: Segment, offset: number, t: number): Vector {
  const { dx, dy } = segmentDerivative(segment, t);
  const factor = 1 + offset * segmentCurvature(segment, t);
  return { dx: dx * factor, dy: dy * factor };
}
