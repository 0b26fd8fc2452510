import { describe, expect, it } from 'vitest';
import { type PrintedDraft, printedPieces, printedPlaces, printedQuestions } from '../../core/blocks/printed-draft';
import { outlineOf } from '../../core/garment/outline';
import { signedArea } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { inches, MM_PER_NAIL } from '../../core/units/inch';
import { plainNames } from './body-checks';
import { expectInches } from './in-inches';

const INCH = { across: inches(1), down: inches(1) };
const NAIL = { across: MM_PER_NAIL, down: MM_PER_NAIL };

/** Lengths between places of a printed draft, in inches. */
function lengths<Place extends string>(
  draft: PrintedDraft<Place>,
  wanted: readonly (readonly [Place, Place, number])[],
) {
  const places = printedPlaces(draft);
  for (const [from, to, length] of wanted) expectInches(distance(places[from], places[to]), length);
}

/** Charles Hecklinger, Handbook on Dress and Cloak Cutting (1884), figure 11: a gored walking skirt, half, in inches from the line A. */
const walkingSkirt = {
  unit: INCH,
  places: {
    frontDip: [0, 6.5],
    frontHem: [0, 45],
    six: [6, 6.5],
    seven: [7, 6.5],
    twelveHem: [12, 44],
    eleven: [11, 5.5],
    dartFoot: [15.692, 11.5],
    thirtyTwo: [32, 38],
    twelve: [12, 5.5],
    backTop: [22, 0],
    fortyTwo: [42, 32.75],
    grain: [2, 40],
    grainTop: [2, 10],
  },
  pieces: [
    {
      name: 'front',
      cut: { how: 'fold', count: 1 },
      grain: ['grainTop', 'grain'],
      edges: [
        { from: 'frontDip', role: 'waist' },
        { from: 'six', role: 'seam', name: 'gore-seam' },
        { from: 'twelveHem', role: 'hem' },
        { from: 'frontHem', role: 'fold' },
      ],
    },
    {
      name: 'back',
      cut: { how: 'pair', count: 2 },
      grain: ['grainTop', 'grain'],
      edges: [
        { from: 'twelve', role: 'waist' },
        { from: 'backTop', role: 'seam' },
        { from: 'fortyTwo', role: 'hem' },
        { from: 'thirtyTwo', role: 'seam', name: 'side-seam' },
      ],
    },
  ],
} as const satisfies PrintedDraft<string>;

/** Effie Archer Archer, Needlecraft (1911), figures 52 and 53: a doll's skirt on a sheet of 12 by 9; figure 3 1/2, text 4 1/2. */
const dollsSkirt = {
  unit: INCH,
  places: { a1: [1.5, 0], b1: [2.5, 9], a2: [2, 0], figure: [3.5, 9], text: [4.5, 9], b6: [6, 9] },
  pieces: [],
  twice: [['figure', 'text']],
} as const satisfies PrintedDraft<string>;

/** Hands (1907), a dalmatic: underarm at (11, 12), hem corner at 20 across; the side is printed as 42, the whole as 50. */
function dalmatic(long: number) {
  return {
    unit: INCH,
    places: { underarm: [11, 12], hem: [20, long] },
    pieces: [],
    stated: [{ from: 'underarm', to: 'hem', length: 42 }],
  } as const satisfies PrintedDraft<string>;
}

describe('printedPlaces', () => {
  it('has the lengths of the walking skirt of Hecklinger 1884', () => {
    lengths(walkingSkirt, [
      ['six', 'twelveHem', 37.977],
      ['seven', 'twelveHem', 37.832],
      ['twelve', 'thirtyTwo', 38.161],
      ['backTop', 'fortyTwo', 38.374],
      ['twelve', 'backTop', 11.413],
      ['eleven', 'seven', 4.123],
      ['frontHem', 'twelveHem', 12.042],
      ['twelveHem', 'thirtyTwo', 20.881],
      ['thirtyTwo', 'fortyTwo', 11.294],
      ['frontDip', 'frontHem', 38.5],
    ]);
    // The dart foot lies on the straight line from 12 to 32.
    const { twelve, dartFoot, thirtyTwo } = printedPlaces<keyof typeof walkingSkirt.places>(walkingSkirt);
    expectInches(distance(twelve, dartFoot) + distance(dartFoot, thirtyTwo), 38.161);
  });

  it('has the lengths of the drawers of the Workwoman’s Guide (1838), plate 7, in nails of 2 1/4 in', () => {
    const women = {
      unit: NAIL,
      places: { A: [4, 15], B: [0, 15], E: [7, 7], S: [5, 1], G: [0, 0], Z: [6.5, 0] },
      pieces: [],
    } as const satisfies PrintedDraft<string>;
    lengths(women, [
      ['A', 'E', 19.224],
      ['E', 'S', 14.23],
      ['E', 'Z', 15.79],
      ['S', 'G', 11.473],
      ['Z', 'G', 14.625],
      ['A', 'B', 9],
    ]);
    const child = { unit: NAIL, places: { B: [4, 0], A: [4.5, 4], C: [2, 9] }, pieces: [] } as const;
    lengths(child, [
      ['B', 'A', 9.07],
      ['A', 'C', 12.578],
    ]);
    const men = {
      unit: NAIL,
      places: { C: [0, 0], E: [4.25, 0], F: [4.75, 0], G: [7, 5], B: [3.75, 13], H: [3.5189, -2.7358] },
      pieces: [],
    } as const;
    lengths(men, [
      ['G', 'B', 19.429],
      ['G', 'E', 12.839],
      ['G', 'F', 12.337],
      ['F', 'H', 6.75],
      ['C', 'H', 10.029],
    ]);
  });

  it('takes another unit across than down', () => {
    const places = printedPlaces({ unit: { across: 20, down: 25.4 }, places: { one: [3, 5] }, pieces: [] });
    expect(places.one).toEqual({ x: 60, y: 127 });
  });
});

describe('printedQuestions', () => {
  it('asks which end of a line is meant where figure and text differ by an inch', () => {
    const [question] = printedQuestions(dollsSkirt);
    if (question?.kind !== 'place-clash') throw new Error('no question');
    expectInches(question.apart, 1);
    lengths(dollsSkirt, [
      ['a1', 'b1', 9.055],
      ['a2', 'figure', 9.124],
      ['a2', 'text', 9.341],
    ]);
  });

  it.each([
    [50, 39.05],
    [54, 42.95],
  ])('asks about a side of 42 on a dalmatic %i long, which draws %f', (long, drawn) => {
    const [question] = printedQuestions(dalmatic(long));
    if (question?.kind !== 'length-clash') throw new Error('no question');
    expectInches(question.stated, 42);
    expectInches(question.drawn, drawn);
  });

  it('has nothing to ask where the side would fit', () => {
    expect(printedQuestions(dalmatic(53.02))).toEqual([]);
    expect(printedQuestions(walkingSkirt)).toEqual([]);
  });
});

describe('printedPieces', () => {
  it('draws the pieces of a plate beside one another, clockwise', () => {
    const pieces = printedPieces(walkingSkirt, plainNames());
    expect(pieces.map(({ name }) => name)).toEqual(['front', 'back']);
    expect(pieces.map(({ edges }) => edges.map(({ role }) => role).join(' '))).toEqual([
      'waist seam hem fold',
      'waist seam hem seam',
    ]);
    for (const piece of pieces) expect(signedArea(outlineOf(piece).whole)).toBeGreaterThan(0);
  });
});
