import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { edgeIndex, withEdge } from '../garment/with-piece';
import { endTangent, pathAtLength, pathLength, startTangent } from '../geometry/path';
import { distance, scaleVector, turnBetween } from '../geometry/point';
import { carryMarks } from './carry-marks';
import { type CurvedWaistWish, curvedWaist, type NoCurvedWaist } from './curved-waist';
import { type NoRaisedWaist, raisedWaist } from './raised-waist';
import { rootBetween } from './root';
import { sideIndexAt } from './side-of-waist';
import { type NoTypedWaist, typedWaist } from './typed-waist';
import type { WaistCentre } from './waist-axis';

/** How a waist is drawn. Lengths are as sewn, with the darts closed (mm). */
export type WaistWay =
  /** Straight from corner to corner. */
  | { readonly kind: 'straight' }
  /** As the cone through waist and hip has it; the sides are led anew. */
  | { readonly kind: 'cone'; readonly length: number; readonly hipDepth: number; readonly dip?: number }
  /** The sides keep their course, run on upwards or are cut off, until the waist square to both has the length. */
  | { readonly kind: 'side-seam'; readonly length: number; readonly dip?: number }
  /** By the rise at the seam and the dip at the centre; for a length too, the seam's corner is moved across. */
  | { readonly kind: 'typed'; readonly rise: number; readonly dip: number; readonly length?: WaistAtHip };

/** A length wanted, and the depth at which the side is as it was. */
export interface WaistAtHip {
  readonly length: number;
  readonly hipDepth: number;
}

/** A waist drawn anew beside the straight one. Lengths as sewn, in mm; angles inside the piece, in radians. */
export interface WaistDrawn {
  readonly kind: 'waist-drawn';
  readonly piece: Piece;
  /** How far the seam corner stands above the line square to the centre, and how far the centre was lowered. */
  readonly rise: number;
  readonly dip: number;
  readonly length: number;
  /** The length of the waist as it was, and of one straight from corner to corner of the new. */
  readonly lengthBefore: number;
  readonly straightLength: number;
  readonly angles: { readonly start: number; readonly end: number };
}

export interface NoWaistDrawn {
  readonly kind: 'no-waist-drawn';
  readonly why: NoCurvedWaist['why'] | NoRaisedWaist['why'] | NoTypedWaist['why'] | 'length-out-of-reach';
  /** For `length-out-of-reach`: the shortest and the longest waist that the sides as they are allow (mm, as sewn). */
  readonly reach?: readonly [shortest: number, longest: number];
}

/** What all ways need to know of the piece. */
export interface WaistPlace {
  readonly waistEdgeId: string;
  readonly centre?: WaistCentre;
}

/**
 * The waist of a piece drawn in one of the ways a waist is drawn, with what it comes to beside the straight one. Darts
 * keep their widths and their proportional places. A waist that must be as large as the hip or larger is straight or
 * curves the other way. Both ends stand square except for `straight`.
 */
export function drawWaist(piece: Piece, at: WaistPlace, way: WaistWay): WaistDrawn | NoWaistDrawn {
  const index = edgeIndex(piece, at.waistEdgeId);
  if (piece.edges[index]?.role !== 'waist') return { kind: 'no-waist-drawn', why: 'no-waist-edge' };
  const made = drawn(piece, at, way, takenAt(piece, at.waistEdgeId));
  if ('why' in made)
    return { kind: 'no-waist-drawn', why: made.why, ...('reach' in made ? { reach: made.reach } : {}) };
  return { kind: 'waist-drawn', ...made, ...figures(piece, made.piece, index) };
}

type Made = { readonly piece: Piece; readonly rise: number; readonly dip: number };
type NotMade = { readonly why: NoWaistDrawn['why']; readonly reach: readonly [number, number] } | Refused;
type Refused = { readonly why: NoWaistDrawn['why'] };

function drawn(piece: Piece, at: WaistPlace, way: WaistWay, darts: number): Made | NotMade {
  switch (way.kind) {
    case 'straight':
      return { piece: straightened(piece, at.waistEdgeId), rise: 0, dip: 0 };
    case 'cone': {
      const { length, hipDepth, dip } = way;
      const wish: CurvedWaistWish = { ...at, length: length + darts, hipDepth, ...(dip ? { centreDip: dip } : {}) };
      const made = length > 0 ? curvedWaist(piece, wish) : ({ kind: 'no-curved-waist', why: 'not-positive' } as const);
      if (made.kind === 'no-curved-waist') return made;
      // Between two seams the cone's own hollow is its rise: corners stand that much above the middle.
      return { piece: made.piece, rise: made.rise + made.dip, dip: dip ?? 0 };
    }
    case 'side-seam':
      return alongSide(piece, at, way.length + darts, way.dip ?? 0, darts);
    case 'typed': {
      const { rise, dip, length } = way;
      const typed = { ...at, rise, centreDip: dip };
      const made = length
        ? typedWaist(piece, typed, { length: length.length + darts, hipDepth: length.hipDepth })
        : raisedWaist(piece, typed);
      return 'why' in made ? made : { piece: made.piece, rise, dip };
    }
  }
}

/** Rises are looked for this far up and down the sides (mm), in steps of this: a hand's breadth beyond any draft. */
const HIGHEST = 150;
const STEP = 7.5;
const RISE_RIGHT = 1e-7;

/** Lengths come out right to this many mm. */
const LENGTH_RIGHT = 0.005;

/** The rise nearest to none at which the waist that stands square on the old sides has the length. */
function alongSide(piece: Piece, at: WaistPlace, length: number, dip: number, darts: number): Made | NotMade {
  const made = (rise: number) => raisedWaist(piece, { ...at, rise, centreDip: dip });
  const off = (rise: number) => {
    const raised = made(rise);
    return raised.kind === 'raised-waist' ? raised.length - length : Number.NaN;
  };
  const none = made(0);
  if (!(length - darts > 0)) return { why: 'not-positive' };
  if (none.kind === 'no-raised-waist' && none.why === 'no-waist-edge') return none;
  let [shortest, longest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let step = 0; step < HIGHEST; step += STEP) {
    for (const [from, to] of [
      [step, step + STEP],
      [-step - STEP, -step],
    ] as const) {
      const ends = [off(from), off(to)].filter((each) => !Number.isNaN(each));
      shortest = Math.min(shortest, ...ends);
      longest = Math.max(longest, ...ends);
      const rise = ends.length === 2 ? rootBetween(off, from, to, RISE_RIGHT) : undefined;
      const raised = rise === undefined ? undefined : made(rise);
      if (rise === undefined || raised?.kind !== 'raised-waist') continue;
      if (Math.abs(raised.length - length) < LENGTH_RIGHT) return { piece: raised.piece, rise, dip };
    }
  }
  if (!Number.isFinite(shortest)) return { why: 'off-the-side' };
  return { why: 'length-out-of-reach', reach: [shortest + length - darts, longest + length - darts] };
}

function straightened(piece: Piece, edgeId: string): Piece {
  const index = edgeIndex(piece, edgeId);
  const lengthOf = (of: Piece) => pathLength(outlineOf(of).edges[index] ?? []);
  const made = withEdge(piece, edgeId, (edge) =>
    edge.shape.kind === 'straight' ? edge : { ...edge, shape: { kind: 'straight' } },
  );
  const [before, after] = [lengthOf(piece), lengthOf(made)];
  return before > 0 && made !== piece ? carryMarks(made, edgeId, (along) => (along * after) / before) : made;
}

/** What darts take out of an edge (mm). */
function takenAt(piece: Piece, edgeId: string): number {
  return piece.darts.reduce((sum, dart) => (dart.edgeId === edgeId ? sum + dart.width : sum), 0);
}

function figures(before: Piece, after: Piece, index: number) {
  const edgeId = after.edges[index]?.id ?? '';
  const [old, now] = [outlineOf(before).edges[index] ?? [], outlineOf(after).edges[index] ?? []];
  const darts = takenAt(after, edgeId);
  const total = pathLength(now);
  const { edges } = outlineOf(after);
  const [preceding, following] = [
    edges[sideIndexAt(after, index, 'before')] ?? [],
    edges[sideIndexAt(after, index, 'after')] ?? [],
  ];
  const chord = distance(pathAtLength(now, 0).point, pathAtLength(now, total).point);
  return {
    length: total - darts,
    lengthBefore: pathLength(old) - darts,
    straightLength: chord - darts,
    angles: {
      start: Math.abs(turnBetween(scaleVector(endTangent(preceding), -1), startTangent(now))),
      end: Math.abs(turnBetween(scaleVector(endTangent(now), -1), startTangent(following))),
    },
  };
}
