/**
 * Where printed lines meet, turn or end near a click: what a corner of a piece should sit on. Round each spot of ink a
 * ring is looked along; as many runs of ink as it crosses, so many lines leave the spot.
 */
import { distance, dot, move, type PhotoPoint, type Vector } from '../geometry/point';
import { armFrom, type InkLevels, levelsNear } from './arm';
import { type GreyPicture, greyAt } from './grey-picture';
import { nearestToLines } from './straight-through';

/** A place worth snapping to. */
export interface LineMeeting {
  /** Three lines or more meet; two make a corner; or one ends (at the edge of its ink). */
  readonly kind: 'meeting' | 'corner' | 'end';
  readonly at: PhotoPoint;
  /** The directions in which lines leave it, length 1. */
  readonly arms: readonly Vector[];
}

/** The ring's radius and the stretch on which the lines are read, in widths of the line; the ring in pixels at least. */
const RING_WIDTHS = 2.2;
const LEAST_RING_PX = 4.5;
const READ_WIDTHS = [1.6, 6] as const;

/** Places looked at on the ring. */
const ON_RING = 64;

/** Two lines that leave a spot within this of straight on (25 degrees) are one line going through. */
const STRAIGHT_ON = Math.cos((25 * Math.PI) / 180);

/** Rounds of finding the lines from where they meet, and where they meet from the lines. */
const ROUNDS = 3;

/** The meeting, corner or end nearest to a place, within `withinPx`; `undefined` where lines only pass or there are none. */
export function meetingNear(
  picture: GreyPicture,
  place: PhotoPoint,
  options: { readonly withinPx: number; readonly widthPx: number },
): LineMeeting | undefined {
  const { withinPx, widthPx } = options;
  const ring = Math.max(LEAST_RING_PX, RING_WIDTHS * widthPx);
  const levels = levelsNear(picture, place, withinPx + ring * 2);
  if (!levels) return undefined;
  const spots = spotsNear(picture, place, withinPx, ring, levels);
  let best: LineMeeting | undefined;
  for (const spot of groups(spots, Math.max(2, widthPx))) {
    const found = refined(picture, spot, widthPx, ring, levels);
    if (!found || distance(found.at, place) > withinPx) continue;
    if (!best || distance(found.at, place) < distance(best.at, place)) best = found;
  }
  return best;
}

/** The spots of ink that lines do not merely pass through. */
function spotsNear(
  picture: GreyPicture,
  place: PhotoPoint,
  withinPx: number,
  ring: number,
  levels: InkLevels,
): PhotoPoint[] {
  const spots: PhotoPoint[] = [];
  for (let y = Math.floor(place.y - withinPx) + 0.5; y < place.y + withinPx; y++) {
    for (let x = Math.floor(place.x - withinPx) + 0.5; x < place.x + withinPx; x++) {
      const spot = { x, y };
      if (distance(spot, place) > withinPx || !isInk(picture, spot, levels)) continue;
      const arms = armsRound(picture, spot, ring, levels);
      if (arms.length > 0 && !passesThrough(arms)) spots.push(spot);
    }
  }
  return spots;
}

function isInk(picture: GreyPicture, { x, y }: PhotoPoint, { paper, ink }: InkLevels): boolean {
  return greyAt(picture, x, y) < (paper + ink) / 2;
}

/** The directions in which a ring round a spot crosses ink that leads back to it. */
function armsRound(picture: GreyPicture, spot: PhotoPoint, ring: number, levels: InkLevels): Vector[] {
  const isOn: boolean[] = [];
  for (let k = 0; k < ON_RING; k++) {
    const direction = directionOf(k);
    isOn.push(
      isInk(picture, move(spot, direction, ring), levels) && isInk(picture, move(spot, direction, ring * 0.55), levels),
    );
  }
  const start = isOn.indexOf(false);
  if (start < 0) return [];
  const arms: Vector[] = [];
  let first = -1;
  for (let k = start + 1; k <= start + ON_RING; k++) {
    const on = isOn[k % ON_RING] as boolean;
    if (on && first < 0) first = k;
    if (!on && first >= 0) {
      arms.push(directionOf((first + k - 1) / 2));
      first = -1;
    }
  }
  return arms;
}

function directionOf(k: number): Vector {
  const angle = (2 * Math.PI * k) / ON_RING;
  return { dx: Math.cos(angle), dy: Math.sin(angle) };
}

function passesThrough(arms: readonly Vector[]): boolean {
  const [a, b] = arms;
  return arms.length === 2 && a !== undefined && b !== undefined && dot(a, b) < -STRAIGHT_ON;
}

/** The middles of spots that lie together. */
function groups(spots: readonly PhotoPoint[], apart: number): PhotoPoint[] {
  const found: { x: number; y: number; count: number }[] = [];
  for (const spot of spots) {
    const group = found.find(({ x, y, count }) => Math.hypot(x / count - spot.x, y / count - spot.y) < apart);
    if (!group) found.push({ x: spot.x, y: spot.y, count: 1 });
    else {
      group.x += spot.x;
      group.y += spot.y;
      group.count++;
    }
  }
  return found.map(({ x, y, count }) => ({ x: x / count, y: y / count }));
}

function refined(
  picture: GreyPicture,
  spot: PhotoPoint,
  widthPx: number,
  ring: number,
  levels: InkLevels,
): LineMeeting | undefined {
  let at = spot;
  let directions = armsRound(picture, at, ring, levels);
  for (let round = 0; round < ROUNDS; round++) {
    const arms = directions.flatMap((direction) => {
      const startPx = Math.max(ring * 0.6, READ_WIDTHS[0] * widthPx);
      const endPx = Math.max(ring * 2, READ_WIDTHS[1] * widthPx);
      const arm =
        armFrom(picture, at, direction, { startPx, endPx, widthPx, levels }) ??
        armFrom(picture, at, direction, { startPx, endPx: (startPx + endPx) / 2, widthPx, levels });
      return arm
        ? [{ arm, direction: dot(arm.line.along, direction) < 0 ? turnedBack(arm.line.along) : arm.line.along }]
        : [];
    });
    const found = arms.map(({ direction }) => direction);
    const [only] = arms;
    if (!only || passesThrough(found)) return undefined;
    if (arms.length === 1) {
      const end = endOf(
        picture,
        only.arm.line.at,
        turnedBack(only.direction),
        distance(at, only.arm.line.at) + 2 * ring,
        levels,
      );
      return end && { kind: 'end', at: end, arms: found };
    }
    const meets = nearestToLines(arms.map(({ arm }) => arm.line));
    if (!meets || distance(meets, at) > 2 * ring) return undefined;
    at = meets;
    directions = found;
    if (round === ROUNDS - 1) return { kind: arms.length > 2 ? 'meeting' : 'corner', at, arms: found };
  }
  return undefined;
}

function turnedBack({ dx, dy }: Vector): Vector {
  return { dx: -dx, dy: -dy };
}

/** Where the ink stops along a line, going on from a place on it. */
function endOf(
  picture: GreyPicture,
  from: PhotoPoint,
  direction: Vector,
  mostPx: number,
  { paper, ink }: InkLevels,
): PhotoPoint | undefined {
  const half = (paper + ink) / 2;
  let before = greyAt(picture, from.x, from.y);
  for (let r = 0.5; r <= mostPx; r += 0.5) {
    const place = move(from, direction, r);
    const grey = greyAt(picture, place.x, place.y);
    if (grey >= half)
      return before >= half ? place : move(from, direction, r - 0.5 + (0.5 * (half - before)) / (grey - before));
    before = grey;
  }
  return undefined;
}
