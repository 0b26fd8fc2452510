/**
 * How the cut line gets round one corner of the stitch line.
 *
 * With u and v the directions before and after the corner, t the turn and w1, w2 the allowances, the two cut lines
 * carried on straight meet s beyond the end of the first and r before the start of the second:
 *     s = (w2 - w1 cos t) / sin t,   r = (w1 - w2 cos t) / sin t.
 * Both are positive at an ordinary corner that juts out, and both negative at a hollow one, where the lines are cut back
 * to where they cross. With unequal allowances one may be positive and the other negative.
 *
 * Limit: of several crossings the one nearest to the corner is taken; where that is the wrong one the finished line
 * crosses itself and `cut-line.ts` works it out anew from whole strips.
 */
import type { CornerFinish } from '../garment/piece';
import { intersectPaths } from '../geometry/intersect';
import { pathEnd, pathLength, pathStart } from '../geometry/path';
import { cross, distance, isSamePoint, move, type Point, vectorBetween } from '../geometry/point';
import { line, type Path } from '../geometry/segment';
import { type CornerPlace, type Joint, linesThrough, outwardOf, type Strip } from './corner-place';
import { mirroredJoint } from './mirrored-corner';
import { bluntPoints, roundedEnd, squaredPoints } from './outer-corner';

/** Turns up to this are no corners: at an allowance of 50 mm the two lines miss one another by a hundredth of one. */
const SLIGHT_TURN = 2e-4;

/** A step between unequal allowances is cut square where a mitre would run on for more than so many times the wider. */
const LONGEST_RUN = 2;

/** However it is asked for, a mitre reaches no further from its corner than so many times the wider allowance. */
const LONGEST_MITRE = 6;

/** A blunt corner is cut off at so many times the wider allowance (common practice). */
const BLUNT_AT = 2;

/** How near the end of a strip must be to where its edge ends, in mm; further off, the strip was cut back itself. */
const IN_PLACE = 1e-3;

/**
 * How the strips before and after a corner are joined; `undefined` where no plain joint can be made (they never meet, or
 * one was cut back before it got here).
 */
export function jointAt(place: CornerPlace, before: Strip, after: Strip, finish: CornerFinish): Joint | undefined {
  const end = move(place.at, outwardOf(place, place.arriving), before.width);
  const start = move(place.at, outwardOf(place, place.leaving), after.width);
  if (distance(end, pathEnd(before.path)) > IN_PLACE || distance(start, pathStart(after.path)) > IN_PLACE) {
    return undefined;
  }
  const { turn } = place;
  const even = Math.abs(before.width - after.width) <= 1e-9;
  if (Math.abs(turn) <= SLIGHT_TURN) return even ? metHalfway(end, start) : plain([], linesThrough(end, start));
  const { past, early } = runs(turn, before.width, after.width);
  const wider = Math.max(before.width, after.width);
  const step = () => (turn > 0 ? plain([], linesThrough(end, start)) : hollowStep(place, before, after, end, start));
  if (!even && past * early < 0 && Math.max(past, early) > LONGEST_RUN * wider) return step();
  if (turn > 0 && finish === 'mirrored') {
    const joint = mirroredJoint(place, before, after);
    if (joint) return joint;
  }
  if (past >= 0 && early >= 0) return outerJoint(place, before, after, finish, end, start, past);
  return cutBack(place, before, after, end, start, past, early) ?? (past * early < 0 ? step() : undefined);
}

/** How far beyond its end the first line runs, and how far before its start the second, to where they meet. */
function runs(turn: number, w1: number, w2: number): { readonly past: number; readonly early: number } {
  const sine = Math.sin(turn);
  const cosine = Math.cos(turn);
  const steep = Math.abs(sine) > 1e-9 ? sine : 1e-9 * Math.sign(turn);
  return { past: (w2 - w1 * cosine) / steep, early: (w1 - w2 * cosine) / steep };
}

/** The corner where the piece juts out and both lines are carried on. */
function outerJoint(
  place: CornerPlace,
  before: Strip,
  after: Strip,
  finish: CornerFinish,
  end: Point,
  start: Point,
  past: number,
): Joint {
  const wider = Math.max(before.width, after.width);
  const tip = move(end, place.arriving, past);
  const reach = distance(place.at, tip);
  if (finish === 'rounded') return plain(roundedEnd(place, before.width, after.width, end, tip, start), []);
  if (finish === 'squared') {
    const points = squaredPoints(place, Math.min(before.width, after.width), end, tip, start);
    return plain(linesThrough(end, ...points), linesThrough(points[points.length - 1] as Point, start));
  }
  const limit = (finish === 'blunt' ? BLUNT_AT : LONGEST_MITRE) * wider;
  if (reach <= limit * (1 + 1e-9)) return plain(linesThrough(end, tip), linesThrough(tip, start));
  const [from, to] = bluntPoints(place, end, tip, start, limit);
  return { ...plain(linesThrough(end, from, to), linesThrough(to, start)), blunted: true };
}

/** Where at least one line goes too far: both, carried on as needed, are cut back to where they cross. */
function cutBack(
  { arriving, leaving }: CornerPlace,
  before: Strip,
  after: Strip,
  end: Point,
  start: Point,
  past: number,
  early: number,
): Joint | undefined {
  // Both are carried on a little further than straight lines would need, for a curved one may bend away.
  const spare = Math.max(before.width, after.width);
  const ahead = past > 0 || !isStraight(after.path) ? Math.max(0, past) + spare : 0;
  const lead = early > 0 || !isStraight(before.path) ? Math.max(0, early) + spare : 0;
  const one: Path = ahead > 0 ? [...before.path, line(end, move(end, arriving, ahead))] : before.path;
  const other: Path = lead > 0 ? [line(move(start, leaving, -lead), start), ...after.path] : after.path;
  const lengthOne = pathLength(before.path);
  const found = nearestMeeting(one, other, lengthOne, lead);
  if (!found) return undefined;
  const { point, alongA, alongB } = found;
  return {
    before: {
      taken: Math.max(0, lengthOne - alongA),
      extra: alongA > lengthOne ? linesThrough(pathEnd(before.path), point) : [],
    },
    after: {
      taken: Math.max(0, alongB - lead),
      extra: alongB < lead ? linesThrough(point, pathStart(after.path)) : [],
    },
    meet: point,
  };
}

/** The meeting of two paths nearest to the end of the first (at `endOne` along it) and the start of the second (at `startOther`). */
function nearestMeeting(one: Path, other: Path, endOne: number, startOther: number) {
  let best: { readonly point: Point; readonly alongA: number; readonly alongB: number } | undefined;
  let least = Infinity;
  const single = crossingOfLines(one, other);
  if (single) return single;
  for (const meeting of intersectPaths(one, other)) {
    if (meeting.kind === 'overlap') continue;
    const off = Math.abs(endOne - meeting.alongA) + Math.abs(meeting.alongB - startOther);
    if (off < least) {
      least = off;
      best = meeting;
    }
  }
  return best;
}

function isStraight(path: Path): boolean {
  return path.length === 1 && path[0]?.kind === 'line';
}

/** The common case of two straight edges, without the cost of a general search. */
function crossingOfLines(one: Path, other: Path) {
  const [a, b] = [one[0], other[0]];
  if (one.length !== 1 || other.length !== 1 || a?.kind !== 'line' || b?.kind !== 'line') return undefined;
  const along = vectorBetween(a.p0, a.p1);
  const beside = vectorBetween(b.p0, b.p1);
  const between = vectorBetween(a.p0, b.p0);
  const turn = cross(along, beside);
  const first = cross(between, beside) / turn;
  const second = cross(between, along) / turn;
  if (!(first >= 0 && first <= 1 && second >= 0 && second <= 1)) return undefined;
  const length = Math.hypot(along.dx, along.dy);
  return {
    point: move(a.p0, along, first),
    alongA: first * length,
    alongB: second * Math.hypot(beside.dx, beside.dy),
  };
}

/** At a slightly hollow corner the wider allowance ends square; the narrower one runs into that end. */
function hollowStep({ at }: CornerPlace, before: Strip, after: Strip, end: Point, start: Point): Joint | undefined {
  if (before.width < after.width) {
    const found = nearestMeeting(before.path, linesThrough(at, start), pathLength(before.path), 0);
    if (!found) return undefined;
    return {
      before: { taken: pathLength(before.path) - found.alongA, extra: [] },
      after: { taken: 0, extra: linesThrough(found.point, start) },
      meet: found.point,
    };
  }
  const found = nearestMeeting(linesThrough(end, at), after.path, before.width, 0);
  if (!found) return undefined;
  return {
    before: { taken: 0, extra: linesThrough(end, found.point) },
    after: { taken: found.alongB, extra: [] },
    meet: found.point,
  };
}

function metHalfway(end: Point, start: Point): Joint {
  if (isSamePoint(end, start)) return plain([], []);
  return { ...plain([], []), meet: { x: (end.x + start.x) / 2, y: (end.y + start.y) / 2 } };
}

function plain(before: Path, after: Path): Joint {
  return { before: { taken: 0, extra: before }, after: { taken: 0, extra: after } };
}
