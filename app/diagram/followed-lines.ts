import { sidesOf } from '../../core/diagram/followed-plane';
import type { SquareUp } from '../../core/garment/diagram';
import type { Point } from '../../core/geometry/point';
import { sideAt } from '../../core/picture/curl-side';
import { type SquaresMap, squaresToPhoto } from '../../core/picture/grid-map';

/** Straight runs that a curve is drawn as. */
const RUNS = 32;

/** The outline of what it is squared up by, as the photo shows it: from corner to corner, curved where sides are followed. */
export function outlineInPhoto({ corners, followed }: Extract<SquareUp, { kind: 'rectangle' }>): readonly Point[] {
  if (followed?.kind === 'squares') return borderOf(followed.map);
  const sides = followed?.kind === 'sides' ? sidesOf(corners, followed.through) : undefined;
  if (!sides) return corners;
  return sides.flatMap((side) => Array.from({ length: RUNS }, (_, k) => sideAt(side, k / RUNS)));
}

/** The lines of a printed grid as the photo shows them. */
export function squareLines(map: SquaresMap): Point[][] {
  const along = (most: number, at: (t: number) => Point) =>
    Array.from({ length: RUNS + 1 }, (_, k) => squaresToPhoto(map, at((k * most) / RUNS)));
  const upright = Array.from({ length: map.columns + 1 }, (_, x) => along(map.rows, (y) => ({ x, y })));
  const level = Array.from({ length: map.rows + 1 }, (_, y) => along(map.columns, (x) => ({ x, y })));
  return [...upright, ...level];
}

function borderOf(map: SquaresMap): Point[] {
  const { columns, rows } = map;
  const share = Array.from({ length: RUNS }, (_, k) => k / RUNS);
  return [
    ...share.map((t) => ({ x: t * columns, y: 0 })),
    ...share.map((t) => ({ x: columns, y: t * rows })),
    ...share.map((t) => ({ x: (1 - t) * columns, y: rows })),
    ...share.map((t) => ({ x: 0, y: (1 - t) * rows })),
  ].map((place) => squaresToPhoto(map, place));
}
