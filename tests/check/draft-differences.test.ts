import { describe, expect, it } from 'vitest';
import { draftDifferences } from '../../core/check/draft-differences';
import { setAllowance } from '../../core/garment/edge-edits';
import { movePiece } from '../../core/garment/move-piece';
import { moveCorner } from '../../core/garment/move-point';
import { addPiece, removePiece } from '../../core/garment/piece-list';
import { withPiece } from '../../core/garment/with-piece';
import { linden } from '../garment/linden';
import { garmentOf, rectangle } from '../paper/pieces';

const before = garmentOf([rectangle(11, 17, 200, 300, { id: 'front' }), rectangle(400, 17, 70, 90, { id: 'back' })]);

describe('draftDifferences', () => {
  it('finds none between a garment and itself as read again', () => {
    expect(draftDifferences(structuredClone(linden()), linden())).toEqual({ added: [], removed: [], changed: [] });
  });

  it('names pieces that came and went', () => {
    const after = removePiece(addPiece(before, rectangle(0, 600, 30, 40, { id: 'cuff' })), 'back');
    const { added, removed, changed } = draftDifferences(before, after);
    expect([added.map(({ id }) => id), removed.map(({ id }) => id), changed]).toEqual([['cuff'], ['back'], []]);
  });

  it('names just the edges that run otherwise, with their lengths', () => {
    // The right side of 300 by 200 with its foot 80 further out: by Pythagoras.
    const after = withPiece(before, 'front', (piece) => moveCorner(piece, 'c2', { x: 291, y: 317 }));
    const [change, ...others] = draftDifferences(before, after).changed;
    expect(others).toEqual([]);
    expect(change?.edges.map(({ edge }) => edge.id)).toEqual(['e1', 'e2']);
    expect(change?.edges[0]?.before).toBeCloseTo(300, 6);
    expect(change?.edges[0]?.after).toBeCloseTo(Math.hypot(300, 80), 6);
    expect(change?.edges[1]?.after).toBeCloseTo(280, 6);
  });

  it('tells a piece that only lies elsewhere, and one with other marks, from one drawn otherwise', () => {
    const moved = withPiece(before, 'front', (piece) => movePiece(piece, { dx: 7, dy: -11 }));
    expect(draftDifferences(before, moved).changed).toMatchObject([{ moved: true, edges: [], edgesGone: 0 }]);
    const allowed = withPiece(before, 'front', (piece) => setAllowance(piece, 'e1', 15));
    expect(draftDifferences(before, allowed).changed).toMatchObject([{ moved: false, edges: [], edgesGone: 0 }]);
  });
});
