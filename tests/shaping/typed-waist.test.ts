import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import { nearestOnPath, pathLength } from '../../core/geometry/path';
import { typedWaist } from '../../core/shaping/typed-waist';
import { straightGore, straightPanel } from './traced';

describe('typedWaist', () => {
  it('stands at the rise and dip she typed, has the length, and leaves the side at the hip where it was', () => {
    const panel = straightPanel(220, 268, 163);
    const at = { waistEdgeId: panel.edges[0]?.id ?? '', rise: 17, centreDip: 5 };
    const made = typedWaist(panel, at, { length: 214, hipDepth: 163 });
    if (made.kind === 'no-typed-waist') throw new Error(made.why);
    const [centre, side] = made.piece.corners;
    expect(centre?.at).toEqual({ x: 0, y: 5 });
    expect(side?.at.y).toBeCloseTo(-17, 9);
    const [waist = [], edge = []] = outlineOf(made.piece).edges;
    expect(Math.abs(pathLength(waist) - 214)).toBeLessThan(0.001);
    expect(nearestOnPath(edge, { x: 268, y: 163 }).distance).toBeLessThan(0.01);
  });

  it('raises both sides of a gore alike', () => {
    const gore = straightGore(150, 178, 163);
    const at = { waistEdgeId: gore.edges[0]?.id ?? '', rise: 6 };
    const made = typedWaist(gore, at, { length: 147, hipDepth: 163 });
    if (made.kind === 'no-typed-waist') throw new Error(made.why);
    const [left, right] = made.piece.corners;
    expect(left?.at.x).toBeCloseTo(-(right?.at.x ?? 0), 6);
    expect(left?.at.y).toBeCloseTo(-6, 6);
  });

  it('refuses what has no waist there, no hip, or no length', () => {
    const panel = straightPanel(220, 268, 163);
    const at = { waistEdgeId: panel.edges[0]?.id ?? '', rise: 17 };
    const why = (length: number, hipDepth: number, edge = 0) =>
      typedWaist(panel, { ...at, waistEdgeId: panel.edges[edge]?.id ?? '' }, { length, hipDepth });
    expect(why(214, 163, 1)).toEqual({ kind: 'no-typed-waist', why: 'no-waist-edge' });
    expect(why(214, 900)).toEqual({ kind: 'no-typed-waist', why: 'no-hip-point' });
    expect(why(0, 163)).toEqual({ kind: 'no-typed-waist', why: 'not-positive' });
  });
});
