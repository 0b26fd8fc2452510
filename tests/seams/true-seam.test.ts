import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import { nearestOnPath, pathAtLength, pathLength } from '../../core/geometry/path';
import { matchNotches } from '../../core/seams/match-notches';
import { walkOfSeam } from '../../core/seams/seam-walk';
import { trueSeam } from '../../core/seams/true-seam';
import { edge, foldPanel, garmentWith, seamOf, withNotches } from './seam-garment';

const side = seamOf([edge('front', 'e1')], [edge('back', 'e1')], { way: 'same' });
const front = foldPanel('front', 170, [200, 610]);
const longer = (by: number) => foldPanel('back', 190, [215, 610 + by]);
const made = (result: ReturnType<typeof trueSeam>) => {
  if ('kind' in result) throw new Error(result.why);
  return result;
};

describe('trueSeam(garment, seam, options)', () => {
  it('agrees within a hundredth of a millimetre; the far corner and the other side stay', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -30, max: 30, noNaN: true }),
        fc.double({ min: -9, max: 9, noNaN: true }),
        fc.constantFrom('one' as const, 'other' as const, 'both' as const),
        fc.constantFrom('at-end' as const, 'at-start' as const, 'spread' as const),
        (by, ease, move, where) => {
          const seam = { ...side, ease };
          const garment = garmentWith([front, longer(by)], [seam]);
          const trued = made(trueSeam(garment, seam, { move, where }));
          expect(Math.abs(walkOfSeam(trued, seam)?.totals.beyondEase ?? 99)).toBeLessThanOrEqual(0.01);
          if (move === 'one') expect(trued.pieces[1]).toBe(garment.pieces[1]);
          if (move === 'other') expect(trued.pieces[0]).toBe(garment.pieces[0]);
          const stays = where === 'at-start' ? 2 : 1;
          trued.pieces.forEach((piece, i) => {
            expect(piece.corners[stays]?.at).toEqual(garment.pieces[i]?.corners[stays]?.at);
          });
        },
      ),
      { seed: 7, numRuns: 60 },
    );
  });

  it('shortens an edge along its own course: nowhere further than a quarter of a millimetre off it', () => {
    const garment = garmentWith([front, longer(22)], [side]);
    const trued = made(trueSeam(garment, side, { move: 'other', where: 'at-end' }));
    const [was, is] = [garment, trued].map(({ pieces }) => outlineOf(pieces[1] as typeof front).edges[1] ?? []);
    const length = pathLength(is ?? []);
    for (let i = 0; i <= 40; i++) {
      const { point } = pathAtLength(is ?? [], (length * i) / 40);
      expect(nearestOnPath(was ?? [], point).distance).toBeLessThan(0.25);
    }
  });

  it('is the same garment when nothing is off, and refuses what cannot give', () => {
    const even = garmentWith([front, { ...front, id: 'back' }], [side]);
    expect(trueSeam(even, side, { move: 'both', where: 'at-end' })).toBe(even);
    const mirror = seamOf([edge('front', 'e1')], [edge('front', 'e1')]);
    expect(trueSeam(even, mirror, { move: 'one', where: 'spread' })).toMatchObject({ why: 'own-mirror' });
    const waists = seamOf([edge('front', 'e0')], [edge('back', 'e0')], { way: 'same' });
    const off = garmentWith([front, longer(0)], [waists]);
    expect(trueSeam(off, waists, { move: 'one', where: 'at-start' })).toMatchObject({
      why: 'on-a-fold',
      edge: edge('front', 'e0'),
    });
    const notched = withNotches(longer(22), 'e1', [[pathLength(outlineOf(longer(22)).edges[1] ?? []) - 4, 1]]);
    const marked = garmentWith([front, notched], [side]);
    expect(trueSeam(marked, side, { move: 'other', where: 'at-end' })).toMatchObject({ why: 'marks-in-the-way' });
  });
});

describe('matchNotches(garment, seam, options)', () => {
  const ids = () => {
    let count = 0;
    return () => `new${++count}`;
  };

  it('gives every notch a partner that meets it, the ease spread, and moves the one it had', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 19 }), { minLength: 1, maxLength: 4 }),
        fc.double({ min: -8, max: 8, noNaN: true }),
        fc.constantFrom('one' as const, 'other' as const),
        (places, ease, from) => {
          const seam = { ...side, ease };
          const marks = places.map((place) => [place * 30, ((place % 3) + 1) as 1 | 2 | 3] as const);
          const pieces = [front, { ...longer(0), id: 'back' }].map((piece, i) =>
            (from === 'one') === (i === 0) ? withNotches(piece, 'e1', marks) : withNotches(piece, 'e1', [[77, 2]]),
          );
          const trued = made(trueSeam(garmentWith(pieces, [seam]), seam, { move: 'other', where: 'at-end' }));
          const matched = matchNotches(trued, seam, { from, newId: ids() });
          const walk = walkOfSeam(matched, seam);
          expect(walk?.meetings.length).toBeGreaterThanOrEqual(places.length);
          expect(walk?.alone[from === 'one' ? 0 : 1]).toEqual([]);
          for (const { apart } of walk?.meetings ?? []) expect(Math.abs(apart)).toBeLessThan(0.01);
          expect(matchNotches(matched, seam, { from, newId: ids() })).toBe(matched);
        },
      ),
      { seed: 11, numRuns: 60 },
    );
  });
});
