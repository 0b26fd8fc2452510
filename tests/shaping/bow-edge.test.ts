import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import { pathLength } from '../../core/geometry/path';
import { bowToLength } from '../../core/shaping/bow-edge';
import { traced } from './traced';

const piece = traced('arch', [
  [
    [0, 0],
    'waist',
    [
      [60, 25],
      [150, 40],
      [240, 25],
    ],
  ],
  [[300, 0], 'seam'],
  [[300, 400], 'hem'],
  [[0, 400], 'fold'],
]);
const waist = piece.edges[0]?.id ?? '';
const lengthOf = (one: typeof piece) => pathLength(outlineOf(one).edges[0] ?? []);

describe('bowToLength(piece, edge, length)', () => {
  it('gives the length by bowing all points by one share; the corners stay', () => {
    for (const length of [303, 306, 340]) {
      const made = bowToLength(piece, waist, length);
      expect(Math.abs(lengthOf(made) - length)).toBeLessThan(1e-3);
      expect(made.corners).toEqual(piece.corners);
      const shape = made.edges[0]?.shape;
      const [one, two] = shape?.kind === 'curve' ? shape.through : [];
      expect(one?.x).toBeCloseTo(60, 9);
      expect((one?.y ?? 0) / (two?.y ?? 1)).toBeCloseTo(25 / 40, 9);
    }
  });

  it('leaves a straight edge, and a length shorter than from corner to corner', () => {
    expect(bowToLength(piece, piece.edges[1]?.id ?? '', 500)).toBe(piece);
    expect(bowToLength(piece, waist, 290)).toBe(piece);
  });
});
