import { describe, expect, it } from 'vitest';
import { arcPlace } from '../../core/blocks/arc-run';
import { type PlainSkirt, type PlainSkirtSizes, plainSkirt, plainSkirtPieces } from '../../core/blocks/plain-skirt';
import { distance } from '../../core/geometry/point';
import { proposeSeamPairs } from '../../core/seams/seam-pairs';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { plainNames, sewnRound } from './body-checks';

/** 28 + 1 and 38 + 2 in, the common practice of a plain skirt: 11 in to take out, 2 3/4 a quarter. */
const sizes: PlainSkirtSizes = { waist: inches(29), hip: inches(40), hipDepth: inches(7), length: inches(26) };

function drawn(changed: Partial<PlainSkirtSizes> = {}): PlainSkirt {
  const made = plainSkirt({ ...sizes, ...changed });
  if (made.kind !== 'plain-skirt') throw new Error(made.why);
  return made;
}

describe('plainSkirt', () => {
  it('gives a third of 2 3/4 in to the side, within the usual 3/4 to 1, and no dart over 1 1/4', () => {
    const { front, back } = drawn();
    expect((inches(10) - front.waist.length) / MM_PER_INCH).toBeCloseTo(2.75 / 3, 9);
    const takeUp = (quarter: typeof front) => quarter.darts.reduce((sum, { width }) => sum + width, 0) / MM_PER_INCH;
    expect(takeUp(front)).toBeCloseTo(((2 * 5.5) / 3) * 0.4, 9);
    expect(takeUp(back)).toBeCloseTo(((2 * 5.5) / 3) * 0.6, 9);
    for (const { width } of [...front.darts, ...back.darts]) expect(width).toBeLessThan(inches(1.25));
  });

  it('has darts with even legs, shorter before than behind and ending above the hip', () => {
    const { front, back } = drawn();
    for (const { waist, darts } of [front, back]) {
      for (const { along, width, point } of darts) {
        const legs = [along - width / 2, along + width / 2].map((at) => distance(arcPlace(waist, at).point, point));
        expect(Math.abs((legs[0] ?? 0) - (legs[1] ?? 9))).toBeLessThan(1e-9);
        expect(point.y).toBeLessThan(inches(6));
      }
    }
    expect(Math.max(...front.darts.map(({ point }) => point.y))).toBeLessThan(
      Math.min(...back.darts.map(({ point }) => point.y)),
    );
  });

  it('rises at the side as the cone of what the side takes: 0.5 to 0.6 in for a taper of 11/12', () => {
    // Quick form of the cone's rise: width × taper / (2 × depth), 9.083 × 0.917 / 14 = 0.595.
    expect(-drawn().front.waistCorner.y / MM_PER_INCH).toBeCloseTo(0.595, 2);
  });

  it('flares to a hem that is asked for, and refuses what has no length', () => {
    expect(drawn({ hem: inches(60) }).front.hem.length).toBeCloseTo(inches(15), 9);
    expect(plainSkirt({ ...sizes, length: inches(7) })).toEqual({ kind: 'no-gore', why: 'hip-below-hem' });
    expect(plainSkirt({ ...sizes, hip: 0 })).toEqual({ kind: 'no-gore', why: 'not-positive' });
  });
});

describe('plainSkirtPieces', () => {
  it('comes to the waist asked for once its darts are sewn, with sides that are one line', () => {
    const pieces = plainSkirtPieces(sizes, plainNames());
    if (!Array.isArray(pieces)) throw new Error(pieces.why);
    expect(Math.abs(sewnRound(pieces, ({ role }) => role === 'waist') - inches(29))).toBeLessThan(0.05);
    const [pair] = proposeSeamPairs(pieces).filter(({ by }) => by === 'name');
    expect(Math.abs(pair?.difference ?? 99)).toBeLessThan(1e-9);
    expect(pieces.map(({ cut }) => cut.how)).toEqual(['fold', 'pair']);
  });
});
