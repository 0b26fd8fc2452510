/** A skirt of our own: a front on the fold, a gore and a back each cut as a pair, two seams a side, drawn in mm. */
import type { Garment } from '../../core/garment/garment';
import type { Mockup, PinnedChange, PinnedWhat } from '../../core/garment/mockup';
import { addMockup } from '../../core/garment/mockup-edits';
import type { Cut, Piece } from '../../core/garment/piece';
import type { Seam } from '../../core/garment/seam';
import { versionMark } from '../../core/garment/version-mark';
import { figure, garmentOf } from '../fit/skirts';
import { traced } from '../shaping/traced';

const cut = (piece: Piece, how: Cut): Piece => ({
  ...piece,
  cut: how,
  drawnAs: 'net',
  edges: piece.edges.map((edge) => ({ ...edge, allowance: edge.role === 'fold' ? 0 : 15 })),
});

export const front = cut(
  traced('front', [
    [[0, 0], 'waist'],
    [[125, 4], 'seam', [[150, 210]]],
    [[205, 690], 'hem'],
    [[0, 690], 'fold'],
  ]),
  { how: 'fold', count: 1 },
);
export const gore = cut(
  traced('gore', [
    [[450, 3], 'waist'],
    [[560, 0], 'seam'],
    [[640, 693], 'hem'],
    [[372, 690], 'seam', [[426, 205]]],
  ]),
  { how: 'pair', count: 2 },
);
export const back = cut(
  traced('back', [
    [[900, 2], 'waist'],
    [[1010, 0], 'opening'],
    [[1020, 700], 'hem'],
    [[810, 693], 'seam'],
  ]),
  { how: 'pair', count: 2 },
);

const id = (piece: Piece, index: number) => ({ pieceId: piece.id, edgeId: piece.edges[index]?.id ?? '' });

/** The edges of the two seams: front to gore, gore to back. */
export const edges = {
  front: id(front, 1),
  goreFront: id(gore, 3),
  goreBack: id(gore, 1),
  back: id(back, 3),
} as const;

export const frontSeam: Seam = {
  id: 'front-seam',
  name: 'front seam',
  one: [edges.front],
  other: [edges.goreFront],
  ease: 0,
  way: 'opposite',
};
export const sideSeam: Seam = { ...frontSeam, id: 'side-seam', name: '', one: [edges.goreBack], other: [edges.back] };

export const skirt: Garment = { ...garmentOf([front, gore, back], figure).garment, seams: [frontSeam, sideSeam] };

/** A change as noted at a fitting, for both sides unless said. */
export function pinned(pinnedId: string, what: PinnedWhat, more: Partial<PinnedChange> = {}): PinnedChange {
  return { id: pinnedId, what, side: 'both', note: '', state: { kind: 'noted' }, ...more };
}

/** The garment with a mock-up of it on which these changes were pinned. */
export function withMockup(garment: Garment, changes: readonly PinnedChange[]): Garment {
  const mockup: Mockup = {
    id: 'm1',
    name: 'First mock-up',
    made: '2026-03-09',
    version: 1,
    mark: versionMark(garment),
    note: '',
    pinned: changes,
  };
  return addMockup(garment, mockup);
}
