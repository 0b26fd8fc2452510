import type { EdgeShape, Piece } from '../garment/piece';
import { between, type Point, turnBetween, vectorBetween } from '../geometry/point';
import { coneOf, farEdgeAt } from '../shaping/cone';
import { type ArcRun, arcEnd, bothHalves, reverseRun, squareEndedShape } from './arc-run';
import { draftedPiece } from './drafted-piece';

/** Girths are all the way round, ease included; `length` is down the middle of a gore (mm). */
export interface GoredSkirtSizes {
  readonly waist: number;
  readonly hip: number;
  readonly hipDepth: number;
  readonly hem: number;
  readonly length: number;
  readonly gores: number;
}

/** The right half of a gore; its middle line runs from (0, 0) at the waist straight down. */
export interface Gore {
  readonly kind: 'gore';
  readonly waist: ArcRun;
  readonly hem: ArcRun;
  readonly waistCorner: Point;
  readonly hipPoint: Point;
  readonly hemCorner: Point;
}

export interface NoGore {
  readonly kind: 'no-gore';
  readonly why: 'not-positive' | 'hip-below-hem';
}

/** A bend at the hip below this (radians, a minute of arc) needs no rounding: the smooth curve takes it up unseen. */
const SLIGHT_BEND = Math.PI / (180 * 60);

/** The straight parts above and below are held at these shares of them, so that waist and hem meet them squarely. */
const HELD = [1 / 4, 1 / 2, 3 / 4] as const;

/** A bend at the hip is rounded within this share of the hip depth, above and below. */
const ROUNDED_SHARE = 1 / 3;

/**
 * One of several equal gores: a part of one cone from waist to hip and of another from hip to hem, each as
 * core/shaping/cone.ts lays it flat about the middle of the gore. Waist and hem are arcs square to the middle.
 */
export function gore(sizes: GoredSkirtSizes): Gore | NoGore {
  const { waist, hip, hipDepth, hem, length, gores } = sizes;
  const isWhole = Number.isInteger(gores) && gores > 0;
  if (!(waist > 0 && hip > 0 && hipDepth > 0 && hem > 0 && isWhole)) return { kind: 'no-gore', why: 'not-positive' };
  if (!(length > hipDepth)) return { kind: 'no-gore', why: 'hip-below-hem' };
  const half = 2 * gores;
  const upper = coneOf({ waist: waist / half, hip: hip / half, depth: hipDepth });
  const lower = coneOf({ waist: hip / half, hip: hem / half, depth: length - hipDepth });
  const hipEdge = farEdgeAt(upper, hipDepth);
  const right = { dx: 1, dy: 0 };
  const waistRun = { start: { x: 0, y: 0 }, direction: right, turning: -upper.curvature, length: waist / half };
  const hemTurning = -lower.angle / (hem / half);
  const hemRun = { start: { x: 0, y: length }, direction: right, turning: hemTurning, length: hem / half };
  return {
    kind: 'gore',
    waist: waistRun,
    hem: hemRun,
    waistCorner: { x: upper.across, y: -upper.rise },
    hipPoint: { x: hipEdge.across, y: -hipEdge.rise },
    hemCorner: arcEnd(hemRun),
  };
}

/** `seamName` is carried by both sides, which are sewn to one another; none unless said. */
export interface GorePieceOptions {
  readonly newId: () => string;
  readonly name: string;
  readonly seamName?: string;
}

/** The gore as one whole piece, cut once for every gore, with a notch at the hip on both sides. */
export function goredSkirtPieces(
  sizes: GoredSkirtSizes,
  { newId, name, seamName = '' }: GorePieceOptions,
): Piece[] | NoGore {
  const drawn = gore(sizes);
  if (drawn.kind === 'no-gore') return drawn;
  const { waistCorner, hipPoint, hemCorner } = drawn;
  const side = sideThrough(drawn, sizes.hipDepth);
  const toHip = Math.hypot(hipPoint.x - waistCorner.x, hipPoint.y - waistCorner.y);
  const toHem = Math.hypot(hemCorner.x - hipPoint.x, hemCorner.y - hipPoint.y);
  const piece = draftedPiece({
    newId,
    name,
    cut: { how: 'single', count: sizes.gores },
    grain: { from: { x: 0, y: sizes.length * 0.2 }, to: { x: 0, y: sizes.length * 0.8 } },
    edges: [
      { from: mirrored(waistCorner), role: 'waist', shape: squareEndedShape(bothHalves(drawn.waist)) },
      {
        from: waistCorner,
        role: 'seam',
        name: seamName,
        shape: curveThrough(side),
        notches: [{ along: toHip, count: 1 }],
      },
      { from: hemCorner, role: 'hem', shape: squareEndedShape(reverseRun(bothHalves(drawn.hem))) },
      {
        from: mirrored(hemCorner),
        role: 'seam',
        name: seamName,
        shape: curveThrough(side.map(mirrored).reverse()),
        notches: [{ along: toHem, count: 1 }],
      },
    ],
  });
  return [piece];
}

/** The right side of a gore on its way down, as an edge. */
export function goreSide(drawn: Gore, hipDepth: number): EdgeShape {
  return curveThrough(sideThrough(drawn, hipDepth));
}

/** The points a side passes on its way down: the hip, and for a marked bend its rounding and the straight parts. */
function sideThrough({ waistCorner, hipPoint, hemCorner }: Gore, hipDepth: number): Point[] {
  const bend = turnBetween(vectorBetween(waistCorner, hipPoint), vectorBetween(hipPoint, hemCorner));
  if (Math.abs(bend) < SLIGHT_BEND) return [hipPoint];
  const below = Math.hypot(hemCorner.x - hipPoint.x, hemCorner.y - hipPoint.y);
  const roundedBelow = Math.min(0.5, (hipDepth * ROUNDED_SHARE) / below);
  const start = between(hipPoint, waistCorner, ROUNDED_SHARE);
  const end = between(hipPoint, hemCorner, roundedBelow);
  return [
    ...HELD.map((share) => between(waistCorner, start, share)),
    start,
    hipPoint,
    end,
    ...HELD.map((share) => between(hemCorner, end, share)).reverse(),
  ];
}

function curveThrough(through: readonly Point[]): EdgeShape {
  return { kind: 'curve', through, leaves: 'free', meets: 'free' };
}

function mirrored({ x, y }: Point): Point {
  return { x: -x, y };
}
