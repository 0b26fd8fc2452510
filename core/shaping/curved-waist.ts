import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { edgeIndex, withCorner, withEdge } from '../garment/with-piece';
import { flattenPath } from '../geometry/flatten';
import { pathLength } from '../geometry/path';
import { distance, move, type TablePoint } from '../geometry/point';
import { ringCrossing } from '../geometry/polygon';
import { scaleMarks } from './carry-marks';
import { type Cone, coneOf, farEdgeAt } from './cone';
import { type LevelLine, levelLine } from './level-line';
import {
  carrySideMarks,
  cornerIndexAt,
  hipAlongSide,
  leadSide,
  type SideCourse,
  sideDownwards,
  type WaistEnd,
} from './side-of-waist';
import { type WaistAxis, type WaistCentre, waistAxis, waistCentre } from './waist-axis';

export interface CurvedWaist {
  readonly kind: 'curved-waist';
  /** The piece as it would be. */
  readonly piece: Piece;
  /** Stitch lengths of the waist edge, darts included, as it is and as it would be (mm). */
  readonly straightLength: number;
  readonly length: number;
  /** How far the seam end rises above the line square to the centre as it was; 0 when both ends are seams. */
  readonly rise: number;
  /** How far the middle dips below its corners, where both ends are seams; else 0. */
  readonly dip: number;
  /** The corners that move, and how far (mm). */
  readonly moved: readonly { readonly cornerId: string; readonly by: number }[];
}

export interface NoCurvedWaist {
  readonly kind: 'no-curved-waist';
  readonly why: 'no-waist-edge' | 'no-hip-point' | 'not-positive' | 'crosses';
}

/** What the waist of a piece must come to. */
export interface CurvedWaistWish {
  readonly waistEdgeId: string;
  /** The stitch length wanted, with what darts take up (mm). */
  readonly length: number;
  /** How far below the waist the hip lies; the piece keeps its hip as drawn. */
  readonly hipDepth: number;
  /** The centre line, where she says otherwise than {@link waistCentre} finds it. */
  readonly centre?: WaistCentre;
  /** How far the waist is lowered at the centre line (mm, below the hip depth); 0 unless said. */
  readonly centreDip?: number;
}

/** How closely the outline is flattened to see whether it crosses itself (mm): a hair, at every step of a drag. */
const CROSSING_FLATNESS = 0.05;

/** Lengths come out right to this many mm: a hundredth is far below any pencil. */
const LENGTH_RIGHT = 0.005;
const MOST_TRIES = 40;

/**
 * The waist a body needs on a traced piece: a curve square to the centre line and to the side seam, of the length wanted,
 * as the cone through waist and hip has it (see core/shaping/cone.ts). Without a centre line both ends are shaped alike
 * about the middle of the waist, which stays. The level at the hip keeps the length it has as drawn, the shape of the
 * side above it is carried along, and below it the side joins its old course as a straight edge laid along it would. A
 * waist larger than the hip works too and curves the other way. A side that ends above the hip keeps its far corner, and
 * the hip its length only nearly.
 */
export function curvedWaist(piece: Piece, wish: CurvedWaistWish): CurvedWaist | NoCurvedWaist {
  const last = remembered.get(piece);
  if (last && sameWish(last.wish, wish)) return last.found;
  const found = workOut(piece, wish);
  remembered.set(piece, { wish, found });
  return found;
}

/** The last answer for each piece: while one piece of a ring is dragged, the others are asked the same again and again. */
const remembered = new WeakMap<
  Piece,
  { readonly wish: CurvedWaistWish; readonly found: CurvedWaist | NoCurvedWaist }
>();

function sameWish(a: CurvedWaistWish, b: CurvedWaistWish): boolean {
  return (
    a.waistEdgeId === b.waistEdgeId &&
    a.length === b.length &&
    a.hipDepth === b.hipDepth &&
    a.centre === b.centre &&
    a.centreDip === b.centreDip
  );
}

function workOut(piece: Piece, wish: CurvedWaistWish): CurvedWaist | NoCurvedWaist {
  const index = edgeIndex(piece, wish.waistEdgeId);
  const waist = outlineOf(piece).edges[index];
  if (!waist || piece.edges[index]?.role !== 'waist') return refuse('no-waist-edge');
  const lowered = wish.centreDip ?? 0;
  const depth = wish.hipDepth - lowered;
  if (!(wish.length > 0 && wish.hipDepth > 0 && depth > 0)) return refuse('not-positive');
  const hip = levelLine(piece, wish.hipDepth);
  if (!hip || hip.length <= 0) return refuse('no-hip-point');
  const centre = wish.centre ?? waistCentre(piece, index);
  const axis = waistAxis(piece, index, centre, wish.hipDepth);
  if (!axis) return refuse('no-waist-edge');
  const origin = move(axis.origin, axis.down, lowered);
  const hips = hipsAlong(piece, index, hip);
  const making = { index, centre, axis: { ...axis, origin }, depth, hips };
  const half = centre === 'middle' ? 2 : 1;

  // The side bends a little otherwise than the cone, so cone and outcome are brought together.
  let [aimWaist, aimHip] = [wish.length, hip.length];
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const cone = coneOf({ waist: aimWaist / half, hip: aimHip / half, depth });
    const made = shapedPiece(piece, making, cone);
    const line = outlineOf(made.piece).edges[index];
    const level = levelLine(made.piece, depth);
    if (!line || !level) return refuse('no-hip-point');
    const offWaist = wish.length - pathLength(line);
    const offHip = made.passesHip ? hip.length - level.length : 0;
    if (Math.abs(offWaist) < LENGTH_RIGHT && Math.abs(offHip) < LENGTH_RIGHT) {
      if (ringCrossing(flattenPath(outlineOf(made.piece).whole, CROSSING_FLATNESS))) return refuse('crosses');
      return {
        kind: 'curved-waist',
        piece: withMarks(piece, made.piece, making, cone),
        straightLength: pathLength(waist),
        length: pathLength(line),
        rise: centre === 'middle' ? 0 : cone.rise - lowered,
        dip: centre === 'middle' ? cone.rise : 0,
        moved: movedCorners(piece, made.piece),
      };
    }
    aimWaist = Math.max(aimWaist + offWaist, wish.length / 4);
    aimHip = Math.max(aimHip + offHip, hip.length / 4);
  }
  return refuse('crosses');
}

function refuse(why: NoCurvedWaist['why']): NoCurvedWaist {
  return { kind: 'no-curved-waist', why };
}

interface Making {
  readonly index: number;
  readonly centre: WaistCentre;
  readonly axis: WaistAxis;
  readonly depth: number;
  readonly hips: Readonly<Record<WaistEnd, number | undefined>>;
}

/** How far down each side the hip lies as drawn. */
function hipsAlong(piece: Piece, index: number, hip: LevelLine): Making['hips'] {
  const down = (end: WaistEnd) => {
    const side = sideDownwards(piece, index, end);
    const run = end === 'before' ? hip.runs[0] : hip.runs.at(-1);
    return side && run && hipAlongSide(side, run, end);
  };
  return { before: down('before'), after: down('after') };
}

/** The ends of the waist that are shaped, and the side of the axis each lies on. */
function shapedEnds(centre: WaistCentre): readonly { readonly end: WaistEnd; readonly side: 1 | -1 }[] {
  const before = { end: 'before', side: -1 } as const;
  const after = { end: 'after', side: 1 } as const;
  if (centre === 'middle') return [before, after];
  return centre === 'before' ? [after] : [before];
}

function placeFrom(
  { origin, across, down }: WaistAxis,
  at: { across: number; rise: number },
  side: 1 | -1,
): TablePoint {
  return move(move(origin, across, at.across * side), down, -at.rise);
}

function courseOf({ axis, depth, hips }: Making, cone: Cone, end: WaistEnd, side: 1 | -1): SideCourse {
  return {
    corner: placeFrom(axis, cone, side),
    via: placeFrom(axis, farEdgeAt(cone, depth), side),
    hipAlong: hips[end],
  };
}

function shapedPiece(piece: Piece, making: Making, cone: Cone): { readonly piece: Piece; readonly passesHip: boolean } {
  const { index, centre, axis } = making;
  let shaped = piece;
  let passesHip = true;
  for (const { end, side } of shapedEnds(centre)) {
    const led = leadSide(shaped, index, end, courseOf(making, cone, end, side));
    shaped = led.piece;
    passesHip &&= led.passesVia;
  }
  if (centre !== 'middle') {
    const cornerId = piece.corners[cornerIndexAt(piece, index, centre)]?.id ?? '';
    shaped = withCorner(shaped, cornerId, (corner) => ({ ...corner, at: axis.origin }));
  }
  const through = centre === 'middle' ? [axis.origin] : [];
  const shape = { kind: 'curve', through, leaves: 'square', meets: 'square' } as const;
  return { piece: withEdge(shaped, piece.edges[index]?.id ?? '', (edge) => ({ ...edge, shape })), passesHip };
}

/** Darts and notches of the waist and of the shaped sides brought along with them. */
function withMarks(before: Piece, after: Piece, making: Making, cone: Cone): Piece {
  const { index, centre } = making;
  const lengths = [before, after].map((piece) => pathLength(outlineOf(piece).edges[index] ?? []));
  const waistMarked = scaleMarks(after, after.edges[index]?.id ?? '', lengths[0] ?? 0, lengths[1] ?? 0);
  return shapedEnds(centre).reduce(
    (marked, { end, side }) => carrySideMarks(before, marked, index, end, courseOf(making, cone, end, side)),
    waistMarked,
  );
}

function movedCorners(before: Piece, after: Piece) {
  return after.corners.flatMap(({ id, at }, i) => {
    const by = distance(before.corners[i]?.at ?? at, at);
    return by > 0 ? [{ cornerId: id, by }] : [];
  });
}
