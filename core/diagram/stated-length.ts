import type { StatedLength } from '../garment/diagram';
import type { MeasureName, MeasureSet } from '../garment/measure';
import { measureOf } from '../garment/measure-value';

export type FullSize =
  | { readonly kind: 'full-size'; readonly length: number }
  | { readonly kind: 'measure-missing'; readonly measure: MeasureName }
  /** A line cannot be nothing, or less than nothing, long. */
  | { readonly kind: 'not-positive' };

/** How long a line is at full size, in mm: as said, its share of a measure of the set and the ease, or its
 * intervals put together. */
export function fullSizeLength(says: StatedLength, set: MeasureSet): FullSize {
  let length: number;
  if (says.kind === 'length') length = says.length;
  else if (says.kind === 'bar') length = says.intervals * says.each;
  else {
    const measure = measureOf(set, says.measure);
    if (measure === undefined) return { kind: 'measure-missing', measure: says.measure };
    length = (measure * says.parts) / says.of + says.ease;
  }
  return length > 0 ? { kind: 'full-size', length } : { kind: 'not-positive' };
}
