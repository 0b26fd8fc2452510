import { boxOfPoints } from '../geometry/bounds';
import type { Point } from '../geometry/point';
import { placeInRing } from '../geometry/polygon';

/** How finely a ring is looked over for room. */
const STEPS = 15;

/**
 * A place well inside a ring, for words: the place of a coarse net that lies furthest from its corners' sides, the
 * middle of its box if that is as good. Corners of the box where the ring has no inside.
 */
export function ringCentre(ring: readonly Point[]): Point {
  const box = boxOfPoints(ring);
  if (!box) return { x: 0, y: 0 };
  const middle = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
  let best = middle;
  let room = placeInRing(ring, middle) === 'inside' ? 1.25 * roomAt(ring, middle) : 0;
  for (let i = 1; i < STEPS; i++) {
    for (let j = 1; j < STEPS; j++) {
      const x = box.minX + (i * (box.maxX - box.minX)) / STEPS;
      const y = box.minY + (j * (box.maxY - box.minY)) / STEPS;
      if (placeInRing(ring, { x, y }) !== 'inside') continue;
      const here = roomAt(ring, { x, y });
      if (here <= room) continue;
      best = { x, y };
      room = here;
    }
  }
  return best;
}

/** How far a place is from the nearest side. */
function roomAt(ring: readonly Point[], { x, y }: Point): number {
  return Math.min(
    ...ring.map((a, i) => {
      const b = ring[(i + 1) % ring.length] as Point;
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const long = dx * dx + dy * dy;
      const t = long === 0 ? 0 : Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / long));
      return Math.hypot(x - a.x - t * dx, y - a.y - t * dy);
    }),
  );
}
