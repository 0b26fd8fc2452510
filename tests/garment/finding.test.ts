import { describe, expect, it } from 'vitest';
import { newFindings, type Place, sameFinding, type Weight } from '../../core/garment/finding';

const edge = (edgeId: string): Place => ({ kind: 'edge', pieceId: 'p', edgeId });
const found = (kind: string, place: Place, weight: Weight = 'warn', more: object = {}) => ({
  kind,
  place,
  weight,
  ...more,
});

describe('sameFinding', () => {
  it('goes by kind and place, whatever the numbers and the weight', () => {
    const one = found('seam-off', edge('a'), 'warn', { by: 3 });
    expect(sameFinding(one, found('seam-off', edge('a'), 'stop', { by: 9 }))).toBe(true);
    expect(sameFinding(one, found('seam-off', edge('b'), 'warn', { by: 3 }))).toBe(false);
    expect(sameFinding(one, found('hem-shows', edge('a'), 'warn', { by: 3 }))).toBe(false);
    expect(sameFinding(one, found('seam-off', { kind: 'piece', pieceId: 'p' }))).toBe(false);
  });

  it('tells the sides of a body and the places of a hem apart, but not points that moved', () => {
    const ring: Place = { kind: 'ring', ringId: 'r' };
    const at = (more: object) => found('hem-shows', ring, 'warn', more);
    expect(sameFinding(at({ at: 'front' }), at({ at: 'back' }))).toBe(false);
    expect(sameFinding(at({ side: 'left' }), at({ side: 'right' }))).toBe(false);
    expect(sameFinding(at({ at: { x: 1, y: 2 } }), at({ at: { x: 3, y: 4 } }))).toBe(true);
  });
});

describe('newFindings', () => {
  it('is what was not there before, and what now holds back cutting where it only warned', () => {
    const before = [found('a', edge('1')), found('b', edge('1')), found('c', edge('1'), 'stop')];
    const after = [found('a', edge('1'), 'stop'), found('b', edge('1')), found('c', edge('1')), found('d', edge('2'))];
    expect(newFindings(before, after)).toEqual([after[0], after[3]]);
  });
});
