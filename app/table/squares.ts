import { type ShownIn, squareSize } from '../../core/units/inch';

/** How the table is ruled: a square is an inch, or two centimetres. */
export interface Squares {
  /** The side of a square, in millimetres. */
  readonly side: number;
  /** Finer parts of a square that are ruled when there is room, coarse to fine. */
  readonly parts: readonly number[];
}

export const SQUARES: Readonly<Record<ShownIn, Squares>> = {
  in: { side: squareSize('in'), parts: [2, 4, 8] },
  cm: { side: squareSize('cm'), parts: [2, 4, 20] },
};

/** What is ruled and numbered at some nearness. */
export interface Ruling {
  /** A line every so many squares; 1 when every square has its own. */
  readonly every: number;
  /** A number every so many squares. */
  readonly numberEvery: number;
  /** Into how many parts each square is ruled; 1 for none. */
  readonly parts: number;
}

/** Lines nearer than this many CSS pixels would only be grey. */
const LEAST_LINE_PX = 7;
/** Room a number needs. */
const LEAST_NUMBER_PX = 27;
/** Fine lines want more air than whole squares. */
const LEAST_PART_PX = 15;

const ROUNDED = [1, 2, 5];

/** What to rule and number when a square takes `squarePx` CSS pixels: lines and numbers thin out to 2, 5, 10, 20 … */
export function rulingFor(squarePx: number, squares: Squares): Ruling {
  const every = thinned(squarePx, LEAST_LINE_PX);
  let numberEvery = thinned(squarePx, LEAST_NUMBER_PX);
  while (numberEvery % every !== 0) numberEvery = next(numberEvery);
  let parts = 1;
  for (const part of squares.parts) if (squarePx / part >= LEAST_PART_PX) parts = part;
  return { every, numberEvery, parts };
}

/** The least of 1, 2, 5, 10, 20 … that keeps so many squares at least `leastPx` apart. */
function thinned(squarePx: number, leastPx: number): number {
  let every = 1;
  while (every * squarePx < leastPx && every < 1e6) every = next(every);
  return every;
}

function next(every: number): number {
  const ten = 10 ** Math.floor(Math.log10(every) + 1e-9);
  const lead = Math.round(every / ten);
  return (ROUNDED.find((step) => step > lead) ?? 10) * ten;
}
