import { describe, expect, it } from 'vitest';
import type { Piece } from '../../core/garment/piece';
import { proposeSeamPairs } from '../../core/seams/seam-pairs';
import { at, pieceOf } from './pieces';

/** A panel whose right edge, index 1, and left edge, index 3, have these lengths and names. */
function panel(id: string, right: number, left: number, names: readonly [string, string] = ['', '']): Piece {
  const piece = pieceOf(
    [at(0, 0), at(200, 0), at(200, right), at(0, left)],
    [{ role: 'waist' }, { name: names[0] }, { role: 'hem' }, { name: names[1] }],
  );
  return { ...piece, id };
}

describe('proposeSeamPairs(pieces)', () => {
  it('pairs edges of the same name even when they differ, and says by how much', () => {
    const pairs = proposeSeamPairs([
      panel('front', 606.35, 500, ['Side', 'a']),
      panel('back', 700, 600, ['b', ' side ']),
    ]);
    expect(pairs[0]).toMatchObject({
      one: { pieceId: 'front', edgeId: 'e1' },
      other: { pieceId: 'back', edgeId: 'e3' },
      by: 'name',
    });
    expect(pairs[0]?.difference).toBeCloseTo(6.35, 9);
  });

  it('pairs the nearest lengths within a sixteenth of an inch, on different pieces first, each edge once', () => {
    const pairs = proposeSeamPairs([panel('a', 600, 601), panel('b', 600.9, 640), panel('c', 700, 800)]);
    expect(pairs).toHaveLength(1);
    expect(pairs[0]).toMatchObject({ one: { pieceId: 'a', edgeId: 'e3' }, other: { pieceId: 'b', edgeId: 'e1' } });
  });

  it('pairs both sides of one piece that is cut many times', () => {
    expect(proposeSeamPairs([panel('gore', 620, 620.5)])).toHaveLength(1);
  });
});
