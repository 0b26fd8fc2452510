import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { endTangent, pathLength, signedArea, startTangent } from '../../core/geometry/path';
import { dot } from '../../core/geometry/point';
import { type SlashesWish, slash } from '../../core/shaping/slashes';
import { inches } from '../../core/units/inch';
import { runBackwards } from '../seams/pieces';
import { traced } from './traced';

const panel = traced('panel', [
  [[0, 0], 'waist', [[inches(4), inches(0.2)]]],
  [[inches(8), 0], 'seam'],
  [[inches(11), inches(25)], 'hem', [[inches(6), inches(25.6)]]],
  [[0, inches(25)], 'fold'],
]);
const square = traced('square', [
  [[0, 0], 'waist'],
  [[inches(14), 0], 'seam'],
  [[inches(14), inches(30)], 'hem'],
  [[0, inches(30)], 'fold'],
]);
const idOf = (piece: Piece, index: number) => piece.edges[index]?.id ?? '';
const lengthOf = (piece: Piece, index: number) => pathLength(outlineOf(piece).edges[index] ?? []);

function slashed(piece: Piece, wish: Partial<SlashesWish> & Pick<SlashesWish, 'by'>): Piece {
  const made = slash(piece, { open: idOf(piece, 2), far: idOf(piece, 0), hinge: 'far', places: 5, ...wish });
  if ('why' in made) throw new Error(made.why);
  return made;
}

/** How much a path turns where its stretches join, at most (radians, by the cosine). */
function worstJoint(piece: Piece, index: number): number {
  const path = outlineOf(piece).edges[index] ?? [];
  return path.slice(1).reduce((worst, segment, i) => {
    const before = path[i];
    return before ? Math.min(worst, dot(endTangent([before]), startTangent([segment]))) : worst;
  }, 1);
}

describe('slash(piece, wish), hinged', () => {
  it('opens a hem by 10 in over five slashes, measured along it, and the waist keeps its length', () => {
    const made = slashed(panel, { by: { kind: 'length', total: inches(10) } });
    expect(Math.abs(lengthOf(made, 2) - lengthOf(panel, 2) - inches(10))).toBeLessThan(0.1);
    expect(Math.abs(lengthOf(made, 0) - lengthOf(panel, 0))).toBeLessThan(0.01);
    expect(worstJoint(made, 0)).toBeGreaterThan(1 - 1e-9);
    expect(worstJoint(made, 2)).toBeGreaterThan(1 - 1e-9);
    expect(made.corners[0]).toBe(panel.corners[0]);
    expect(made.notches).toEqual(panel.notches);
  });

  it('meets any amount, opening or lapping, over any number of slashes, run round either way', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -60, max: 400, noNaN: true }),
        fc.integer({ min: 1, max: 7 }),
        fc.boolean(),
        (total, places, isBackwards) => {
          const piece = isBackwards ? runBackwards(panel) : panel;
          const [hem, waist] = ['hem', 'waist'].map((role) => piece.edges.findIndex((edge) => edge.role === role)) as [
            number,
            number,
          ];
          const wish = {
            open: idOf(piece, hem),
            far: idOf(piece, waist),
            places,
            by: { kind: 'length', total } as const,
          };
          const made = slashed(piece, wish);
          expect(Math.abs(lengthOf(made, hem) - lengthOf(piece, hem) - total)).toBeLessThan(0.1);
          expect(Math.abs(lengthOf(made, waist) - lengthOf(piece, waist))).toBeLessThan(0.01);
        },
      ),
      { seed: 7, numRuns: 25 },
    );
  });

  it('turns the side by the sum of the angles, at places of her own', () => {
    const angle = 0.05;
    const places = [{ open: inches(3) }, { open: inches(7), far: inches(2) }];
    const made = slashed(square, { places, by: { kind: 'angle', angle } });
    const way = startTangent(outlineOf(made).edges[1] ?? []);
    expect(Math.abs(Math.atan2(way.dx, way.dy))).toBeCloseTo(2 * angle, 9);
  });
});

describe('slash(piece, wish), without a hinge', () => {
  it('moves the parts apart side by side: both edges longer by as much, the area by width times depth', () => {
    for (const piece of [square, runBackwards(square)]) {
      const [hem, waist] = ['hem', 'waist'].map((role) => piece.edges.findIndex((edge) => edge.role === role)) as [
        number,
        number,
      ];
      const made = slashed(piece, {
        open: idOf(piece, waist),
        far: idOf(piece, hem),
        hinge: 'none',
        places: 4,
        by: { kind: 'length', total: inches(9) },
      });
      expect(lengthOf(made, waist)).toBeCloseTo(inches(23), 1);
      expect(lengthOf(made, hem)).toBeCloseTo(inches(23), 1);
      const grown = Math.abs(signedArea(outlineOf(made).whole)) - inches(14) * inches(30);
      expect(grown / (inches(9) * inches(30))).toBeCloseTo(1, 4);
      // The fold stays.
      expect(made.corners.filter(({ at }) => at.x === 0)).toHaveLength(2);
    }
  });

  it('laps for less than nothing', () => {
    const made = slashed(square, { hinge: 'none', places: 2, by: { kind: 'length', total: -inches(3) } });
    expect(lengthOf(made, 0)).toBeCloseTo(inches(11), 1);
  });
});

describe('slash(piece, wish) refuses', () => {
  it('more slashes than anyone cuts: 31 with a hinge, 100 without one', () => {
    const by = { kind: 'length', total: inches(3) } as const;
    const wish = { open: idOf(square, 2), far: idOf(square, 0), by };
    expect(slash(square, { ...wish, hinge: 'far', places: 31 })).toMatchObject({ why: 'too-many' });
    expect(slash(square, { ...wish, hinge: 'none', places: 100 })).toMatchObject({ why: 'too-many' });
    expect(slash(square, { ...wish, hinge: 'none', places: 99 })).not.toHaveProperty('why');
  });

  it('edges that are not there, one edge for both ends, no places, and more lapped than there is', () => {
    const wish: SlashesWish = {
      open: idOf(panel, 2),
      far: idOf(panel, 0),
      hinge: 'far',
      places: 3,
      by: { kind: 'angle', angle: 0.1 },
    };
    const refused = { kind: 'not-slashed', why: 'no-such-place' };
    expect(slash(panel, { ...wish, open: 'x' })).toEqual(refused);
    expect(slash(panel, { ...wish, far: wish.open })).toEqual(refused);
    expect(slash(panel, { ...wish, places: 0 })).toEqual(refused);
    expect(slash(panel, { ...wish, by: { kind: 'length', total: -9999 } })).toEqual({
      kind: 'not-slashed',
      why: 'too-wide',
    });
  });
});
