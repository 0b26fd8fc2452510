import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { pathLength } from '../../core/geometry/path';
import { pullEdgeToLength } from '../../core/shaping/stated-figure';
import { traced } from './traced';

const piece = traced('p', [
  [[10, 20], 'waist'],
  [
    [230, 35],
    'seam',
    [
      [262, 150],
      [290, 400],
    ],
  ],
  [[330, 640], 'hem'],
  [[0, 650], 'seam'],
]);

const lengthOf = (of: Piece, index: number) => pathLength(outlineOf(of).edges[index] ?? []);
const idOf = (index: number) => piece.edges[index]?.id ?? '';

describe('pullEdgeToLength', () => {
  it('makes a straight edge exactly as long, its start where it was and its end along the same line', () => {
    const pulled = pullEdgeToLength(piece, idOf(0), 254);
    expect(lengthOf(pulled, 0)).toBeCloseTo(254, 9);
    expect(pulled.corners[0]?.at).toEqual({ x: 10, y: 20 });
    const end = pulled.corners[1]?.at ?? { x: 0, y: 0 };
    expect((end.y - 20) / (end.x - 10)).toBeCloseTo(15 / 220, 9);
  });

  it('makes a curve as long within a thousandth of a millimetre', () => {
    fc.assert(
      fc.property(fc.double({ min: 400, max: 900, noNaN: true }), (length) => {
        const pulled = pullEdgeToLength(piece, idOf(1), length);
        expect(Math.abs(lengthOf(pulled, 1) - length)).toBeLessThanOrEqual(0.001);
        expect(pulled.corners[1]?.at).toEqual({ x: 230, y: 35 });
        expect(pulled.corners[0]).toBe(piece.corners[0]);
        expect(pulled.corners[3]).toBe(piece.corners[3]);
      }),
      { seed: 7, numRuns: 40 },
    );
  });

  it('leaves the piece alone for no edge and no length', () => {
    expect(pullEdgeToLength(piece, 'none', 300)).toBe(piece);
    expect(pullEdgeToLength(piece, idOf(0), 0)).toBe(piece);
    expect(pullEdgeToLength(piece, idOf(0), lengthOf(piece, 0))).toBe(piece);
  });

  it('moves the start instead of an end that stands on the fold, and keeps the fold upright', () => {
    const onFold = traced('f', [
      [[0, 0], 'fold'],
      [[0, 600], 'hem'],
      [[-300, 600], 'seam'],
      [[-220, 0], 'waist'],
    ]);
    const pulled = pullEdgeToLength(onFold, onFold.edges[3]?.id ?? '', 200);
    expect(pulled.corners[0]).toBe(onFold.corners[0]);
    expect(pulled.corners[3]?.at.x).toBeCloseTo(-200, 9);
  });

  it('keeps darts and notches in proportion on the edge it pulls', () => {
    const marked: Piece = { ...piece, notches: [{ id: 'n', edgeId: idOf(0), along: 55, count: 1 }] };
    const before = lengthOf(marked, 0);
    expect(pullEdgeToLength(marked, idOf(0), 2 * before).notches[0]?.along).toBeCloseTo(110, 9);
  });
});
