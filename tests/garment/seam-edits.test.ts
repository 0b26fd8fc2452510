import { describe, expect, it } from 'vitest';
import { insertCorner, removeCorner } from '../../core/garment/corner-edits';
import { readStoredGarment } from '../../core/garment/migrate';
import { removePiece } from '../../core/garment/piece-list';
import { type Seam, turnedSeam } from '../../core/garment/seam';
import { addSeam, changeSeam, removeSeam, withLap } from '../../core/garment/seam-edits';
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
  const cut = () => withPiece(seamed(), 'panel', (piece) => insertCorner(piece, 'e-waist', 90, idsInOrder()));

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

describe('a lap', () => {
  const plain: Seam = {
    id: 's',
    name: '',
    one: [{ pieceId: 'a', edgeId: 'a0' }],
    other: [{ pieceId: 'b', edgeId: 'b0' }],
    ease: -25,
    way: 'opposite',
  };
  const lap = { side: 'other', length: 25, at: 'end' } as const;

  it('takes the place of what was written as ease of the side that laps over, and of no other', () => {
    expect(withLap(plain, lap, 'other')).toEqual({ ...plain, ease: 0, lap });
    expect(withLap({ ...plain, ease: 9 }, lap, 'other')).toEqual({ ...plain, ease: 9, lap });
    expect(withLap({ ...plain, ease: 9, lap }, undefined, 'other')).toEqual({ ...plain, ease: 9 });
  });

  it('stays with its side when the sides are named the other way round', () => {
    const turned = turnedSeam({ ...plain, ease: 9, lap });
    expect(turned).toEqual({ ...plain, one: plain.other, other: plain.one, ease: -9, lap: { ...lap, side: 'one' } });
    expect(turnedSeam(turned)).toEqual({ ...plain, ease: 9, lap });
    expect(turnedSeam(turnedSeam(plain))).toEqual(plain);
  });

  it('and where a piece is measured from are stored, and read again as they were', () => {
    const garment = linden();
    const [ring] = garment.rings;
    const edgeId = garment.pieces[0]?.edges[0]?.id ?? '';
    const members = ring?.members.map((member) => ({ ...member, from: { edgeId, depth: -40 } })) ?? [];
    const more = {
      ...garment,
      seams: garment.seams?.map((seam) => ({ ...seam, lap })) ?? [],
      rings: ring ? [{ ...ring, members }] : [],
    };
    expect(readStoredGarment(structuredClone(more))).toEqual({ kind: 'garment', garment: more });
  });
});
