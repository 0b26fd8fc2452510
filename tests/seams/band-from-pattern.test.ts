import { describe, expect, it } from 'vitest';
import { sectorPieces } from '../../core/blocks/sector';
import { shapedBand } from '../../core/blocks/shaped-band';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { pathLength } from '../../core/geometry/path';
import { type BandFromPattern, bandFromPattern, bandPieces, waistFacing } from '../../core/seams/band-from-pattern';
import { type JoinedPanels, joinedPanels } from '../../core/seams/joined-panels';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { numberedIds } from '../blocks/in-inches';
import { foldPanel, garmentWith } from './seam-garment';

/** Four quarters of the pure cone of waist 28 and hip 38 in, 7 in down, each half drawn on its fold. */
const quarters = sectorPieces({ top: inches(28), bottom: inches(38), depth: inches(7), sections: 4 }, {
  newId: numberedIds(),
  name: 'Quarter',
  topRole: 'waist',
} as never) as Piece[];

function cone(): JoinedPanels {
  const made = joinedPanels(garmentWith(quarters), [{ piece: quarters[0] as Piece, times: 8 }], { over: inches(3) });
  if (made.kind !== 'joined-panels') throw new Error(made.why);
  return made;
}

const band = (joined: JoinedPanels, depth: number, lies: 'below' | 'above' = 'below'): BandFromPattern => {
  const made = bandFromPattern(joined, { depth, lies });
  if (made.kind !== 'band') throw new Error(made.why);
  return made;
};

/** Lower edges of a band on that cone, by the rule of Baldt 1916 (the frustum laid flat): depth and lower edge, in. */
const LOWER = [
  [1, 29.429],
  [1.25, 29.786],
  [1.5, 30.143],
  [2, 30.857],
  [2.5, 31.571],
  [3, 32.286],
] as const;

describe('bandFromPattern(joined panels, options)', () => {
  it.each(LOWER)('agrees with the pure cone: %s in deep, %s in below, within half a millimetre', (depth, lower) => {
    const { top, bottom, straightError } = band(cone(), inches(depth));
    expect(Math.abs(top - inches(28))).toBeLessThan(0.05);
    expect(Math.abs(bottom - inches(lower))).toBeLessThan(0.5);
    expect(Math.abs(straightError - inches(lower - 28))).toBeLessThan(0.5);
    const sizes = shapedBand({ waist: inches(28), hip: inches(38), hipDepth: inches(7), depth: inches(depth) });
    expect(Math.abs(bottom - sizes.bottom)).toBeLessThan(0.05);
  });

  it('stands above the waist with its lower edge on it', () => {
    const { top, bottom } = band(cone(), inches(1.5), 'above');
    expect(bottom / MM_PER_INCH).toBeCloseTo(28, 2);
    expect(top / MM_PER_INCH).toBeCloseTo(28 - 2.143, 2);
  });

  it('refuses no depth and a band deeper than its own radius', () => {
    expect(bandFromPattern(cone(), { depth: 0, lies: 'below' })).toMatchObject({ why: 'not-positive' });
    expect(bandFromPattern(cone(), { depth: inches(20), lies: 'above' })).toMatchObject({ why: 'too-deep' });
  });
});

describe('bandPieces(joined panels, options)', () => {
  it('refuses more parts than anybody joins, at once', () => {
    const wish = { depth: inches(2), lies: 'below', newId: numberedIds(), name: 'Band' } as const;
    expect(bandPieces(cone(), { ...wish, parts: 99 })).toHaveLength(99);
    expect(bandPieces(cone(), { ...wish, parts: 1e9 })).toMatchObject({ why: 'too-many' });
  });

  const pieces = (parts: number, lap = 0) => {
    const made = bandPieces(cone(), {
      depth: inches(2),
      lies: 'below',
      parts,
      lap,
      newId: numberedIds(),
      name: 'Band',
    });
    if (!Array.isArray(made)) throw new Error(made.why);
    return made;
  };
  const edgeOf = (piece: Piece, index: number) => pathLength(outlineOf(piece).edges[index] ?? []) / MM_PER_INCH;

  it('gives half a band on the fold with upper and lower edges of 14 and 15.429 in and ends 2 in deep', () => {
    const [half] = pieces(1);
    if (!half) throw new Error('no piece');
    expect(half.cut).toEqual({ how: 'fold', count: 1 });
    expect(half.edges.map(({ role }) => role)).toEqual(['waist', 'seam', 'finished', 'fold']);
    expect(edgeOf(half, 0)).toBeCloseTo(14, 2);
    expect(edgeOf(half, 2)).toBeCloseTo(15.429, 2);
    expect(edgeOf(half, 1)).toBeCloseTo(2, 6);
  });

  it('shares the band out to parts of one length, the lap on the last', () => {
    const parts = pieces(3, inches(0.75));
    expect(parts.map(({ cut }) => cut.how)).toEqual(['fold', 'pair', 'pair']);
    parts.forEach((part, i) => {
      expect(edgeOf(part, 0)).toBeCloseTo(14 / 3 + (i === 2 ? 0.75 : 0), 2);
    });
  });
});

describe('waistFacing(joined panels, options)', () => {
  it('is the waist as sewn, with the darts closed, and as deep as said', () => {
    const plain = foldPanel('front', 200, [200, 610]);
    const piece = { ...plain, darts: [{ id: 'd', edgeId: 'e0', along: 110, width: 30, point: { x: 110, y: 120 } }] };
    const joined = joinedPanels(garmentWith([piece]), [{ piece, times: 2 }], { over: 60 });
    if (joined.kind !== 'joined-panels') throw new Error(joined.why);
    const [facing] = waistFacing(joined, { depth: 57, newId: numberedIds(), name: 'Facing' }) as Piece[];
    if (!facing) throw new Error('no piece');
    expect(pathLength(outlineOf(facing).edges[0] ?? [])).toBeCloseTo(170, 1);
    expect(pathLength(outlineOf(facing).edges[1] ?? [])).toBeCloseTo(57, 6);
    expect(pathLength(outlineOf(facing).edges[2] ?? [])).toBeGreaterThan(175);
  });
});
