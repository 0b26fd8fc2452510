import { describe, expect, it } from 'vitest';
import { insertCorner, removeCorner } from '../../core/garment/corner-edits';
import { removePiece } from '../../core/garment/piece-list';
import { addSeam, changeSeam, removeSeam } from '../../core/garment/seam-edits';
import { withPiece } from '../../core/garment/with-piece';
import { idsInOrder, linden } from './linden';

const waistToBand = {
  id: 'seam-waist',
  name: 'waist',
  one: [{ pieceId: 'panel', edgeId: 'e-waist', times: 2 }],
  other: [{ pieceId: 'band', edgeId: 'be0' }],
  ease: 12.7,
  way: 'opposite',
} as const;

const seamed = () => addSeam(linden(), waistToBand);

it('addSeam, changeSeam and removeSeam touch that seam only', () => {
  const garment = seamed();
  expect(garment.seams?.map(({ id }) => id)).toEqual(['seam-side', 'seam-waist']);
  const eased = changeSeam(garment, 'seam-waist', (seam) => ({ ...seam, ease: 9 }));
  expect(eased.seams?.map(({ ease }) => ease)).toEqual([3.2, 9]);
  expect(removeSeam(eased, 'seam-waist').seams).toEqual(linden().seams);
});

it('what is not there is left alone', () => {
  const garment = seamed();
  expect(changeSeam(garment, 'seam-none', (seam) => ({ ...seam, ease: 1 }))).toBe(garment);
  expect(removeSeam(garment, 'seam-none')).toBe(garment);
});

describe('a seam follows its edges', () => {
  const cut = () =>
    withPiece(seamed(), 'panel', (piece) => insertCorner(piece, 'e-waist', { x: 90, y: 0 } as never, idsInOrder()));

  it('takes both halves of an edge cut in two', () => {
    expect(cut().seams?.[1]?.one).toEqual([
      { pieceId: 'panel', edgeId: 'e-waist', times: 2 },
      { pieceId: 'panel', edgeId: 'new-2', times: 2 },
    ]);
  });

  it('takes one edge again when the halves are joined', () => {
    const joined = withPiece(cut(), 'panel', (piece) => removeCorner(piece, 'new-1'));
    expect(joined.seams).toEqual(seamed().seams);
  });

  it('stays the very same when a point moves', () => {
    const garment = seamed();
    const moved = withPiece(garment, 'panel', (piece) => ({ ...piece, remarks: 'moved' }));
    expect(moved.seams).toBe(garment.seams);
  });

  it('goes when one side of it has lost its piece', () => {
    expect(removePiece(seamed(), 'band').seams?.map(({ id }) => id)).toEqual(['seam-side']);
  });
});
