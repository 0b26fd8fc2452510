import { describe, expect, it } from 'vitest';
import type { ArcRun } from '../../core/blocks/arc-run';
import { arcPath } from '../../core/blocks/arc-run';
import { circleSizes, type Sector, type SectorSizes, sector, sectorPieces } from '../../core/blocks/sector';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { endTangent, pathBounds, pathLength, startTangent } from '../../core/geometry/path';
import { distance, turnBetween } from '../../core/geometry/point';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { numberedIds } from './in-inches';

/**
 * Laura I. Baldt, Clothing for Women: Selection, Design, Construction (1916), Draft of Circular Flounce for Petticoat:
 * her practice figures, depth 12, top width 72, bottom width 112; places computed from her rule.
 */
const baldt: SectorSizes = { top: inches(72), bottom: inches(112), depth: inches(12), sections: 1 };

function drawn(sizes: SectorSizes): Sector {
  const made = sector(sizes);
  if (made.kind === 'no-sector') throw new Error(made.why);
  return made;
}

function pieceOf(sizes: SectorSizes, topRole: 'waist' | 'seam' = 'seam'): Piece {
  const made = sectorPieces(sizes, { newId: numberedIds(), name: 'Flounce', topRole });
  if (!Array.isArray(made)) throw new Error(made.why);
  return made[0] as Piece;
}

const inchesLong = (run: ArcRun) => pathLength(arcPath(run, 1e-6)) / MM_PER_INCH;
const degrees = (angle: number) => (angle * 180) / Math.PI;

describe('sector', () => {
  it('gives the radii and the angle of Baldt 1916', () => {
    const { radii, angle } = drawn(baldt);
    expect((radii?.top ?? 0) / MM_PER_INCH).toBeCloseTo(21.6, 9);
    expect((radii?.bottom ?? 0) / MM_PER_INCH).toBeCloseTo(33.6, 9);
    expect(degrees(angle)).toBeCloseTo(190.986, 3);
    expect(degrees(angle / 2)).toBeCloseTo(95.493, 3);
  });

  it('puts the ends of the half where the rule of Baldt 1916 puts them, seen from the centre of the arcs', () => {
    const { centre, topEnd, bottomEnd } = drawn(baldt);
    if (!centre) throw new Error('no centre');
    // Baldt hangs the flounce from its centre the other way up: mirrored, the figures are the same.
    const seen = (at: { x: number; y: number }) => [(at.x - centre.x) / MM_PER_INCH, (at.y - centre.y) / MM_PER_INCH];
    expect(seen(topEnd)[0]).toBeCloseTo(21.501, 3);
    expect(seen(topEnd)[1]).toBeCloseTo(-2.068, 3);
    expect(seen(bottomEnd)[0]).toBeCloseTo(33.446, 3);
    expect(seen(bottomEnd)[1]).toBeCloseTo(-3.216, 3);
    expect(distance(topEnd, bottomEnd) / MM_PER_INCH).toBeCloseTo(12, 9);
  });

  it('has arcs of half the widths, and the box of the whole', () => {
    const { top, bottom, topEnd } = drawn(baldt);
    expect(inchesLong(top)).toBeCloseTo(36, 6);
    expect(inchesLong(bottom)).toBeCloseTo(56, 6);
    const box = pathBounds(arcPath(bottom, 1e-6));
    expect((2 * box.maxX) / MM_PER_INCH).toBeCloseTo(67.2, 4);
    expect((box.maxY - Math.min(box.minY, topEnd.y)) / MM_PER_INCH).toBeCloseTo(36.82, 2);
  });

  it('divides into three sections as computed from Baldt 1916', () => {
    const { angle, top, bottom } = drawn({ ...baldt, sections: 3 });
    expect(degrees(angle)).toBeCloseTo(63.662, 3);
    expect(2 * inchesLong(top)).toBeCloseTo(24, 6);
    expect(2 * inchesLong(bottom)).toBeCloseTo(37.333, 3);
  });

  it('is straight where it does not widen, and curves the other way where it narrows', () => {
    const straight = drawn({ top: 300, bottom: 300, depth: 70, sections: 1 });
    expect(straight.centre).toBeUndefined();
    expect(straight.topEnd).toEqual({ x: 150, y: 0 });
    expect(straight.bottomEnd).toEqual({ x: 150, y: 70 });
    const narrowing = drawn({ top: 310, bottom: 270, depth: 70, sections: 1 });
    expect(narrowing.topEnd.y).toBeGreaterThan(0);
    expect(distance(narrowing.topEnd, narrowing.bottomEnd)).toBeCloseTo(70, 9);
  });

  it('refuses what needs more sections, and what is no size', () => {
    // (130 - 60) / 11 is more than a full turn.
    expect(sector({ top: 60, bottom: 130, depth: 11, sections: 1 })).toEqual({
      kind: 'no-sector',
      why: 'overlaps-itself',
    });
    expect(sector({ top: 60, bottom: 130, depth: 11, sections: 2 }).kind).toBe('sector');
    expect(sector({ top: 0, bottom: 130, depth: 11, sections: 2 })).toEqual({ kind: 'no-sector', why: 'not-positive' });
    expect(sector({ top: 60, bottom: 70, depth: 11, sections: 1.5 })).toEqual({
      kind: 'no-sector',
      why: 'not-positive',
    });
  });
});

describe('circleSizes', () => {
  it.each([
    // share, radius, outer radius, hem, computed from r = W / (2 π f) for a waist of 28 and a length of 26
    [1, 4.456, 30.456, 191.36],
    [0.75, 5.942, 31.942, 150.52],
    [0.5, 8.913, 34.913, 109.68],
    [0.25, 17.825, 43.825, 68.84],
  ])('makes %f of a circle', (share, radius, outer, hem) => {
    const sizes = circleSizes({ waist: inches(28), length: inches(26), share });
    expect(sizes.bottom / MM_PER_INCH).toBeCloseTo(hem, 2);
    const { radii, angle } = drawn({ ...sizes, sections: 1 });
    expect((radii?.top ?? 0) / MM_PER_INCH).toBeCloseTo(radius, 3);
    expect((radii?.bottom ?? 0) / MM_PER_INCH).toBeCloseTo(outer, 3);
    expect(degrees(angle)).toBeCloseTo(360 * share, 6);
  });
});

describe('sectorPieces', () => {
  it('is half a section on the fold, its edges as long as the arcs within a hundredth of a millimetre', () => {
    const piece = pieceOf({ ...baldt, sections: 3 });
    expect(piece.cut).toEqual({ how: 'fold', count: 3 });
    expect(piece.edges.map(({ role }) => role)).toEqual(['seam', 'seam', 'hem', 'fold']);
    const [top, side, bottom, fold] = outlineOf(piece).edges.map((path) => pathLength(path));
    expect(Math.abs((top ?? 0) - inches(12))).toBeLessThan(0.01);
    expect(Math.abs((bottom ?? 0) - inches(112 / 6))).toBeLessThan(0.01);
    expect(side).toBeCloseTo(inches(12), 9);
    expect(fold).toBeCloseTo(inches(12), 9);
  });

  it('keeps the length of the arcs on a whole circle too', () => {
    const sizes = { ...circleSizes({ waist: 711, length: 640, share: 1 }), sections: 1 };
    const piece = pieceOf(sizes, 'waist');
    const [waist, , hem] = outlineOf(piece).edges.map((path) => pathLength(path));
    expect(Math.abs((waist ?? 0) - 711 / 2)).toBeLessThan(0.01);
    expect(Math.abs((hem ?? 0) - sizes.bottom / 2)).toBeLessThan(0.01);
  });

  it('keeps the waist of a whole circle on the fold square and long for every waist', () => {
    for (const waist of [599, 677, 1305, 1317]) {
      const piece = pieceOf({ ...circleSizes({ waist, length: 640, share: 1 }), sections: 1 }, 'waist');
      const [edge, side] = outlineOf(piece).edges;
      expect(Math.abs(pathLength(edge ?? []) - waist / 2)).toBeLessThan(0.01);
      expect(Math.abs(turnBetween(endTangent(edge ?? []), startTangent(side ?? [])) - Math.PI / 2)).toBeLessThan(1e-3);
    }
  });

  it('passes a refusal on', () => {
    const sizes = { top: 60, bottom: 130, depth: 11, sections: 1 };
    expect(sectorPieces(sizes, { newId: numberedIds(), name: 'Flounce', topRole: 'seam' })).toEqual({
      kind: 'no-sector',
      why: 'overlaps-itself',
    });
  });
});
