import type { Garment, Ring } from '../../core/garment/garment';
import type { Corner, Edge, Piece } from '../../core/garment/piece';
import { withPiece } from '../../core/garment/with-piece';
import type { Point } from '../../core/geometry/point';

export type Random = () => number;
export type NewId = () => string;

/** Something of a garment, chosen at random, and numbers such as a person would give. */
export interface Chosen {
  readonly garment: Garment;
  readonly piece: Piece;
  readonly edge: Edge;
  readonly otherEdge: Edge;
  readonly corner: Corner;
  readonly dartId: string;
  readonly ring: Ring | undefined;
  /** A length from `least` to `most` (mm). */
  mm(least: number, most: number): number;
  /** A place on the table. */
  place(): Point;
  pick<Item>(items: readonly Item[]): Item;
}

/** A kind of edit: what it is told when all is well, as plain data, and what it does with that or with anything like it. */
export interface EditKind {
  told(chosen: Chosen): unknown;
  made(garment: Garment, told: unknown, newId: NewId): Garment;
}

/** An edit of a garment by plain data. */
export function edit<Told>(
  told: (chosen: Chosen) => Told,
  made: (garment: Garment, told: Told, newId: NewId) => Garment | { readonly kind: string },
): EditKind {
  return {
    told,
    made: (garment, data, newId) => {
      const answer = made(garment, data as Told, newId);
      return 'schema' in answer ? answer : garment;
    },
  };
}

/** An edit of one piece, which may be refused. */
export function pieceEdit<Told>(
  told: (chosen: Chosen) => Told,
  made: (piece: Piece, told: Told, newId: NewId) => Piece | { readonly kind: string },
): EditKind {
  return edit(
    (chosen) => ({ pieceId: chosen.piece.id, told: told(chosen) }),
    (garment, data, newId) =>
      withPiece(garment, data.pieceId, (piece) => {
        const answer = made(piece, data.told, newId);
        return 'corners' in answer ? answer : piece;
      }),
  );
}

/** Chooses at random; `undefined` for a garment without a piece. */
export function chosenFrom(garment: Garment, random: Random): Chosen | undefined {
  const pick = <Item>(items: readonly Item[]) => items[Math.floor(random() * items.length)] as Item;
  if (garment.pieces.length === 0) return undefined;
  const piece = pick(garment.pieces);
  return {
    garment,
    piece,
    edge: pick(piece.edges),
    otherEdge: pick(piece.edges),
    corner: pick(piece.corners),
    dartId: piece.darts.length > 0 ? pick(piece.darts).id : 'no-dart',
    ring: garment.rings.length > 0 ? pick(garment.rings) : undefined,
    mm: (least, most) => least + random() * (most - least),
    place: () => ({ x: random() * 400 - 50, y: random() * 800 - 50 }),
    pick,
  };
}
