/**
 * The corners where a seam ends: the edges beside it (hem, waist) should run on smoothly over the seam, which they do when
 * the two angles come to 180 degrees (common practice).
 */
import type { Garment } from '../garment/garment';
import { neighbourIndex, outlineOf } from '../garment/outline';
import type { Edge, Piece } from '../garment/piece';
import { isOwnMirror, type Seam } from '../garment/seam';
import { edgeIndex, pieceOf, withEdge, withPiece } from '../garment/with-piece';
import { nearestOnPath, pathAtLength, pathLength, reversePath, startTangent } from '../geometry/path';
import { move, type Point, turnVector } from '../geometry/point';
import { carryMarks } from '../shaping/carry-marks';
import { placesOf } from '../shaping/hold-course';
import { rootBetween } from '../shaping/root';
import { cornerAngle } from './corner-angle';
import { type SeamSide, type SeamStretch, seamSides } from './seam-sides';

/** The end of a seam, as it is walked. */
export type SeamEnd = 'at-start' | 'at-end';

/** The two angles at an end of a seam (radians, inside the pieces), and how far both together are from a straight line. */
export interface SeamCorners {
  readonly one: number;
  readonly other: number;
  /** More than 0 is a peak in the line that runs over the seam, less a notch. */
  readonly off: number;
}

export interface TrueCornersOptions {
  readonly end: SeamEnd;
  /** Both lines brought square to the seam, or each turned by half of what is off. */
  readonly how: 'square' | 'blend';
}

export interface TruedCorners {
  readonly kind: 'corners-trued';
  readonly garment: Garment;
  readonly before: SeamCorners;
  readonly after: SeamCorners;
}

export interface CornersNotTrued {
  readonly kind: 'corners-not-trued';
  /** `ruled`: the seam itself is drawn square to or in line with the edge beside it, which then cannot stand to the seam. */
  readonly why: 'no-seam' | 'on-a-fold' | 'ruled' | 'too-short' | 'not-met';
}

/** Angles are met to this (radians): a hundredth of a degree, far below what a pencil can follow. */
const MET = Math.PI / 18000;

/** A line is turned within this of its corner at most (mm), and within this share of its length. */
const BEND = 60;
const BEND_SHARE = 1 / 3;

/** An edge shorter than this (mm) has no room to be turned. */
const LEAST = 15;

/** A blended line is turned by no more than this (radians) either way. */
const REACH = 0.6;

/** The angles at an end of a seam; `undefined` when one of its edges is no longer there. */
export function seamCorners(garment: Garment, seam: Seam, end: SeamEnd): SeamCorners | undefined {
  const ends = endsOf(garment, seam, end);
  return ends && cornersOf(ends.map(angleAt));
}

/**
 * The garment with the edges beside a seam trued at one end of it. Corners and the seam stay; the edges beside it bend
 * near the corner only, and beyond that keep their course within what a smooth curve allows.
 */
export function trueCorners(
  garment: Garment,
  seam: Seam,
  { end, how }: TrueCornersOptions,
): TruedCorners | CornersNotTrued {
  const refuse = (why: CornersNotTrued['why']): CornersNotTrued => ({ kind: 'corners-not-trued', why });
  const ends = endsOf(garment, seam, end);
  if (!ends) return refuse('no-seam');
  const before = cornersOf(ends.map(angleAt));
  let trued = garment;
  for (const corner of isOwnMirror(seam) ? ends.slice(0, 1) : ends) {
    const { pieceId, seamEdge, isSeamStart } = corner;
    const piece = pieceOf(trued, pieceId);
    if (!piece) return refuse('no-seam');
    const now = { ...corner, piece };
    const beside = besideOf(now);
    if (beside.role === 'fold') return refuse('on-a-fold');
    const { shape } = piece.edges[edgeIndex(piece, seamEdge)] ?? {};
    if (shape?.kind === 'curve' && shape[isSeamStart ? 'leaves' : 'meets'] !== 'free') return refuse('ruled');
    if (pathLength(besidePath(now)) < LEAST) return refuse('too-short');
    const bent = how === 'square' ? bentTo(now, 'square', []) : blended(now, angleAt(now) - before.off / 2);
    if (!bent) return refuse('not-met');
    trued = withPiece(trued, pieceId, () => withMarksKept(now, bent));
  }
  const after = seamCorners(trued, seam, end);
  if (!after || Math.abs(after.off) > 4 * MET) return refuse('not-met');
  return { kind: 'corners-trued', garment: trued, before, after };
}

/** A corner at the end of a seam: which edge is sewn, and whether the seam begins at that corner as drawn. */
interface EndCorner {
  readonly piece: Piece;
  readonly pieceId: string;
  readonly seamEdge: string;
  readonly isSeamStart: boolean;
}

function endsOf(garment: Garment, seam: Seam, end: SeamEnd): readonly EndCorner[] | undefined {
  const sides = seamSides(garment, seam);
  if (!sides) return undefined;
  return [sides.one, sides.other].flatMap(({ stretches }: SeamSide): EndCorner[] => {
    const stretch: SeamStretch | undefined = end === 'at-start' ? stretches[0] : stretches.at(-1);
    if (!stretch) return [];
    const { piece, pieceId, edgeId, backwards } = stretch;
    return [{ piece, pieceId, seamEdge: edgeId, isSeamStart: (end === 'at-start') !== backwards }];
  });
}

function cornersOf([one = Math.PI / 2, other = Math.PI / 2]: readonly number[]): SeamCorners {
  return { one, other, off: one + other - Math.PI };
}

function angleAt(corner: EndCorner): number {
  return cornerAngle(corner.piece, cornerIndexOf(corner));
}

function besideIndex({ piece, seamEdge, isSeamStart }: EndCorner): number {
  return neighbourIndex(piece, edgeIndex(piece, seamEdge), isSeamStart ? -1 : 1);
}

function besideOf(corner: EndCorner): Edge {
  return corner.piece.edges[besideIndex(corner)] as Edge;
}

/** The line beside the seam, going away from the corner. */
function besidePath(corner: EndCorner) {
  const path = outlineOf(corner.piece).edges[besideIndex(corner)] ?? [];
  return corner.isSeamStart ? reversePath(path) : path;
}

/** The piece with the line beside the seam leaving its corner at an angle to the seam; `undefined` when it cannot. */
function blended(corner: EndCorner, angle: number): Piece | undefined {
  const path = besidePath(corner);
  const away = startTangent(path);
  const length = pathLength(path);
  const near = Math.min(BEND, length * BEND_SHARE) / 2;
  const at = corner.piece.corners[cornerIndexOf(corner)]?.at;
  if (!at) return undefined;
  const bentBy = (turn: number) => bentTo(corner, 'free', [move(at, turnVector(away, turn), near)]);
  const off = (turn: number) => angleAt({ ...corner, piece: bentBy(turn) }) - angle;
  const turn = rootBetween(off, -REACH, REACH, MET / 10);
  return turn === undefined ? undefined : bentBy(turn);
}

function cornerIndexOf({ piece, seamEdge, isSeamStart }: EndCorner): number {
  const index = edgeIndex(piece, seamEdge);
  return isSeamStart ? index : (index + 1) % piece.corners.length;
}

/** The edge beside the seam by another rule at its corner, through `first` and then on its old course. */
function bentTo(corner: EndCorner, rule: 'square' | 'free', first: readonly Point[]): Piece {
  const path = besidePath(corner);
  const length = pathLength(path);
  const from = Math.min(BEND, length * BEND_SHARE);
  return withEdge(corner.piece, besideOf(corner).id, (edge) => {
    const own = edge.shape.kind === 'curve' ? edge.shape.through : [];
    const places = own
      .map((point) => ({ point, along: nearestOnPath(path, point).along }))
      .filter(({ along }) => along > from * 1.25);
    const pins = placesOf(path, [from, length - (length - from) / 2]).filter(({ along }) =>
      places.every((place) => Math.abs(place.along - along) > from / 4),
    );
    const away = [...first, ...[...places, ...pins].sort((a, b) => a.along - b.along).map(({ point }) => point)];
    const far = edge.shape.kind === 'curve' ? edge.shape[corner.isSeamStart ? 'leaves' : 'meets'] : 'free';
    return corner.isSeamStart
      ? { ...edge, shape: { kind: 'curve', through: away.reverse(), leaves: far, meets: rule } }
      : { ...edge, shape: { kind: 'curve', through: away, leaves: rule, meets: far } };
  });
}

function withMarksKept(corner: EndCorner, bent: Piece): Piece {
  const index = besideIndex(corner);
  const [old, now] = [outlineOf(corner.piece).edges[index], outlineOf(bent).edges[index]];
  const id = bent.edges[index]?.id;
  if (!old || !now || id === undefined) return bent;
  return carryMarks(bent, id, (along) => nearestOnPath(now, pathAtLength(old, along).point).along);
}
