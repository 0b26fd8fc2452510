/** The lines a bodice block is made of, each piece hanging from its neck with its centre at x = 0 and its side at the right. */
import { pathLength } from '../geometry/path';
import { move, type Point, quarterTurn, turnVector, type Vector } from '../geometry/point';
import { splineThrough } from '../geometry/spline';
import { type ArcRun, arcPlace } from './arc-run';

/** The shoulder falls 21 degrees, on back and front alike (common practice: 20 to 22). */
const SHOULDER_FALL = (21 * Math.PI) / 180;

/** The back neck rises a third of its width, the front neck is a tenth deeper than it is wide (common practice). */
const BACK_NECK_RISE = 1 / 3;
const FRONT_NECK_DEPTH = 1.1;

/** Half of a neckline and the shoulder that leaves it. */
export interface NeckAndShoulder {
  readonly centreNeck: Point;
  readonly sideNeck: Point;
  readonly shoulderTip: Point;
}

/** Neck width for a whole neckline of exactly `neck` mm: both curves grow in proportion to it. */
export function neckWidth(neck: number): number {
  const ofOne = [backNeck(1, 1), frontNeck(1, 1)].reduce((sum, lines) => sum + neckLength(lines), 0);
  return neck / (2 * ofOne);
}

/** The back's, with the nape at (0, 0). */
export function backNeck(width: number, shoulder: number): NeckAndShoulder {
  const sideNeck = { x: width, y: -width * BACK_NECK_RISE };
  return { centreNeck: { x: 0, y: 0 }, sideNeck, shoulderTip: move(sideNeck, SHOULDER, shoulder) };
}

/** The front's, with the side of the neck at the level 0. */
export function frontNeck(width: number, shoulder: number): NeckAndShoulder {
  const sideNeck = { x: width, y: 0 };
  return {
    centreNeck: { x: 0, y: width * FRONT_NECK_DEPTH },
    sideNeck,
    shoulderTip: move(sideNeck, SHOULDER, shoulder),
  };
}

const SHOULDER: Vector = { dx: Math.cos(SHOULDER_FALL), dy: Math.sin(SHOULDER_FALL) };

/** The neckline, square to the centre and to the shoulder. */
function neckLength({ centreNeck, sideNeck }: NeckAndShoulder): number {
  const square = { dx: SHOULDER.dy, dy: -SHOULDER.dx };
  return pathLength(splineThrough([centreNeck, sideNeck], { directions: [{ dx: 1, dy: 0 }, square] }));
}

/** The waist as part of a cone that is `above` wide `height` further up, from the centre to the side. */
export function waistRun(start: Point, waist: number, above: number, height: number): ArcRun {
  return { start, direction: { dx: 1, dy: 0 }, turning: (above - waist) / height / waist, length: waist };
}

/** The side of such a cone: from the end of the waist square to it, upwards. */
export function sideOf(waist: ArcRun): { readonly foot: Point; readonly up: Vector } {
  const { point, direction } = arcPlace(waist, waist.length);
  return { foot: point, up: turnVector(direction, -Math.PI / 2) };
}

/** The side of a front with a dart in it: the mouth, the point, and the underarm above. */
export interface DartedSide {
  readonly underarm: Point;
  /** The ends of the mouth, upper first. */
  readonly mouth: readonly [Point, Point];
  readonly dartPoint: Point;
}

/** Tries until a dart and its mouth agree to the last figure; each leaves about a tenth of what was off. */
const ROUNDS = 40;

/**
 * A side with a dart of `takeUp` mm, its lower mouth end `below` mm up from the waist and `above` mm from the underarm on,
 * whose point lies at `across` from the centre, square to the middle of the mouth. Sewn, the side is one straight line:
 * the part above the dart leans in by just the angle between its legs.
 */
export function dartedSide(
  { foot, up }: { readonly foot: Point; readonly up: Vector },
  dart: { readonly takeUp: number; readonly below: number; readonly above: number; readonly across: number },
): DartedSide {
  const lower = move(foot, up, dart.below);
  let half = 0;
  let mouth = up;
  let middle = lower;
  let point = lower;
  for (let round = 0; round < ROUNDS; round++) {
    mouth = turnVector(up, -half);
    middle = move(lower, mouth, dart.takeUp / 2);
    const outwards = quarterTurn(mouth);
    const reach = (middle.x - dart.across) / outwards.dx;
    point = move(middle, outwards, -reach);
    half = Math.atan(dart.takeUp / 2 / Math.abs(reach));
  }
  const upper = move(lower, mouth, dart.takeUp);
  return { underarm: move(upper, turnVector(up, -2 * half), dart.above), mouth: [upper, lower], dartPoint: point };
}
