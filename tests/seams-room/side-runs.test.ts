import { describe, expect, it } from 'vitest';
import { alongAt, runsBetween } from '../../app/seams/side-runs';
import type { Seam } from '../../core/garment/seam';
import { pathEnd, pathLength, pathStart } from '../../core/geometry/path';
import { seamSides } from '../../core/seams/seam-sides';
import { inches } from '../../core/units/inch';
import { sideSeam, skirtAndBand } from './skirt-and-band';

const garment = skirtAndBand();
const sides = seamSides(garment, sideSeam);

describe('runsBetween(side, from, to)', () => {
  it('gives the drawn line between two places of a side that is walked as it is drawn', () => {
    const [run, ...more] = sides ? runsBetween(sides.one, inches(5), inches(20)) : [];
    expect(more).toEqual([]);
    expect(run?.pieceId).toBe('front');
    // A fifth of the way down 7, 24, 25, and four fifths.
    expect(pathStart(run?.path ?? []).x).toBeCloseTo(inches(7 + 1.4), 9);
    expect(pathStart(run?.path ?? []).y).toBeCloseTo(inches(4.8), 9);
    expect(pathEnd(run?.path ?? []).y).toBeCloseTo(inches(19.2), 9);
  });

  it('counts from the other end on a side that is walked against its drawing', () => {
    const [run] = sides ? runsBetween(sides.other, inches(8), inches(16.25)) : [];
    expect(pathLength(run?.path ?? [])).toBeCloseTo(inches(8.25), 6);
    // The edge is drawn upwards, so its run ends at the place nearer the waist.
    expect(pathEnd(run?.path ?? []).y).toBeCloseTo(inches((24 * 8) / 25.25), 6);
  });

  it('gives nothing where nothing lies between', () => {
    expect(sides && runsBetween(sides.one, inches(9), inches(9))).toEqual([]);
  });
});

describe('alongAt(side, place, near)', () => {
  it('finds the place of the walk and how far off the line one is', () => {
    // Ten inches down the side, then 3 mm out square to it: (24, -7)/25 is square to (7, 24)/25.
    const place = { x: inches(7 + 2.8) + (3 * 24) / 25, y: inches(9.6) - (3 * 7) / 25 };
    const found = sides && alongAt(sides.one, place, 0);
    expect(found?.along).toBeCloseTo(inches(10), 6);
    expect(found?.off).toBeCloseTo(3, 6);
  });

  it('takes the coming of an edge that is nearer to where the walk is', () => {
    // The band's two halves, joined at the fold, are walked one after the other over the same drawn line.
    const twice: Seam = { ...sideSeam, one: [{ pieceId: 'band', edgeId: 'band-2', times: 2 }] };
    const band = seamSides(garment, twice)?.one;
    const place = { x: inches(8 + 3), y: inches(-6) };
    const comings = [0, inches(28)].map((near) => band && alongAt(band, place, near)?.along);
    expect((comings[0] ?? 0) + (comings[1] ?? 0)).toBeCloseTo(inches(28), 6);
    expect(comings[0]).toBeCloseTo(inches(14 - 3), 6);
  });
});
