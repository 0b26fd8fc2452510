import { levelDepth, ringPieces } from '../fit/round-body';
import { cutPieces } from '../garment/cut-pieces';
import type { Garment, Level, Ring } from '../garment/garment';
import { currentSet } from '../garment/measure-value';
import type { Piece } from '../garment/piece';
import { levelLine } from '../shaping/level-line';

/** Two whole garments at one level of the first: how deep it lies (mm), and what each comes to all the way round. */
export interface GirthBeside {
  readonly ringId: string;
  readonly level: Level;
  readonly depth: number;
  readonly one: number;
  /** `undefined` where one of its pieces does not reach the level. */
  readonly other: number | undefined;
}

/**
 * Every level of every ring of one garment, beside the ring of another that stands for it: by id, then by name, then the
 * only one. Both are measured at the depths of the first, so that two wearers are not mixed up with two garments. A level
 * whose depth nobody has said, or that the first itself does not reach, is left out.
 */
export function girthsBeside(one: Garment, other: Garment): GirthBeside[] {
  const set = currentSet(one);
  return one.rings.flatMap((ring) => {
    const like = ringLike(ring, one, other);
    if (!like) return [];
    return ring.levels.flatMap((level) => {
      const depth = levelDepth(level, set);
      const mine = typeof depth === 'number' ? totalAt(one, ring, depth) : undefined;
      if (typeof depth !== 'number' || mine === undefined) return [];
      return [{ ringId: ring.id, level, depth, one: mine, other: totalAt(other, like, depth) }];
    });
  });
}

function ringLike(ring: Ring, one: Garment, other: Garment): Ring | undefined {
  const only = one.rings.length === 1 && other.rings.length === 1 ? other.rings[0] : undefined;
  return (
    other.rings.find(({ id }) => id === ring.id) ??
    other.rings.find(({ name }) => name !== '' && name === ring.name) ??
    only
  );
}

function totalAt(garment: Garment, ring: Ring, depth: number): number | undefined {
  const pieces = ringPieces(garment, ring);
  if (pieces.length === 0) return undefined;
  let total = 0;
  for (const { piece, times } of pieces) {
    const line = levelLine(piece, Math.abs(depth));
    if (!line) return undefined;
    total += line.length * times;
  }
  return total;
}

/**
 * Pieces that are no garment yet, such as a draft from measures, as one that goes round the body: every piece with a waist
 * edge. They take the place of the pieces of the garment whose wearer they are for.
 */
export function asGarment(wearerOf: Garment, pieces: readonly Piece[]): Garment {
  const { seams: _seams, traced: _traced, ...rest } = wearerOf;
  const garment = { ...rest, pieces, rings: [] };
  const members = cutPieces(garment).flatMap(({ id, edges }) =>
    edges.some(({ role }) => role === 'waist') ? [{ pieceId: id }] : [],
  );
  return members.length === 0 ? garment : { ...garment, rings: [{ id: 'draft', name: '', members, levels: [] }] };
}
