import { describe, expect, it } from 'vitest';
import { timesRound } from '../../core/fit/times-round';
import { traced } from '../shaping/traced';

const piece = traced('p', [
  [[0, 0], 'waist'],
  [[210, 5], 'seam'],
  [[220, 600], 'hem'],
]);

describe('timesRound', () => {
  it('counts a piece on the fold twice, a pair and a single as often as they are cut', () => {
    const member = { pieceId: piece.id };
    expect(timesRound({ ...piece, cut: { how: 'fold', count: 3 } }, member)).toBe(6);
    expect(timesRound({ ...piece, cut: { how: 'pair', count: 2 } }, member)).toBe(2);
    expect(timesRound({ ...piece, cut: { how: 'single', count: 5 } }, member)).toBe(5);
  });

  it('lets what is said for the ring rule', () => {
    expect(timesRound({ ...piece, cut: { how: 'fold', count: 3 } }, { pieceId: piece.id, times: 1 })).toBe(1);
  });
});
