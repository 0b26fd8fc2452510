import { expect, it } from 'vitest';
import { doesNotFit } from '../../core/check/does-not-fit';
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
