import { expect, it } from 'vitest';
import { isFound, shelfText } from '../../core/garment/shelf-text';
import { linden } from './linden';

const first = linden();
const garment = {
  ...first,
  name: 'Crème Jupon',
  source: { book: 'Œuvres de couture', page: '41', plate: 'VII', year: '1897', remarks: 'scale printed badly' },
  remarks: 'Hem let down twice',
  cloth: 'Groß-Lein, 3 m',
  notions: 'hooks',
  wearer: { ...first.wearer, name: 'Åse' },
  pieces: first.pieces.map((piece) => ({ ...piece, remarks: 'eased at the dart' })),
};

it.each(['creme', 'CRÈME', 'jupon crème', 'oeuvres', '1897 vii', 'gross', 'hooks', 'ase', 'TWICE', 'eased dart', ''])(
  '%j is found, whatever its accents and case',
  (sought) => expect(isFound(shelfText(garment), sought)).toBe(true),
);

it.each(['jupe', 'creme velvet', '1898'])('%j is not found', (sought) =>
  expect(isFound(shelfText(garment), sought)).toBe(false),
);

it('every piece is found by its name', () => {
  for (const { name } of garment.pieces) expect(isFound(shelfText(garment), name)).toBe(true);
});

it('a book of notes does not make the text of the shelf grow without end, nor hide the name', () => {
  const long = shelfText({ ...garment, remarks: 'word '.repeat(9000) });
  expect(long.length).toBeLessThanOrEqual(4000);
  expect(isFound(long, 'jupon')).toBe(true);
});
