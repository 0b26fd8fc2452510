import { describe, expect, it } from 'vitest';
import type { Piece } from '../../core/garment/piece';
import { carryMarks, scaleMarks } from '../../core/shaping/carry-marks';
import { traced } from './traced';

const plain = traced('p', [
  [[0, 0], 'waist'],
  [[200, 10], 'seam'],
  [[210, 600], 'hem'],
]);
const [waist, side] = plain.edges.map(({ id }) => id);
const piece: Piece = {
  ...plain,
  darts: [{ id: 'd', edgeId: waist ?? '', along: 90, width: 20, point: { x: 90, y: 100 } }],
  notches: [
    { id: 'n', edgeId: waist ?? '', along: 30, count: 1 },
    { id: 'm', edgeId: side ?? '', along: 40, count: 3 },
  ],
};

describe('carryMarks', () => {
  it('moves the marks of the one edge, not the point of a dart', () => {
    const carried = carryMarks(piece, waist ?? '', (along) => along + 7);
    expect(carried.darts[0]).toEqual({ ...piece.darts[0], along: 97 });
    expect(carried.notches.map(({ along }) => along)).toEqual([37, 40]);
  });

  it('is the same piece when nothing moves', () => {
    expect(carryMarks(piece, waist ?? '', (along) => along)).toBe(piece);
    expect(carryMarks(piece, 'none', (along) => along + 1)).toBe(piece);
  });
});

describe('scaleMarks', () => {
  it('keeps the proportion', () => {
    expect(scaleMarks(piece, waist ?? '', 200, 220).darts[0]?.along).toBeCloseTo(99, 9);
    expect(scaleMarks(piece, waist ?? '', 0, 220)).toBe(piece);
  });
});
