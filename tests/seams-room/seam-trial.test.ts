import { describe, expect, it } from 'vitest';
import { firstWay, type TriedSeam, trySeamOn } from '../../app/seams/seam-trial';
import { pieceOf } from '../../core/garment/with-piece';
import { edgeLength } from '../../core/seams/edge-length';
import { walkOfSeam } from '../../core/seams/seam-walk';
import { inches } from '../../core/units/inch';
import { idsInOrder } from '../garment/linden';
import { bandSeam, centreBackSeam, sideSeam, skirtAndBand } from './skirt-and-band';

const garment = skirtAndBand();
const tryOn = (trial: Parameters<typeof trySeamOn>[2], seam = sideSeam) =>
  trySeamOn(garment, seam, trial, idsInOrder());
const garmentOf = (tried: TriedSeam) => (tried.kind === 'tried' ? tried.garment : undefined);

describe('trySeamOn(garment, seam, trial, newId)', () => {
  it('trues the side that gives and leaves the other piece as it is', () => {
    const after = garmentOf(tryOn({ kind: 'lengths', move: 'other', where: 'at-end' }));
    const back = after && pieceOf(after, 'back');
    expect(back && edgeLength(back, 'back-3')).toBeCloseTo(inches(25), 1);
    expect(after && pieceOf(after, 'front')).toBe(pieceOf(garment, 'front'));
  });

  it('puts notches across, so that all of them meet', () => {
    const after = garmentOf(tryOn({ kind: 'notches', from: 'one' }));
    const walk = after && walkOfSeam(after, sideSeam);
    expect(walk?.meetings.map(({ agrees }) => agrees)).toEqual([true, true]);
    expect(walk?.other.notches[1]?.along).toBeCloseTo(inches(16), 6);
  });

  it('gives the corners before and after, which then come to a straight line', () => {
    const tried = tryOn({ kind: 'corners', end: 'at-start', how: 'blend' });
    const corners = tried.kind === 'tried' ? tried.corners : undefined;
    // Two waists that run level meet sides that lean out by atan(7/24) and by acos(24 / 25 1/4).
    expect(corners?.before.off).toBeCloseTo(Math.atan2(7, 24) + Math.acos(24 / 25.25), 9);
    expect(corners?.after.off).toBeCloseTo(0, 2);
  });

  it('says why when nothing can be made of it', () => {
    const tried = tryOn({ kind: 'lengths', move: 'one', where: 'at-end' }, centreBackSeam);
    expect(tried).toEqual({ kind: 'not-trued', why: 'own-mirror' });
  });
});

describe('firstWay(garment, seam)', () => {
  it('lets the second side give at its end where it can', () => {
    expect(firstWay(garment, sideSeam)).toEqual({ move: 'other', where: 'at-end' });
  });

  it('goes on to a way that works where the corner that would move is on a fold', () => {
    // Walked the way it is drawn, the lower edge of the band ends at its fold.
    const turned = { ...bandSeam, way: 'same' as const };
    expect(tryOn({ kind: 'lengths', move: 'other', where: 'at-end' }, turned)).toMatchObject({ why: 'on-a-fold' });
    const way = firstWay(garment, turned);
    expect(way).not.toEqual({ move: 'other', where: 'at-end' });
    expect(tryOn({ kind: 'lengths', ...way }, turned).kind).toBe('tried');
  });
});
