import type { Garment } from '../garment/garment';
import type { PinnedWhat } from '../garment/mockup';
import { moveCorner } from '../garment/move-point';
import { neighbourIndex, outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { isOwnMirror, type Seam } from '../garment/seam';
import { edgeIndex, withPiece } from '../garment/with-piece';
import { nearestOnPath, pathAtLength, signedArea } from '../geometry/path';
import { distance, move, turnBetween, turnVector, type Vector, vectorBetween } from '../geometry/point';
import { selfCrossings } from '../geometry/self-crossing';
import { type SeamStretch, seamSides } from '../seams/seam-sides';
import { carryMarks } from '../shaping/carry-marks';
import { drawnEnd, keptTrue, type SeamEnd } from './keep-true';

/** A corner pinned elsewhere. */
export type PinnedPoint = Extract<PinnedWhat, { readonly kind: 'point' }>;

export interface PointNotCarried {
  readonly kind: 'point-not-carried';
  readonly why: 'corner-gone' | 'on-a-fold' | 'crosses';
  readonly pieceId: string;
}

/** The sides of a seam may come to differ by this much more before a corner gives (mm). */
const HARMLESS = 1e-3;

/** A piece that lies turned by less than this (2 degrees) has been reshaped, not turned. */
const TURNED = Math.PI / 90;

/**
 * The garment with a corner of a piece moved, marks beside it staying near where they were. Where a seam ends at that
 * corner, the corner it is sewn to gives, so that the seam's sides differ by what they did before.
 */
export function pointCarried(garment: Garment, piece: Piece, cornerId: string, by: Vector): Garment | PointNotCarried {
  const index = piece.corners.findIndex(({ id }) => id === cornerId);
  const corner = piece.corners[index];
  if (!corner) return { kind: 'point-not-carried', why: 'corner-gone', pieceId: piece.id };
  const before = neighbourIndex(piece, index, -1);
  if (piece.edges[before]?.role === 'fold' || piece.edges[index]?.role === 'fold') {
    return { kind: 'point-not-carried', why: 'on-a-fold', pieceId: piece.id };
  }
  const bare = moveCorner(piece, cornerId, move(corner.at, by));
  if (selfCrossings(outlineOf(bare).whole).length > 0) {
    return { kind: 'point-not-carried', why: 'crosses', pieceId: piece.id };
  }
  const moved = [before, index].reduce((so, at) => marksBeside(piece, so, at), bare);
  const made = withPiece(garment, piece.id, () => moved);
  return (garment.seams ?? []).reduce((so, seam) => trueAtCorner(garment, so, seam, piece, cornerId), made);
}

/** What was pinned by the table it lay on then, for the piece as it lies on the table now: turned with it, and mirrored. */
export function vectorNow(by: Vector, was: Piece | undefined, is: Piece): Vector {
  if (!was) return by;
  const mirrored = Math.sign(signedArea(outlineOf(was).whole)) !== Math.sign(signedArea(outlineOf(is).whole));
  const faced = mirrored ? { dx: -by.dx, dy: by.dy } : by;
  const [a, b] = furthestApart(was, is);
  const old = vectorBetween(a.was, b.was);
  const turn = turnBetween(mirrored ? { dx: -old.dx, dy: old.dy } : old, vectorBetween(a.is, b.is));
  return Math.abs(turn) < TURNED ? faced : turnVector(faced, turn);
}

function furthestApart(was: Piece, is: Piece) {
  const both = was.corners.flatMap(({ id, at }) => {
    const now = is.corners.find((corner) => corner.id === id);
    return now ? [{ was: at, is: now.at }] : [];
  });
  const none = { was: { x: 0, y: 0 }, is: { x: 0, y: 0 } };
  const pairs = both.flatMap((a) => both.map((b) => [a, b] as const));
  const far = ([a, b]: (typeof pairs)[number]) => distance(a.was, b.was);
  return pairs.reduce<(typeof pairs)[number]>((best, pair) => (far(pair) > far(best) ? pair : best), [none, none]);
}

function marksBeside(before: Piece, after: Piece, index: number): Piece {
  const [path, led] = [outlineOf(before).edges[index], outlineOf(after).edges[index]];
  const id = before.edges[index]?.id;
  if (!path || !led || id === undefined) return after;
  return carryMarks(after, id, (along) => nearestOnPath(led, pathAtLength(path, along).point).along);
}

/** The seam kept true at the corner that moved, by the corner across from it. */
function trueAtCorner(before: Garment, after: Garment, seam: Seam, piece: Piece, cornerId: string): Garment {
  const sides = seamSides(before, seam);
  if (!sides) return after;
  for (const which of ['one', 'other'] as const) {
    const end = endAt(sides[which].stretches, piece, cornerId);
    if (end)
      return isOwnMirror(seam)
        ? after
        : keptTrue(before, after, seam, { end, gives: across(which), harmless: HARMLESS });
  }
  return after;
}

function across(which: 'one' | 'other'): 'one' | 'other' {
  return which === 'one' ? 'other' : 'one';
}

/** At which end of a side, if at either, it begins or ends at a corner of a piece. */
function endAt(stretches: readonly SeamStretch[], piece: Piece, cornerId: string): SeamEnd | undefined {
  return (['start', 'end'] as const).find((end) => {
    const stretch = end === 'start' ? stretches[0] : stretches.at(-1);
    if (stretch?.pieceId !== piece.id) return false;
    const index = edgeIndex(piece, stretch.edgeId);
    const at = drawnEnd(stretch, end) === 'start' ? index : (index + 1) % piece.corners.length;
    return piece.corners[at]?.id === cornerId;
  });
}
