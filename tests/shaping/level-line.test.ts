import { describe, expect, it } from 'vitest';
import { circleSizes, sectorPieces } from '../../core/blocks/sector';
import type { Piece } from '../../core/garment/piece';
import { levelLine } from '../../core/shaping/level-line';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { traced } from './traced';

/** A trapezium 210 wide at its waist and 330 at its hem, 600 long; its left side upright. */
const trapezium = traced('trapezium', [
  [[0, 0], 'waist'],
  [[210, 0], 'seam'],
  [[330, 600], 'hem'],
  [[0, 600], 'seam'],
]);

const lengthAt = (piece: Piece, depth: number) => levelLine(piece, depth)?.length;

describe('levelLine', () => {
  it('is the width straight across below a straight waist', () => {
    expect(lengthAt(trapezium, 0)).toBe(210);
    expect(lengthAt(trapezium, 200)).toBeCloseTo(250, 4);
    expect(lengthAt(trapezium, 450)).toBeCloseTo(300, 4);
  });

  it('ends where the piece ends', () => {
    expect(lengthAt(trapezium, 599)).toBeCloseTo(210 + (120 * 599) / 600, 3);
    expect(levelLine(trapezium, 601)).toBeUndefined();
    const none = { ...trapezium, edges: trapezium.edges.map((edge) => ({ ...edge, role: 'seam' as const })) };
    expect(levelLine(none, 100)).toBeUndefined();
  });

  it('lies on the hem when the hem is its parallel', () => {
    expect(lengthAt(trapezium, 600)).toBeCloseTo(330, 3);
  });

  it.each([
    // A circular skirt with a waist of 28 in: its girth 8 in down, computed as W + 2 π f t.
    [1, 78.27],
    [0.75, 65.7],
    [0.5, 53.13],
    [0.25, 40.57],
  ])('follows the curve of a waist: %f of a circle', (share, girth) => {
    const sizes = { ...circleSizes({ waist: inches(28), length: inches(26), share }), sections: 2 };
    const pieces = sectorPieces(sizes, { newId: () => 'x', name: 'Skirt', topRole: 'waist' });
    if (!Array.isArray(pieces)) throw new Error(pieces.why);
    const quarter = lengthAt(pieces[0] as Piece, inches(8)) ?? 0;
    expect((4 * quarter) / MM_PER_INCH).toBeCloseTo(girth, 2);
  });

  it('leaves out what a dart takes up there, and no more below its point', () => {
    const waistId = trapezium.edges[0]?.id ?? '';
    const darted: Piece = {
      ...trapezium,
      darts: [{ id: 'd', edgeId: waistId, along: 90, width: 24, point: { x: 90, y: 120 } }],
    };
    expect(lengthAt(darted, 0)).toBe(210 - 24);
    expect(lengthAt(darted, 30)).toBeCloseTo(216 - 18, 4);
    expect(lengthAt(darted, 120)).toBeCloseTo(234, 4);
    expect(lengthAt(darted, 300)).toBeCloseTo(270, 4);
  });

  it('counts edges that follow one another as one waist, wherever the ring of edges begins', () => {
    const inTwo = traced('two', [
      [[0, 0], 'waist'],
      [[80, 0], 'waist'],
      [[210, 0], 'seam'],
      [[330, 600], 'hem'],
      [[0, 600], 'seam'],
    ]);
    const begunBetween = traced('between', [
      [[80, 0], 'waist'],
      [[210, 0], 'seam'],
      [[330, 600], 'hem'],
      [[0, 600], 'seam'],
      [[0, 0], 'waist'],
    ]);
    for (const piece of [inTwo, begunBetween]) {
      expect(lengthAt(piece, 0)).toBeCloseTo(210, 9);
      expect(lengthAt(piece, 200)).toBeCloseTo(250, 4);
    }
  });

  it('leaves out a slit that reaches below the level', () => {
    const slit = traced('slit', [
      [[0, 0], 'waist'],
      [[210, 0], 'seam'],
      [[330, 600], 'hem'],
      [[0, 600], 'seam'],
      [[0, 215], 'seam'],
      [[70, 200], 'seam'],
      [[0, 185], 'seam'],
    ]);
    expect(lengthAt(slit, 200)).toBeCloseTo(250 - 70, 3);
  });

  it('is remembered for the same piece and depth', () => {
    expect(levelLine(trapezium, 321)).toBe(levelLine(trapezium, 321));
  });
});
