import { expect, it } from 'vitest';
import { moveCorner } from '../../core/garment/move-point';
import type { Piece } from '../../core/garment/piece';
import { addPiece, copyPiece, removePiece } from '../../core/garment/piece-list';
import { readGarment } from '../../core/garment/schema';
import { pieceOf, withPiece } from '../../core/garment/with-piece';
import { idsInOrder, linden, lindenPanel } from './linden';

it('removePiece takes a piece out of its rings too, and leaves the others the same objects', () => {
  const garment = linden();
  const after = removePiece(garment, 'panel');
  expect(after.pieces).toEqual([garment.pieces[1]]);
  expect(after.pieces[0]).toBe(garment.pieces[1]);
  expect(after.rings[0]?.members).toEqual([{ pieceId: 'band', times: 1 }]);
  expect(readGarment(after).kind).toBe('garment');
  expect(after.diagrams).toBe(garment.diagrams);
});

it('removePiece of no piece gives the same garment back', () => {
  const garment = linden();
  expect(removePiece(garment, 'sleeve')).toBe(garment);
});

it('copyPiece lays a copy beside the piece, no part of which shares an id with it', () => {
  const garment = linden();
  const after = copyPiece(garment, 'panel', { newId: idsInOrder(), name: 'Panel 2', across: 400 });
  const copy = after.pieces[2] as Piece;
  expect(copy).toMatchObject({ name: 'Panel 2', diagramId: 'plate-14' });
  expect(copy.corners[2]?.at).toEqual({ x: 14.5 * 25.4 + 400, y: 27 * 25.4 });
  expect(copy.notches[0]?.edgeId).toBe(copy.edges[1]?.id);
  expect(copy.darts[0]?.edgeId).toBe(copy.edges[0]?.id);
  const ids = (piece: Piece) =>
    [piece, ...piece.corners, ...piece.edges, ...piece.darts, ...piece.notches, ...piece.labels].map(({ id }) => id);
  expect(new Set([...ids(copy), ...ids(lindenPanel())]).size).toBe(ids(copy).length * 2);
  expect(readGarment(after).kind).toBe('garment');
  expect(copyPiece(garment, 'sleeve', { newId: idsInOrder(), name: 'x', across: 1 })).toBe(garment);
});

it('withPiece changes one piece and keeps every other part of the garment the same object', () => {
  const garment = linden();
  const after = withPiece(garment, 'band', (piece) => moveCorner(piece, 'b0', { x: 599, y: 3 }));
  expect(pieceOf(after, 'band')?.corners[0]?.at).toEqual({ x: 599, y: 3 });
  expect(after.pieces[0]).toBe(garment.pieces[0]);
  expect([after.rings, after.wearer, after.diagrams]).toEqual([garment.rings, garment.wearer, garment.diagrams]);
  expect(after.wearer).toBe(garment.wearer);
  expect(withPiece(garment, 'band', (piece) => piece)).toBe(garment);
});

it('addPiece puts a piece last', () => {
  const piece = { ...lindenPanel(), id: 'panel-back' };
  expect(addPiece(linden(), piece).pieces.at(-1)).toBe(piece);
});
