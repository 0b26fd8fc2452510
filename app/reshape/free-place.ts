import type { Garment } from '../../core/garment/garment';
import { movePiece } from '../../core/garment/move-piece';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { unionBox } from '../../core/geometry/bounds';
import { pathBounds } from '../../core/geometry/path';
import { inches } from '../../core/units/inch';

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

/** A fresh id. */
export function newId(): string {
  return crypto.randomUUID();
}
