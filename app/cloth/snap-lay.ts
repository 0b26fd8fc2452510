import type { LayTask, ToLay } from '../../core/cloth/lay-task';
import { boxOfPoints } from '../../core/geometry/bounds';
import type { Point } from '../../core/geometry/point';
import type { Shown } from './shown-lay';

/** Sides of boxes nearer than `reach` come together: those of the piece, of the others and of the cloth. */
export function snapped(
  { at, ring, piece }: { readonly at: Point; readonly ring: readonly Point[]; readonly piece: ToLay },
  others: readonly Shown[],
  { task, reach }: { readonly task: LayTask; readonly reach: number },
): Point {
  const own = boxOfPoints(ring);
  if (!own) return at;
  const [wide, high] = [own.maxX - own.minX, own.maxY - own.minY];
  const boxes = others.flatMap(({ ring: other }) => boxOfPoints(other) ?? []);
  const xs = [0, ...boxes.flatMap(({ minX, maxX }) => [minX, maxX, minX - wide, maxX - wide])];
  const ys = [
    0,
    task.ground.across - high,
    ...boxes.flatMap(({ minY, maxY }) => [minY, maxY, minY - high, maxY - high]),
  ];
  const near = (value: number, places: readonly number[]) => {
    const best = places.reduce((a, b) => (Math.abs(b - value) < Math.abs(a - value) ? b : a));
    return Math.abs(best - value) <= reach ? best : value;
  };
  return {
    x: piece.onFold === 'across' ? 0 : near(at.x, xs),
    y: piece.onFold === 'along' ? 0 : near(at.y, ys),
  };
}
