import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { edgeIndex, withEdge } from '../garment/with-piece';
import { pathAtLength, pathLength, startTangent } from '../geometry/path';
import { distance, dot, isSamePoint, move, quarterTurn, type TablePoint, vectorBetween } from '../geometry/point';
import { selfCrossings } from '../geometry/self-crossing';
import { bowToLength } from './bow-edge';
import { rootBetween } from './root';
import { type Cut, cutAt, type EdgePlace, holdsFold, pointAt, turnPart } from './turn-part';

/** A slash through a piece: hinged at one edge, opening (or, for less than 0, lapping) at another. */
export interface SpreadWish {
  readonly hinge: EdgePlace;
  readonly open: EdgePlace;
  readonly by:
    | { readonly kind: 'angle'; readonly angle: number }
    /** The straight distance between the two sides of the slash where it opens (mm). */
    | { readonly kind: 'opening'; readonly opening: number };
}

export interface NotSpread {
  readonly kind: 'not-spread';
  readonly why: 'no-such-place' | 'too-wide' | 'crosses';
}

/** The edge at the hinge keeps its length to this many mm. */
const KEPT = 0.001;

/** How far across a hinge may be moved for it (mm), tried in turn. */
const REACHES = [0.05, 0.2, 1, 5] as const;

/**
 * The piece slashed from edge to edge and spread, trued with smooth curves: the opened edge grows by 2 R sin(a/2), R the
 * length of the slash and a the angle; the hinge edge keeps its length and only bends. A fold stays where it is and the
 * other part turns; without one, the part that follows the opening.
 */
export function spread(piece: Piece, { hinge, open, by }: SpreadWish): Piece | NotSpread {
  const about = pointAt(piece, hinge);
  const opening = pointAt(piece, open);
  const openPath = outlineOf(piece).edges[edgeIndex(piece, open.edgeId)];
  if (!about || !opening || !openPath || hinge.edgeId === open.edgeId || isSamePoint(about, opening)) {
    return { kind: 'not-spread', why: 'no-such-place' };
  }
  const angle = by.kind === 'angle' ? by.angle : 2 * Math.asin(by.opening / (2 * distance(about, opening)));
  if (!(Math.abs(angle) < Math.PI)) return { kind: 'not-spread', why: 'too-wide' };
  // Turning clockwise moves the opening by a quarter turn of the slash; forwards opens it for what follows.
  const forwards = dot(quarterTurn(vectorBetween(about, opening)), pathAtLength(openPath, open.along).tangent) > 0;
  const cutHinge = cutAt(hinge, 'smooth');
  const plainOpen = cutAt(open, 'smooth');
  const turnsBehind = !holdsFold(piece, plainOpen, cutHinge) || holdsFold(piece, cutHinge, plainOpen);
  const lapped = Math.max(0, -2 * distance(about, opening) * Math.sin(angle / 2));
  const cutOpen = lapped > 0 ? lappedAt(open, turnsBehind ? lapped : -lapped) : plainOpen;
  const sense = forwards === turnsBehind ? 1 : -1;
  const [from, to] = turnsBehind ? [cutOpen, cutHinge] : [cutHinge, cutOpen];
  const turned = turnPart(piece, { from, to, about, angle: sense * angle });
  const kept = withHingeLength(piece, turned, hinge.edgeId, about);
  return selfCrossings(outlineOf(kept).whole).length > 0 ? { kind: 'not-spread', why: 'crosses' } : kept;
}

/** Where two sides lap, half of the lap goes from each and they meet in the middle. */
function lappedAt({ edgeId, along }: EdgePlace, lap: number): Cut {
  return { edgeId, fixed: along - lap / 2, turned: along + lap / 2, finish: 'joined' };
}

/**
 * A bend smoothed is a little longer or shorter than its two legs: the hinge is moved across until it is not, or where a
 * few millimetres do not do it, the whole edge is bowed less.
 */
function withHingeLength(before: Piece, after: Piece, edgeId: string, hinge: TablePoint): Piece {
  const index = edgeIndex(before, edgeId);
  const length = pathLength(outlineOf(before).edges[index] ?? []);
  const shape = after.edges[index]?.shape;
  if (shape?.kind !== 'curve') return after;
  const at = shape.through.findIndex((point) => isSamePoint(point, hinge));
  if (at < 0) return after;
  const path = outlineOf(after).edges[index] ?? [];
  const across = quarterTurn(startTangent(path));
  const moved = (by: number) =>
    withEdge(after, edgeId, (edge) => ({
      ...edge,
      shape: { ...shape, through: shape.through.with(at, move(hinge, across, by)) },
    }));
  const off = (by: number) => pathLength(outlineOf(moved(by)).edges[index] ?? []) - length;
  if (Math.abs(off(0)) <= KEPT) return after;
  // The nearest such place: further across, a bend of either kind is longer again.
  for (const reach of REACHES) {
    for (const side of [reach, -reach]) {
      const by = rootBetween(off, 0, side, KEPT / 10);
      if (by !== undefined) return moved(by);
    }
  }
  return bowToLength(after, edgeId, length);
}
