import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { edgeIndex } from '../garment/with-piece';
import { flattenPath } from '../geometry/flatten';
import { pathAtLength, pathLength, signedArea } from '../geometry/path';
import { between, move, type Point, quarterTurn, scaleVector, unit, vectorBetween } from '../geometry/point';
import { placeInRing } from '../geometry/polygon';

/** A dart wanted at a place of an edge. */
export interface DartWish {
  readonly id: string;
  readonly edgeId: string;
  /** The middle of its mouth, and the width of the mouth, along the edge (mm). */
  readonly along: number;
  readonly width: number;
  /** From the middle of the mouth to its point (mm). */
  readonly length: number;
  /** Square to its mouth, so that its legs are equal, or in the direction of a place. */
  readonly runs: 'square' | { readonly towards: Point };
}

export interface DartNotPlaced {
  readonly kind: 'dart-not-placed';
  /** `past-the-edge`: the mouth reaches beyond an end of the edge. `outside`: its point does not lie in the piece. */
  readonly why: 'no-edge' | 'no-size' | 'past-the-edge' | 'overlaps' | 'outside';
}

/** How closely the outline is followed to tell whether the point lies inside (mm). */
const FOLLOW = 0.1;

/** The piece with a dart put in. Its edge stays as drawn and is sewn shorter by the width of the dart. */
export function placeDart(piece: Piece, wish: DartWish): Piece | DartNotPlaced {
  const { id, edgeId, along, width, length, runs } = wish;
  const path = outlineOf(piece).edges[edgeIndex(piece, edgeId)];
  if (!path) return { kind: 'dart-not-placed', why: 'no-edge' };
  if (!(width > 0 && length > 0)) return { kind: 'dart-not-placed', why: 'no-size' };
  if (along < width / 2 || along > pathLength(path) - width / 2)
    return { kind: 'dart-not-placed', why: 'past-the-edge' };
  const overlaps = piece.darts.some(
    (dart) => dart.edgeId === edgeId && Math.abs(dart.along - along) < (dart.width + width) / 2,
  );
  if (overlaps) return { kind: 'dart-not-placed', why: 'overlaps' };
  const [from, to] = [pathAtLength(path, along - width / 2).point, pathAtLength(path, along + width / 2).point];
  const middle = between(from, to, 0.5);
  const inward = signedArea(outlineOf(piece).whole) > 0 ? 1 : -1;
  const way =
    runs === 'square'
      ? unit(scaleVector(quarterTurn(vectorBetween(from, to)), inward))
      : unit(vectorBetween(middle, runs.towards));
  const point = way && move(middle, way, length);
  if (!point || placeInRing(flattenPath(outlineOf(piece).whole, FOLLOW), point) !== 'inside') {
    return { kind: 'dart-not-placed', why: 'outside' };
  }
  return { ...piece, darts: [...piece.darts, { id, edgeId, along, width, point }] };
}
