import { describe, expect, it } from 'vitest';
import { waistNeeds } from '../../core/fit/waist-needs';
import type { Piece } from '../../core/garment/piece';
import { inches } from '../../core/units/inch';
import { straightPanel } from '../shaping/traced';
import { figure, garmentOf } from './skirts';

const [depth, hip] = [inches(8), inches(10)];
const named = (piece: Piece, id: string): Piece => ({ ...piece, id, cut: { how: 'fold', count: 1 } });

describe('waistNeeds', () => {
  it('shares the waist out by what is drawn, and adds what darts take up', () => {
    const front = named(straightPanel(inches(9), hip, depth), 'front');
    const plainBack = named(straightPanel(inches(8), hip, depth), 'back');
    const dart = {
      id: 'd',
      edgeId: plainBack.edges[0]?.id ?? '',
      along: 90,
      width: inches(1),
      point: { x: 90, y: 110 },
    };
    const back: Piece = { ...plainBack, darts: [dart] };
    const { garment, ring } = garmentOf([front, back], figure);
    const [frontNeed, backNeed] = waistNeeds(garment, ring);
    // 9 and 7 net drawn on each half; 14.25 wanted on the half.
    const lengthOf = (need: typeof frontNeed) => (need?.kind === 'needs-curve' ? need.curve.length : Number.NaN);
    expect(Math.abs(lengthOf(frontNeed) - (inches(14.25) * 9) / 16)).toBeLessThan(0.01);
    expect(Math.abs(lengthOf(backNeed) - (inches(14.25) * 7) / 16 - inches(1))).toBeLessThan(0.01);
  });

  it('says when a measure is missing', () => {
    const { garment, ring } = garmentOf([named(straightPanel(200, hip, depth), 'front')], { waist: 28 });
    expect(waistNeeds(garment, ring)).toMatchObject([{ kind: 'no-curve', why: 'measure-missing' }]);
  });

  it('is settled once the curve is taken', () => {
    const piece = named(straightPanel(inches(7.125), hip, depth), 'panel');
    const { garment, ring } = garmentOf([{ ...piece, cut: { how: 'fold', count: 2 } }], figure);
    const [need] = waistNeeds(garment, ring);
    if (need?.kind !== 'needs-curve') throw new Error('no curve');
    expect(need.settled).toBe(false);
    const [after] = waistNeeds({ ...garment, pieces: [need.curve.piece] }, ring);
    expect(after?.kind === 'needs-curve' && after.settled).toBe(true);
  });
});
