import { describe, expect, it } from 'vitest';
import { setStated } from '../../core/garment/edge-edits';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { pathLength } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { obeyFigures } from '../../core/shaping/obey-figures';
import { pullToFigures } from '../../core/shaping/pull-to-figures';
import { inches } from '../../core/units/inch';
import { traced } from './traced';

/** Half a gore on the fold, drawn near 4 1/4 by 38 by 9 by 37 in. */
const gore = traced('g', [
  [[0, 0], 'fold'],
  [[0, 940], 'hem'],
  [
    [-228, 932],
    'seam',
    [
      [-190, 610],
      [-120, 240],
    ],
  ],
  [[-108, -8], 'waist'],
]);
const idOf = (index: number) => gore.edges[index]?.id ?? '';
const lengths = (piece: Piece) => outlineOf(piece).edges.map(pathLength);
const figure = (index: number, length: number) => ({ edgeId: idOf(index), length: inches(length) });

function pulled(figures: Parameters<typeof pullToFigures>[1], piece = gore): Piece {
  const result = pullToFigures(piece, figures);
  if ('kind' in result) throw new Error(result.why);
  return result;
}

describe('pullToFigures', () => {
  it('meets every figure at once, keeps the fold upright and moves the corners little', () => {
    const all = [figure(0, 37.25), figure(1, 9.25), figure(2, 37), figure(3, 4.5)];
    const piece = pulled(all);
    for (const [index, { length }] of all.entries()) expect(lengths(piece)[index]).toBeCloseTo(length, 2);
    const [top, bottom] = piece.corners;
    expect((top?.at.x ?? 1) - (bottom?.at.x ?? 0)).toBeCloseTo(0, 6);
    piece.corners.forEach((corner, k) => {
      expect(distance(corner.at, gore.corners[k]?.at ?? corner.at)).toBeLessThan(inches(0.75));
    });
  });

  it('leaves what agrees as it is', () => {
    expect(pullToFigures(gore, [{ edgeId: idOf(1), length: lengths(gore)[1] ?? 0 }])).toBe(gore);
  });

  it('refuses figures that cannot close', () => {
    const triangle = traced('t', [
      [[0, 0], 'seam'],
      [[300, 0], 'seam'],
      [[100, 250], 'seam'],
    ]);
    const figures = [300, 280, 900].map((length, k) => ({ edgeId: triangle.edges[k]?.id ?? '', length }));
    expect(pullToFigures(triangle, figures)).toEqual({ kind: 'not-pulled', why: 'do-not-close' });
  });

  it('makes the triangle of 3, 4 and 5 right-angled', () => {
    const triangle = traced('t', [
      [[5, 2], 'seam'],
      [[310, -9], 'seam'],
      [[20, 390], 'seam'],
    ]);
    const piece = pulled(
      [300, 500, 400].map((length, k) => ({ edgeId: triangle.edges[k]?.id ?? '', length })),
      triangle,
    );
    const [a, b, c] = piece.corners.map(({ at }) => at);
    if (!a || !b || !c) throw new Error('three corners');
    expect(((b.x - a.x) * (c.x - a.x) + (b.y - a.y) * (c.y - a.y)) / (300 * 400)).toBeCloseTo(0, 5);
  });
});

describe('obeyFigures', () => {
  it('keeps a figure that rules already when another is obeyed beside it', () => {
    const hem = { length: inches(9.25), rules: 'figure' } as const;
    const first = obeyFigures(gore, [figure(1, 9.25)]);
    if ('kind' in first) throw new Error(first.why);
    expect(first.edges[1]?.stated).toEqual(hem);
    const both = obeyFigures(setStated(first, idOf(2), { length: inches(36.5), rules: 'unsettled' }), [
      figure(2, 36.5),
    ]);
    if ('kind' in both) throw new Error(both.why);
    expect(lengths(both)[1]).toBeCloseTo(hem.length, 2);
    expect(lengths(both)[2]).toBeCloseTo(inches(36.5), 2);
    expect(both.edges.map(({ stated }) => stated?.rules)).toEqual([undefined, 'figure', 'figure', undefined]);
  });
});
