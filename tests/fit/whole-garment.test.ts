import { describe, expect, it } from 'vitest';
import { timesInGarment } from '../../core/fit/whole-garment';
import type { Piece } from '../../core/garment/piece';
import { setTimes } from '../../core/garment/ring-edits';
import { traced } from '../shaping/traced';
import { figure, garmentOf } from './skirts';

const quarter: Piece = {
  ...traced('q', [
    [[0, 0], 'waist'],
    [[178, 0], 'seam'],
    [[240, 600], 'hem'],
    [[0, 600], 'fold'],
  ]),
  cut: { how: 'fold', count: 2 },
};

describe('timesInGarment', () => {
  it('is as often as the piece goes round its ring, else as its cut says', () => {
    const { garment, ring } = garmentOf([quarter], figure);
    expect(timesInGarment(garment, quarter)).toBe(4);
    expect(timesInGarment(setTimes(garment, ring.id, quarter.id, 3), quarter)).toBe(3);
    expect(timesInGarment({ ...garment, rings: [] }, quarter)).toBe(4);
  });
});
