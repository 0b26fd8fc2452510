import { describe, expect, it } from 'vitest';
import { childsDrawers, schoolDrawers } from '../../core/blocks/drawers-on-fold';
import { drawersPieces } from '../../core/blocks/drawers-pieces';
import { outlineOf } from '../../core/garment/outline';
import { pathBounds, signedArea } from '../../core/geometry/path';
import { selfCrossings } from '../../core/geometry/self-crossing';
import { proposeSeamPairs } from '../../core/seams/seam-pairs';
import { inches } from '../../core/units/inch';
import { plainNames } from './body-checks';
import { expectInches } from './in-inches';

describe('drawersPieces', () => {
  it('opens a leg out: twice 18 in wide, cut as a pair, clockwise (Burton, School Sewing, 1910s)', () => {
    const leg = schoolDrawers({ hip: inches(40), side: inches(23) });
    if (leg.kind !== 'drawers') throw new Error(leg.why);
    const [piece] = drawersPieces(leg, plainNames());
    if (!piece) throw new Error('no piece');
    const { whole } = outlineOf(piece);
    const { minX, maxX } = pathBounds(whole);
    expectInches(maxX - minX, 36);
    expect(piece.cut).toEqual({ how: 'pair', count: 2 });
    expect(signedArea(whole)).toBeGreaterThan(0);
    expect(selfCrossings(whole)).toEqual([]);
  });

  it('sews the inner leg to itself, both sides alike (Hapgood, School Needlework, 1890s)', () => {
    const leg = childsDrawers({ leg: inches(17) });
    if (leg.kind !== 'drawers') throw new Error(leg.why);
    const pieces = drawersPieces(leg, plainNames());
    const named = proposeSeamPairs(pieces).filter(({ by }) => by === 'name');
    expect(named).toHaveLength(1);
    expect(Math.abs(named[0]?.difference ?? 99)).toBeLessThan(1e-6);
  });
});
