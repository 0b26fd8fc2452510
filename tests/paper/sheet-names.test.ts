import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { sheetAt, sheetName } from '../../core/paper/sheet-names';

it('names a sheet by row and column, and one before the first by zeros', () => {
  expect([sheetName(1, 2), sheetName(27, 10), sheetName(-1, 1), sheetName(0, -1)]).toEqual(['B3', 'AB11', '0A2', 'A0']);
});

it('reads every name back, and has none twice', () => {
  const place = fc.integer({ min: -4, max: 800 });
  fc.assert(
    fc.property(place, place, (row, column) => {
      expect(sheetAt(sheetName(row, column))).toEqual({ row, column });
    }),
  );
});
