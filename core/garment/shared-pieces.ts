import { changeBetween, type Json } from './change';
import type { Garment } from './garment';
import type { Piece } from './piece';

/**
 * A garment with every piece that is just as one of `other` taken from there, so that both have the same object and what
 * is compared afterwards sees at once what differs.
 */
export function withSharedPieces(garment: Garment, other: Garment): Garment {
  const theirs = new Map(other.pieces.map((piece) => [piece.id, piece]));
  const pieces = garment.pieces.map((piece) => {
    const same = theirs.get(piece.id);
    return same && isAlike(piece, same) ? same : piece;
  });
  return { ...garment, pieces };
}

function isAlike(one: Piece, other: Piece): boolean {
  return changeBetween(one as unknown as Json, other as unknown as Json).length === 0;
}
