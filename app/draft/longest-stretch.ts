import { pathAtLength, pathLength } from '../../core/geometry/path';
import type { Point } from '../../core/geometry/point';
import type { Path } from '../../core/geometry/segment';

/** The middle of the longest stretch of a path, where a new point has most room; nothing for an empty path. */
export function longestStretchMiddle(path: Path): Point | undefined {
  let middle: Point | undefined;
  let longest = -1;
  for (const stretch of path) {
    const length = pathLength([stretch]);
    if (length <= longest) continue;
    longest = length;
    middle = pathAtLength([stretch], length / 2).point;
  }
  return middle;
}
