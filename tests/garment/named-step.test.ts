import { describe, expect, it } from 'vitest';
import type { Garment } from '../../core/garment/garment';
import { garmentChange } from '../../core/garment/garment-change';
import { movePiece } from '../../core/garment/move-piece';
import { withNamedStep } from '../../core/garment/named-step';
import { addPiece, removePiece } from '../../core/garment/piece-list';
import { readGarment } from '../../core/garment/schema';
import { withPiece } from '../../core/garment/with-piece';
import { linden, lindenPanel } from './linden';

const shifted = (garment: Garment, dx: number) =>
  withPiece(garment, 'panel', (piece) => movePiece(piece, { dx, dy: -3 }));

describe('withNamedStep', () => {
  it('notes what was drawn, changed and taken away, in order', () => {
    const start = linden();
    const one = withNamedStep(start, shifted(start, 7), { label: 'moved', time: 11 });
    const sleeve = { ...lindenPanel(), id: 'sleeve' };
    const two = withNamedStep(one, addPiece(one, sleeve), { label: 'drawn', time: 13 });
    const three = withNamedStep(two, removePiece(two, 'panel'), { label: 'gone', time: 17 });
    expect(three.steps).toEqual([
      { label: 'moved', time: 11, pieceIds: ['panel'] },
      { label: 'drawn', time: 13, pieceIds: ['sleeve'] },
      { label: 'gone', time: 17, pieceIds: ['panel'] },
    ]);
    expect(readGarment(three).kind).toBe('garment');
  });

  it('notes nothing of a step that leaves the pieces as they are, made anew or not, nor of guides', () => {
    const start = linden();
    const renamed = { ...start, name: 'Another' };
    expect(withNamedStep(start, renamed, { label: 'name', time: 11 })).toBe(renamed);
    const same = { ...start, pieces: structuredClone(start.pieces) };
    expect(withNamedStep(start, same, { label: 'same', time: 11 })).toBe(same);
    const guide = addPiece(start, { ...lindenPanel(), id: 'base', use: 'guide' });
    expect(withNamedStep(start, guide, { label: 'guide', time: 11 }).steps).toBeUndefined();
  });

  it('keeps the reading when a whole older draft is put in', () => {
    const start = linden();
    const one = withNamedStep(start, shifted(start, 7), { label: 'moved', time: 11 });
    const back = withNamedStep(one, start, { label: 'back', time: 13 });
    expect(back.steps?.map(({ label }) => label)).toEqual(['moved', 'back']);
  });

  it('is bounded, and a step costs little to store even so', () => {
    let garment = linden();
    let bytes = 0;
    for (let i = 0; i < 1300; i++) {
      const next = withNamedStep(garment, shifted(garment, i % 2 === 0 ? 7 : -7), { label: `step ${i}`, time: i });
      bytes += JSON.stringify(garmentChange(garment, next).filter(({ at }) => at[0] === 'steps')).length;
      garment = next;
    }
    expect(garment.steps?.length).toBeLessThanOrEqual(1000);
    expect(garment.steps?.length).toBeGreaterThan(800);
    expect(garment.steps?.at(-1)?.label).toBe('step 1299');
    // A step alone is about 110 bytes; what the oldest take with them when they go doubles that.
    expect(bytes / 1300).toBeLessThan(400);
    expect(readGarment(garment).kind).toBe('garment');
  });
});
