import { describe, expect, it } from 'vitest';
import { type FourLengths, lengthsToFloor, waistFromLengths } from '../../core/fit/waist-from-lengths';
import { waistJoins } from '../../core/fit/waist-smoothness';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { pathLength } from '../../core/geometry/path';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { fourGores, panel } from './panels';
import { figure, garmentOf } from './skirts';

const inIn = ({ front, right, back, left }: FourLengths): FourLengths => ({
  front: inches(front),
  right: inches(right),
  back: inches(back),
  left: inches(left),
});

function raised(...args: Parameters<typeof waistFromLengths>) {
  const made = waistFromLengths(...args);
  if (made.kind !== 'waist-from-lengths') throw new Error(`${made.why} ${made.pieceId}`);
  return made;
}

const lengthOf = (piece: Piece | undefined, edge: number) =>
  piece ? pathLength(outlineOf(piece).edges[edge] ?? []) : Number.NaN;

describe('waistFromLengths', () => {
  it('raises three gores by half an inch each for 38, 39 and 39 1/2 in (The Perfect Dressmaking System, 1914)', () => {
    // The waist shares of that draft, 2 1/2, 5 and 5 in; the side length is taken between the side and the back gore.
    const { garment, ring } = garmentOf(
      [
        panel('front', [5, 8, 38], ['fold', 'seam']),
        panel('side', [5, 17.5, 38], ['seam', 'seam']),
        panel('back', [5, 17.5, 38], ['seam', 'fold']),
      ],
      figure,
    );
    const lengths = inIn({ front: 38, right: 39, back: 39.5, left: 39 });
    const made = raised(garment, ring, lengths, { spread: 'even', sideAt: 2 / 3 });
    const steps = made.panels.map(({ front, back }) => (back - front) / MM_PER_INCH);
    for (const step of steps) expect(step).toBeCloseTo(0.5, 9);
    // The corners themselves, by the lengths of the edges: 38 on the front fold, 39 1/2 on the back one.
    expect(lengthOf(made.garment.pieces[0], 3) / MM_PER_INCH).toBeCloseTo(38, 6);
    expect(lengthOf(made.garment.pieces[2], 1) / MM_PER_INCH).toBeCloseTo(39.5, 1);
  });

  it.each([
    ['a stout figure (I. Rosenfeld, The Practical Designer, 1911)', { front: 44, right: 40, back: 39, left: 40 }],
    ['38, 39 and 39 1/2 in', { front: 38, right: 39, back: 39.5, left: 39 }],
  ])('keeps every waist at its length and the hem where it was, and joins smoothly: %s', (_, lengths) => {
    // A half waist of 15 in, as the stout figure's is.
    const { garment, ring } = garmentOf(
      [
        panel('front', [5, 10, 40], ['fold', 'seam']),
        panel('side', [4.5, 15, 40], ['seam', 'seam']),
        panel('back', [5.5, 11, 40], ['seam', 'fold']),
      ],
      figure,
    );
    const made = raised(garment, ring, inIn(lengths));
    expect((made.panels[2]?.back ?? 0) / MM_PER_INCH).toBeCloseTo(lengths.back - lengths.front, 9);
    for (const [i, piece] of garment.pieces.entries()) {
      const now = made.garment.pieces[i];
      expect(Math.abs(lengthOf(now, 0) - lengthOf(piece, 0))).toBeLessThan(0.01);
      expect(now?.corners.slice(2)).toEqual(piece.corners.slice(2));
    }
    // Before, the straight edges met at angles that had nothing to do with the heights; only their change is looked at.
    const id = (piece: number, edge: number) => ({
      pieceId: garment.pieces[piece]?.id ?? '',
      edgeId: garment.pieces[piece]?.edges[edge]?.id ?? '',
    });
    const pairs = [
      { one: id(0, 1), other: id(1, 3) },
      { one: id(1, 1), other: id(2, 3) },
    ];
    const off = (of: typeof garment) => waistJoins(of.pieces, pairs).map((join) => (join.off * 180) / Math.PI);
    const [before, after] = [off(garment), off(made.garment)];
    for (const [i, was] of before.entries()) expect(Math.abs((after[i] ?? 99) - was)).toBeLessThan(4);
  });

  it('raises the two sides of a body apart', () => {
    const sided = (side: 'left' | 'right'): Piece => ({
      ...panel(side, [13, 30, 38], ['seam', 'seam']),
      cut: { how: 'single', count: 1 },
      side,
    });
    const { garment, ring } = garmentOf([sided('right'), sided('left')], figure);
    const made = raised(garment, ring, inIn({ front: 38, right: 39, back: 38.5, left: 40 }));
    const top = (piece: Piece | undefined) => {
      const [waist = []] = piece ? outlineOf(piece).edges : [];
      return Math.max(...waist.map((each) => -each.p0.y)) / MM_PER_INCH;
    };
    expect(Math.abs(top(made.garment.pieces[0]) - 1)).toBeLessThan(0.1);
    expect(Math.abs(top(made.garment.pieces[1]) - 2)).toBeLessThan(0.1);
  });

  it('changes nothing for a body whose lengths are all one', () => {
    const { garment, ring } = fourGores();
    const made = raised(garment, ring, inIn({ front: 38, right: 38, back: 38, left: 38 }));
    expect(made.garment).toBe(garment);
  });

  it('passes on why the panels have no places', () => {
    const { garment, ring } = fourGores();
    const bare = { ...ring, members: ring.members.map((member) => ({ ...member, times: 3 })) };
    expect(waistFromLengths(garment, bare, inIn({ front: 38, right: 39, back: 40, left: 39 }))).toMatchObject({
      kind: 'no-panels-round',
      why: 'comes-again',
    });
  });
});

describe('lengthsToFloor', () => {
  it('takes right and left apart at the side, and needs all three', () => {
    const measures = {
      waistToFloorFront: { length: 1000 },
      waistToFloorSide: { length: 1021, right: 1013 },
      waistToFloorBack: { length: 1007 },
    };
    expect(lengthsToFloor({ measures })).toEqual({ front: 1000, right: 1013, back: 1007, left: 1021 });
    expect(lengthsToFloor({ measures: { waistToFloorFront: { length: 1000 } } })).toBeUndefined();
  });
});
