import { describe, expect, it } from 'vitest';
import { fitFindings } from '../../core/fit/fit-findings';
import { lengthAt } from '../../core/fit/length-round';
import type { Garment, Ring } from '../../core/garment/garment';
import type { Cut, Piece } from '../../core/garment/piece';
import type { Seam } from '../../core/garment/seam';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { linden } from '../garment/linden';
import { traced } from '../shaping/traced';
import { panel } from './panels';
import { figure, garmentOf } from './skirts';

const PLACES = ['front', 'side', 'back'] as const;

function lengths({ garment, ring }: { readonly garment: Garment; readonly ring: Ring }): readonly number[] {
  return PLACES.map((at) => (lengthAt(garment, ring, at) ?? 0) / MM_PER_INCH);
}

/** Every length to a millionth of an inch. */
function expectLengths(made: Parameters<typeof lengths>[0], wanted: readonly number[]) {
  for (const [i, length] of lengths(made).entries()) expect(length, PLACES[i]).toBeCloseTo(wanted[i] ?? 0, 6);
}

const cut = (piece: Piece, how: Cut['how'], count: number): Piece => ({ ...piece, cut: { how, count } });

/** A trapezium: 38 in down one edge that is square to the waist, so the other is the hypotenuse of 38 and what it flares. */
const slanted = (flare: number) => Math.hypot(38, flare);

/** An upright edge of 38 in drawn first, the slanted one `flare` wide after it. */
const halfGore = (flare: number): Piece =>
  traced('half', [
    [[0, 0], 'waist'],
    [[inches(7), 0], 'seam'],
    [[inches(7 + flare), inches(38)], 'hem'],
    [[0, inches(38)], 'seam'],
  ]);

describe('lengthAt', () => {
  it('is the length of the panel that hangs there', () => {
    const made = garmentOf(
      [panel('front', [6, 9, 38], ['fold', 'seam']), panel('back', [6, 11, 40], ['seam', 'fold'])],
      figure,
    );
    // The side seam is the longer of the two: 40 down and 5 out.
    expectLengths(made, [38, Math.hypot(40, 5), 40]);
  });

  it('of one panel for front and back is read at its fold and at its side, whichever way it is drawn', () => {
    const front = cut(panel('one', [7, 18, 38], ['fold', 'seam']), 'fold', 2);
    expectLengths(garmentOf([front], figure), [38, slanted(11), 38]);
    const back = cut(panel('one', [7, 18, 38], ['seam', 'fold']), 'fold', 2);
    expectLengths(garmentOf([back], figure), [38, slanted(11), 38]);
  });

  it('of three panels on the fold has a fold at the front and a seam at the back', () => {
    const three = cut(panel('one', [5, 12, 38], ['fold', 'seam']), 'fold', 3);
    const [front, , back] = lengths(garmentOf([three], figure));
    expect(front).toBeCloseTo(38, 6);
    expect(back).toBeCloseTo(slanted(7), 6);
  });

  it('reads the side gores on the fold between a front and a back, with their folds at the sides', () => {
    const gore = cut(panel('gore', [2.5, 6, 40], ['fold', 'seam']), 'fold', 2);
    const made = garmentOf(
      [panel('front', [4, 9, 38], ['fold', 'seam']), gore, panel('back', [4, 11, 39], ['seam', 'fold'])],
      figure,
    );
    expectLengths(made, [38, 40, 39]);
  });

  it('of an odd number of gores has the middle of one at the front and a seam at the back', () => {
    const gore = cut(panel('gore', [6, 12, 38], ['seam', 'seam']), 'single', 5);
    expectLengths(garmentOf([gore], figure), [38, 38, slanted(3)]);
  });

  it('of two whole panels is read down their middles and along the side seams', () => {
    const whole = cut(panel('whole', [14, 30, 38], ['seam', 'seam']), 'single', 2);
    expectLengths(garmentOf([whole], figure), [38, slanted(8), 38]);
  });

  it('of a front and a back drawn whole is read down their middles', () => {
    const front = cut(panel('front', [14, 30, 37], ['seam', 'seam']), 'single', 1);
    const back = cut(panel('back', [13, 27, 39], ['seam', 'seam']), 'single', 1);
    expectLengths(garmentOf([front, back], figure), [37, Math.hypot(39, 7), 39]);
  });

  it('of mirrored pairs goes by what their edges are sewn to, else by the longer', () => {
    const four = cut(halfGore(9), 'pair', 4);
    const [, side, , centre] = four.edges.map(({ id }) => ({ pieceId: four.id, edgeId: id }));
    if (!side || !centre) throw new Error('no edges');
    const { garment, ring } = garmentOf([four], figure);
    const sewn = (one: typeof side, other: typeof side): Garment => {
      const seam: Seam = { id: 's', name: '', one: [one], other: [other], ease: 0, way: 'same' };
      return { ...garment, seams: [seam] };
    };
    // As plates have it the straight edge of a gore lies to the front (Ingalls, Text-Book on Domestic Art, 1911).
    expectLengths({ garment: sewn(side, side), ring }, [38, slanted(9), 38]);
    expectLengths({ garment: sewn(side, centre), ring }, [38, slanted(9), slanted(9)]);
    expectLengths({ garment, ring }, [38, slanted(9), slanted(9)]);
  });

  it('takes the longer of the two sides where they are drafted apart', () => {
    const sided = (side: 'left' | 'right', flare: number): Piece => ({
      ...cut(halfGore(flare), 'single', 1),
      id: side,
      side,
    });
    const made = garmentOf([sided('left', 9), sided('right', 12)], figure);
    const [front, , back] = lengths(made);
    expect(front).toBeCloseTo(38, 6);
    expect(back).toBeCloseTo(slanted(12), 6);
  });

  it('has nothing to say of pieces without a waist', () => {
    const { garment, ring } = garmentOf([halfGore(9)], figure);
    const bare = garment.pieces.map((piece) => ({
      ...piece,
      edges: piece.edges.map((edge) => ({ ...edge, role: edge.role === 'waist' ? ('seam' as const) : edge.role })),
    }));
    expect(lengthAt({ ...garment, pieces: bare }, ring, 'front')).toBeUndefined();
  });

  it('says when the hem at the fold of a panel for front and back is a quarter of an inch too long', () => {
    const garment = linden();
    const [ring] = garment.rings;
    if (!ring) throw new Error('no ring');
    expect((lengthAt(garment, ring, 'front') ?? 0) / MM_PER_INCH).toBeCloseTo(28, 9);
    expect((lengthAt(garment, ring, 'back') ?? 0) / MM_PER_INCH).toBeCloseTo(28, 9);
    const under = (front: number) =>
      fitFindings({ ...garment, outer: { front: inches(front), shorterBy: inches(1) } }).filter(
        ({ kind }) => kind === 'hem-shows',
      );
    expect(under(28.75)).toMatchObject([{ at: 'front', outer: inches(28.75) }]);
    expect(under(29)).toEqual([]);
  });
});
