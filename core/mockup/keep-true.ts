import type { Garment } from '../garment/garment';
import { neighbourIndex, outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { type EdgeRef, isOwnMirror, isSameEdge, type Seam } from '../garment/seam';
import { edgeIndex, pieceOf, withCorner, withPiece } from '../garment/with-piece';
import { endTangent, nearestOnPath, pathAtLength, pathLength, startTangent } from '../geometry/path';
import { move, scaleVector, type Vector } from '../geometry/point';
import { selfCrossings } from '../geometry/self-crossing';
import { edgeLength } from '../seams/edge-length';
import { type SeamSides, type SeamStretch, seamSides } from '../seams/seam-sides';
import { carryMarks } from '../shaping/carry-marks';
import { rootBetween } from '../shaping/root';

/** An end of a seam, as it is walked. */
export type SeamEnd = 'start' | 'end';

/** How near the length is met (mm). */
const MET = 1e-6;

/**
 * The garment after a change of a seam's sides, the difference of their lengths as it was before: where one side has grown
 * more than the other, the other's corner at that end of the seam moves on in the direction in which its edge ended before
 * the change, so that what was pinned square to the edge stays. As it is when they grew alike within `harmless` mm, or
 * that corner cannot give.
 */
export function keptTrue(
  before: Garment,
  after: Garment,
  seam: Seam,
  {
    end,
    gives = 'other',
    harmless,
  }: { readonly end: SeamEnd; readonly gives?: 'one' | 'other'; readonly harmless: number },
): Garment {
  const was = seamSides(before, seam);
  const is = seamSides(after, seam);
  if (!was || !is || isOwnMirror(seam)) return after;
  const grown = offBy(is) - offBy(was);
  if (Math.abs(grown) <= harmless) return after;
  const side = is[gives];
  const stretch = end === 'start' ? side.stretches[0] : side.stretches.at(-1);
  const piece = stretch && pieceOf(after, stretch.pieceId);
  const old = stretch && pieceOf(before, stretch.pieceId);
  if (!stretch || !piece || !old) return after;
  const comings = side.stretches.filter((each) => isSameEdge(each, stretch)).length;
  const longer = (gives === 'other' ? grown : -grown) / comings;
  const made = withEndMoved(piece, stretch, drawnEnd(stretch, end), longer, old);
  return made ? withPiece(after, piece.id, () => made) : after;
}

/** By how much the first side of a seam is longer than the second on one walk (mm). */
export function offBy({ one, other }: SeamSides): number {
  return one.length - other.length;
}

/** Which end of the drawn edge lies at an end of the walk over it. */
export function drawnEnd({ backwards }: Pick<SeamStretch, 'backwards'>, end: SeamEnd): SeamEnd {
  return (end === 'start') === backwards ? 'end' : 'start';
}

/** The piece with one edge longer by moving the corner at one end straight on; `undefined` where it cannot. */
function withEndMoved(
  piece: Piece,
  { edgeId }: EdgeRef,
  end: SeamEnd,
  longer: number,
  before: Piece,
): Piece | undefined {
  const index = edgeIndex(piece, edgeId);
  const beside = neighbourIndex(piece, index, end === 'start' ? -1 : 1);
  const corner = piece.corners[end === 'start' ? index : (index + 1) % piece.corners.length];
  const old = outlineOf(before).edges[edgeIndex(before, edgeId)];
  const length = edgeLength(piece, edgeId);
  if (!corner || !old || length === undefined || piece.edges[beside]?.role === 'fold') return undefined;
  const way: Vector = end === 'start' ? scaleVector(startTangent(old), -1) : endTangent(old);
  const at = (far: number) => withCorner(piece, corner.id, (one) => ({ ...one, at: move(one.at, way, far) }));
  const most = 3 * Math.abs(longer) + 1;
  const far = rootBetween((x) => (edgeLength(at(x), edgeId) ?? 0) - length - longer, -most, most, MET);
  if (far === undefined) return undefined;
  const made = at(far);
  if (selfCrossings(outlineOf(made).whole).length > 0) return undefined;
  return withMarksKept(piece, made, index, beside, end === 'start' ? longer : 0);
}

/** Marks of the edge keep their distance from the corner that stayed; those of the edge beside it stay near where they were. */
function withMarksKept(piece: Piece, made: Piece, index: number, beside: number, more: number): Piece {
  const own = carryMarks(made, piece.edges[index]?.id ?? '', (along) => along + more);
  const [path, led] = [outlineOf(piece).edges[beside], outlineOf(own).edges[beside]];
  if (!path || !led || beside === index || pathLength(led) === pathLength(path)) return own;
  return carryMarks(own, piece.edges[beside]?.id ?? '', (along) => {
    return nearestOnPath(led, pathAtLength(path, along).point).along;
  });
}
