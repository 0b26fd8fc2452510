import { describe, expect, it } from 'vitest';
import type { Seam, SeamLap } from '../../core/garment/seam';
import { matchNotches } from '../../core/seams/match-notches';
import { seamFindings } from '../../core/seams/seam-findings';
import { lapEnd, placeOnSide } from '../../core/seams/seam-sides';
import { walkOfSeam } from '../../core/seams/seam-walk';
import { TRUED, trueSeam } from '../../core/seams/true-seam';
import { idsInOrder } from '../garment/linden';
import { at, pieceOf } from './pieces';
import { edge, foldPanel, garmentWith, seamOf, withNotches } from './seam-garment';

/** Two halves of 170 and a band drawn from its fold at the right: 340 to sew and 30 in laps, 15 at either end. */
const front = withNotches(foldPanel('front', 170, [200, 610]), 'e0', [[60, 1]]);
const band = {
  ...pieceOf([at(0, 0), at(185, 0), at(185, 50), at(0, 50)], [{}, { role: 'fold' }, {}, {}], [], {
    how: 'fold',
    count: 1,
  }),
  id: 'band',
};
const bare = seamOf([edge('front', 'e0', 2)], [edge('band', 'e0', 2)]);
const lap: SeamLap = { side: 'other', length: 30, at: 'end' };
const lapped: Seam = { ...bare, lap };

describe('a seam whose one side laps over', () => {
  it('is walked only where it is sewn, and agrees without any ease', () => {
    const garment = garmentWith([front, band], [lapped]);
    expect(walkOfSeam(garment, bare)?.totals.beyondEase).toBeCloseTo(-30, 9);
    const walk = walkOfSeam(garment, lapped);
    expect(walk?.totals).toMatchObject({ one: 340, other: 340, beyondEase: 0 });
    expect(walk?.lengths).toEqual([170, 170]);
    expect(walk?.partings).toEqual([]);
    expect(seamFindings(garment).filter(({ kind }) => kind === 'seam-off')).toEqual([]);
  });

  it('begins behind the lap where that lies at the start of the walk', () => {
    const garment = garmentWith([front, band]);
    const end = walkOfSeam(garment, lapped);
    const start = walkOfSeam(garment, { ...lapped, lap: { ...lap, at: 'start' } });
    // Walked backwards from its fold the band is 185 at the start and 15 at the end; with the lap first 15 less.
    expect(end && [0, 170].map((along) => placeOnSide(end.other, along).point.x)).toEqual([185, 15]);
    expect(start && [0, 170].map((along) => placeOnSide(start.other, along).point.x)).toEqual([170, 0]);
  });

  it('puts notches across to where they meet when sewn', () => {
    const garment = garmentWith([front, band]);
    const put = (seam: Seam) => matchNotches(garment, seam, { from: 'one', newId: idsInOrder() });
    const alongs = (seam: Seam) => put(seam).pieces[1]?.notches.map(({ along }) => along)[0];
    expect(alongs(lapped)).toBeCloseTo(185 - 60, 9);
    const start = { ...lapped, lap: { ...lap, at: 'start' as const } };
    expect(alongs(start)).toBeCloseTo(170 - 60, 9);
    const walk = walkOfSeam(put(start), start);
    expect(walk?.meetings.map(({ agrees }) => agrees)).toEqual([true]);
  });

  it('wants no partner for a notch on the lap, nor for the one that marks where the lap begins', () => {
    const marked = withNotches(band, 'e0', [
      [7, 2],
      [15, 1],
      [125, 1],
    ]);
    const walk = walkOfSeam(garmentWith([front, marked]), lapped);
    expect(walk?.alone).toEqual([[], []]);
    expect(walk?.meetings.map(({ other, apart }) => [other.id, Math.abs(apart) < 1e-9])).toEqual([['n2', true]]);
    const bareWalk = walkOfSeam(garmentWith([front, marked]), bare);
    expect(bareWalk?.alone[1].length).toBe(2);
  });

  it('is trued to what is sewn, the lap left as long as it is', () => {
    const garment = garmentWith([foldPanel('front', 181, [200, 610]), band]);
    const made = trueSeam(garment, lapped, { move: 'other', where: 'at-end' });
    if ('kind' in made) throw new Error(made.why);
    expect(Math.abs(walkOfSeam(made, lapped)?.totals.beyondEase ?? 9)).toBeLessThanOrEqual(TRUED);
    expect(walkOfSeam(made, bare)?.totals.other).toBeCloseTo(2 * 181 + 30, 1);
  });

  it('lies away from the fold of the band unless she says otherwise', () => {
    const garment = garmentWith([front, band]);
    expect(lapEnd(garment, bare, 'other')).toBe('end');
    expect(lapEnd(garment, { ...bare, way: 'same' }, 'other')).toBe('start');
    expect(lapEnd(garment, seamOf([edge('front', 'e0', 2)], [edge('gone', 'e0')]), 'other')).toBe('end');
  });
});
