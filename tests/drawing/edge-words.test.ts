import { describe, expect, it } from 'vitest';
import { edgeWords } from '../../core/drawing/edge-words';
import { placeInRing } from '../../core/geometry/polygon';
import { at, pieceOf, runBackwards } from '../seams/pieces';

const corners = [at(0, 0), at(210, 0), at(260, 410), at(0, 380)];
const piece = pieceOf(corners, [{ allowance: 12 }, {}, { role: 'hem', allowance: 0 }, { role: 'fold' }]);

describe('edgeWords(piece)', () => {
  it('says lengths and the allowances that have been said, none at a fold', () => {
    const both = edgeWords(piece, { say: 'both' }).map(({ edgeId, content }) => `${edgeId} ${content.kind}`);
    expect(both).toEqual([
      'e0 edge-length',
      'e0 edge-allowance',
      'e1 edge-length',
      'e2 edge-length',
      'e2 edge-allowance',
      'e3 edge-length',
    ]);
    expect(edgeWords(piece, { say: 'allowances' })).toHaveLength(2);
  });

  it('puts every word inside, never upside down, whichever way the outline is run', () => {
    for (const each of [piece, runBackwards(piece)]) {
      for (const { at: place, angle } of edgeWords(each, { say: 'both' })) {
        expect(placeInRing(corners, place)).toBe('inside');
        expect(Math.abs(angle)).toBeLessThanOrEqual(Math.PI / 2);
      }
    }
  });
});
