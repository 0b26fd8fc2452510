/**
 * Which kept parts of a parallel follow one another, and over what: along the path, at a crossing, or round a corner.
 */
import { lastCrossing } from './parallel-crossing';
import type { Span } from './parallel-source';
import { endsOfPart, type Kept, type Source } from './parallel-trim';
import { signedArea } from './path';
import { distance, type Point, turnBetween, vectorBetween } from './point';
import { line, type Segment, segmentEnd } from './segment';

/** A path on its way to a parallel. */
export interface Course {
  readonly sources: readonly Source[];
  readonly offset: number;
  readonly accuracy: number;
  /** The turn from each stretch to the next; a closed path has one more, from the last to the first. */
  readonly turns: readonly number[];
  /** Turns up to this are no corners: the gap they leave is within the accuracy. */
  readonly slight: number;
  readonly closed: boolean;
}

/** Part of a circle that a parallel makes round a corner of the path. */
export interface Pivot {
  readonly corner: Point;
  readonly sweep: number;
}

/** The kept parts that make up one run: from start to end, or the largest ring. */
export function runOfParts(course: Course, kept: readonly Kept[]): Kept[] {
  if (!course.closed) return openRun(course, kept);
  let best: Kept[] = [];
  let bestArea = 0;
  const used = new Set<Kept>();
  for (let i = 0; i < kept.length; i++) {
    if (used.has(kept[i] as Kept)) continue;
    const run = openRun(course, [...kept.slice(i), ...kept.slice(0, i)], kept[i]);
    for (const part of run) used.add(part);
    const area = Math.abs(signedArea(run.map((part) => chordOf(course, part))));
    if (area > bestArea || best.length === 0) {
      best = run;
      bestArea = area;
    }
  }
  return best;
}

/** Whether one part goes over into another where their stretches join, smoothly or round the outside of a corner. */
export function followsOn({ sources, turns, slight, offset }: Course, one: Kept, other: Kept): boolean {
  if (!one.reachesEnd || !other.reachesStart || other.index !== (one.index + 1) % sources.length) return false;
  const turn = turns[one.index];
  return turn !== undefined && turn * Math.sign(offset) >= -slight;
}

/**
 * The corner both parts stop short of at exactly the distance: there the parallel turns round the corner, which is too
 * sharp for the two parts to reach one another. `undefined` for any other gap.
 */
export function pivotBetween(course: Course, one: Kept, other: Kept): Pivot | undefined {
  const { sources, offset, accuracy, closed } = course;
  const [, end] = endsOfPart(sources, offset, one);
  const [start] = endsOfPart(sources, offset, other);
  const steps = (other.index - one.index + sources.length) % sources.length;
  if (other.index < one.index && !closed) return undefined;
  for (let k = 0; k < steps; k++) {
    const corner = segmentEnd((sources[(one.index + k) % sources.length] as Source).segment);
    const off = Math.max(...[end, start].map((point) => Math.abs(distance(point, corner) - Math.abs(offset))));
    if (off > accuracy) continue;
    const turn = turnBetween(vectorBetween(corner, end), vectorBetween(corner, start));
    return { corner, sweep: turn * offset >= 0 ? turn : turn + 2 * Math.PI * Math.sign(offset) };
  }
  return undefined;
}

/** Where one kept part leads on to another: along the path, at a crossing both end on, or round a corner. */
function leadsOn(course: Course, one: Kept, other: Kept): boolean {
  if (followsOn(course, one, other) || gapBetween(course, one, other) <= course.accuracy) return true;
  return pivotBetween(course, one, other) !== undefined;
}

function chordOf({ sources, offset }: Course, part: Kept): Segment {
  return line(...endsOfPart(sources, offset, part));
}

/**
 * One part after another, each the next that the one before leads on to; parts between are islands. Where none fits,
 * the gap is no plain loop: within one stretch it is left as the raw parallel has it, elsewhere the raw parallels of
 * the two parts are followed to where they cross.
 */
function openRun(course: Course, kept: readonly Kept[], closeAt?: Kept): Kept[] {
  const run: Kept[] = [];
  const left = kept.slice();
  while (left.length > 0) {
    const part = left.shift() as Kept;
    run.push(part);
    if (closeAt && (run.length > 1 || left.length === 0) && leadsOn(course, part, closeAt)) break;
    const next = left.findIndex((other) => leadsOn(course, part, other));
    if (next > 0) left.splice(0, next);
    const after = left[0];
    if (next >= 0 || !after) continue;
    run.pop();
    if (sharesSpan(course, part, after)) {
      left[0] = { ...after, span: { from: part.span.from, to: after.span.to }, reachesStart: part.reachesStart };
      continue;
    }
    const crossed = crossedRaw(course, part, after);
    run.push(crossed?.[0] ?? part);
    if (crossed) left[0] = crossed[1];
    else if (leapsHome(course, part, left, closeAt)) break;
    else left.splice(0, nearestStart(course, part, left));
  }
  return run;
}

/** Two parts lengthened or shortened to where the forward parallels they belong to cross, if they do. */
function crossedRaw({ sources, offset }: Course, one: Kept, other: Kept): readonly [Kept, Kept] | undefined {
  const [before, behind] = [sources[one.index] as Source, sources[other.index] as Source];
  const [spanOne, spanOther] = [spanAround(before, one), spanAround(behind, other)];
  const crossing = lastCrossing(
    { segment: before.segment, span: { from: one.span.from, to: spanOne.to } },
    { segment: behind.segment, span: { from: spanOther.from, to: other.span.to } },
    offset,
  );
  if (!crossing) return undefined;
  return [
    { ...one, span: { from: one.span.from, to: crossing.first }, reachesEnd: false },
    { ...other, span: { from: crossing.second, to: other.span.to }, reachesStart: false },
  ];
}

/** The number of the part whose start is nearest to the end of `part`: where mitres run into one another. */
function nearestStart(course: Course, part: Kept, others: readonly Kept[]): number {
  const gaps = others.map((other) => gapBetween(course, part, other));
  return gaps.indexOf(Math.min(...gaps));
}

/** Whether a ring is nearer to its own start than to any part it could go on to. */
function leapsHome(course: Course, part: Kept, others: readonly Kept[], closeAt: Kept | undefined): boolean {
  const next = others[nearestStart(course, part, others)];
  return (
    closeAt !== undefined && next !== undefined && gapBetween(course, part, closeAt) < gapBetween(course, part, next)
  );
}

function gapBetween({ sources, offset }: Course, one: Kept, other: Kept): number {
  return distance(endsOfPart(sources, offset, one)[1], endsOfPart(sources, offset, other)[0]);
}

/** The forward span a part was cut from. */
function spanAround({ spans }: Source, { span }: Kept): Span {
  return spans.find(({ from, to }) => from <= span.from && to >= span.to) ?? span;
}

/** Whether both parts come from one unbroken forward part of one stretch. */
function sharesSpan({ sources }: Course, one: Kept, other: Kept): boolean {
  const source = sources[one.index] as Source;
  return one.index === other.index && spanAround(source, one) === spanAround(source, other);
}
