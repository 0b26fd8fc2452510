import { movePiece } from '../garment/move-piece';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { pathBounds } from '../geometry/path';

/** How far apart drafted pieces are laid (mm): room for two wide allowances and a name. */
const APART = 80;

/** Pieces laid beside one another from left to right, their tops in one line with the first, which stays where it is. */
export function laidBeside(pieces: readonly Piece[]): Piece[] {
  const [first] = pieces;
  if (!first) return [];
  const { maxX, minY } = pathBounds(outlineOf(first).whole);
  let right = maxX;
  return pieces.map((piece, index) => {
    if (index === 0) return piece;
    const box = pathBounds(outlineOf(piece).whole);
    const moved = movePiece(piece, { dx: right + APART - box.minX, dy: minY - box.minY });
    right += APART + box.maxX - box.minX;
    return moved;
  });
}
