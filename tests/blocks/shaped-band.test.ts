import { describe, expect, it } from 'vitest';
import { sector } from '../../core/blocks/sector';
import { shapedBand, shapedBandPieces } from '../../core/blocks/shaped-band';
import { outlineOf } from '../../core/garment/outline';
import { pathLength } from '../../core/geometry/path';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { plainNames, timesRound } from './body-checks';
import { printed } from './in-inches';

/** A waist of 28 and a hip of 38, 7 in down: computed from the rule of Laura I. Baldt, Clothing for Women (1916). */
const body = { waist: inches(28), hip: inches(38), hipDepth: inches(7) };

describe('shapedBand', () => {
  it.each([
    [1, 20.6, 29.429, 1.43],
    [1.25, 20.85, 29.786, 1.79],
    [1.5, 21.1, 30.143, 2.14],
    [2, 21.6, 30.857, 2.86],
    [2.5, 22.1, 31.571, 3.57],
    [3, 22.6, 32.286, 4.29],
  ])('%f in deep: outer radius %f, lower edge %f, and a straight strip off by %f', (depth, outer, lower, off) => {
    const band = shapedBand({ ...body, depth: inches(depth) });
    expect(band.bottom / MM_PER_INCH).toBeCloseTo(lower, 3);
    expect(Math.abs(band.straightError / MM_PER_INCH - off)).toBeLessThan(0.0051);
    const drawn = sector({ ...band, sections: 1 });
    expect(drawn.kind === 'sector' && (drawn.radii?.top ?? 0) / MM_PER_INCH).toBeCloseTo(19.6, 9);
    expect(drawn.kind === 'sector' && (drawn.radii?.bottom ?? 0) / MM_PER_INCH).toBeCloseTo(outer, 9);
  });

  it('begins at a level below the waist with what the body measures there', () => {
    const band = shapedBand({ ...body, depth: inches(2), below: inches(1) });
    expect(band.top / MM_PER_INCH).toBeCloseTo(28 + 10 / 7, 9);
    expect(band.bottom / MM_PER_INCH).toBeCloseTo(28 + 30 / 7, 9);
  });

  it('puts the ends of a half band 2 in deep where the arcs put them', () => {
    const drawn = sector({ ...shapedBand({ ...body, depth: inches(2) }), sections: 1 });
    if (drawn.kind !== 'sector') throw new Error(drawn.why);
    expect((drawn.angle * 90) / Math.PI).toBeCloseTo(40.926, 3);
    const [top, bottom] = [printed(drawn.topEnd), printed(drawn.bottomEnd)];
    expect([top[0], top[1], bottom[0], bottom[1]].map((each) => each.toFixed(2))).toEqual([
      '12.84',
      '4.79',
      '14.15',
      '3.28',
    ]);
  });
});

describe('shapedBandPieces', () => {
  const cases = [
    { on: 'fold', parts: 1, lap: 0, cuts: ['fold 1'] },
    { on: 'fold', parts: 1, lap: 1, cuts: ['fold 1'] },
    { on: 'fold', parts: 3, lap: 0.75, cuts: ['single 1', 'fold 2'] },
    { on: 'whole', parts: 1, lap: 1, cuts: ['single 1'] },
    { on: 'whole', parts: 2, lap: 0, cuts: ['single 2'] },
    { on: 'whole', parts: 4, lap: 1.25, cuts: ['single 1', 'single 3'] },
  ] as const;

  it.each(cases)('$on in $parts with a lap of $lap in comes to the waist and the lap', ({ on, parts, lap, cuts }) => {
    const made = shapedBandPieces({ ...body, depth: inches(2), parts, lap: inches(lap), on }, plainNames());
    if (!Array.isArray(made)) throw new Error(made.why);
    expect(made.map(({ cut }) => `${cut.how} ${cut.count}`)).toEqual(cuts);
    const round = (edge: number) =>
      made.reduce((sum, piece) => sum + timesRound(piece) * pathLength(outlineOf(piece).edges[edge] ?? []), 0);
    expect(Math.abs(round(0) - inches(28 + lap))).toBeLessThan(0.05);
    expect(Math.abs(round(2) - inches((30.857142857 * (28 + lap)) / 28))).toBeLessThan(0.05);
  });

  it('marks where the lap begins on both edges, half of it at each end of a band on the fold', () => {
    const sizes = { ...body, depth: inches(2), parts: 1, lap: inches(1), on: 'fold' } as const;
    const made = shapedBandPieces(sizes, plainNames());
    const [piece] = Array.isArray(made) ? made : [];
    expect((piece?.notches[0]?.along ?? 0) / MM_PER_INCH).toBeCloseTo(14, 9);
    expect((piece?.notches[1]?.along ?? 0) / MM_PER_INCH).toBeCloseTo((0.5 * 30.857142857) / 28, 6);
  });

  it('refuses a level above the waist and a lap less than none', () => {
    const sizes = { ...body, depth: 50, parts: 1, on: 'fold' } as const;
    expect(shapedBandPieces({ ...sizes, below: -5 }, plainNames())).toEqual({ kind: 'no-sector', why: 'not-positive' });
    expect(shapedBandPieces({ ...sizes, lap: -5 }, plainNames())).toEqual({ kind: 'no-sector', why: 'not-positive' });
  });
});
