import { describe, expect, it } from 'vitest';
import { bodice } from '../../core/blocks/bodice';
import { bodicePieces } from '../../core/blocks/bodice-pieces';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { pathAtLength } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { proposeSeamPairs } from '../../core/seams/seam-pairs';
import { plainNames } from './body-checks';
import { upperBody } from './upper-body';

function pieces(opens: 'back' | 'front'): Piece[] {
  const draft = bodice(upperBody, { bust: 68, waist: 27 });
  if (draft.kind !== 'bodice') throw new Error(draft.why);
  return bodicePieces(draft, { opens }, plainNames());
}

describe('bodicePieces', () => {
  it('opens down the back or down the front, the other on the fold', () => {
    const centres = (opens: 'back' | 'front') => pieces(opens).map(({ cut, edges }) => [cut.how, edges.at(-1)?.role]);
    expect(centres('back')).toEqual([
      ['pair', 'opening'],
      ['fold', 'fold'],
    ]);
    expect(centres('front')).toEqual([
      ['fold', 'fold'],
      ['pair', 'opening'],
    ]);
  });

  it('has shoulders and sewn sides that find their partners and are as long', () => {
    const named = proposeSeamPairs(pieces('back')).filter(({ by }) => by === 'name');
    expect(named.length).toBe(3);
    const names = new Set(['side-seam', 'shoulder-seam']);
    const made = pieces('back');
    const matched = named.filter(({ one }) =>
      made.some(({ edges }) => edges.some(({ id, name }) => id === one.edgeId && names.has(name))),
    );
    expect(matched).toHaveLength(2);
    for (const { difference } of matched) expect(Math.abs(difference)).toBeLessThan(0.05);
  });

  it('has darts whose legs are even where they meet the drawn edge', () => {
    for (const piece of pieces('back')) {
      for (const { edgeId, along, width, point } of piece.darts) {
        const path = outlineOf(piece).edges[piece.edges.findIndex(({ id }) => id === edgeId)] ?? [];
        const legs = [along - width / 2, along + width / 2].map((at) => distance(pathAtLength(path, at).point, point));
        expect(Math.abs((legs[0] ?? 0) - (legs[1] ?? 9))).toBeLessThan(0.05);
      }
    }
    expect(pieces('back').map(({ darts }) => darts.length)).toEqual([1, 2]);
  });
});
