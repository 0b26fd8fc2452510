import type { Piece } from './piece';

/** The piece for one side of the body, or for both with `undefined`. */
export function setSide(piece: Piece, side: Piece['side']): Piece {
  if (piece.side === side) return piece;
  const { side: _, ...both } = piece;
  return side === undefined ? both : { ...both, side };
}

/** Whether a piece is for one side though it is cut so that it comes to both: in mirrored pairs, or on the fold. */
export function isCutForBoth({ side, cut }: Pick<Piece, 'side' | 'cut'>): boolean {
  return side !== undefined && cut.how !== 'single';
}
