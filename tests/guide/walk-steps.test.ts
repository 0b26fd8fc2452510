import { describe, expect, it } from 'vitest';
import { lindenGarment } from '../../app/demo/linden-garment';
import { walkSteps } from '../../app/guide/walk-steps';
import { beforeYouCut } from '../../core/check/before-you-cut';
import type { Garment } from '../../core/garment/garment';

let made = 0;
const demo = lindenGarment({ newId: () => `id-${made++}`, today: '2026-03-04', photoId: 'photo' });
const doneIn = (garment: Garment) =>
  walkSteps.flatMap(({ name, isDone }) => (isDone?.(garment, beforeYouCut(garment)) ? [name] : []));

describe('the walk through the demo garment', () => {
  it('finds every thing it asks for still to do', () => {
    expect(walkSteps.filter(({ isDone }) => isDone).length).toBe(6);
    expect(doneIn(demo)).toEqual([]);
  });

  it('sees an opening as soon as the side is one, deep enough for the hip', () => {
    const pieces = demo.pieces.map((piece) => ({
      ...piece,
      edges: piece.edges.map((edge) => (edge.role === 'seam' ? { ...edge, role: 'opening' as const } : edge)),
    }));
    expect(doneIn({ ...demo, pieces })).toEqual(['opening']);
  });

  it('sees a proof of scale', () => {
    const scaleProof = { date: '2026-03-05', across: 101.6, down: 101.6 };
    expect(doneIn({ ...demo, scaleProof })).toEqual(['proof']);
  });
});
