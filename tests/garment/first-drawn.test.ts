import { describe, expect, it } from 'vitest';
import { type EarlierStep, firstDrawn, withFirstDrawn } from '../../core/garment/first-drawn';
import type { Garment } from '../../core/garment/garment';
import { movePiece } from '../../core/garment/move-piece';
import { addPiece, removePiece } from '../../core/garment/piece-list';
import { readGarment } from '../../core/garment/schema';
import { withPiece } from '../../core/garment/with-piece';
import { linden, lindenPanel } from './linden';

/** The garment of a program that did not keep how pieces were first drawn. */
function older(): Garment {
  const { traced: _, ...rest } = linden();
  return rest;
}
const shifted = (garment: Garment, id: string, dx: number) =>
  withPiece(garment, id, (piece) => movePiece(piece, { dx, dy: 3 }));
const sleeve = { ...lindenPanel(), id: 'sleeve', name: 'Sleeve' };
const NOW = 1_790_000_000_000;
const nothing = { past: [], time: NOW };
const cut = (garment: Garment) => garment.pieces.filter(({ use }) => use !== 'guide');

describe('withFirstDrawn', () => {
  it('keeps a piece as the step left it that drew it, and leaves it so for ever', () => {
    const before = { ...older(), pieces: [], rings: [], seams: [] };
    const drawn = withFirstDrawn(before, addPiece(before, sleeve), nothing);
    expect(drawn.traced).toEqual([sleeve]);
    const moved = withFirstDrawn(drawn, shifted(drawn, 'sleeve', 7), nothing);
    expect(moved.traced).toBe(drawn.traced);
    const gone = withFirstDrawn(moved, removePiece(moved, 'sleeve'), nothing);
    expect(gone.traced).toBe(drawn.traced);
    const again = withFirstDrawn(gone, addPiece(gone, { ...sleeve, name: 'Another' }), nothing);
    expect(again.traced).toBe(drawn.traced);
    expect(again.tracedLate).toBeUndefined();
  });

  it('gives back what a step would take away or change of it', () => {
    const before = linden();
    const forged = { ...shifted(before, 'panel', 7), traced: [sleeve], tracedLate: [{ pieceId: 'panel', since: 5 }] };
    const { traced: _, ...without } = forged;
    for (const after of [forged, without]) {
      const kept = withFirstDrawn(before, after, nothing);
      expect(kept.traced?.slice(0, before.traced?.length)).toEqual(before.traced);
    }
  });

  it('leaves guides out', () => {
    const before = older();
    const guide = { ...sleeve, use: 'guide' as const };
    const after = withFirstDrawn(before, addPiece(before, guide), nothing);
    expect(after.traced?.map(({ id }) => id)).toEqual(cut(before).map(({ id }) => id));
  });

  it('can be read again, and touches no garment without pieces', () => {
    const before = older();
    expect(readGarment(withFirstDrawn(before, shifted(before, 'panel', 7), nothing)).kind).toBe('garment');
    const empty = { ...before, pieces: [], rings: [], seams: [] };
    const named = { ...empty, name: 'Another' };
    expect(withFirstDrawn(empty, named, nothing)).toBe(named);
  });
});

describe('firstDrawn of a garment that came before this was kept', () => {
  it('finds in the steps before how a piece came about', () => {
    const bare = { ...older(), pieces: [], rings: [], seams: [] };
    const drawn = addPiece(bare, sleeve);
    const once = shifted(drawn, 'sleeve', 7);
    const twice = shifted(once, 'sleeve', 11);
    const past: EarlierStep[] = [
      { before: bare, after: drawn, time: NOW - 30 },
      { before: drawn, after: once, time: NOW - 20 },
      { before: once, after: twice, time: NOW - 10 },
    ];
    expect(firstDrawn(twice, past, NOW)).toEqual({ traced: [sleeve], late: [] });
    // Where only the last two steps can be undone, the earliest that is known stands for it, and is said to be late.
    expect(firstDrawn(twice, past.slice(1), NOW)).toEqual({
      traced: [sleeve],
      late: [{ pieceId: 'sleeve', since: NOW - 20 }],
    });
    expect(firstDrawn(twice, past.slice(2), NOW).traced).toEqual([once.pieces[0]]);
  });

  it('says of a piece without any step before that it is known only from now on', () => {
    const garment = older();
    const { traced, late } = firstDrawn(garment, [], NOW);
    expect(traced).toEqual(cut(garment));
    expect(late).toEqual(cut(garment).map(({ id }) => ({ pieceId: id, since: NOW })));
  });

  it('is kept with the first step that follows, as the draft was before that step', () => {
    const before = older();
    const after = withFirstDrawn(before, shifted(before, 'panel', 7), nothing);
    expect(after.traced).toEqual(cut(before));
    expect(after.tracedLate?.map(({ pieceId }) => pieceId)).toContain('panel');
  });
});
