import { describe, expect, it } from 'vitest';
import { JOIN_TOLERANCE, waistFindings, waistJoins } from '../../core/fit/waist-smoothness';
import type { Piece } from '../../core/garment/piece';
import type { SeamPair } from '../../core/seams/seam-pairs';
import { curvedWaist } from '../../core/shaping/curved-waist';
import { linden } from '../garment/linden';
import { traced } from '../shaping/traced';

/** A quarter panel of the cone 28, 38, 7 in (mm): its side leans so that a straight waist is off by the panel's angle. */
function panel(name: string): Piece {
  const [w, h, d] = [177.8, 241.3, 177.8];
  return traced(name, [
    [[0, 0], 'waist'],
    [[w, 0], 'seam'],
    [[w + ((h - w) / d) * 600, 600], 'hem'],
    [[0, 600], 'fold'],
  ]);
}

const pairOf = (one: Piece, other: Piece): SeamPair => ({
  one: { pieceId: one.id, edgeId: one.edges[1]?.id ?? '' },
  other: { pieceId: other.id, edgeId: other.edges[1]?.id ?? '' },
  difference: 0,
  by: 'length',
});

describe('waistJoins', () => {
  const [front, back] = [panel('front'), panel('back')];

  it('finds the peak of straight waists on leaning seams: twice the lean of the side', () => {
    const joins = waistJoins([front, back], [pairOf(front, back)]);
    expect(joins.map(({ off }) => off)).toHaveLength(3);
    const lean = Math.atan((241.3 - 177.8) / 177.8);
    expect(joins[0]?.off).toBeCloseTo(0, 12);
    expect(joins[2]?.off).toBeCloseTo(2 * lean, 9);
    expect(joins[2]?.off).toBeGreaterThan(JOIN_TOLERANCE);
  });

  it('runs smoothly across seam and fold once the waists are curved', () => {
    const curved = [front, back].map((piece) => {
      const made = curvedWaist(piece, { waistEdgeId: piece.edges[0]?.id ?? '', length: 177.8, hipDepth: 177.8 });
      if (made.kind !== 'curved-waist') throw new Error(made.why);
      return made.piece;
    });
    for (const { off } of waistJoins(curved, [pairOf(front, back)])) expect(Math.abs(off)).toBeLessThan(1e-9);
  });

  it('passes over seams that do not come up to a waist', () => {
    const flounce = traced('flounce', [
      [[0, 0], 'seam'],
      [[300, 20], 'seam'],
      [[310, 200], 'hem'],
    ]);
    expect(waistJoins([flounce, front], [pairOf(front, flounce)])).toHaveLength(1);
  });
});

describe('waistFindings', () => {
  const [front, back] = [panel('front'), panel('back')];
  const { one, other } = pairOf(front, back);
  const seams = [{ id: 's', name: '', one: [one], other: [other], ease: 0, way: 'same' }] as const;
  const foundIn = (pieces: readonly Piece[]) => waistFindings({ ...linden(), pieces, seams });

  it('warns of a peak at a seam by more than 2 degrees (common practice), where the waist of the first piece can be mended', () => {
    const found = foundIn([front, back]);
    const place = { kind: 'edge', pieceId: front.id, edgeId: front.edges[0]?.id };
    expect(found).toMatchObject([{ kind: 'waist-peak', weight: 'warn', place, otherPieceId: back.id }]);
    expect(found[0]?.off).toBeCloseTo(2 * Math.atan((241.3 - 177.8) / 177.8), 9);
  });

  it('says nothing of a guide', () => {
    expect(foundIn([front, { ...back, use: 'guide' }])).toEqual([]);
  });
});
