import { expect, it } from 'vitest';
import { changedGarment, garmentChange, unchangedGarment } from '../../core/garment/garment-change';
import { moveCorner } from '../../core/garment/move-point';
import { setScaleProof } from '../../core/garment/paper-edits';
import { withPiece } from '../../core/garment/with-piece';
import { linden } from './linden';

it('garmentChange leads from one garment to the other and back, fields taken away included', () => {
  const before = linden();
  const moved = withPiece(before, 'panel', (piece) => moveCorner(piece, 'c-side-hem', { x: 377, y: 691 }));
  const after = setScaleProof({ ...moved, name: 'Walking skirt' }, undefined);
  const change = garmentChange(before, after);
  expect(changedGarment(before, change)).toEqual(after);
  expect(unchangedGarment(after, change)).toEqual(before);
});

it('changedGarment keeps every part the change does not name, and refuses a garment it does not belong to', () => {
  const before = linden();
  const change = garmentChange(before, { ...before, remarks: 'Hem let down.' });
  expect(changedGarment(before, change).pieces).toBe(before.pieces);
  expect(() => changedGarment({ ...before, remarks: 'Quite another.' }, change)).toThrow();
});
