import { centimetres, inches, type ShownIn } from '../units/inch';

/**
 * Proofs that the large paper is square before a point is stepped off on it (mm). A triangle with sides of 3, 4 and 5
 * has a right angle between the shorter two (Euclid, Elements I, 48), and of a true rectangle both diagonals are alike.
 */
export interface SquareProof {
  /** So far along the line across, so far along the line down, and then so far between the two marks. */
  readonly corner: { readonly across: number; readonly down: number; readonly apart: number };
  /** The rectangle round all squares, and each of its diagonals. */
  readonly frame: { readonly across: number; readonly down: number; readonly diagonal: number };
}

/** A third of the shorter leg, in lengths that are found on a yardstick at once. */
const THIRDS: Readonly<Record<ShownIn, readonly number[]>> = {
  in: [3, 4, 6, 8, 10, 12, 15, 18].map(inches),
  cm: [5, 10, 15, 20, 25, 30, 40, 50].map(centimetres),
};

/** The largest 3-4-5 that lies inside the rectangle, its longer leg along the longer side; a small one where none does. */
export function squareProof({ across, down }: { across: number; down: number }, shownIn: ShownIn): SquareProof {
  const [shorter, longer] = [Math.min(across, down), Math.max(across, down)];
  const thirds = THIRDS[shownIn];
  const third =
    thirds.findLast((one) => 3 * one <= shorter + 1e-6 && 4 * one <= longer + 1e-6) ?? (thirds[0] as number);
  const [legAcross, legDown] = across > down ? [4 * third, 3 * third] : [3 * third, 4 * third];
  return {
    corner: { across: legAcross, down: legDown, apart: 5 * third },
    frame: { across, down, diagonal: Math.hypot(across, down) },
  };
}
