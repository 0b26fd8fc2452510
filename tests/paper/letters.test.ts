import { expect, it } from 'vitest';
import { letters } from '../../core/paper/letters';

it('letters counts as the columns of a ledger do: A … Z, AA … AZ, BA', () => {
  expect([0, 25, 26, 51, 52, 701, 702].map(letters)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA', 'ZZ', 'AAA']);
});
