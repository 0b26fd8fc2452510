import { expect, it } from 'vitest';
import { pieceFromTrace, rectanglePiece } from '../../core/garment/new-piece';
import { idsInOrder } from './linden';

const options = () => ({ newId: idsInOrder(), name: 'Gore' });
const corner = (x: number, y: number, ...through: { x: number; y: number }[]) => ({ at: { x, y }, through });

it('pieceFromTrace makes a ring of corners and edges of which nothing more is said', () => {
  const piece = pieceFromTrace([corner(0, 0), corner(90, 5, { x: 120, y: 200 }), corner(160, 700)], {
    ...options(),
    diagramId: 'plate-14',
  });
  expect(piece?.corners.map(({ at }) => at)).toEqual([
    { x: 0, y: 0 },
    { x: 90, y: 5 },
    { x: 160, y: 700 },
  ]);
  expect(piece?.edges.map(({ shape }) => shape.kind)).toEqual(['straight', 'curve', 'straight']);
  expect(piece).toMatchObject({ drawnAs: 'not-known', cut: { how: 'single', count: 1 }, diagramId: 'plate-14' });
  expect(new Set([...(piece?.corners ?? []), ...(piece?.edges ?? [])].map(({ id }) => id)).size).toBe(6);
});

it('pieceFromTrace leaves out a corner set twice on one place', () => {
  const ring = [corner(0, 0), corner(90, 5), corner(90, 5), corner(160, 700), corner(0, 0)];
  expect(
    pieceFromTrace(ring, options())
      ?.corners.map(({ at }) => at.x)
      .sort((a, b) => a - b),
  ).toEqual([0, 90, 160]);
});

it('pieceFromTrace makes a piece of two corners when an edge between them is curved', () => {
  expect(pieceFromTrace([corner(0, 0, { x: 30, y: -20 }), corner(80, 7)], options())?.edges).toHaveLength(2);
});

it.each([
  ['nothing', []],
  ['one corner', [corner(3, 4)]],
  ['two corners and no curve', [corner(0, 0), corner(80, 7)]],
  ['three corners on one place', [corner(3, 4), corner(3, 4), corner(3, 4)]],
])('pieceFromTrace makes no piece of %s', (_, ring) => {
  expect(pieceFromTrace(ring, options())).toBeUndefined();
});

it('rectanglePiece is as wide and as deep as its two numbers', () => {
  const piece = rectanglePiece({ x: 12, y: -7 }, { across: 736.6, down: 38.1 }, { ...options(), name: 'Band' });
  expect(piece?.corners.map(({ at }) => at)).toEqual([
    { x: 12, y: -7 },
    { x: 748.6, y: -7 },
    { x: 748.6, y: 31.1 },
    { x: 12, y: 31.1 },
  ]);
});

it.each([
  [0, 40],
  [700, -1],
  [Number.NaN, 40],
])('rectanglePiece makes no piece of %s by %s', (across, down) => {
  expect(rectanglePiece({ x: 0, y: 0 }, { across, down }, options())).toBeUndefined();
});
