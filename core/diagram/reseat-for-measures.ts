import type { Garment } from '../garment/garment';
import { currentSet } from '../garment/measure-value';
import { carryPieces } from './reseat';

/**
 * The garment after an edit of its measures, with every piece that was traced over a picture carried along where the
 * picture's scale hangs on a changed measure: a known length may be a share of the waist.
 */
export function withMeasuresChanged(garment: Garment, change: (garment: Garment) => Garment): Garment {
  const changed = change(garment);
  return currentSet(garment).measures === currentSet(changed).measures ? changed : carryPieces(garment, changed);
}
