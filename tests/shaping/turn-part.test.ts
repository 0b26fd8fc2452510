import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import { pathLength } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { cutAt, holdsFold, pointAt, turnPart } from '../../core/shaping/turn-part';
import { traced } from './traced';

const piece = traced('p', [
  [[0, 0], 'waist'],
  [[200, 0], 'seam'],
  [[200, 500], 'hem'],
  [[0, 500], 'fold'],
]);
const idOf = (index: number) => piece.edges[index]?.id ?? '';
const [waistCut, hemCut] = [
  cutAt({ edgeId: idOf(0), along: 80 }, 'smooth'),
  cutAt({ edgeId: idOf(2), along: 120 }, 'smooth'),
];

describe('turnPart', () => {
  it('turns the corners between the cuts and keeps the rest', () => {
    const about = { x: 80, y: 0 };
    const made = turnPart(piece, { from: waistCut, to: hemCut, about, angle: -0.1 });
    expect(made.corners[0]).toBe(piece.corners[0]);
    expect(made.corners[3]).toBe(piece.corners[3]);
    for (const i of [1, 2]) {
      expect(distance(made.corners[i]?.at ?? about, about)).toBeCloseTo(
        distance(piece.corners[i]?.at ?? about, about),
        9,
      );
    }
    expect(made.corners[1]?.at.y).toBeLessThan(0);
    expect(made.edges[1]).toBe(piece.edges[1]);
  });

  it('holds an edge to its course on both sides of a held cut', () => {
    const held = cutAt({ edgeId: idOf(1), along: 250 }, 'held');
    const about = { x: 100, y: 250 };
    const made = turnPart(piece, { from: held, to: hemCut, about, angle: 0.2 });
    const shape = made.edges[1]?.shape;
    const through = shape?.kind === 'curve' ? shape.through : [];
    // Above the cut the side is as straight as it was; the pins nearest to the cut stand 15 mm off.
    expect(through.filter(({ x }) => Math.abs(x - 200) < 1e-9).some(({ y }) => Math.abs(y - 235) < 1e-9)).toBe(true);
    expect(Math.abs(pathLength(outlineOf(made).edges[1] ?? []) - 500 - 2 * 100 * Math.sin(0.1))).toBeLessThan(2);
  });
});

describe('holdsFold', () => {
  it('tells which part would take the fold along', () => {
    expect(holdsFold(piece, waistCut, hemCut)).toBe(false);
    expect(holdsFold(piece, hemCut, waistCut)).toBe(true);
  });
});

describe('pointAt', () => {
  it('is the place on the edge, or nothing beyond it', () => {
    expect(pointAt(piece, { edgeId: idOf(0), along: 80 })).toEqual({ x: 80, y: 0 });
    expect(pointAt(piece, { edgeId: idOf(0), along: 201 })).toBeUndefined();
    expect(pointAt(piece, { edgeId: 'none', along: 2 })).toBeUndefined();
  });
});
