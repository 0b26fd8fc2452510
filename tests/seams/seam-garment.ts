/** Garments with seams made in few words, for tests. */
import type { Garment } from '../../core/garment/garment';
import type { Notch, Piece } from '../../core/garment/piece';
import type { Seam } from '../../core/garment/seam';
import { linden } from '../garment/linden';
import { at, pieceOf } from './pieces';

/** A half panel on the fold: waist e0 to the right, side e1 down, hem e2, fold e3 at the left. */
export function foldPanel(id: string, waist: number, side: readonly [number, number], hem = waist + 90): Piece {
  const piece = pieceOf(
    [at(0, 0), at(waist, 0), at(hem, side[1]), at(0, side[1])],
    [{ role: 'waist' }, { through: [at((waist + hem) / 2 + 9, side[0])] }, { role: 'hem' }, { role: 'fold' }],
    [],
    { how: 'fold', count: 1 },
  );
  return { ...piece, id };
}

export function withNotches(
  piece: Piece,
  edgeId: string,
  notches: readonly (readonly [number, Notch['count']])[],
): Piece {
  return { ...piece, notches: notches.map(([along, count], i) => ({ id: `n${i}`, edgeId, along, count })) };
}

export function edge(pieceId: string, edgeId: string, times?: number) {
  return times === undefined ? { pieceId, edgeId } : { pieceId, edgeId, times };
}

export function seamOf(one: Seam['one'], other: Seam['other'], more: Partial<Seam> = {}): Seam {
  return { id: 'seam', name: '', one, other, ease: 0, way: 'opposite', ...more };
}

export function garmentWith(pieces: readonly Piece[], seams: readonly Seam[] = []): Garment {
  return { ...linden(), pieces, rings: [], seams };
}
