import { expect, it } from 'vitest';
import { whatChanges } from '../../core/check/what-changes';
import { addPiece, removePiece } from '../../core/garment/piece-list';
import { withPiece } from '../../core/garment/with-piece';
import { takeIn } from '../../core/shaping/take-in';
import { linden } from '../garment/linden';

it('whatChanges finds nothing between a garment and itself', () => {
  expect(whatChanges(linden(), linden()).edges).toEqual([]);
  expect(whatChanges(linden(), linden()).girths).toEqual([]);
});

it('whatChanges gives the edge that changed with both lengths, and no other', () => {
  const before = linden();
  const after = withPiece(before, 'panel', (piece) => {
    const taken = takeIn(piece, 'e-side', [{ along: 260, by: 25.4 }]);
    return 'kind' in taken ? piece : taken;
  });
  const { edges, changed, girths } = whatChanges(before, after);
  expect(changed.map(({ id }) => id)).toEqual(['panel']);
  expect(edges.map(({ edge }) => edge.id)).toEqual(['e-side']);
  expect(edges[0]?.after).not.toBeCloseTo(edges[0]?.before ?? 0, 2);
  expect(girths.every((girth) => girth.after < girth.before)).toBe(true);
});

it('whatChanges names pieces that come and go', () => {
  const before = linden();
  const [panel] = before.pieces;
  if (!panel) throw new Error('the sample has no panel');
  const after = addPiece(removePiece(before, 'band'), { ...panel, id: 'other' });
  expect(whatChanges(before, after).added.map(({ id }) => id)).toEqual(['other']);
  expect(whatChanges(before, after).removed.map(({ id }) => id)).toEqual(['band']);
});
