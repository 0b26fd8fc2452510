import type { Piece } from '../garment/piece';
import { type Box, boxOfPoints, growBox, unionBox } from '../geometry/bounds';
import { pathBounds } from '../geometry/path';
import type { Mark } from './drawing';
import { lineStyles } from './line-styles';
import { pieceDrawing } from './piece-drawing';

const remembered = new WeakMap<Piece, Box>();

/**
 * The box of everything drawn for a piece, in mm. Strokes count with their width, words only with the place they are
 * centred on, for their width depends on the language.
 */
export function pieceBounds(piece: Piece): Box {
  const known = remembered.get(piece);
  if (known) return known;
  const box = pieceDrawing(piece).map(markBounds).reduce(unionBox);
  remembered.set(piece, box);
  return box;
}

function markBounds(mark: Mark): Box {
  if (mark.kind === 'stroke') return growBox(pathBounds(mark.path), lineStyles[mark.line].width / 2);
  return boxOfPoints([mark.at]) as Box;
}
