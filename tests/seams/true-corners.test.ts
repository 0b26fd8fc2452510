import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import { nearestOnPath, pathAtLength, pathLength } from '../../core/geometry/path';
import { seamCorners, trueCorners } from '../../core/seams/true-corners';
import { at, pieceOf } from './pieces';
import { edge, garmentWith, seamOf } from './seam-garment';

/** A panel with a straight waist and hem and a leaning side e1: its waist is off by the lean. */
const panel = (id: string, lean: number) => ({
  ...pieceOf(
    [at(0, 0), at(180, 0), at(180 + lean, 600), at(0, 600)],
    [{ role: 'waist' }, {}, { role: 'hem' }, { role: 'opening' }],
  ),
  id,
});
const seam = seamOf([edge('front', 'e1')], [edge('back', 'e1')], { way: 'same' });
const garment = garmentWith([panel('front', 60), panel('back', 90)], [seam]);
const lean = Math.atan(60 / 600) + Math.atan(90 / 600);

describe('trueCorners(garment, seam, options)', () => {
  it.each(['square', 'blend'] as const)('brings both angles to 180 degrees at the waist and at the hem: %s', (how) => {
    for (const [end, off] of [
      ['at-start', lean],
      ['at-end', -lean],
    ] as const) {
      const trued = trueCorners(garment, seam, { end, how });
      if (trued.kind !== 'corners-trued') throw new Error(trued.why);
      expect(trued.before.off).toBeCloseTo(off, 9);
      // Two angles, each met to a hundredth of a degree.
      expect(Math.abs(trued.after.off)).toBeLessThan(4e-4);
      if (how === 'square') expect(trued.after.one).toBeCloseTo(Math.PI / 2, 9);
      else expect(trued.after.one - trued.before.one).toBeCloseTo(-off / 2, 3);
      trued.garment.pieces.forEach((piece, i) => {
        expect(piece.corners).toEqual(garment.pieces[i]?.corners);
        const index = end === 'at-start' ? 0 : 2;
        const [was, is] = [garment.pieces[i], piece].map((one) => (one ? (outlineOf(one).edges[index] ?? []) : []));
        // Away from the corner, which lies at x = 180 or beyond, the line keeps within 0.6 mm of its course.
        for (let along = 0; along <= 80; along += 10) {
          const from = end === 'at-start' ? along : pathLength(is ?? []) - along;
          expect(nearestOnPath(was ?? [], pathAtLength(is ?? [], from).point).distance).toBeLessThan(0.6);
        }
      });
    }
  });

  it('leaves a fold alone, and a seam that is itself drawn square to its neighbour', () => {
    const folded = {
      ...panel('back', 90),
      edges: panel('back', 90).edges.map((e, i) => (i === 0 ? { ...e, role: 'fold' as const } : e)),
    };
    const how = { end: 'at-start', how: 'square' } as const;
    expect(trueCorners(garmentWith([panel('front', 60), folded]), seam, how)).toMatchObject({ why: 'on-a-fold' });
    const shape = { kind: 'curve', through: [], leaves: 'square', meets: 'free' } as const;
    const ruled = {
      ...panel('front', 60),
      edges: panel('front', 60).edges.map((e, i) => (i === 1 ? { ...e, shape } : e)),
    };
    expect(trueCorners(garmentWith([ruled, panel('back', 90)]), seam, how)).toMatchObject({ why: 'ruled' });
    expect(seamCorners(garmentWith([]), seam, 'at-start')).toBeUndefined();
  });
});
