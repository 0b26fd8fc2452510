import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { distanceToChord, flattenPath } from '../geometry/flatten';
import { pathBounds } from '../geometry/path';
import type { Point, TablePoint } from '../geometry/point';
import { placeInRing, type Ring } from '../geometry/polygon';

/** The place inside a piece furthest from its outline, and how far that is (mm): where words have most room. */
export interface PieceMiddle {
  readonly at: TablePoint;
  readonly room: number;
}

/**
 * The outline is followed this closely (mm), and places are tried on a net of so many by so many, so many times over.
 * Words need no more than a rough middle, and it is looked for at every step of a drag.
 */
const FOLLOW = 3;
const NET = 8;
const REFINED = 2;

const remembered = new WeakMap<Piece, PieceMiddle>();

/** The middle of a piece: never outside it, also when it is hollow. Remembered per piece. */
export function pieceMiddle(piece: Piece): PieceMiddle {
  const known = remembered.get(piece);
  if (known) return known;
  const found = search(piece);
  remembered.set(piece, found);
  return found;
}

function search(piece: Piece): PieceMiddle {
  const outline = outlineOf(piece).whole;
  const ring: Ring = flattenPath(outline, FOLLOW);
  let { minX, minY, maxX, maxY } = pathBounds(outline);
  let best: PieceMiddle = { at: { x: (minX + maxX) / 2, y: (minY + maxY) / 2 }, room: Number.NEGATIVE_INFINITY };
  for (let round = 0; round < REFINED; round++) {
    const [dx, dy] = [(maxX - minX) / NET, (maxY - minY) / NET];
    for (let i = 0; i <= NET; i++) {
      for (let j = 0; j <= NET; j++) {
        const at = { x: minX + i * dx, y: minY + j * dy };
        const room = roomAt(ring, at);
        if (room > best.room) best = { at, room };
      }
    }
    [minX, maxX, minY, maxY] = [best.at.x - dx, best.at.x + dx, best.at.y - dy, best.at.y + dy];
  }
  return { at: best.at, room: Math.max(0, best.room) };
}

function roomAt(ring: Ring, at: Point): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < ring.length; i++) {
    nearest = Math.min(nearest, distanceToChord(at, ring[i] as Point, ring[(i + 1) % ring.length] as Point));
  }
  return placeInRing(ring, at) === 'inside' ? nearest : -nearest;
}
