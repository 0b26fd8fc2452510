import { describe, expect, it } from 'vitest';
import { goredSkirtPieces } from '../../core/blocks/gored-skirt';
import type { Garment } from '../../core/garment/garment';
import { newGarment } from '../../core/garment/new-garment';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { pathLength } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { HALF_AT_HEM, lengthenRing, lineAcrossPiece, type RingLengthening } from '../../core/shaping/lengthen-garment';
import { levelLine } from '../../core/shaping/level-line';
import { inches } from '../../core/units/inch';
import { straightPanel, traced } from './traced';

/** Six gores for 28 and 38 in (two cones; the rule: Laura I. Baldt, Clothing for Women, 1916), a panel and a short yoke. */
function skirt(): Garment {
  let count = 0;
  const newId = () => `l${++count}`;
  const gores = goredSkirtPieces(
    { waist: inches(28), hip: inches(38), hipDepth: inches(7), hem: inches(66), length: inches(26), gores: 6 },
    { newId, name: 'Gore' },
  );
  if (!Array.isArray(gores)) throw new Error(gores.why);
  const yoke = traced('yoke', [
    [[900, 0], 'waist'],
    [[1050, 0], 'seam'],
    [[1070, 90], 'seam'],
    [[900, 90], 'fold'],
  ]);
  const bare = newGarment({ newId, today: '2026-03-04', name: '', shownIn: 'in' });
  return { ...bare, pieces: [...gores, straightPanel(180, 240, 178), yoke] };
}

function lengthened(garment: Garment, wish: RingLengthening): Garment {
  const ring = { members: garment.pieces.map(({ id }) => ({ pieceId: id })) };
  const made = lengthenRing(garment, ring, wish);
  if ('why' in made) throw new Error(made.why);
  return made;
}

const lengthOf = (piece: Piece | undefined, index: number) =>
  piece ? pathLength(outlineOf(piece).edges[index] ?? []) : Number.NaN;

describe('lengthenRing', () => {
  it.each([
    [0, 31, 0.01],
    [0, 180, 0.01],
    [HALF_AT_HEM, 114, 0.75],
  ])(
    'with %f of %f mm at the hem gives the old pieces back when shortened by the same, to %f mm',
    (atHem, by, within) => {
      const depth = inches(13);
      const before = skirt();
      const back = lengthened(lengthened(before, { depth, by, atHem }), { depth, by: -by, atHem });
      for (const [p, piece] of before.pieces.entries()) {
        const now = back.pieces[p] as Piece;
        for (const [i, { at }] of piece.corners.entries()) {
          expect(distance(now.corners[i]?.at ?? { x: 0, y: 9e9 }, at)).toBeLessThan(within);
        }
        for (const i of piece.edges.keys())
          expect(Math.abs(lengthOf(now, i) - lengthOf(piece, i))).toBeLessThan(2 * within);
      }
    },
  );

  it('carries the line across every piece it meets and leaves waist, hip and shorter pieces alone', () => {
    const before = skirt();
    const after = lengthened(before, { depth: inches(13), by: 40 });
    const [gore, panel, yoke] = after.pieces;
    expect(yoke).toBe(before.pieces[2]);
    // The centre fold of the panel and the middle of the gore are longer by just what was asked.
    expect(lengthOf(panel, 3) - lengthOf(before.pieces[1], 3)).toBeCloseTo(40, 6);
    const hem = (piece: Piece | undefined) => outlineOf(piece as Piece).edges[2]?.[0]?.p0.y ?? Number.NaN;
    expect(hem(gore) - hem(before.pieces[0])).toBeCloseTo(40, 6);
    for (const [i, piece] of [gore, panel].entries()) {
      for (const depth of [0, inches(7)]) {
        const [was, is] = [before.pieces[i] as Piece, piece as Piece].map(
          (each) => levelLine(each, depth)?.length ?? 0,
        );
        expect(Math.abs((is ?? 0) - (was ?? 9))).toBeLessThan(0.5);
      }
    }
    // Both sides of the gore stay alike, so its seams still agree.
    expect(lengthOf(gore, 1)).toBeCloseTo(lengthOf(gore, 3), 6);
  });

  it('says which piece hinders it', () => {
    const garment = skirt();
    const ring = { members: [{ pieceId: garment.pieces[1]?.id ?? '' }] };
    expect(lengthenRing(garment, ring, { depth: 150, by: -60 })).toEqual({
      kind: 'ring-not-lengthened',
      why: 'in-the-way',
      pieceId: garment.pieces[1]?.id,
    });
    expect(lengthenRing(garment, ring, { depth: 5000, by: 60 })).toEqual({
      kind: 'ring-not-lengthened',
      why: 'no-piece-met',
    });
  });
});

describe('lineAcrossPiece', () => {
  it('runs from side to side and moves down the fold', () => {
    const line = lineAcrossPiece(straightPanel(180, 240, 178), 300);
    expect(line?.way?.dy).toBeCloseTo(1, 9);
    expect(line?.from.y).toBeCloseTo(300, 6);
    expect(lineAcrossPiece(straightPanel(180, 240, 178), 0)).toBeUndefined();
  });
});
