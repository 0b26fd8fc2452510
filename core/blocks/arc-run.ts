import type { EdgeShape } from '../garment/piece';
import { arcOfCircle } from '../geometry/arc';
import {
  dot,
  move,
  type Point,
  quarterTurn,
  turnBetween,
  turnVector,
  type Vector,
  vectorBetween,
} from '../geometry/point';
import { line, type Path } from '../geometry/segment';

/** A line that turns evenly: part of a circle, or straight where `turning` is 0. */
export interface ArcRun {
  readonly start: Point;
  /** Of length 1. */
  readonly direction: Vector;
  /** Radians for each mm of the way, clockwise to the eye. */
  readonly turning: number;
  readonly length: number;
}

/** A run that turns by less than this altogether (radians) is straight to the last figure of its ends. */
const STRAIGHT = 1e-9;

/** A curved edge gets a point for every turn of this much: the smooth curve then keeps within a millionth of the radius. */
const TURN_PER_POINT = Math.PI / 12;

/** Parts of an arc at least: a neighbour that is not quite square then changes its length by a few hundredths of a mm only. */
const LEAST_PARTS = 4;

/** The place `along` a run (mm from its start) and the direction of travel there. */
export function arcPlace({ start, direction, turning }: ArcRun, along: number) {
  const turn = turning * along;
  // The chord of an arc leaves its tangent by half the turn, and is the arc times sin(x)/x of that half.
  const half = turn / 2;
  const chord = Math.abs(half) < STRAIGHT ? along : along * (Math.sin(half) / half);
  return { point: move(start, turnVector(direction, half), chord), direction: turnVector(direction, turn) };
}

/** Where a run ends. */
export function arcEnd(run: ArcRun): Point {
  return arcPlace(run, run.length).point;
}

/** The centre of a run's circle; `undefined` for a straight one. */
export function arcCentre({ start, direction, turning, length }: ArcRun): Point | undefined {
  return Math.abs(turning * length) < STRAIGHT ? undefined : move(start, quarterTurn(direction), 1 / turning);
}

/** The run as a path, within `accuracy` mm. */
export function arcPath(run: ArcRun, accuracy: number): Path {
  const centre = arcCentre(run);
  if (!centre) return [line(run.start, arcEnd(run))];
  return arcOfCircle(centre, run.start, run.turning * run.length, accuracy);
}

/** The same run the other way. */
export function reverseRun(run: ArcRun): ArcRun {
  const end = arcPlace(run, run.length);
  return {
    start: end.point,
    direction: { dx: -end.direction.dx, dy: -end.direction.dy },
    turning: -run.turning,
    length: run.length,
  };
}

/** A run from the middle of a piece outwards, with its mirror image before it, as one. */
export function bothHalves(run: ArcRun): ArcRun {
  const { point, direction } = arcPlace(run, -run.length);
  return { start: point, direction, turning: run.turning, length: 2 * run.length };
}

/** How far along a run (mm from its start) the place of it lies that has `place` straight before it or behind it. */
export function alongFacing(run: ArcRun, place: Point): number {
  const centre = arcCentre(run);
  if (!centre) return dot(vectorBetween(run.start, place), run.direction);
  return turnBetween(vectorBetween(centre, run.start), vectorBetween(centre, place)) / run.turning;
}

/** From nearly a half turn on, square to a neighbour could be either way; the points alone hold the ends there. */
const EITHER_WAY = Math.PI * 0.9;

/** The run as the shape of an edge whose neighbours stand square to it; straight where it does not turn. */
export function squareEndedShape(run: ArcRun): EdgeShape {
  const turn = Math.abs(run.turning * run.length);
  if (turn < STRAIGHT) return { kind: 'straight' };
  const count = Math.max(LEAST_PARTS, Math.ceil(turn / TURN_PER_POINT));
  const through = Array.from({ length: count - 1 }, (_, i) => arcPlace(run, (run.length * (i + 1)) / count).point);
  const ends = turn < EITHER_WAY ? 'square' : 'free';
  return { kind: 'curve', through, leaves: ends, meets: ends };
}
