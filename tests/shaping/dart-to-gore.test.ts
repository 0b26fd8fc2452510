import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { pathAtLength, pathBounds, pathLength, signedArea } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { dartToGore, type GoreSeam, type GoreSeamWish } from '../../core/shaping/dart-to-gore';
import { idsInOrder } from '../garment/linden';
import { runBackwards } from '../seams/pieces';
import { traced } from './traced';

const skirt: Piece = {
  ...traced('skirt', [
    [[0, 0], 'waist'],
    [[260, 0], 'seam'],
    [[330, 640], 'hem'],
    [[0, 640], 'fold'],
  ]),
  cut: { how: 'fold', count: 1 },
};
const edge = (index: number) => skirt.edges[index]?.id ?? '';
const dart = { id: 'd', edgeId: edge(0), along: 140, width: 30, point: { x: 143, y: 130 } };
const marked: Piece = {
  ...skirt,
  darts: [dart],
  notches: [
    { id: 'n', edgeId: edge(0), along: 40, count: 1 },
    { id: 'm', edgeId: edge(2), along: 60, count: 2 },
    { id: 'o', edgeId: edge(1), along: 200, count: 2 },
  ],
  labels: [
    { id: 'l', at: { x: 50, y: 300 }, text: 'front' },
    { id: 'k', at: { x: 280, y: 400 }, text: 'side' },
  ],
  grain: { from: { x: 60, y: 200 }, to: { x: 60, y: 420 } },
};

function gored(piece: Piece, more: Partial<GoreSeamWish> = {}): GoreSeam {
  let count = 0;
  const made = dartToGore(piece, 'd', {
    to: { edgeId: edge(2), along: 170 },
    through: [],
    names: ['Side', 'Front'],
    seamName: 'Gore seam',
    newId: () => `new-${++count}`,
    ...more,
  });
  if (made.kind !== 'gore-seam') throw new Error(made.why);
  return made;
}

const pathOf = (piece: Piece, edgeId: string) =>
  outlineOf(piece).edges[piece.edges.findIndex(({ id }) => id === edgeId)] ?? [];

describe('dartToGore(piece, dart, wish)', () => {
  it('cuts the piece in two with seam edges of one length and one name, for her line too', () => {
    for (const through of [[], [{ x: 175, y: 300 }]]) {
      const { pieces, edges } = gored(marked, { through });
      const lengths = pieces.map((piece, i) => pathLength(pathOf(piece, edges[i]?.edgeId ?? '')));
      expect(Math.abs((lengths[0] ?? 0) - (lengths[1] ?? 0))).toBeLessThan(0.001);
      expect(pieces.map((piece, i) => piece.edges.find(({ id }) => id === edges[i]?.edgeId)?.name)).toEqual([
        'Gore seam',
        'Gore seam',
      ]);
    }
  });

  it('loses the area of the dart and no more', () => {
    const { pieces } = gored(marked);
    const whole = pieces.reduce((sum, piece) => sum + signedArea(outlineOf(piece).whole), 0);
    const wanted = signedArea(outlineOf(skirt).whole) - 0.5 * 30 * 130;
    expect(Math.abs(whole - wanted) / wanted).toBeLessThan(0.001);
  });

  it('keeps the fold with one piece and cuts the other as a pair; marks go with their part, grain with both', () => {
    const { pieces } = gored(marked);
    const [ends, begins] = pieces;
    const front = ends.edges.some(({ role }) => role === 'fold') ? ends : begins;
    const side = front === ends ? begins : ends;
    expect(front.cut).toEqual({ how: 'fold', count: 1 });
    expect(side.cut).toEqual({ how: 'pair', count: 2 });
    expect(front.labels.map(({ id }) => id)).toEqual(['l']);
    expect(side.labels.map(({ id }) => id)).toEqual(['k']);
    expect(front.notches.map(({ id }) => id)).toContain('n');
    expect(side.notches.map(({ id }) => id)).toEqual(expect.arrayContaining(['m', 'o']));
    expect(front.grain).toEqual(marked.grain);
    expect(side.grain && distance(side.grain.from, side.grain.to)).toBeCloseTo(220, 9);
    expect(side.grain?.from.x).toBeGreaterThan(pathBounds(outlineOf(side).whole).minX);
    expect(ends.id).toBe(marked.id);
    expect(begins.id).not.toBe(marked.id);
  });

  it('follows legs and line, and a notch on both edges marks the old point', () => {
    const { pieces, edges } = gored(marked);
    pieces.forEach((piece, i) => {
      const path = pathOf(piece, edges[i]?.edgeId ?? '');
      const notch = piece.notches.find(({ edgeId }) => edgeId === edges[i]?.edgeId);
      expect(distance(pathAtLength(path, notch?.along ?? 0).point, dart.point)).toBeLessThan(0.6);
    });
  });

  it('does the same for a piece run round the other way', () => {
    const back = runBackwards({ ...marked, notches: [], labels: [] });
    const total = pathLength(pathOf(marked, edge(2)));
    const { pieces, edges } = gored(
      { ...back, darts: [{ ...dart, along: 120 }] },
      { to: { edgeId: edge(2), along: total - 170 } },
    );
    const lengths = pieces.map((piece, i) => pathLength(pathOf(piece, edges[i]?.edgeId ?? '')));
    expect(Math.abs((lengths[0] ?? 0) - (lengths[1] ?? 0))).toBeLessThan(0.001);
  });

  it('refuses no dart, a place on the edge of the dart itself, and a line that crosses the piece', () => {
    const wish: GoreSeamWish = {
      to: { edgeId: edge(2), along: 170 },
      through: [],
      names: ['a', 'b'],
      seamName: '',
      newId: idsInOrder(),
    };
    expect(dartToGore(marked, 'x', wish)).toEqual({ kind: 'no-gore-seam', why: 'no-dart' });
    expect(dartToGore(marked, 'd', { ...wish, to: { edgeId: edge(0), along: 20 } })).toEqual({
      kind: 'no-gore-seam',
      why: 'no-such-place',
    });
    expect(dartToGore(marked, 'd', { ...wish, through: [{ x: -90, y: 400 }] })).toEqual({
      kind: 'no-gore-seam',
      why: 'crosses',
    });
  });
});
