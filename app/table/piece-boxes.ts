import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { type Box, growBox, unionBox } from '../../core/geometry/bounds';
import { pathBounds } from '../../core/geometry/path';
import type { Point } from '../../core/geometry/point';

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

/** The box of the piece in hand, else of the piece nearest to a place; nothing where there is none. */
export function boxNear(pieces: readonly Piece[], inHandId: string | undefined, place: Point): Box | undefined {
  const inHand = pieces.find(({ id }) => id === inHandId);
  if (inHand) return pieceBoxes([inHand])[0];
  return pieceBoxes(pieces).toSorted((a, b) => boxDistance(a, place) - boxDistance(b, place))[0];
}

function boxDistance({ minX, minY, maxX, maxY }: Box, { x, y }: Point): number {
  return Math.hypot(Math.max(minX - x, 0, x - maxX), Math.max(minY - y, 0, y - maxY));
}
