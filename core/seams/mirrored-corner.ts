/**
 * The corner of a turned-up hem: beyond the hem line the cut line of the side is the mirror image of what it is above,
 * so that the hem, folded up, lies exactly on the piece. A gore that widens downwards gets a hem that narrows
 * (f - 2 h k for hem width f, depth h and slope k a side), one that narrows gets a hem that widens.
 *
 * The mirror is the hem line where it is straight, and where it is curved its tangent at the corner: a curved hem must be
 * eased in anyway, and over the few inches of a hem the two differ by the square of the depth over the radius.
 */
import { reflectionIn, transformPath } from '../geometry/affine';
import { intersectPaths } from '../geometry/intersect';
import { pathEnd, pathLength, pathStart, reversePath, subPath } from '../geometry/path';
import { dot, move, type Point, scaleVector, type Vector, vectorBetween } from '../geometry/point';
import { line, type Path } from '../geometry/segment';
import { type CornerPlace, carriedOn, type Joint, linesThrough, outwardOf, type Strip } from './corner-place';

/** A mirrored side may run so many times the depth of the hem along itself before it is judged no side at all. */
const LONGEST_SIDE = 4;

/**
 * The joint of a side and a hem; the hem is the edge marked so, or the one with the wider allowance. `undefined` where
 * the side is too short or too slanting for its mirror image to reach the depth of the hem.
 */
export function mirroredJoint(place: CornerPlace, before: Strip, after: Strip): Joint | undefined {
  const hemAfter = before.isHem === after.isHem ? after.width >= before.width : after.isHem;
  if (hemAfter) return sideThenHem(place, before, after);
  const joint = sideThenHem(turnedRound(place), reversed(after), reversed(before));
  return (
    joint && {
      before: { taken: joint.after.taken, extra: reversePath(joint.after.extra) },
      after: { taken: joint.before.taken, extra: reversePath(joint.before.extra) },
    }
  );
}

function sideThenHem(place: CornerPlace, side: Strip, hem: Strip): Joint | undefined {
  const { at, arriving, leaving, turn } = place;
  const depth = hem.width;
  const mirror = reflectionIn(at, move(at, leaving));
  if (!(depth > 0) || !mirror) return undefined;
  const sideEnd = pathEnd(side.path);
  const run = (-side.width * Math.cos(turn)) / Math.sin(turn);
  if (Math.abs(run) > LONGEST_SIDE * (depth + side.width)) return undefined;

  // The side's cut line down to where it crosses the hem line, carried on beyond the corner.
  let taken = 0;
  let reached = move(sideEnd, arriving, run);
  let above: Path = run > 0 ? carriedOn(side.path, reached) : side.path;
  if (run < 0) {
    const length = pathLength(side.path);
    const level = linesThrough(move(at, leaving, -LONGEST_SIDE * (depth + side.width)), at);
    const crossing = intersectPaths(side.path, level).findLast((meeting) => meeting.kind === 'crossing');
    if (crossing?.kind !== 'crossing') return undefined;
    taken = length - crossing.alongA;
    reached = crossing.point;
    above = subPath(side.path, 0, crossing.alongA) ?? [];
  }
  const most = LONGEST_SIDE * (depth + side.width);
  const whole = pathLength(above);
  const near = whole > most ? subPath(above, whole - most, whole) : above;
  if (!near || near.length === 0) return undefined;
  const below = transformPath(mirror, reversePath(near));

  const meeting = meetingWithHem(place, below, hem, most);
  if (!meeting) return undefined;
  const image = subPath(below, 0, meeting.along);
  if (!image) return undefined;
  const onward = meeting.onHem < 0 ? linesThrough(meeting.point, pathStart(hem.path)) : [];
  return {
    before: { taken, extra: run > 0 ? linesThrough(sideEnd, reached) : [] },
    after: { taken: Math.max(0, meeting.onHem), extra: [...image, ...onward] },
  };
}

interface HemMeeting {
  readonly point: Point;
  /** Along the mirrored side. */
  readonly along: number;
  /** Along the cut edge of the hem from its start; negative where it has to be carried on to meet the side. */
  readonly onHem: number;
}

/** Where the mirrored side first meets the cut edge of the hem. */
function meetingWithHem(place: CornerPlace, below: Path, hem: Strip, most: number): HemMeeting | undefined {
  const { leaving } = place;
  const start = pathStart(hem.path);
  const straight = straightMeeting(place, below, hem);
  if (straight) return straight;
  const edge: Path = [line(move(start, leaving, -most), start), ...hem.path];
  for (const meeting of intersectPaths(below, edge)) {
    if (meeting.kind === 'overlap') continue;
    return { point: meeting.point, along: meeting.alongA, onHem: meeting.alongB - most };
  }
  return undefined;
}

/** The same in closed form where both begin with a straight stretch long enough. */
function straightMeeting(place: CornerPlace, below: Path, hem: Strip): HemMeeting | undefined {
  const [first, cut] = [below[0], hem.path[0]];
  if (first?.kind !== 'line' || cut?.kind !== 'line') return undefined;
  const along = vectorBetween(first.p0, first.p1);
  const down = dot(along, outwardOf(place, place.leaving));
  const share = hem.width / down;
  if (!(share > 0 && share <= 1)) return undefined;
  const point = move(first.p0, along, share);
  const onHem = dot(vectorBetween(cut.p0, point), place.leaving);
  if (onHem > Math.hypot(cut.p1.x - cut.p0.x, cut.p1.y - cut.p0.y)) return undefined;
  return { point, along: share * Math.hypot(along.dx, along.dy), onHem };
}

function turnedRound({ at, arriving, leaving, outward, turn }: CornerPlace): CornerPlace {
  const back = (v: Vector) => scaleVector(v, -1);
  return { at, arriving: back(leaving), leaving: back(arriving), outward: outward === 1 ? -1 : 1, turn };
}

function reversed(strip: Strip): Strip {
  return { ...strip, path: reversePath(strip.path) };
}
