import { describe, expect, it } from 'vitest';
import { waistFindings, waistJoins } from '../../core/fit/waist-smoothness';
import type { Garment } from '../../core/garment/garment';
import { matchNotches } from '../../core/seams/match-notches';
import { proposedSeams } from '../../core/seams/proposed-seams';
import { seamFindings } from '../../core/seams/seam-findings';
import { walkOfSeam } from '../../core/seams/seam-walk';
import { seamCorners, trueCorners } from '../../core/seams/true-corners';
import { idsInOrder } from '../garment/linden';
import { at, pieceOf } from './pieces';
import { edge, foldPanel, garmentWith, seamOf, withNotches } from './seam-garment';

const front = foldPanel('front', 170, [200, 610]);
const back = {
  ...pieceOf(
    [at(0, 0), at(190, 0), at(280, 610), at(0, 640)],
    [{ role: 'waist' }, { through: [at(244, 200)] }, { role: 'hem' }, {}],
    [],
    { how: 'pair', count: 2 },
  ),
  id: 'back',
};
const band = {
  ...pieceOf([at(0, 0), at(372, 0), at(372, 50), at(0, 50)], [{}, { role: 'finished' }, {}, { role: 'fold' }], [], {
    how: 'fold',
    count: 1,
  }),
  id: 'band',
};
const ring = [
  { piece: front, times: 2 },
  { piece: back, times: 2 },
];
const options = () => ({ newId: idsInOrder(), rings: [ring] });

describe('proposedSeams(garment, options)', () => {
  it('finds the waist and its band with the lap, the side seam, and the centre back with its own mirror image', () => {
    const found = proposedSeams(garmentWith([front, back, band]), options());
    expect(found.map(({ by }) => by)).toEqual(['band', 'length', 'own-mirror']);
    expect(found[0]?.seam).toMatchObject({
      one: [edge('front', 'e0', 2), edge('back', 'e0', 2)],
      other: [edge('band', 'e0', 2)],
    });
    expect(found[0]?.difference).toBe(0);
    expect(found[0]?.seam).toMatchObject({ ease: 0, lap: { side: 'other', at: 'end' } });
    expect(found[0]?.seam.lap?.length).toBeCloseTo(2 * (372 - 170 - 190), 9);
    expect(found[1]?.seam).toMatchObject({ one: [edge('front', 'e1')], other: [edge('back', 'e1')], way: 'same' });
    expect(found[2]?.seam).toMatchObject({ one: [edge('back', 'e3')], other: [edge('back', 'e3')], way: 'same' });
  });

  it('leaves out what is in a seam already, and every guide', () => {
    const named = seamOf([edge('front', 'e1')], [edge('back', 'e1')]);
    const found = proposedSeams(garmentWith([front, back, { ...band, use: 'guide' }], [named]), options());
    expect(found.map(({ by }) => by)).toEqual(['own-mirror']);
  });

  it('sews a panel cut more than once on the fold to the next of its like, and one cut once to nothing', () => {
    const twice = { ...front, cut: { how: 'fold', count: 2 } as const };
    const garment = garmentWith([twice]);
    const found = proposedSeams(garment, { newId: idsInOrder(), rings: [[{ piece: twice, times: 4 }]] });
    expect(found).toMatchObject([
      {
        by: 'next-copy',
        difference: 0,
        seam: { one: [edge('front', 'e1')], other: [edge('front', 'e1')], way: 'same' },
      },
    ]);
    expect(proposedSeams(garmentWith([front]), { newId: idsInOrder(), rings: [] })).toEqual([]);
  });

  it('and that seam is walked, agrees with its notches, and its corners can be trued', () => {
    const twice = { ...withNotches(front, 'e1', [[200, 1]]), cut: { how: 'fold', count: 2 } as const };
    const garment = garmentWith([twice]);
    const [proposed] = proposedSeams(garment, { newId: idsInOrder(), rings: [] });
    if (!proposed) throw new Error('nothing proposed');
    const { seam } = proposed;
    const sewn = { ...garment, seams: [seam] };
    const walk = walkOfSeam(sewn, seam);
    expect(walk?.totals.beyondEase).toBe(0);
    expect(walk?.meetings.map(({ apart }) => apart)).toEqual([0]);
    expect(matchNotches(sewn, seam, { from: 'one', newId: idsInOrder() })).toBe(sewn);
    expect(seamFindings(sewn)).toEqual([]);
    const before = seamCorners(sewn, seam, 'at-start');
    expect(Math.abs(before?.off ?? 0)).toBeGreaterThan(0.1);
    const trued = trueCorners(sewn, seam, { end: 'at-start', how: 'square' });
    if (trued.kind !== 'corners-trued') throw new Error(trued.why);
    expect(trued.after.off).toBeCloseTo(0, 3);
    // The check of the waist sees the seam between two copies as it sees any other; the join over the fold stands first.
    const joins = (of: Garment) =>
      waistJoins(of.pieces, [{ one: edge('front', 'e1'), other: edge('front', 'e1') }]).map(({ off }) => off);
    expect(joins(sewn)[1]).toBeCloseTo(before?.off ?? 0, 9);
    expect(joins(trued.garment)[1]).toBeCloseTo(0, 3);
    expect(waistFindings(sewn)).toMatchObject([{ kind: 'waist-peak', otherPieceId: 'front' }]);
  });
});
