import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pieceDrawing } from '../../core/drawing/piece-drawing';
import { coveredArea, coveredBy } from '../../core/paper/covered';
import { farFrom } from '../../core/paper/far-from';
import { inkPlaces } from '../../core/paper/page-plan';
import { pagesBound } from '../../core/paper/pages-bound';
import { rectangle } from './pieces';

const inkOf = (width: number, height: number) => inkPlaces(pieceDrawing(rectangle(0, 0, width, height)));

describe('pagesBound', () => {
  // Windows of 190 by 264 with 10 in common; all worked by hand.
  const window = { width: 190, height: 264 };
  it.each([
    // A strip 2 m long: n pages end to end reach n times 254 and 10 more, over their diagonal a little further; 8 of them.
    [2000, 20, 8],
    [150, 100, 1],
    [260, 180, 1],
    // Its diagonal is 424 mm; two pages end to end reach 518.
    [300, 300, 2],
  ])('of %i by %i mm is %i', (wide, high, least) => {
    expect(pagesBound([inkOf(wide, high)], window, 10)).toBe(least);
  });

  it('counts the area of many small pieces: twenty of 100 by 120 mm need five of 50,160 mm² at least', () => {
    const pieces = Array.from({ length: 20 }, () => inkOf(100, 120));
    expect(pagesBound(pieces, window, 10)).toBeGreaterThanOrEqual(4);
    expect(pagesBound(pieces, window, 10)).toBeLessThanOrEqual(5);
  });

  it('asks for no page inside a frame that pages may leave out', () => {
    // Round a frame of 1 m there are pages of 50,160 mm²; its area alone would ask for 20 of them.
    expect(pagesBound([inkOf(1000, 1000)], window, 10)).toBeLessThan(20);
  });
});

describe('coveredBy', () => {
  it('fills what a line goes round, and not what it does not', () => {
    const area = coveredArea(inkOf(400, 300));
    expect(area).toBeGreaterThan(400 * 300 * 0.97);
    expect(area).toBeLessThan(400 * 300 * 1.03);
  });
});

describe('farFrom', () => {
  it('is the distance to the nearest cell of the kind, as looking at every cell has it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 13 }),
        fc.integer({ min: 1, max: 11 }),
        fc.infiniteStream(fc.integer({ min: 0, max: 5 })),
        (wide, high, kinds) => {
          const cells = Uint8Array.from({ length: wide * high }, () => kinds.next().value);
          fc.pre(cells.includes(1));
          const found = farFrom({ left: 0, top: 0, wide, high, cells }, (what) => what === 1);
          cells.forEach((_, at) => {
            const each = [...cells].flatMap((what, i) =>
              what === 1 ? [Math.hypot((i % wide) - (at % wide), Math.floor(i / wide) - Math.floor(at / wide))] : [],
            );
            expect(found[at]).toBeCloseTo(Math.min(...each), 9);
          });
        },
      ),
      { seed: 3, numRuns: 60 },
    );
  });

  it('leaves a cell of ink where a place lies', () => {
    const covered = coveredBy([{ x: 2, y: 2 }]);
    expect([...covered.cells].filter((what) => what === 2)).toHaveLength(1);
  });
});
