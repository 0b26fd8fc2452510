import type { Garment } from './garment';
import type { Piece } from './piece';

/** The pieces that are cut and sewn, in order: all but the guides, which only lie under a draft to be measured against. */
export function cutPieces({ pieces }: Pick<Garment, 'pieces'>): readonly Piece[] {
  return pieces.some(isGuide) ? pieces.filter((piece) => !isGuide(piece)) : pieces;
}

/** Whether a piece is only there to be laid under a draft. */
export function isGuide({ use }: Pick<Piece, 'use'>): boolean {
  return use === 'guide';
}
