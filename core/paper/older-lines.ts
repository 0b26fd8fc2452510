import type { LineStyle } from '../drawing/line-styles';

/**
 * How the lines of older versions are drawn, in the order in which they were chosen: dots in ones, twos and threes, then
 * dashes between dots, as no line of a piece and no join is drawn. Widths and what follows one another in mm.
 */
const OLDER_LINES: readonly LineStyle[] = [
  { width: 0.4, dash: [0.4, 2] },
  { width: 0.4, dash: [0.4, 1.2, 0.4, 3.6] },
  { width: 0.4, dash: [0.4, 1.2, 0.4, 1.2, 0.4, 3.6] },
  { width: 0.4, dash: [2.6, 1.2, 0.4, 1.2, 0.4, 1.2, 0.4, 1.2] },
];

/** So many older versions can be told apart under one draft. */
export const MOST_OLDER = OLDER_LINES.length;

/** The line of one of them, counted from 0. */
export function olderLine(index: number): LineStyle {
  return OLDER_LINES[index % MOST_OLDER] as LineStyle;
}
