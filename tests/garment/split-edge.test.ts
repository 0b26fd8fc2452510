import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { splitEdge } from '../../core/garment/split-edge';
import { nearestOnPath, pathAtLength, pathLength, signedArea } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { at, pieceOf } from '../seams/pieces';
import { lindenPanel } from './linden';

const ids = { cornerId: 'c-new', edgeId: 'e-new' };

describe('splitEdge', () => {
  it('cuts a straight edge in two at the place, and leaves the printed length of the whole out', () => {
    const split = splitEdge(lindenPanel(), 'e-waist', 50, ids);
    expect(split.corners[1]).toEqual({ id: 'c-new', at: { x: 50, y: 0 } });
    expect(split.edges.slice(0, 2).map(({ id, role, allowance }) => [id, role, allowance])).toEqual([
      ['e-waist', 'waist', 12.7],
      ['e-new', 'waist', 12.7],
    ]);
    expect(split.edges[0]).not.toHaveProperty('stated');
  });

  it('shares the marks out by the half on which they lie', () => {
    const panel = lindenPanel();
    const notches = [
      { id: 'n1', edgeId: 'e-waist', along: 30, count: 1 as const },
      { id: 'n2', edgeId: 'e-waist', along: 110, count: 2 as const },
    ];
    const split = splitEdge({ ...panel, notches }, 'e-waist', 70, ids);
    expect(split.notches.map(({ edgeId, along }) => [edgeId, along])).toEqual([
      ['e-waist', 30],
      ['e-new', 40],
    ]);
    expect(split.darts[0]).toMatchObject({ edgeId: 'e-new' });
    expect(split.darts[0]?.along).toBeCloseTo(18.9, 9);
  });

  it.each([40, 130, 260, 390])('keeps the line of a curve cut at %d mm within a sixty-fourth of an inch', (along) => {
    const bow = [at(330, 90), at(300, 210), at(345, 300)];
    const piece = pieceOf([at(0, 0), at(290, 10), at(310, 420), at(-15, 400)], [{}, { through: bow }]);
    const old = outlineOf(piece).edges[1] ?? [];
    const now = outlineOf(splitEdge(piece, 'e1', along, ids)).edges;
    const halves = [...(now[1] ?? []), ...(now[2] ?? [])];
    for (let i = 0; i <= 60; i++) {
      const { point } = pathAtLength(old, (pathLength(old) * i) / 60);
      expect(distance(point, nearestOnPath(halves, point).point)).toBeLessThan(25.4 / 64 + 0.01);
    }
    expect(pathLength(now[1] ?? [])).toBeGreaterThan(along - 2);
    expect(pathLength(now[1] ?? [])).toBeLessThan(along + 2);
  });

  it('keeps the area of a piece of straight edges', () => {
    const piece: Piece = pieceOf([at(0, 0), at(90, 5), at(70, 60)], []);
    const area = (each: Piece) => signedArea(outlineOf(each).whole);
    expect(area(splitEdge(piece, 'e2', 31, ids))).toBeCloseTo(area(piece), 9);
    expect(splitEdge(piece, 'e7', 31, ids)).toBe(piece);
  });
});
