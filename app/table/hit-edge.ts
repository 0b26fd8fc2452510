import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { boxContains, growBox } from '../../core/geometry/bounds';
import { nearestOnPath, pathBounds } from '../../core/geometry/path';
import type { Point, TablePoint } from '../../core/geometry/point';
import type { Chosen } from '../state/table-store';
import { insidePiece } from './name-place';

/** A place on an edge, as a length from its start. */
export interface EdgeHit {
  readonly kind: 'edge';
  readonly edgeId: string;
  readonly along: number;
  readonly at: TablePoint;
}

/** The nearest edge of a piece within reach. */
export function hitEdge(piece: Piece, place: Point, reach: number): EdgeHit | undefined {
  let best: EdgeHit | undefined;
  let off = reach;
  outlineOf(piece).edges.forEach((path, index) => {
    const edge = piece.edges[index];
    if (!edge || !boxContains(growBox(pathBounds(path), off), place)) return;
    const near = nearestOnPath(path, place);
    if (near.distance > off) return;
    best = { kind: 'edge', edgeId: edge.id, along: near.along, at: near.point };
    off = near.distance;
  });
  return best;
}

/**
 * What a press that moved nothing chooses: an edge of the piece in hand, else a piece whose outline is near, else the
 * last drawn of those it lies inside.
 */
export function pressedOn(pieces: readonly Piece[], inHand: Piece | undefined, place: Point, reach: number): Chosen {
  const edge = inHand && hitEdge(inHand, place, reach);
  if (inHand && edge) return { kind: 'edge', pieceId: inHand.id, edgeId: edge.edgeId };
  const near = pieces.find((piece) => hitEdge(piece, place, reach));
  const inside = near ?? pieces.findLast((piece) => insidePiece(piece, place));
  return inside ? { kind: 'piece', pieceId: inside.id } : { kind: 'nothing' };
}
