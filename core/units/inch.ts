/** Lengths the trade counts in, and their size in millimetres. */

/** Exactly, since the international yard of 1 July 1959 (National Bureau of Standards, Circular 572, addendum 1960). */
export const MM_PER_INCH = 25.4;
export const MM_PER_CENTIMETRE = 10;
export const MM_PER_FOOT = 304.8;
export const MM_PER_YARD = 914.4;
export const MM_PER_METRE = 1000;
/** The nail of old cutting-out books: a sixteenth of a yard, 2 1/4 in (The Workwoman's Guide, 1838). */
export const MM_PER_NAIL = 57.15;

/** How a garment's lengths are shown. */
export type ShownIn = 'in' | 'cm';

/** So many inches, in millimetres. */
export function inches(count: number): number {
  return count * MM_PER_INCH;
}

/** So many centimetres, in millimetres. */
export function centimetres(count: number): number {
  return count * MM_PER_CENTIMETRE;
}

/** The side of one square of the drafting grid at full size: an inch, or two centimetres. */
export function squareSize(shownIn: ShownIn): number {
  return shownIn === 'in' ? MM_PER_INCH : 2 * MM_PER_CENTIMETRE;
}
