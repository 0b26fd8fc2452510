import type { RingMember } from '../garment/garment';
import type { Piece } from '../garment/piece';

/**
 * How many drawn widths of a piece go round the body: as said for the ring, else by how it is cut. A piece on the fold
 * is drawn as half of itself and counts twice.
 */
export function timesRound(piece: Piece, member: RingMember): number {
  return member.times ?? (piece.cut.how === 'fold' ? 2 * piece.cut.count : piece.cut.count);
}
