/**
 * Which parts of a raw parallel stay: those no nearer to the path than the distance asked.
 *
 * Where a curve is tighter than the distance, at hollow corners and where two far parts of a path come close, the raw
 * parallel crosses itself, and all it does between is nearer than it should be. The ends of such a part are found on
 * the true parallel by halving, not on its approximation, so both land on the crossing itself.
 *
 * See: T. Maekawa, An overview of offset curves and surfaces, Computer-Aided Design 31 (1999), on local and global loops.
 */
import { type Box, distanceToBox } from './bounds';
import { segmentBounds } from './cubic-curve';
import { nearestOnSegment } from './nearest-point';
import { forwardSpans, parallelPlace, type Span } from './parallel-source';
import { distance, type Point } from './point';
import type { Segment } from './segment';
import { segmentLength } from './segment-length';

/** A stretch of the path with the parts of its parallel that run forwards. */
export interface Source {
  readonly segment: Segment;
  readonly spans: readonly Span[];
  readonly box: Box;
}

/** A part of the parallel that stays: over `span` of stretch `index`. */
export interface Kept {
  readonly index: number;
  readonly span: Span;
  /** Whether it reaches the very start or end of its stretch's parallel, where the neighbour's joins on. */
  readonly reachesStart: boolean;
  readonly reachesEnd: boolean;
}

/** How much nearer than asked a place may come out by rounding alone. */
const CLEARANCE_SLACK = 1e-7;

/** Looks for each distance's worth of length; a part nearer than asked that falls between two looks is a sliver. */
const LOOKS_PER_DISTANCE = 3;
const FEWEST_LOOKS = 8;
const MOST_LOOKS = 96;

/** Steady stretches ready for {@link keptParts}. */
export function sourcesOf(stretches: readonly Segment[], offset: number): Source[] {
  return stretches.map((segment) => ({
    segment,
    spans: forwardSpans(segment, offset),
    box: segmentBounds(segment),
  }));
}

/** All of the parallel that runs forwards, in order. */
export function allParts(sources: readonly Source[]): Kept[] {
  return sources.flatMap(({ spans }, index) =>
    spans.map((span) => ({ index, span, reachesStart: span.from === 0, reachesEnd: span.to === 1 })),
  );
}

/** The parts of a parallel that keep their distance from the whole path, in order along it. */
export function keptParts(sources: readonly Source[], offset: number): Kept[] {
  const kept: Kept[] = [];
  allParts(sources).forEach((part) => {
    const { segment } = sources[part.index] as Source;
    const isClearAt = (t: number) => isClear(sources, parallelPlace(segment, offset, t).point, Math.abs(offset));
    const { from, to } = part.span;
    const share = Math.min(MOST_LOOKS, (segmentLength(segment) * (to - from) * LOOKS_PER_DISTANCE) / Math.abs(offset));
    const looks = Math.max(FEWEST_LOOKS, Math.ceil(share));
    let before = from;
    let wasClear = isClearAt(from);
    let begun = from;
    for (let i = 1; i <= looks; i++) {
      const t = i === looks ? to : from + ((to - from) * i) / looks;
      const clear = isClearAt(t);
      if (clear !== wasClear) {
        const edge = edgeBetween(isClearAt, before, t, wasClear);
        if (wasClear) kept.push(partBetween(part, begun, edge));
        else begun = edge;
      }
      before = t;
      wasClear = clear;
    }
    if (wasClear) kept.push(partBetween(part, begun, to));
  });
  return kept.filter(({ span }) => span.to > span.from);
}

/** Where a parallel part of a stretch begins and ends. */
export function endsOfPart(sources: readonly Source[], offset: number, { index, span }: Kept): readonly [Point, Point] {
  const { segment } = sources[index] as Source;
  return [parallelPlace(segment, offset, span.from).point, parallelPlace(segment, offset, span.to).point];
}

function partBetween(part: Kept, from: number, to: number): Kept {
  return {
    index: part.index,
    span: { from, to },
    reachesStart: part.reachesStart && from === part.span.from,
    reachesEnd: part.reachesEnd && to === part.span.to,
  };
}

/** The last clear parameter between two, one clear and one not. */
function edgeBetween(isClearAt: (t: number) => boolean, from: number, to: number, clearFirst: boolean): number {
  let low = from;
  let high = to;
  for (let step = 0; step < 40; step++) {
    const middle = (low + high) / 2;
    if (isClearAt(middle) === clearFirst) low = middle;
    else high = middle;
  }
  return clearFirst ? low : high;
}

/** Whether no part of the path is nearer to `point` than `least`. */
function isClear(sources: readonly Source[], point: Point, least: number): boolean {
  const limit = least - CLEARANCE_SLACK;
  for (const { segment, box } of sources) {
    if (distanceToBox(box, point) >= limit) continue;
    if (distance(segment.p0, point) < limit || nearestOnSegment(segment, point).distance < limit) return false;
  }
  return true;
}
