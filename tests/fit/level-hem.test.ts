import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawnLength, HEM_PLACES, hemFromLengths, levelHem } from '../../core/fit/level-hem';
import { type PanelRound, panelsRound } from '../../core/fit/panels-round';
import type { Garment, Ring } from '../../core/garment/garment';
import { outlineOf } from '../../core/garment/outline';
import { pieceOf } from '../../core/garment/with-piece';
import { nearestOnPath, pathAtLength, pathLength } from '../../core/geometry/path';
import { cross, vectorBetween } from '../../core/geometry/point';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { fourGores, panel } from './panels';
import { figure, garmentOf } from './skirts';

function panelsOf(garment: Garment, ring: Ring): readonly PanelRound[] {
  const found = panelsRound(garment, ring);
  if ('kind' in found) throw new Error(found.why);
  return found;
}

/** Two halves of one skirt, for the right and the left side, so that all eight places may differ. */
function halves() {
  const half = (side: 'left' | 'right') => ({
    ...panel(side, [13, 34, 38], ['seam', 'seam']),
    cut: { how: 'single', count: 1 } as const,
    side,
  });
  return garmentOf([half('right'), half('left')], figure);
}

/** How far the new hem lies below the old one (mm) at a share of the old one as drawn. */
function letDown(before: Garment, after: Garment, pieceId: string, share: number): number {
  const [old, now] = [before, after].map((garment) => {
    const piece = pieceOf(garment, pieceId);
    return (piece && outlineOf(piece).edges[2]) ?? [];
  });
  const at = pathAtLength(old ?? [], pathLength(old ?? []) * share);
  const place = nearestOnPath(now ?? [], at.point);
  const side = cross(at.tangent, vectorBetween(at.point, place.point));
  // The hem is drawn from right to left, so that what lies below it lies on its left hand.
  return side < 0 ? place.distance : -place.distance;
}

describe('levelHem', () => {
  it('brings every place that was read within half a millimetre of the height wanted', () => {
    const { garment, ring } = halves();
    const wanted = 60;
    const gap = fc.double({ min: 40, max: 85, noNaN: true });
    fc.assert(
      fc.property(fc.array(gap, { minLength: 8, maxLength: 8 }), (values) => {
        const gaps = Object.fromEntries(HEM_PLACES.map((place, i) => [place, values[i] ?? 0]));
        const made = levelHem(garment, ring, gaps, wanted);
        if (made.kind !== 'hem-levelled') throw new Error(made.why);
        for (const { pieceId, half } of panelsOf(garment, ring)) {
          // Front, front of the side, side, back of the side and back along this panel, whose front is drawn first.
          for (const step of [1, 2, 3]) {
            const read = values[half === 'right' ? step : 8 - step] ?? 0;
            const down = letDown(garment, made.garment, pieceId, 1 - step / 4);
            expect(Math.abs(read - down - wanted)).toBeLessThan(0.5);
          }
        }
      }),
      { seed: 7, numRuns: 40 },
    );
  });

  it('leaves a level hem as it is, and needs a reading', () => {
    const { garment, ring } = halves();
    const level = levelHem(garment, ring, { front: 60, back: 60 }, 60);
    expect(level.kind === 'hem-levelled' && level.garment).toBe(garment);
    expect(levelHem(garment, ring, {}, 60)).toEqual({ kind: 'no-hem-levelled', why: 'no-reading' });
  });

  it('says what each panel is let down by at its front and its back', () => {
    const { garment, ring } = fourGores();
    const made = levelHem(garment, ring, { front: 66, right: 60, back: 51, left: 60 }, 60);
    if (made.kind !== 'hem-levelled') throw new Error(made.why);
    expect(made.panels[0]?.front).toBeCloseTo(6, 9);
    expect(made.panels[2]?.back).toBeCloseTo(-9, 9);
  });
});

describe('hemFromLengths', () => {
  it('makes every panel as long as the way to the floor less the height off it', () => {
    const { garment, ring } = fourGores();
    const lengths = { front: inches(40), right: inches(41), back: inches(41.5), left: inches(41) };
    const made = hemFromLengths(garment, ring, lengths, inches(2));
    if (made.kind !== 'hem-levelled') throw new Error(made.why);
    const panels = panelsOf(garment, ring);
    const [front, , back] = panels.map((each) => ({ each, piece: pieceOf(made.garment, each.pieceId) }));
    if (!front?.piece || !back?.piece) throw new Error('gone');
    expect(drawnLength(front.piece, front.each, 0) / MM_PER_INCH).toBeCloseTo(38, 1);
    expect(drawnLength(back.piece, back.each, 1) / MM_PER_INCH).toBeCloseTo(39.5, 1);
  });
});
