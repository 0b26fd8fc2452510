import { neighbourIndex, outlineOf } from '../garment/outline';
import type { Edge, EdgeShape, Piece } from '../garment/piece';
import { takenUp } from '../garment/taken-up';
import { edgeIndex, withCorner, withEdge } from '../garment/with-piece';
import { endTangent, nearestOnPath, pathAtLength, pathEnd, pathLength, reversePath } from '../geometry/path';
import { move, type Point } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { selfCrossings } from '../geometry/self-crossing';
import { carryMarks } from '../shaping/carry-marks';
import { NEAR } from '../shaping/hold-course';
import { rootBetween } from '../shaping/root';

/** The end of an edge that gives. */
export type GivingEnd = 'start' | 'end';

export interface NotMadeToLength {
  readonly kind: 'not-made-to-length';
  /** `marks-in-the-way`: a dart, notch, pleat or gathers lie on what would go. `on-a-fold`: the corner that would move is on a fold. */
  readonly why: 'no-edge' | 'nothing-left' | 'marks-in-the-way' | 'on-a-fold' | 'not-met' | 'crosses';
}

/** An edge made shorter keeps at least this much (mm): what is less is no edge under a finger. */
const LEAST = 5;

/** The length is met to this many mm, so that even a score of them together are off by less than a hundredth. */
const MET = 1e-4;

/** A curve is held to its old course this far before the corner that moves (mm). */
const HELD = 50;

/**
 * The piece with an edge made `length` mm long (as drawn) at one of its ends: that corner moves along the edge's own
 * course, or beyond it straight on in the direction it ended in, and the edge beside it follows. The other corner and
 * the course in between stay. Notches keep their place on the cloth.
 */
export function edgeToLength(
  piece: Piece,
  edgeId: string,
  { length, end }: { readonly length: number; readonly end: GivingEnd },
): Piece | NotMadeToLength {
  const refuse = (why: NotMadeToLength['why']): NotMadeToLength => ({ kind: 'not-made-to-length', why });
  const index = edgeIndex(piece, edgeId);
  const edge = piece.edges[index];
  const path = outlineOf(piece).edges[index];
  if (!edge || !path) return refuse('no-edge');
  if (piece.edges[neighbourIndex(piece, index, end === 'start' ? -1 : 1)]?.role === 'fold') return refuse('on-a-fold');
  if (!(length >= LEAST)) return refuse('nothing-left');
  const before = pathLength(path);
  // From here on the corner that stays comes first and the one that gives last.
  const course = end === 'start' ? reversePath(path) : path;
  const made = (reach: number) => reachingTo(piece, index, end, course, before, reach);
  const lengthAt = (reach: number) => pathLength(outlineOf(made(reach)).edges[index] ?? []);
  const slack = Math.abs(length - before) / 2 + 1;
  const reach = rootBetween((r) => lengthAt(r) - length, Math.max(LEAST / 2, length - slack), length + slack, MET / 10);
  if (reach === undefined) return refuse('not-met');
  const given = made(reach);
  if (Math.abs(lengthAt(reach) - length) > MET) return refuse('not-met');
  if (marksBeyond(piece, edgeId, before, length, end)) return refuse('marks-in-the-way');
  const crossed = selfCrossings(outlineOf(given).whole).length > 0;
  if (crossed && selfCrossings(outlineOf(piece).whole).length === 0) return refuse('crosses');
  return withMarksKept(piece, given, index, end);
}

/** The piece with the giving corner `reach` mm along the course of its edge, or of what carries on straight beyond it. */
function reachingTo(piece: Piece, index: number, end: GivingEnd, course: Path, total: number, reach: number): Piece {
  const edge = piece.edges[index] as Edge;
  const corner = piece.corners[end === 'start' ? index : (index + 1) % piece.corners.length];
  const at =
    reach <= total ? pathAtLength(course, reach).point : move(pathEnd(course), endTangent(course), reach - total);
  const moved = withCorner(piece, corner?.id ?? '', (one) => ({ ...one, at }));
  return withEdge(moved, edge.id, (one) => ({ ...one, shape: heldShape(edge.shape, end, course, total, reach) }));
}

function heldShape(shape: EdgeShape, end: GivingEnd, course: Path, total: number, reach: number): EdgeShape {
  if (shape.kind === 'straight') return shape;
  const own = end === 'start' ? shape.through.toReversed() : shape.through;
  const kept = own.filter((point) => nearestOnPath(course, point).along < reach - NEAR);
  const last = kept.at(-1);
  const lastAlong = last ? nearestOnPath(course, last).along : 0;
  const held = [HELD, reach - total]
    .map((back) => reach - back)
    .filter((along) => along > lastAlong + NEAR && along < Math.min(reach - NEAR, total + NEAR / 2))
    .sort((a, b) => a - b)
    .filter((along, i, all) => i === 0 || along - (all[i - 1] ?? 0) > NEAR);
  const through: Point[] = [...kept, ...held.map((along) => pathAtLength(course, Math.min(along, total)).point)];
  return { ...shape, through: end === 'start' ? through.reverse() : through };
}

function marksBeyond(piece: Piece, edgeId: string, before: number, after: number, end: GivingEnd): boolean {
  const [from, to] = end === 'start' ? [before - after, before] : [0, after];
  const isOff = (low: number, high: number) => low < from || high > to;
  return (
    piece.notches.some((notch) => notch.edgeId === edgeId && isOff(notch.along, notch.along)) ||
    takenUp(piece, edgeId, before).some((mouth) => isOff(mouth.from, mouth.to))
  );
}

/** Marks of the edge and of the one beside it stay where they were on the cloth. */
function withMarksKept(before: Piece, after: Piece, index: number, end: GivingEnd): Piece {
  const beside = neighbourIndex(before, index, end === 'start' ? -1 : 1);
  const [old, now] = [outlineOf(before).edges, outlineOf(after).edges];
  const grown = pathLength(now[index] ?? []) - pathLength(old[index] ?? []);
  const id = before.edges[index]?.id ?? '';
  const own = end === 'start' ? carryMarks(after, id, (along) => along + grown) : after;
  const [path, led] = [old[beside], now[beside]];
  const besideId = before.edges[beside]?.id;
  if (!path || !led || besideId === undefined || besideId === id) return own;
  return carryMarks(own, besideId, (along) => nearestOnPath(led, pathAtLength(path, along).point).along);
}
