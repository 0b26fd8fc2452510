import { expect, it } from 'vitest';
import { moveCorner, moveThrough } from '../../core/garment/move-point';
import { lindenPanel } from './linden';

it('moveCorner moves that corner only, and every other part stays the same object', () => {
  const piece = lindenPanel();
  const after = moveCorner(piece, 'c-side-hem', { x: 377, y: 690 });
  expect(after.corners[2]).toEqual({ id: 'c-side-hem', at: { x: 377, y: 690 } });
  expect(after.corners[1]).toBe(piece.corners[1]);
  expect(after.edges).toBe(piece.edges);
});

it('moveThrough moves one point of a curve', () => {
  const after = moveThrough(lindenPanel(), 'e-side', 0, { x: 250, y: 199 });
  expect(after.edges[1]?.shape).toMatchObject({ kind: 'curve', through: [{ x: 250, y: 199 }], leaves: 'square' });
});

it('moving to the same place, or what is not there, gives the same piece back', () => {
  const piece = lindenPanel();
  expect(moveCorner(piece, 'c-fold-hem', { x: 0, y: 28 * 25.4 })).toBe(piece);
  expect(moveCorner(piece, 'c-neck', { x: 3, y: 9 })).toBe(piece);
  expect(moveThrough(piece, 'e-side', 1, { x: 3, y: 9 })).toBe(piece);
  expect(moveThrough(piece, 'e-waist', 0, { x: 3, y: 9 })).toBe(piece);
});
