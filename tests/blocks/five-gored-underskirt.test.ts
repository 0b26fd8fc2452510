import { describe, expect, it } from 'vitest';
import {
  fiveGoredUnderskirt,
  fiveGoredUnderskirtPieces,
  type Underskirt,
  type UnderskirtSizes,
} from '../../core/blocks/five-gored-underskirt';
import { distance } from '../../core/geometry/point';
import { proposeSeamPairs } from '../../core/seams/seam-pairs';
import { inches } from '../../core/units/inch';
import { plainNames } from './body-checks';
import { expectInches, expectPlaces } from './in-inches';

/** Carrie Crane Ingalls, Text-Book on Domestic Art (1911), five-gored underskirt: her rules, waist 24, hip 39. */
const ingalls: UnderskirtSizes = { waist: inches(24), hip: inches(39), front: inches(38), side: inches(39) };

function drawn(sizes = ingalls): Underskirt {
  const made = fiveGoredUnderskirt(sizes);
  if (made.kind !== 'underskirt') throw new Error(made.why);
  return made;
}

describe('fiveGoredUnderskirt', () => {
  it('has the dots of the front gore', () => {
    const { front } = drawn();
    const wanted = { dot1: [0, 38], dot3: [3, 38], dot4: [3, 38.25], dot5: [4.0026, 32.25], dot6: [9.392, 0] } as const;
    expectPlaces({ ...front }, wanted, 38);
    expectInches(distance(front.dot2, front.dot5), 4.0104, 1e-3);
    expectInches(distance(front.dot1, front.dot4), 3.0104, 1e-3);
    expectInches(distance(front.dot4, front.dot6), 38.78, 1e-3);
    expectInches(2 * front.dot6.x, 18.783, 2e-3);
  });

  it('has the dots of the side gore, its straight edge as long as the front seam', () => {
    const { side } = drawn();
    const wanted = { dot3: [4, 38.78], dot4: [4, 39.28], dot5: [6.026, 33.28], dot6: [16.477, 2.33] } as const;
    expectPlaces({ ...side }, wanted, 38.78);
    expectInches(distance(side.dot1, side.base), 38.78);
    expectInches(distance(side.dot2, side.dot5), 6.0467, 1e-3);
    expectInches(distance(side.base, side.dot6), 16.641);
  });

  it('has side seams of 38 1/2 where the side is so long', () => {
    // The same rules for hip 40 and side 38 1/2.
    const { side } = drawn({ ...ingalls, hip: inches(40), side: inches(38.5) });
    expectInches(side.dot6.x, 16.3169);
    expectInches(side.dot6.y, 35.9766);
    expectInches(distance(side.base, side.dot6), 16.556);
  });

  it('shares out the half waist of 12 and the half hip of 19 1/2, and asks how the back goes on', () => {
    const { front, side, back, questions } = drawn();
    const waists = [front, side].map(({ dot1, dot4 }) => distance(dot1, dot4));
    expectInches((waists[0] ?? 0) + (waists[1] ?? 0) + back.dot3.x, 12, 1e-9);
    expectInches(back.dot3.x, 4.9585, 1e-3);
    expectInches(distance(back.dot2, back.dot5), 9.443, 1e-3);
    expectInches(distance(back.dot4, back.gathersEnd), 3, 1e-9);
    expect(questions).toEqual([{ kind: 'source-ends', piece: 'back', last: 'dot5', at: back.dot5 }]);
  });

  it('has the back gore within a tenth of an inch of where widths read level would put it', () => {
    // For waist 24 and hip 40 the book's level widths are 3 + 4 + 5 and 4 + 6 + 10; here they are taken along the slant.
    const { back } = drawn({ ...ingalls, hip: inches(40) });
    const level = {
      dot1: [0, 0],
      dot2: [0, 6],
      dot3: [5, 0],
      dot4: [5, -0.75],
      dot5: [10, 5.25],
      gathersEnd: [8, -1.2],
    };
    for (const [name, [x = 0, y = 0]] of Object.entries(level)) {
      const place = back[name as keyof typeof back];
      expect(distance(place, { x: inches(x), y: inches(y) }), name).toBeLessThan(inches(0.1));
    }
  });

  it('refuses a skirt that ends above the hip and a hip narrower than the gores take', () => {
    expect(fiveGoredUnderskirt({ ...ingalls, front: inches(5) })).toEqual({
      kind: 'no-underskirt',
      why: 'hip-below-hem',
    });
    expect(fiveGoredUnderskirt({ ...ingalls, hip: inches(20) })).toEqual({
      kind: 'no-underskirt',
      why: 'hip-too-narrow',
    });
    expect(fiveGoredUnderskirt({ ...ingalls, waist: 0 })).toEqual({ kind: 'no-underskirt', why: 'not-positive' });
  });
});

describe('fiveGoredUnderskirtPieces', () => {
  it('gives front and side with their common seam and the notches of the book', () => {
    const made = fiveGoredUnderskirtPieces(ingalls, plainNames());
    if (made.kind !== 'underskirt-pieces') throw new Error(made.why);
    const [front, side] = made.pieces;
    expect(front?.cut).toEqual({ how: 'fold', count: 1 });
    expect(front?.notches.map(({ count }) => count)).toEqual([1]);
    expect(side?.notches.map(({ count }) => count)).toEqual([2, 1]);
    const [pair] = proposeSeamPairs(made.pieces);
    expect(pair?.by).toBe('name');
    expect(Math.abs(pair?.difference ?? 99)).toBeLessThan(0.001);
    expect(made.questions).toHaveLength(1);
  });
});
