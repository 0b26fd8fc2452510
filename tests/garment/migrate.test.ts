import { expect, it } from 'vitest';
import { SCHEMA } from '../../core/garment/garment';
import { readStoredGarment } from '../../core/garment/migrate';
import { lindenSample } from './linden';

const samples = import.meta.glob('./samples/*.json', { eager: true, import: 'default' });

it('there is a frozen sample of every shape that was ever stored', () => {
  const wanted = Array.from({ length: SCHEMA }, (_, index) => `./samples/schema-${index + 1}.json`);
  expect(Object.keys(samples).sort()).toEqual(wanted.sort());
});

it.each(Object.keys(samples))('readStoredGarment opens %s', (name) => {
  expect(readStoredGarment(samples[name]).kind).toBe('garment');
});

it('readStoredGarment gives back the whole of a garment of the present shape', () => {
  expect(readStoredGarment(lindenSample)).toEqual({ kind: 'garment', garment: lindenSample });
});

it('readStoredGarment names a newer shape and does not look into it', () => {
  expect(readStoredGarment({ schema: SCHEMA + 1, hull: 'unknown' })).toEqual({ kind: 'newer', schema: SCHEMA + 1 });
});

it.each([
  undefined,
  null,
  7,
  'garment',
  [],
  {},
  { schema: 0 },
  { schema: 1.5 },
  { schema: '1' },
  { schema: Number.NaN },
])('readStoredGarment refuses %j, which says no shape', (value) => {
  expect(readStoredGarment(value)).toEqual({ kind: 'not-a-garment', where: 'schema', why: 'value' });
});
