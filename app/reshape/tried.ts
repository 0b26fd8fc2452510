import type { Garment } from '../../core/garment/garment';
import type { Tried, Trying } from './change';

let last: { readonly garment: Garment; readonly trying: Trying; readonly tried: Tried } | undefined;

/** What the change makes of the garment; worked out once for each garment and each set of its numbers. */
export function triedOn(garment: Garment, trying: Trying): Tried {
  if (last?.garment !== garment || last.trying !== trying) {
    last = { garment, trying, tried: trying.make(garment) };
  }
  return last.tried;
}
