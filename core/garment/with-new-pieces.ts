import { unionBox } from '../geometry/bounds';
import { pathBounds } from '../geometry/path';
import { inches } from '../units/inch';
import type { Garment } from './garment';
import { movePiece } from './move-piece';
import { outlineOf } from './outline';
import type { Piece } from './piece';

/** How far new pieces are laid from what is there. */
const GAP = inches(4);

/** The garment with new pieces laid below everything that lies on the table, as they lie to one another. */
export function withNewPieces(garment: Garment, pieces: readonly Piece[]): Garment {
  const boxOf = (piece: Piece) => pathBounds(outlineOf(piece).whole);
  const first = pieces[0];
  if (!first) return garment;
  const box = pieces.map(boxOf).reduce(unionBox, boxOf(first));
  const lowest = garment.pieces.length === 0 ? 0 : Math.max(...garment.pieces.map((piece) => boxOf(piece).maxY)) + GAP;
  const by = { dx: -box.minX, dy: lowest - box.minY };
  return { ...garment, pieces: [...garment.pieces, ...pieces.map((piece) => movePiece(piece, by))] };
}
