import type { ShownIn } from '../../core/units/inch';
import { squareSize } from '../../core/units/inch';
import { writeLength } from '../../core/units/write-length';
import { tableWords } from '../words/table';

/** How far from the table's zero, in squares: fractions of an inch square, tenths of a two-centimetre square. */
export function writeSquares(length: number, shownIn: ShownIn): string {
  if (shownIn === 'in') return writeLength(length, { shownIn, unit: 'left-off' });
  const squares = (Math.abs(length) / squareSize(shownIn)).toFixed(2).replace(/\.?0+$/, '');
  return length < 0 && squares !== '0' ? tableWords.less(squares) : squares;
}
