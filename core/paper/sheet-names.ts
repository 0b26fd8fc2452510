import { letters, lettersRead } from './letters';

/**
 * The name of a sheet by its place: row as a letter and column as a number, B3. Where a printed piece has grown beyond its
 * sheets, a zero stands for each row before A or column before 1: 0A2 lies above A2, and A0 on the left of A1.
 */
export function sheetName(row: number, column: number): string {
  const rowName = row < 0 ? `${'0'.repeat(-row)}A` : letters(row);
  return `${rowName}${column < 0 ? '0'.repeat(-column) : column + 1}`;
}

/** The place of a sheet by its name; the first one for what is no name. */
export function sheetAt(name: string): { readonly row: number; readonly column: number } {
  const [, before = '', row = 'A', column = '1'] = /^(0*)([A-Z]+)(\d+)$/.exec(name) ?? [];
  return {
    row: before.length > 0 ? -before.length : lettersRead(row),
    column: /^0+$/.test(column) ? -column.length : Number(column) - 1,
  };
}
