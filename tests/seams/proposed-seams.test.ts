import { describe, expect, it } from 'vitest';
import { proposedSeams } from '../../core/seams/proposed-seams';
import { idsInOrder } from '../garment/linden';
import { at, pieceOf } from './pieces';
import { edge, foldPanel, garmentWith, seamOf } from './seam-garment';

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
});
