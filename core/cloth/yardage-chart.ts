/** How much of another width takes the place of so much of this, by a printed chart. */
import { inches, MM_PER_YARD } from '../units/inch';

/** Widths of the chart: each stands for cloth up to so wide and wider than the one before. */
const WIDTHS = [36, 39, 42, 45, 50, 54, 60, 66];

/**
 * Eighths of a yard that serve alike, one row a garment: the conversion chart American extension services gave out and
 * pattern books reprinted (for 35-36, 39, 42, 44-45, 50, 52-54, 60 and 65-66 in; figures as posted at greenspun.com).
 */
const EIGHTHS = [
  [14, 12, 12, 11, 10, 9, 8, 7],
  [16, 14, 14, 13, 12, 11, 10, 9],
  [18, 16, 16, 14, 13, 12, 11, 10],
  [20, 18, 18, 17, 14, 14, 13, 12],
  [23, 20, 20, 18, 16, 15, 14, 13],
  [25, 22, 22, 20, 18, 16, 15, 14],
  [27, 24, 23, 22, 19, 18, 16, 15],
  [30, 26, 25, 23, 21, 19, 18, 17],
  [34, 28, 27, 25, 22, 21, 19, 18],
  [36, 30, 29, 27, 24, 22, 21, 20],
  [38, 32, 31, 29, 26, 23, 22, 21],
  [40, 34, 33, 31, 27, 25, 23, 22],
] as const;

/** A width this little beyond a column's still belongs to it, in mm. */
const ROUNDING = 0.5;

const EIGHTH = MM_PER_YARD / 8;

/**
 * The length of cloth `to` wide that the chart puts in place of a length of cloth `from` wide: the row that is enough,
 * between two rows in proportion and up to the next eighth. `undefined` where the chart does not reach.
 */
export function chartLength(length: number, from: number, to: number): number | undefined {
  const [before, after] = [columnOf(from), columnOf(to)];
  if (before === undefined || after === undefined) return undefined;
  const wanted = length / EIGHTH;
  const above = EIGHTHS.findIndex((row) => (row[before] as number) >= wanted - 1e-6);
  const [row, less] = [EIGHTHS[above], EIGHTHS[above - 1]];
  if (!row || (!less && (row[before] as number) > wanted + 1)) return undefined;
  const [high, low] = [row[before] as number, (less ?? row)[before] as number];
  const share = high === low ? 1 : Math.min(1, Math.max(0, (wanted - low) / (high - low)));
  const found = ((less ?? row)[after] as number) + share * ((row[after] as number) - ((less ?? row)[after] as number));
  return Math.ceil(found - 1e-6) * EIGHTH;
}

function columnOf(width: number): number | undefined {
  const column = WIDTHS.findIndex((most) => width <= inches(most) + ROUNDING);
  return column < 0 || width < inches(35) - ROUNDING ? undefined : column;
}
