import { describe, expect, it } from 'vitest';
import { goredSkirtPieces } from '../../core/blocks/gored-skirt';
import { circleSizes, sectorPieces } from '../../core/blocks/sector';
import { twoDartSkirtPieces } from '../../core/blocks/two-dart-skirt';
import { fitFindings } from '../../core/fit/fit-findings';
import { type GirthAtLevel, girthsOf, hemSweep, levelDepth, ringPieces } from '../../core/fit/round-body';
import { currentSet } from '../../core/garment/measure-value';
import { moveCorner } from '../../core/garment/move-point';
import type { Piece } from '../../core/garment/piece';
import { withPiece } from '../../core/garment/with-piece';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { traced } from '../shaping/traced';
import { figure, garmentOf } from './skirts';

function ids() {
  let count = 0;
  return () => `b${++count}`;
}

function made(pieces: Piece[] | { readonly why: string }): Piece[] {
  if (!Array.isArray(pieces)) throw new Error(pieces.why);
  return pieces;
}

/** Six gores for 28 and 38 in, computed from two cones (the rule: Laura I. Baldt, Clothing for Women, 1916). */
const gores = made(
  goredSkirtPieces(
    { waist: inches(28), hip: inches(38), hipDepth: inches(7), hem: inches(66), length: inches(26), gores: 6 },
    { newId: ids(), name: 'Gore' },
  ),
);

const totalOf = (girth: GirthAtLevel | undefined) => (girth && girth.kind !== 'no-depth' ? girth.total : Number.NaN);

describe('girthsOf', () => {
  it('adds the pieces up as often as each goes round: six gores are 28, 38 and 66 in', () => {
    const { garment, ring } = garmentOf(gores, { ...figure, waistToHip: 7 });
    const [waist, , hip] = girthsOf(garment, ring);
    expect(totalOf(waist) / MM_PER_INCH).toBeCloseTo(28, 2);
    expect(totalOf(hip) / MM_PER_INCH).toBeCloseTo(38, 1);
    expect(hemSweep(garment, ring) / MM_PER_INCH).toBeCloseTo(66, 2);
  });

  it('sets pieces against body and ease to a sixteenth: the two-dart block gives 24 and 50 mm', () => {
    const pieces = made(
      twoDartSkirtPieces(
        { waist: inches(28), hip: inches(38), waistToHip: inches(8), length: inches(26) },
        { newId: ids(), names: { back: 'Back', front: 'Front' } },
      ),
    );
    const { garment, ring } = garmentOf(pieces, figure);
    const [waist, , hip] = girthsOf(garment, ring);
    // WikiEducator, Handout for drafting skirt block: waist + 2.4 cm, hip + 5 cm; the curved waist is a little longer.
    expect(Math.abs(totalOf(waist) - inches(28) - 24)).toBeLessThan(4 * inches(1 / 16));
    expect(Math.abs(totalOf(hip) - inches(38) - 50)).toBeLessThan(inches(1 / 8));
    expect(waist?.kind === 'measured' && waist.wanted).toBeCloseTo(inches(28.5), 9);
    expect(hip?.kind === 'measured' && hip.wanted).toBeCloseTo(inches(40), 9);
  });

  it('makes an inch on a quarter waist four inches on the body', () => {
    const quarter = (name: string) =>
      traced(name, [
        [[0, 0], 'waist'],
        [[inches(7), 0], 'seam'],
        [[inches(10), inches(24)], 'hem'],
        [[0, inches(24)], 'fold'],
      ]);
    const onFold = ['front', 'back'].map(quarter).map((piece): Piece => ({ ...piece, cut: { how: 'fold', count: 1 } }));
    const { garment, ring } = garmentOf(onFold, figure);
    const before = totalOf(girthsOf(garment, ring)[0]);
    const narrowed = onFold.reduce(
      (so, { id, corners }) => withPiece(so, id, (p) => moveCorner(p, corners[1]?.id ?? '', { x: inches(6), y: 0 })),
      garment,
    );
    expect(before - totalOf(girthsOf(narrowed, ring)[0])).toBeCloseTo(inches(4), 9);
  });

  it('says which measure is missing, and still adds the pieces up where it can', () => {
    const { garment, ring } = garmentOf(gores, { waist: 28 });
    const [waist, highHip, hip] = girthsOf(garment, ring);
    expect(waist?.kind).toBe('measured');
    expect(highHip).toMatchObject({ kind: 'no-depth', missing: 'waistToHighHip' });
    expect(hip).toMatchObject({ kind: 'no-depth', missing: 'waistToHip' });
    const deep = garmentOf(gores, { waist: 28, waistToHip: 7 });
    expect(girthsOf(deep.garment, deep.ring)[2]).toMatchObject({ kind: 'no-body', missing: 'hip', depth: inches(7) });
  });

  it('leaves out a piece that does not reach the level', () => {
    const yoke = traced('yoke', [
      [[0, 0], 'waist'],
      [[300, 0], 'seam'],
      [[310, 80], 'seam'],
      [[0, 80], 'fold'],
    ]);
    const { garment, ring } = garmentOf([yoke], figure);
    expect(girthsOf(garment, ring)[2]?.pieces).toEqual([{ pieceId: yoke.id, times: 1, line: undefined }]);
  });
});

describe('girthsOf a body whose sides differ', () => {
  const half = (side: 'left' | 'right', waist: number): Piece => ({
    ...traced(side, [
      [[0, 0], 'waist'],
      [[inches(waist), 0], 'seam'],
      [[inches(waist), inches(24)], 'hem'],
      [[0, inches(24)], 'seam'],
    ]),
    cut: { how: 'single', count: 1 },
    side,
  });
  const measures = { waist: { length: inches(27), right: inches(28) } };

  it('sets each side against its own half and half the ease', () => {
    const { garment, ring } = garmentOf([half('left', 13.75), half('right', 13.75)], measures);
    const [waist] = girthsOf(garment, ring);
    if (waist?.kind !== 'measured') throw new Error('not measured');
    expect(waist.sides.map(({ side, total, body, wanted }) => [side, ...[total, body, wanted].map(inIn)])).toEqual([
      ['left', 13.75, 13.5, 13.75],
      ['right', 13.75, 14, 14.25],
    ]);
    const found = fitFindings(garment).filter(({ kind }) => kind === 'side-uneven');
    expect(found).toMatchObject([{ side: 'right', weight: 'stop' }]);
  });

  it('has no sides where the pieces are for both, or one figure was taped at the level', () => {
    const { garment, ring } = garmentOf([half('left', 13.75), half('right', 13.75)], measures);
    const taped = { ...ring, levels: ring.levels.map((level) => ({ ...level, body: inches(29) })) };
    const [waist] = girthsOf(garment, taped);
    expect(waist).toMatchObject({ kind: 'measured', body: inches(29), sides: [] });
    const both = garmentOf(gores, measures);
    expect(girthsOf(both.garment, both.ring)[0]).toMatchObject({ kind: 'measured', sides: [] });
  });

  it('measures a level above the waist into the pieces, and never a guide', () => {
    const { garment, ring } = garmentOf([half('left', 13.75), { ...half('right', 17), use: 'guide' }], measures);
    const bust = { id: 'b', girth: 'bust', depth: { kind: 'length', length: -180 }, ease: 0 } as const;
    const both = { ...ring, levels: [bust], members: garment.pieces.map(({ id }) => ({ pieceId: id })) };
    const [level] = girthsOf(garment, both);
    expect(level).toMatchObject({ kind: 'no-body', depth: -180, missing: 'bust' });
    expect(totalOf(level)).toBeCloseTo(inches(13.75), 6);
  });
});

const inIn = (mm: number) => Math.round((mm / MM_PER_INCH) * 1e6) / 1e6;

describe('levelDepth', () => {
  it('takes the depth noted with a girth before the measure', () => {
    const measures = { ...figure, hip: { length: inches(38), depth: inches(7.25) } };
    const { garment, ring } = garmentOf(gores, measures);
    const hip = ring.levels[2];
    expect(hip && levelDepth(hip, currentSet(garment))).toBe(inches(7.25));
  });
});

describe('ringPieces', () => {
  it('leaves out members that are gone', () => {
    const { garment, ring } = garmentOf(gores, figure);
    const members = [...ring.members, { pieceId: 'gone' }];
    expect(ringPieces(garment, { ...ring, members }).map(({ times }) => times)).toEqual([6]);
  });
});

describe('hemSweep', () => {
  it.each([
    // A circular skirt, waist 28 and length 26 in: its hem computed as 2 π f (r + 26).
    [1, 191.36],
    [0.5, 109.68],
  ])('is the whole hem of %f of a circle', (share, hem) => {
    const sizes = { ...circleSizes({ waist: inches(28), length: inches(26), share }), sections: 3 };
    const pieces = made(sectorPieces(sizes, { newId: ids(), name: 'Skirt', topRole: 'waist' }));
    const { garment, ring } = garmentOf(pieces, figure);
    expect(hemSweep(garment, ring) / MM_PER_INCH).toBeCloseTo(hem, 2);
  });
});
