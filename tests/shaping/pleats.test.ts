import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { pathLength } from '../../core/geometry/path';
import { netEdgeLength } from '../../core/seams/edge-length';
import { levelLine } from '../../core/shaping/level-line';
import { addPleats, pleatEdge, pleatSums } from '../../core/shaping/pleats';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { traced } from './traced';

const panel = traced('panel', [
  [[0, 0], 'waist'],
  [[inches(36), 0], 'seam'],
  [[inches(36), inches(25)], 'hem'],
  [[0, inches(25)], 'fold'],
]);
const waist = panel.edges[0]?.id ?? '';
const hem = panel.edges[2]?.id ?? '';
const ids = () => {
  let count = 0;
  return () => `pleat-${++count}`;
};
const lengthOf = (piece: Piece, index: number) => pathLength(outlineOf(piece).edges[index] ?? []);

describe('pleatSums({ cut, into, pleats })', () => {
  // A Complete Course in Dressmaking, vol. 5, Skirts (Conover, early 1920s): a skirt 44 in wide on the half, to be
  // pleated to a waist of 14, a hip of 20 and a hem that hangs like a plain one of 27 1/2.
  it.each([
    ['waist', 14, 30],
    ['hip', 20, 24],
    ['hem', 27.5, 16.5],
  ])(
    'pleats away what the 1920s pleated skirt says at its %s: 44 in on the half into %d leaves %d',
    (_, into, laid) => {
      const sums = pleatSums({ cut: inches(44), into: inches(into), pleats: 11 });
      expect((sums?.laidAway ?? 0) / MM_PER_INCH).toBeCloseTo(laid, 9);
      expect((sums?.takes ?? 0) * 11).toBeCloseTo(inches(laid), 9);
      expect((sums?.spacing ?? 0) - (sums?.takes ?? 0)).toBeCloseTo(sums?.visible ?? 0, 9);
    },
  );

  it('says when pleats reach under one another', () => {
    expect(pleatSums({ cut: 300, into: 100, pleats: 5 })?.overlapping).toBe(false);
    expect(pleatSums({ cut: 301, into: 100, pleats: 5 })?.overlapping).toBe(true);
  });

  it('is nothing without pleats, or where nothing is left over', () => {
    expect(pleatSums({ cut: 90, into: 100, pleats: 4 })).toBeUndefined();
    expect(pleatSums({ cut: 190, into: 100, pleats: 0 })).toBeUndefined();
    expect(pleatSums({ cut: 190, into: 100, pleats: 2.5 })).toBeUndefined();
  });
});

describe('pleatEdge(piece, wish)', () => {
  it('lays 36 in into 14 in six pleats, half a space at each end, and the waist is sewn and measured as 14', () => {
    const made = pleatEdge(panel, {
      edgeId: waist,
      pleats: 6,
      by: { kind: 'into', into: inches(14) },
      laid: 'to-end',
      newId: ids(),
    });
    if ('why' in made) throw new Error(made.why);
    expect((netEdgeLength(made, waist) ?? 0) / MM_PER_INCH).toBeCloseTo(14, 9);
    expect((levelLine(made, 0)?.length ?? 0) / MM_PER_INCH).toBeCloseTo(14, 9);
    expect((levelLine(made, inches(8))?.length ?? 0) / MM_PER_INCH).toBeCloseTo(36, 6);
    const [first] = made.fullness ?? [];
    expect((first?.kind === 'pleat' ? first.from : 0) / MM_PER_INCH).toBeCloseTo(7 / 6, 9);
    expect(outlineOf(made).whole).toEqual(outlineOf(panel).whole);
  });

  it('refuses what cannot be laid, and a second set over the first', () => {
    const wish = { edgeId: waist, pleats: 3, laid: 'box', newId: ids() } as const;
    expect(pleatEdge(panel, { ...wish, by: { kind: 'depth', depth: inches(7) } })).toEqual({
      kind: 'not-pleated',
      why: 'not-longer',
    });
    expect(pleatEdge(panel, { ...wish, from: 5, to: 2, by: { kind: 'depth', depth: 9 } })).toEqual({
      kind: 'not-pleated',
      why: 'no-such-stretch',
    });
    expect(pleatEdge(panel, { ...wish, pleats: 0, by: { kind: 'depth', depth: 9 } })).toEqual({
      kind: 'not-pleated',
      why: 'no-pleats',
    });
    const once = pleatEdge(panel, { ...wish, by: { kind: 'depth', depth: 19 } });
    if ('why' in once) throw new Error(once.why);
    expect(pleatEdge(once, { ...wish, by: { kind: 'depth', depth: 11 } })).toEqual({
      kind: 'not-pleated',
      why: 'in-the-way',
    });
  });
});

describe('addPleats(piece, wish)', () => {
  it('lets the width in side by side: four pleats 2 in deep add 16 in, and the waist is sewn as before', () => {
    const made = addPleats(panel, {
      open: waist,
      far: hem,
      hinge: 'none',
      pleats: 4,
      depth: inches(2),
      laid: 'inverted',
      newId: ids(),
    });
    if ('why' in made) throw new Error(made.why);
    expect(lengthOf(made, 0)).toBeCloseTo(inches(52), 1);
    expect(lengthOf(made, 2)).toBeCloseTo(inches(52), 1);
    expect(Math.abs((netEdgeLength(made, waist) ?? 0) - inches(36))).toBeLessThan(0.1);
  });

  it('tapers to nothing where it is hinged', () => {
    const made = addPleats(panel, {
      open: hem,
      far: waist,
      hinge: 'far',
      pleats: 3,
      depth: inches(1.5),
      laid: 'to-start',
      newId: ids(),
    });
    if ('why' in made) throw new Error(made.why);
    expect(Math.abs(lengthOf(made, 0) - inches(36))).toBeLessThan(0.01);
    expect(Math.abs((netEdgeLength(made, hem) ?? 0) - inches(36))).toBeLessThan(0.1);
  });
});
