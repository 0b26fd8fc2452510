import { pieceMiddle } from '../../core/drawing/piece-middle';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { boxCentre, boxContains } from '../../core/geometry/bounds';
import { flattenPath } from '../../core/geometry/flatten';
import { pathBounds } from '../../core/geometry/path';
import type { Point, TablePoint } from '../../core/geometry/point';
import { placeInRing } from '../../core/geometry/polygon';

/** Whether a place lies inside a piece, to a tenth of a millimetre. */
export function insidePiece(piece: Piece, place: Point): boolean {
  const { whole } = outlineOf(piece);
  return boxContains(pathBounds(whole), place) && placeInRing(flattenPath(whole, 0.1), place) === 'inside';
}

/** Where the name of a piece stands, by which the whole of it is moved: its middle, or where a hollow piece has room. */
export function handlePlace(piece: Piece): TablePoint {
  const centre = boxCentre(pathBounds(outlineOf(piece).whole));
  return insidePiece(piece, centre) ? centre : pieceMiddle(piece).at;
}
