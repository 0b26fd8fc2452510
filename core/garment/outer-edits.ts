import { inches } from '../units/inch';
import type { Garment } from './garment';

/** An under-garment is an inch or two shorter than what is worn over it (common practice); the lesser, unless said. */
const SHORTER_BY = inches(1);

/**
 * The garment with the length (mm, from the waist) of what is worn over it said at one place, or taken out there with
 * `undefined`. The first length said has this one stay an inch shorter.
 */
export function setOuterLength(garment: Garment, at: 'front' | 'side' | 'back', length: number | undefined): Garment {
  const { outer } = garment;
  if (outer?.[at] === length) return garment;
  const { [at]: _, ...others } = outer ?? { shorterBy: SHORTER_BY };
  return { ...garment, outer: length === undefined ? others : { ...others, [at]: length } };
}

/** The garment with how much it stays above the hem of what is worn over it (mm); as it is where nothing is. */
export function setShorterBy(garment: Garment, shorterBy: number): Garment {
  const { outer } = garment;
  return !outer || outer.shorterBy === shorterBy ? garment : { ...garment, outer: { ...outer, shorterBy } };
}

/** The garment with nothing worn over it. */
export function removeOuter(garment: Garment): Garment {
  if (!garment.outer) return garment;
  const { outer: _, ...bare } = garment;
  return bare;
}
