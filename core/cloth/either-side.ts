import { boxOfPoints } from '../geometry/bounds';
import { distanceToChord } from '../geometry/flatten';
import type { Point } from '../geometry/point';
import type { Ring } from '../geometry/polygon';

/**
 * Whether a piece turned over is the same piece again, the grain (along x) still running the same way, or either way
 * where that does not matter: then two layers of cloth give two of it. `within` is how far the two may differ, in mm.
 */
export function isSameEitherSide(outline: Ring, nap: 'none' | 'one-way', within: number): boolean {
  const turnedOver = outline.map(({ x, y }) => ({ x, y: -y }));
  const endForEnd = outline.map(({ x, y }) => ({ x: -x, y }));
  return isSame(outline, turnedOver, within) || (nap === 'none' && isSame(outline, endForEnd, within));
}

/** Whether a mirrored outline, moved onto the outline, has no corner off it; then neither has the outline any off the other. */
function isSame(outline: Ring, mirrored: Ring, within: number): boolean {
  const [box, other] = [boxOfPoints(outline), boxOfPoints(mirrored)];
  if (!box || !other) return false;
  const [dx, dy] = [box.minX - other.minX, box.minY - other.minY];
  return mirrored.every(({ x, y }) => {
    const at = { x: x + dx, y: y + dy };
    return outline.some((a, i) => distanceToChord(at, a, outline[(i + 1) % outline.length] as Point) <= within);
  });
}
