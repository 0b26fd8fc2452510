import { applyChange, type Change, changeBetween, type Json, reverseChange } from './change';
import type { Garment } from './garment';

/** What leads from one garment to another; none when they are alike. */
export function garmentChange(before: Garment, after: Garment): Change {
  return changeBetween(asJson(before), asJson(after));
}

/** The garment after a change that belongs to it. Throws when it does not. What comes out is not checked. */
export function changedGarment(garment: Garment, change: Change): Garment {
  return applyChange(asJson(garment), change) as unknown as Garment;
}

/** The garment before a change that led to it. Throws when it did not. */
export function unchangedGarment(garment: Garment, change: Change): Garment {
  return changedGarment(garment, reverseChange(change));
}

/** A garment is plain JSON by its schema; the compiler cannot see that through its optional fields. */
function asJson(garment: Garment): Json {
  return garment as unknown as Json;
}
