import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { type Box, growBox, unionBox } from '../../core/geometry/bounds';
import { pathBounds } from '../../core/geometry/path';

/** Room for a small piece, where there is none yet (mm). */
const EMPTY: Box = { minX: 0, minY: 0, maxX: 500, maxY: 500 };

/** The box round the stitch line of each piece. */
export function pieceBoxes(pieces: readonly Piece[]): readonly Box[] {
  return pieces.map((piece) => pathBounds(outlineOf(piece).whole));
}

/** Left clear below, as a part of the height: the buttons of the table stand there. */
const FOOT = 0.06;

/** A box with room below it for the buttons of the table. */
export function withFoot({ maxY, ...box }: Box): Box {
  return { ...box, maxY: maxY + FOOT * (maxY - box.minY) };
}

/** The box round them all, with a margin (mm). */
export function boxRound(boxes: readonly Box[], margin: number): Box {
  return growBox(boxes.reduce(unionBox, boxes[0] ?? EMPTY), margin);
}
