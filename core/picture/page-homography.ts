import type { Point } from '../geometry/point';
import {
  applyHomography,
  type DegeneratePairs,
  type Homography,
  homographyFrom,
  type PointPair,
} from '../geometry/projective';
import { type Equation, leastSquares } from './page-solve';

/**
 * The projective map that leaves the least squares of the distances by which it misses, in the places `to`: the normalised
 * direct linear transform, then Gauss and Newton's steps. See: R. Hartley & A. Zisserman, Multiple View Geometry, section
 * 4.2 (error in one image). For four pairs it is exact already.
 */
export function bestHomography(pairs: readonly PointPair[]): Homography | DegeneratePairs {
  const first = homographyFrom(pairs);
  if ('kind' in first || pairs.length === 4) return first;
  // In places of size about 1 all eight unknowns weigh alike.
  const [before, after] = [boxed(pairs.map(({ from }) => from)), boxed(pairs.map(({ to }) => to))];
  const scaled = pairs.map(({ from, to }) => ({ from: before.into(from), to: after.into(to) }));
  const start = homographyFrom(scaled);
  if ('kind' in start) return first;
  let map = start;
  let miss = missOf(map, scaled);
  for (let round = 0; round < 20; round++) {
    const step = leastSquares(
      scaled.flatMap((pair) => rowsOf(map, pair)),
      8,
    );
    if (!step) break;
    const next = map.map((each, k) => each + (step[k] ?? 0)) as unknown as Homography;
    const left = missOf(next, scaled);
    if (!(left < miss)) break;
    const isDone = miss - left < 1e-14 * miss;
    [map, miss] = [next, left];
    if (isDone) break;
  }
  // Back to the places as they came: the map of four corners of the box is exact.
  const corners = [-1, 1].flatMap((x) => [-1, 1].map((y) => ({ x, y })));
  const back = homographyFrom(
    corners.map((corner) => ({ from: before.outOf(corner), to: after.outOf(applyHomography(map, corner) as Point) })),
  );
  return 'kind' in back ? first : back;
}

/** How each of the eight numbers moves where a pair lands, and by how much it misses. */
function rowsOf(map: Homography, { from, to }: PointPair): Equation[] {
  const { x, y } = from;
  const w = map[6] * x + map[7] * y + map[8];
  const [u, v] = [(map[0] * x + map[1] * y + map[2]) / w, (map[3] * x + map[4] * y + map[5]) / w];
  const [a, b, c] = [x / w, y / w, 1 / w];
  return [
    { row: [a, b, c, 0, 0, 0, -u * a, -u * b], right: to.x - u, weight: 1 },
    { row: [0, 0, 0, a, b, c, -v * a, -v * b], right: to.y - v, weight: 1 },
  ];
}

function missOf(map: Homography, pairs: readonly PointPair[]): number {
  return pairs.reduce((sum, { from, to }) => {
    const seen = applyHomography(map, from);
    return seen ? sum + (seen.x - to.x) ** 2 + (seen.y - to.y) ** 2 : Number.POSITIVE_INFINITY;
  }, 0);
}

/** Places brought to about -1 to 1 about their middle, and back. */
function boxed(places: readonly Point[]) {
  const [xs, ys] = [places.map(({ x }) => x), places.map(({ y }) => y)];
  const [minX, maxX, minY, maxY] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const middle = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  const half = Math.max(maxX - minX, maxY - minY) / 2;
  return {
    into: ({ x, y }: Point): Point => ({ x: (x - middle.x) / half, y: (y - middle.y) / half }),
    outOf: ({ x, y }: Point): Point => ({ x: middle.x + x * half, y: middle.y + y * half }),
  };
}
