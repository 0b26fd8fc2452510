import { describe, expect, it } from 'vitest';
import { differencesOf } from '../../core/compare/differences';
import { rectanglePiece } from '../../core/garment/new-piece';
import type { Piece } from '../../core/garment/piece';
import { IDENTITY, translation } from '../../core/geometry/affine';
import { edgeLength } from '../../core/seams/edge-length';
import { takeIn } from '../../core/shaping/take-in';
import { idsInOrder, lindenPanel } from '../garment/linden';

const panel = lindenPanel();
const [, side] = panel.edges;

/** The panel with its side taken in by 6.35 mm in the middle. */
function takenIn(): Piece {
  const piece = takeIn(panel, side?.id ?? '', [{ along: (edgeLength(panel, side?.id ?? '') ?? 0) / 2, by: 6.35 }]);
  if ('kind' in piece) throw new Error(piece.why);
  return piece;
}

describe('differencesOf', () => {
  it('finds none between a piece and itself', () => {
    const { gap, edges, areas } = differencesOf(panel, panel, IDENTITY, [180]);
    expect(gap.width).toBeLessThan(1e-9);
    expect(edges.every(({ one, other }) => one?.length === other?.length)).toBe(true);
    expect(areas[0]).toBe(areas[1]);
  });

  it('finds the widest gap where the side was pinned, within 0.05 mm', () => {
    const { gap } = differencesOf(panel, takenIn(), IDENTITY, []);
    expect(gap.width).toBeCloseTo(6.35, 1);
  });

  it('is the same from both sides', () => {
    const [there, back] = [
      differencesOf(panel, takenIn(), IDENTITY, []).gap,
      differencesOf(takenIn(), panel, IDENTITY, []).gap,
    ];
    expect(there.width).toBeCloseTo(back.width, 2);
  });

  it('gives lengths of edges, widths at levels and areas of two rectangles exactly', () => {
    const newId = idsInOrder();
    const cut = (name: string, across: number, down: number) =>
      rectanglePiece({ x: 0, y: 0 }, { across, down }, { newId, name }) as Piece;
    const waist = (piece: Piece) => ({
      ...piece,
      edges: piece.edges.map((edge, i) => (i === 0 ? { ...edge, role: 'waist' as const, name: 'waist' } : edge)),
    });
    const [narrow, wide] = [waist(cut('narrow', 170, 410)), waist(cut('wide', 190, 455))];
    const { gap, edges, levels, areas } = differencesOf(narrow, wide, translation({ dx: 0, dy: -12 }), [100]);
    expect(gap.width).toBeCloseTo(Math.hypot(20, 33), 6);
    expect(edges.map(({ one, other }) => [one?.length, other?.length])).toEqual([
      [170, 190],
      [410, 455],
      [170, 190],
      [410, 455],
    ]);
    expect(levels).toEqual([{ depth: 100, one: 170, other: 190 }]);
    expect(areas).toEqual([170 * 410, 190 * 455]);
  });

  it('shows an edge that only one of them has', () => {
    const three = {
      ...panel,
      edges: panel.edges.slice(0, 3),
      corners: panel.corners.slice(0, 3),
      darts: [],
      notches: [],
    };
    const { edges } = differencesOf(panel, three, IDENTITY, []);
    expect(edges.filter(({ other }) => other === undefined)).toHaveLength(1);
  });
});
