import { expect, it } from 'vitest';
import { addThrough, curveEdge, removeThrough, setEndRule, straighten } from '../../core/garment/curve-edits';
import type { Piece } from '../../core/garment/piece';
import { lindenPanel } from './linden';

const shapeOf = (piece: Piece, edgeId: string) => piece.edges.find(({ id }) => id === edgeId)?.shape;

it('curveEdge puts one point at the middle of a straight edge, so that the line stays where it is', () => {
  expect(shapeOf(curveEdge(lindenPanel(), 'e-waist'), 'e-waist')).toEqual({
    kind: 'curve',
    through: [{ x: expect.closeTo(88.9, 9), y: 0 }],
    leaves: 'free',
    meets: 'free',
  });
});

it('straighten forgets the points and rules of a curve', () => {
  expect(shapeOf(straighten(lindenPanel(), 'e-side'), 'e-side')).toEqual({ kind: 'straight' });
});

it('addThrough takes a point into its place along the curve and says its number', () => {
  const first = addThrough(lindenPanel(), 'e-side', { x: 300, y: 450 });
  expect(first?.index).toBe(1);
  const second = addThrough(first?.piece as Piece, 'e-side', { x: 210, y: 90 });
  expect(second?.index).toBe(0);
  expect(shapeOf(second?.piece as Piece, 'e-side')).toMatchObject({
    through: [
      { x: 210, y: 90 },
      { x: 9.5 * 25.4, y: 8 * 25.4 },
      { x: 300, y: 450 },
    ],
    leaves: 'square',
  });
});

it('addThrough makes a straight edge a curve through that point', () => {
  const added = addThrough(lindenPanel(), 'e-waist', { x: 70, y: -4 });
  expect(added?.index).toBe(0);
  expect(shapeOf(added?.piece as Piece, 'e-waist')).toMatchObject({ kind: 'curve', through: [{ x: 70, y: -4 }] });
});

it('removeThrough leaves a bow where an end is ruled, and a straight edge where none is', () => {
  const ruled = removeThrough(lindenPanel(), 'e-side', 0);
  expect(shapeOf(ruled, 'e-side')).toEqual({ kind: 'curve', through: [], leaves: 'square', meets: 'free' });
  const free = removeThrough(setEndRule(lindenPanel(), 'e-side', 'leaves', 'free'), 'e-side', 0);
  expect(shapeOf(free, 'e-side')).toEqual({ kind: 'straight' });
});

it('curve edits give the same piece back when they have nothing to do', () => {
  const piece = lindenPanel();
  expect(curveEdge(piece, 'e-side')).toBe(piece);
  expect(straighten(piece, 'e-fold')).toBe(piece);
  expect(removeThrough(piece, 'e-side', 1)).toBe(piece);
  expect(removeThrough(piece, 'e-waist', 0)).toBe(piece);
  expect(setEndRule(piece, 'e-side', 'leaves', 'square')).toBe(piece);
  expect(setEndRule(piece, 'e-waist', 'meets', 'square')).toBe(piece);
  expect(curveEdge(piece, 'collar')).toBe(piece);
  expect(addThrough(piece, 'collar', { x: 1, y: 2 })).toBeUndefined();
});
