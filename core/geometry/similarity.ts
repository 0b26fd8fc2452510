import type { Affine } from './affine';
import type { Point } from './point';
import type { PointPair } from './projective';

/**
 * The map that turns, shifts and, where the size is `free`, enlarges, and leaves the least squares of the distances by which
 * it takes each `from` past its `to`. Exact for two pairs where the size is free. `undefined` for fewer than two different
 * places. See: S. Umeyama, Least-squares estimation of transformation parameters, IEEE PAMI 13 (1991), in the plane.
 */
export function bestSimilarity(pairs: readonly PointPair[], size: 'free' | 'kept'): Affine | undefined {
  const [from, to] = [middleOf(pairs.map((pair) => pair.from)), middleOf(pairs.map((pair) => pair.to))];
  let [along, across, spread] = [0, 0, 0];
  for (const pair of pairs) {
    const [x, y] = [pair.from.x - from.x, pair.from.y - from.y];
    const [u, v] = [pair.to.x - to.x, pair.to.y - to.y];
    along += x * u + y * v;
    across += x * v - y * u;
    spread += x * x + y * y;
  }
  const over = size === 'free' ? spread : Math.hypot(along, across);
  if (!(spread > 0 && over > 0 && Math.hypot(along, across) > 0)) return undefined;
  const [a, b] = [along / over, across / over];
  return { a, b, c: -b, d: a, e: to.x - (a * from.x - b * from.y), f: to.y - (b * from.x + a * from.y) };
}

function middleOf(places: readonly Point[]): Point {
  const sum = places.reduce((all, { x, y }) => ({ x: all.x + x, y: all.y + y }), { x: 0, y: 0 });
  return { x: sum.x / places.length, y: sum.y / places.length };
}
