import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sectorPieces } from '../../core/blocks/sector';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { pathLength } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { lengthenAcross, lengthenAtHem } from '../../core/shaping/lengthen';
import { traced } from './traced';

const plain = traced('gore', [
  [[0, 0], 'waist', [[110, 8]]],
  [[220, 0], 'seam', [[262, 160]]],
  [[330, 660], 'hem', [[170, 672]]],
  [[0, 660], 'fold'],
]);
const piece: Piece = {
  ...plain,
  darts: [{ id: 'd', edgeId: plain.edges[0]?.id ?? '', along: 120, width: 20, point: { x: 120, y: 100 } }],
  notches: [
    { id: 'n', edgeId: plain.edges[1]?.id ?? '', along: 150, count: 1 },
    { id: 'm', edgeId: plain.edges[1]?.id ?? '', along: 600, count: 2 },
    { id: 'o', edgeId: plain.edges[3]?.id ?? '', along: 100, count: 1 },
  ],
  labels: [{ id: 'l', at: { x: 60, y: 600 }, text: 'Front' }],
  grain: { from: { x: 40, y: 60 }, to: { x: 40, y: 620 } },
};
const across = { from: { x: -10, y: 320 }, to: { x: 400, y: 320 } };

function pieceOf(made: Piece | { readonly kind: string; readonly why: string }): Piece {
  if ('why' in made) throw new Error(made.why);
  return made;
}

describe('lengthenAcross', () => {
  it('gives the piece back when shortened by what it was lengthened', () => {
    const line = fc.record({
      from: fc.record({
        x: fc.double({ min: -30, max: -5, noNaN: true }),
        y: fc.double({ min: 250, max: 450, noNaN: true }),
      }),
      to: fc.record({
        x: fc.double({ min: 350, max: 420, noNaN: true }),
        y: fc.double({ min: 250, max: 450, noNaN: true }),
      }),
    });
    fc.assert(
      fc.property(line, fc.double({ min: 0.5, max: 300, noNaN: true }), (at, by) => {
        const back = pieceOf(lengthenAcross(pieceOf(lengthenAcross(piece, at, by)), at, -by));
        for (const [i, corner] of back.corners.entries()) {
          expect(distance(corner.at, piece.corners[i]?.at ?? { x: 9, y: 9 })).toBeLessThan(1e-9);
        }
        for (const [i, notch] of back.notches.entries()) {
          expect(Math.abs(notch.along - (piece.notches[i]?.along ?? 0))).toBeLessThan(1e-4);
        }
        expect(distance(back.grain?.to ?? { x: 0, y: 0 }, { x: 40, y: 620 })).toBeLessThan(1e-9);
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  it('moves what lies below by the amount and leaves what lies above', () => {
    const made = pieceOf(lengthenAcross(piece, across, 50));
    expect(made.corners.map(({ at }) => at.y)).toEqual([0, 0, 710, 710]);
    expect(made.labels[0]?.at).toEqual({ x: 60, y: 650 });
    expect(made.darts[0]?.point).toEqual({ x: 120, y: 100 });
    const fold = (of: Piece) => pathLength(outlineOf(of).edges[3] ?? []);
    expect(fold(made)).toBeCloseTo(fold(piece) + 50, 9);
    expect(made.notches.map(({ along }) => Math.round(along))[0]).toBe(150);
    // The fold runs upwards: a notch near the hem keeps its distance from the hem.
    expect(made.notches[2]?.along).toBe(100);
  });

  it('will not fold away a corner or a point, nor along no line', () => {
    expect(lengthenAcross(piece, across, -345)).toEqual({ kind: 'not-lengthened', why: 'in-the-way' });
    expect(lengthenAcross(piece, { from: across.to, to: across.to }, 5)).toEqual({
      kind: 'not-lengthened',
      why: 'no-line',
    });
  });
});

describe('lengthenAtHem', () => {
  it('lengthens a circular piece at its lower edge: the hem of the longer one, evenly all along', () => {
    const flounce = (depth: number) => {
      // One cone: 1829 round at the top, a millimetre wider in 0.3 further down.
      const made = sectorPieces(
        { top: 1829, bottom: 1829 + depth * 3.3, depth, sections: 3 },
        { newId: () => 'x', name: 'Flounce', topRole: 'seam' },
      );
      if (!Array.isArray(made)) throw new Error(made.why);
      return made[0] as Piece;
    };
    const made = pieceOf(lengthenAtHem(flounce(305), 45));
    const [, side, hem] = outlineOf(made).edges;
    const [, , wanted] = outlineOf(flounce(350)).edges;
    expect(pathLength(side ?? [])).toBeCloseTo(350, 6);
    expect(Math.abs(pathLength(hem ?? []) - pathLength(wanted ?? []))).toBeLessThan(0.2);
  });

  it('gives the piece back, near enough, when shortened again', () => {
    const back = pieceOf(lengthenAtHem(pieceOf(lengthenAtHem(piece, 40)), -40));
    for (const [i, corner] of back.corners.entries()) {
      expect(distance(corner.at, piece.corners[i]?.at ?? { x: 9, y: 9 })).toBeLessThan(1);
    }
    expect(back.notches[2]?.along).toBeCloseTo(100, 9);
  });

  it('needs a hem', () => {
    const none = { ...piece, edges: piece.edges.map((edge) => ({ ...edge, role: 'seam' as const })) };
    expect(lengthenAtHem(none, 20)).toEqual({ kind: 'not-lengthened', why: 'no-hem' });
  });
});
