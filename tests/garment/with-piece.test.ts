import { describe, expect, it } from 'vitest';
import {
  edgeIndex,
  pieceOf,
  withCorner,
  withEdge,
  withOne,
  withoutOne,
  withPiece,
} from '../../core/garment/with-piece';
import { linden, lindenPanel } from './linden';

describe('withPiece, withEdge and withCorner', () => {
  it('change the one asked for and keep every other object', () => {
    const garment = linden();
    const changed = withPiece(garment, 'panel', (piece) => ({ ...piece, name: 'Gore' }));
    expect(changed.pieces.map(({ name }) => name)).toEqual([
      'Gore',
      ...garment.pieces.slice(1).map(({ name }) => name),
    ]);
    expect(changed.pieces[1]).toBe(garment.pieces[1]);
    expect(changed.rings).toBe(garment.rings);
    const panel = lindenPanel();
    const hem = withEdge(panel, 'e-hem', (edge) => ({ ...edge, allowance: 44 }));
    expect([hem.edges[2]?.allowance, hem.edges[1] === panel.edges[1]]).toEqual([44, true]);
    const corner = withCorner(panel, 'c-side-hem', (each) => ({ ...each, at: { x: 371, y: 690 } }));
    expect([corner.corners[2]?.at, corner.edges === panel.edges]).toEqual([{ x: 371, y: 690 }, true]);
  });

  it('give the same object back when nothing changes or nothing has that id', () => {
    const garment = linden();
    expect(withPiece(garment, 'panel', (piece) => piece)).toBe(garment);
    expect(withPiece(garment, 'sleeve', (piece) => ({ ...piece, name: 'x' }))).toBe(garment);
  });
});

it('withOne and withoutOne keep the list when there is no such one', () => {
  const list = [
    { id: 'a', n: 3 },
    { id: 'b', n: 5 },
  ];
  expect(withOne(list, 'c', (item) => ({ ...item, n: 9 }))).toBe(list);
  expect(withoutOne(list, 'c')).toBe(list);
  expect(withoutOne(list, 'a')).toEqual([{ id: 'b', n: 5 }]);
});

it('pieceOf and edgeIndex find by id', () => {
  const garment = linden();
  expect(pieceOf(garment, 'panel')).toBe(garment.pieces[0]);
  expect(pieceOf(garment, 'sleeve')).toBeUndefined();
  expect([edgeIndex(lindenPanel(), 'e-hem'), edgeIndex(lindenPanel(), 'e-collar')]).toEqual([2, -1]);
});
