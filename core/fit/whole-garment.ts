import type { Garment } from '../garment/garment';
import type { Piece } from '../garment/piece';
import { timesRound } from './times-round';

/**
 * How many times over an edge of a piece is found in the whole garment: in the first ring the piece belongs to, as often
 * as it goes round; else as often as it is cut, twice over on a fold. A fold itself is found half as often, for it is cut
 * through the middle of the cloth piece.
 */
export function timesInGarment(garment: Garment, piece: Piece): number {
  for (const ring of garment.rings) {
    const member = ring.members.find((one) => one.pieceId === piece.id);
    if (member) return timesRound(piece, member);
  }
  return timesRound(piece, { pieceId: piece.id });
}
