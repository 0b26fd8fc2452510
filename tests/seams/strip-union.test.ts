import { describe, expect, it } from 'vitest';
import { signedArea } from '../../core/geometry/path';
import { allowanceStrips } from '../../core/seams/allowance-strips';
import { stripUnion } from '../../core/seams/strip-union';
import { at, pieceOf } from './pieces';

describe('stripUnion', () => {
  it('goes round piece and strips, each stretch by the edge it came from', () => {
    const piece = pieceOf(
      [at(0, 0), at(200, 0), at(200, 300), at(0, 300)],
      [{ allowance: 9 }, { allowance: 15 }, { allowance: 40 }, { role: 'fold' }],
    );
    const union = stripUnion(allowanceStrips(piece).strips, 1);
    if (union.kind !== 'boundary') throw new Error(union.kind);
    for (const parts of [union.exact, union.flat]) {
      expect(signedArea(parts.flatMap(({ path }) => path))).toBeCloseTo(215 * 349, 1);
      expect(new Set(parts.map(({ edgeIndex }) => edgeIndex))).toEqual(new Set([0, 1, 2, 3]));
    }
  });

  it('lets a short edge be swallowed by its neighbours', () => {
    // A step 3 deep under allowances of 20: the strips on either side cover it.
    const corners = [at(0, 0), at(100, 0), at(100, 3), at(220, 3), at(220, 150), at(0, 150)];
    const piece = pieceOf(
      corners,
      corners.map((_, i) => ({ allowance: i === 1 ? 0.5 : 20 })),
    );
    const union = stripUnion(allowanceStrips(piece).strips, 1);
    if (union.kind !== 'boundary') throw new Error(union.kind);
    const area = signedArea(union.flat.flatMap(({ path }) => path));
    expect(area).toBeGreaterThan(260 * 187);
    expect(area).toBeLessThan(260 * 190);
  });
});
