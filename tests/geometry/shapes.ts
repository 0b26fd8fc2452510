/** Short ways to write the shapes the geometry tests stand on. */
import type { Point } from '../../core/geometry/point';
import { type Cubic, cubic, line, type Path } from '../../core/geometry/segment';

type Pair = readonly [number, number];

/** Points from pairs of coordinates. */
export function points(...pairs: readonly Pair[]): Point[] {
  return pairs.map(([x, y]) => ({ x, y }));
}

/** A cubic from the coordinates of its four points. */
export function cubicOf(...[a, b, c, d]: readonly [Pair, Pair, Pair, Pair]): Cubic {
  const at = ([x, y]: Pair): Point => ({ x, y });
  return cubic(at(a), at(b), at(c), at(d));
}

/** A path of straight stretches through the corners, back to the first. */
export function closedPolygon(...pairs: readonly Pair[]): Path {
  const corners = points(...pairs);
  return corners.map((corner, i) => line(corner, corners[(i + 1) % corners.length] as Point));
}

/** The outline of two rooms, 60 and 40 wide, joined by a passage 10 wide. */
export const ROOMS: Path = closedPolygon(
  [0, 0],
  [60, 0],
  [60, 25],
  [90, 25],
  [90, 10],
  [130, 10],
  [130, 50],
  [90, 50],
  [90, 35],
  [60, 35],
  [60, 60],
  [0, 60],
);

/** Part of a circle in cubics of at most 15 degrees, whose radius is true to 6e-9 of itself. */
export function arcPath(centre: Point, radius: number, from: number, sweep: number): Path {
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / (Math.PI / 12)));
  const step = sweep / count;
  const arm = (4 / 3) * Math.tan(step / 4) * radius;
  const at = (angle: number): Point => ({
    x: centre.x + radius * Math.cos(angle),
    y: centre.y + radius * Math.sin(angle),
  });
  return Array.from({ length: count }, (_, i) => {
    const [a, b] = [from + i * step, from + (i + 1) * step];
    const [p0, p3] = [at(a), at(b)];
    return cubic(
      p0,
      { x: p0.x - Math.sin(a) * arm, y: p0.y + Math.cos(a) * arm },
      { x: p3.x + Math.sin(b) * arm, y: p3.y - Math.cos(b) * arm },
      p3,
    );
  });
}

/** The same even spread of numbers in [0, 1) on every machine (Mulberry32). */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
