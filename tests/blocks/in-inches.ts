import type { Point } from '../../core/geometry/point';
import { MM_PER_INCH } from '../../core/units/inch';

/** A place in inches with y upwards, as the drafts print it. */
export function printed({ x, y }: Point): readonly [number, number] {
  return [x / MM_PER_INCH, -y / MM_PER_INCH];
}

/** Ids one after another. */
export function numberedIds(): () => string {
  let count = 0;
  return () => `id${++count}`;
}
