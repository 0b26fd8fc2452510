import { expect, it } from 'vitest';
import { doesNotFit, levelsBeside } from '../../core/check/does-not-fit';
import { forAnotherWearer } from '../../core/garment/for-another-wearer';
import { currentSet } from '../../core/garment/measure-value';
import { readGarment } from '../../core/garment/schema';
import { linden } from './linden';

const options = (by: number) => {
  const { measures } = currentSet(linden());
  const grown = Object.fromEntries(
    Object.entries(measures).map(([name, measure]) => [name, { ...measure, length: measure.length + by }]),
  );
  const set = { id: 'hers', date: '2024-03-07', wornOver: 'shift', measures: grown };
  return { id: 'second', name: 'Petticoat for Ada', today: '2024-03-11', wearer: 'Ada', measures: set };
};

it('the pattern stays as it is; what belongs to the first body and its paper does not come along', () => {
  const first = linden();
  const [ring] = first.rings;
  if (!ring) throw new Error('the sample has a ring');
  const used = {
    ...first,
    rings: [{ ...ring, levels: ring.levels.map((level) => ({ ...level, body: 911 })) }],
    mockups: [{ id: 'm', name: 'calico', made: '2023-05-07', version: 1, mark: 'x', note: '', pinned: [] }],
    printings: [{ id: 'p', date: '2023-05-07', mark: 'x', pages: [] }],
    knowingly: [{ finding: 'straight-waist', date: '2023-05-07', why: 'full skirt' }],
    scaleProof: { date: '2023-05-07', across: 101, down: 103 },
    cloth: 'linen',
  };
  const made = forAnotherWearer(used, options(0));
  expect(made.pieces).toBe(used.pieces);
  expect(made.cloth).toBe('linen');
  for (const left of ['mockups', 'printings', 'knowingly', 'scaleProof']) expect(made).not.toHaveProperty(left);
  expect(made.rings[0]?.levels.every((level) => level.body === undefined)).toBe(true);
  expect(made.wearer).toEqual({ name: 'Ada', sets: [options(0).measures], currentSetId: 'hers' });
  expect([made.id, made.made, made.name]).toEqual(['second', '2024-03-11', 'Petticoat for Ada']);
  expect(readGarment(made).kind).toBe('garment');
});

it('on a body 400 mm larger everywhere a panel is found missing at the waist, which was not on the first', () => {
  const first = linden();
  const found = doesNotFit(first, forAnotherWearer(first, options(400)));
  const missing = found.find(({ finding }) => finding.kind === 'panel-missing');
  // What is wanted there: a waist of 28 in (711.2 mm), and 400 mm.
  expect(missing).toMatchObject({ didFit: true, finding: { wanted: 1111.2, place: { levelId: 'l-waist' } } });
});

it('on the same body nothing is found that was not found before', () => {
  const first = linden();
  expect(doesNotFit(first, forAnotherWearer(first, options(0))).filter(({ didFit }) => didFit)).toEqual([]);
});

it('levelsBeside gives every level of every ring, and what she has more of lacks in the pieces by as much', () => {
  // Only the girths: with her depths unchanged every level is measured across the very same line. What was taped at the
  // levels themselves stays with the first body, so it is left out of both.
  const first = forAnotherWearer(linden(), options(0));
  const { measures } = currentSet(first);
  const { waist, hip } = measures;
  if (!waist || !hip) throw new Error('the sample has a waist and a hip');
  const hers = {
    ...options(0).measures,
    measures: {
      ...measures,
      waist: { ...waist, length: waist.length + 7 },
      hip: { ...hip, length: hip.length + 110 },
    },
  };
  const rows = levelsBeside(first, forAnotherWearer(first, { ...options(0), measures: hers }));
  expect(rows.map(({ girth }) => girth.level.id).sort()).toEqual(
    first.rings.flatMap(({ levels }) => levels.map(({ id }) => id)).sort(),
  );
  const at = (id: string) => rows.find(({ girth }) => girth.level.id === id);
  expect((at('l-waist')?.firstOver ?? 0) - (at('l-waist')?.over ?? 0)).toBeCloseTo(7, 6);
  expect((at('l-hip')?.firstOver ?? 0) - (at('l-hip')?.over ?? 0)).toBeCloseTo(110, 6);
});

/** On a body of this hip (mm), all else alike. */
function withHip(length: number) {
  const { measures } = options(0);
  const hip = measures.measures.hip ?? { length };
  return forAnotherWearer(linden(), {
    ...options(0),
    measures: { ...measures, measures: { ...measures.measures, hip: { ...hip, length } } },
  });
}

// The pieces of the sample come to 38 in (965.2 mm) at the hip, and 2 in (50.8 mm) of ease are wanted there.
it.each([
  ['fits both', 900, 910, false],
  ['lacks ease on her alone', 900, 940, true],
  ['lacks ease on both', 930, 940, false],
  ['lacked ease, and is less than her body', 940, 980, true],
  ['is less than either body', 970, 980, false],
  ['is wider on her', 980, 900, false],
])('levelsBeside marks what is newly tight: it %s', (_, first, hers, isNew) => {
  const hip = levelsBeside(withHip(first), withHip(hers)).find(({ girth }) => girth.level.id === 'l-hip');
  expect(hip?.over).toBeCloseTo(965.2 - 50.8 - hers, 6);
  expect(hip?.firstOver).toBeCloseTo(965.2 - 50.8 - first, 6);
  expect(hip?.newlyShort).toBe(isNew);
});

it('levelsBeside says nothing in numbers where she has not been measured', () => {
  const first = linden();
  const bare = { id: 'bare', date: '2024-03-07', wornOver: '', measures: {} };
  const rows = levelsBeside(first, forAnotherWearer(first, { ...options(0), measures: bare }));
  expect(rows.length).toBeGreaterThan(1);
  expect(rows.every(({ over, newlyShort }) => over === undefined && !newlyShort)).toBe(true);
});
