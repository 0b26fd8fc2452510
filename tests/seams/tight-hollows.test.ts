import { describe, expect, it } from 'vitest';
import { distance } from '../../core/geometry/point';
import { tightHollows } from '../../core/seams/tight-hollows';
import { at, pieceOf, runBackwards } from './pieces';

/** A block 300 by 200 with a half circle of this radius cut out of the middle of its top. */
function block(radius: number, allowance: number) {
  const through = Array.from({ length: 11 }, (_, i) => {
    const angle = Math.PI - ((i + 1) * Math.PI) / 12;
    return at(150 + radius * Math.cos(angle), radius * Math.sin(angle));
  });
  const corners = [at(0, 0), at(150 - radius, 0), at(150 + radius, 0), at(300, 0), at(300, 200), at(0, 200)];
  return pieceOf(corners, [{ allowance }, { allowance, through }, ...Array(4).fill({ allowance })]);
}

describe('tightHollows(piece)', () => {
  it('names an edge whose radius is less than its allowance, at a place on it', () => {
    for (const piece of [block(12, 15.875), runBackwards(block(12, 15.875))]) {
      const found = tightHollows(piece);
      expect(found.length).toBeGreaterThan(0);
      for (const { edgeId, at: place, width } of found) {
        expect([edgeId, width]).toEqual(['e1', 15.875]);
        expect(distance(place, at(150, 0))).toBeCloseTo(12, 1);
      }
    }
  });

  it('says nothing of one with more radius than allowance, nor of an edge that bulges', () => {
    expect(tightHollows(block(19, 15.875))).toEqual([]);
    const bulging = pieceOf(
      [at(0, 0), at(20, 0), at(20, 300), at(0, 300)],
      [{ allowance: 40, through: [at(10, -10)] }, ...Array(3).fill({ allowance: 9 })],
    );
    expect(tightHollows(bulging)).toEqual([]);
  });
});
