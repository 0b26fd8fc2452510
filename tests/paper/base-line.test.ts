import { describe, expect, it } from 'vitest';
import { baseLineOf, offsetFrom } from '../../core/paper/base-line';
import { squareProof } from '../../core/paper/square-proof';
import { squaresSheet } from '../../core/paper/squares-sheet';
import { inches } from '../../core/units/inch';
import { rectangle, straightPiece } from './pieces';

/** 7 in at the top, 13 in at the bottom, 29 in long, the fold on the left; turned by `turn`. */
function gore(turn = 0) {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const corners = [
    [0, 0],
    [7, 0],
    [13, 28],
    [0, 29],
  ].map(([x = 0, y = 0]) => [inches(x * cos - y * sin) + 41, inches(x * sin + y * cos) - 17] as const);
  const piece = straightPiece(corners);
  return { ...piece, edges: piece.edges.map((edge, i) => (i === 3 ? { ...edge, role: 'fold' as const } : edge)) };
}

const inInches = (mm: number) => Math.round((mm / 25.4) * 1000) / 1000 + 0;

describe('baseLineOf', () => {
  it('is the fold, counted from its earlier corner, and says on which side the piece lies', () => {
    // Seen from A down to D the piece lies to the left, with y down.
    expect(baseLineOf(gore())).toMatchObject({ from: 'A', to: 'D', side: 'left' });
    expect(inInches(baseLineOf(gore())?.length ?? 0)).toBe(29);
  });

  it('is the longest straight edge where nothing is folded, and any edge she chooses', () => {
    const piece = rectangle(3, 5, inches(11), inches(7));
    expect(baseLineOf(piece)).toMatchObject({ from: 'A', to: 'B', side: 'right' });
    expect(baseLineOf(piece, 'e1')).toMatchObject({ from: 'B', to: 'C', side: 'right' });
    expect(baseLineOf(piece, 'no such edge')).toMatchObject({ from: 'A', to: 'B' });
  });

  it('measures every point along and out, however the piece lies on the table', () => {
    for (const turn of [0, 0.7, 2.9, -1.3]) {
      const piece = gore(turn);
      const base = baseLineOf(piece);
      if (!base) throw new Error('no base line');
      const offsets = piece.corners.map(({ at }) => offsetFrom(base, at));
      expect(offsets.map(({ along, out }) => [inInches(along), inInches(out)])).toEqual([
        [0, 0],
        [0, 7],
        [28, 13],
        [29, 0],
      ]);
    }
  });

  it('goes the other way for what lies beyond its start', () => {
    const piece = straightPiece([
      [0, 0],
      [40, 0],
      [70, 200],
      [-30, 200],
    ]);
    const base = baseLineOf(piece, 'e0');
    expect(base && offsetFrom(base, { x: -30, y: 200 })).toEqual({ along: -30, out: 200 });
  });
});

describe('squaresSheet', () => {
  it('tells each point both ways, each rounded once', () => {
    const { points, base } = squaresSheet(gore(0.7), { shownIn: 'in', step: 'eighth', most: { across: 40, down: 40 } });
    expect(base.from + base.to).toBe('AD');
    expect(points.map(({ name, off }) => [name, inInches(off.along), inInches(off.out)])).toEqual([
      ['A', 0, 0],
      ['B', 0, 7],
      ['C', 28, 13],
      ['D', 29, 0],
    ]);
  });

  it('takes squares as large as she chose, and larger where those could not be told apart', () => {
    const piece = rectangle(0, 0, inches(50), inches(70));
    const options = { shownIn: 'in', step: 'eighth', most: { across: 40, down: 30 } } as const;
    const square = (asked: number) =>
      inInches(squaresSheet(piece, { ...options, choice: { square: inches(asked) } }).square);
    expect([1, 3, 6, 12].map(square)).toEqual([3, 3, 6, 12]);
  });
});

describe('squareProof', () => {
  it('is the largest 3-4-5 inside, its longer leg along the longer side', () => {
    const { corner, frame } = squareProof({ across: inches(14), down: inches(28) }, 'in');
    expect([corner.across, corner.down, corner.apart].map(inInches)).toEqual([12, 16, 20]);
    expect([frame.across, frame.down].map(inInches)).toEqual([14, 28]);
    // The diagonal of 14 by 28 is 14 times the root of 5.
    expect(frame.diagonal / inches(14)).toBeCloseTo(Math.sqrt(5), 12);
    const lying = squareProof({ across: 900, down: 600 }, 'cm').corner;
    expect([lying.across, lying.down, lying.apart]).toEqual([800, 600, 1000]);
  });

  it('is a right angle at any size, also of a piece smaller than the smallest', () => {
    for (const shownIn of ['in', 'cm'] as const) {
      for (const [across, down] of [
        [5, 9],
        [130, 90],
        [411, 387],
        [2500, 1800],
      ] as const) {
        const { corner } = squareProof({ across, down }, shownIn);
        expect(Math.hypot(corner.across, corner.down)).toBeCloseTo(corner.apart, 9);
      }
    }
  });
});
