import type { ShownIn } from '../../core/units/inch';
import { squareSize } from '../../core/units/inch';
import { tableWords } from '../words/table';
import { writeLength, writeNumber } from '../words/written';

/** How far from the table's zero, in squares: fractions of an inch square, tenths of a two-centimetre square. */
export function writeSquares(length: number, shownIn: ShownIn): string {
  if (shownIn === 'in') return writeLength(length, { shownIn, unit: 'left-off' });
  const squares = writeNumber(Math.abs(length) / squareSize(shownIn), 2, 'trimmed');
  return length < 0 && squares !== '0' ? tableWords.less(squares) : squares;
}
