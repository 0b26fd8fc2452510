import type { Garment } from './garment';
import type { PrintedWhole } from './printed-whole';
import { withOne, withoutOne } from './with-piece';

/** The garment with a figure for several edges added, or the one of the same id replaced. */
export function putWhole(garment: Garment, whole: PrintedWhole): Garment {
  const { wholes = [] } = garment;
  const isKnown = wholes.some(({ id }) => id === whole.id);
  return { ...garment, wholes: isKnown ? withOne(wholes, whole.id, () => whole) : [...wholes, whole] };
}

/** The garment without it; the edges and their own figures stay. */
export function removeWhole(garment: Garment, id: string): Garment {
  const { wholes = [] } = garment;
  const left = withoutOne(wholes, id);
  return left === wholes ? garment : { ...garment, wholes: left };
}
