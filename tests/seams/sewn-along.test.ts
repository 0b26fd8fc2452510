import { describe, expect, it } from 'vitest';
import { drawnAlong, sewnAlong } from '../../core/seams/sewn-along';
import { at, pieceOf } from './pieces';

const plain = pieceOf([at(0, 0), at(260, 0), at(300, 410)], []);
const darted = { ...plain, darts: [{ id: 'd', edgeId: 'e0', along: 90, width: 24, point: at(90, 120) }] };

describe('sewnAlong and drawnAlong(piece, edge, length)', () => {
  it('pass over a dart: what lies 40 mm beyond its mouth lies 40 mm beyond its seam', () => {
    expect(sewnAlong(darted, 'e0', 142)).toBeCloseTo(118, 9);
    expect(drawnAlong(darted, 'e0', 118)).toBeCloseTo(142, 8);
    expect(drawnAlong(darted, 'e0', 61)).toBeCloseTo(61, 8);
  });

  it('give the near end of a mouth where a dart closes, and the ends of the edge for lengths outside it', () => {
    expect(drawnAlong(darted, 'e0', 78)).toBeCloseTo(78, 6);
    expect([drawnAlong(darted, 'e0', -5), drawnAlong(darted, 'e0', 900)]).toEqual([0, 260]);
    expect(drawnAlong(darted, 'none', 5)).toBeUndefined();
  });
});
