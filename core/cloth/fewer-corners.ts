import { distanceToChord } from '../geometry/flatten';
import { cross, move, type Point, vectorBetween } from '../geometry/point';
import { type Ring, ringCrossing } from '../geometry/polygon';

/** A corner, and by how much the ring has already grown beside it. */
interface Grown {
  readonly at: Point;
  readonly by: number;
}

/** A change of a ring: corner `index` left out, or it and the next brought to one point; the ring grows there by `by`. */
interface Saving {
  readonly index: number;
  readonly point?: Point;
  readonly by: number;
}

/**
 * A clockwise ring with fewer corners that holds all of it and stands off it by `most` mm at most: hollow corners are
 * bridged, and outward sides replaced by the point where their neighbours meet, the slightest first. The ring itself
 * comes back where the larger one would cross itself, as across a very narrow slot.
 */
export function fewerCorners(ring: Ring, most: number): Point[] {
  const corners: Grown[] = ring.map((at) => ({ at, by: 0 }));
  while (corners.length > 3) {
    let best: Saving | undefined;
    for (let index = 0; index < corners.length; index++) {
      const saving = savingAt(corners, index);
      if (saving && saving.by <= most && (!best || saving.by < best.by)) best = saving;
    }
    if (!best) break;
    take(corners, best);
  }
  const fewer = corners.map(({ at }) => at);
  return ringCrossing(fewer) ? [...ring] : fewer;
}

function savingAt(corners: readonly Grown[], index: number): Saving | undefined {
  const at = (k: number) => corners[(k + corners.length) % corners.length] as Grown;
  const [a, b, c, d] = [at(index - 1), at(index), at(index + 1), at(index + 2)];
  const [ab, bc, cd] = [vectorBetween(a.at, b.at), vectorBetween(b.at, c.at), vectorBetween(c.at, d.at)];
  const already = Math.max(b.by, c.by);
  if (cross(ab, bc) <= 0) return { index, by: distanceToChord(b.at, a.at, c.at) + Math.max(a.by, already) };
  if (cross(bc, cd) <= 0 || cross(ab, cd) <= 0) return undefined;
  const t = cross(vectorBetween(a.at, d.at), cd) / cross(ab, cd);
  const point = move(a.at, ab, t);
  return { index, point, by: distanceToChord(point, b.at, c.at) + already };
}

function take(corners: Grown[], { index, point, by }: Saving): void {
  const count = corners.length;
  if (point) {
    corners[index] = { at: point, by };
    corners.splice((index + 1) % count, 1);
    return;
  }
  for (const k of [(index + count - 1) % count, (index + 1) % count]) corners[k] = { at: (corners[k] as Grown).at, by };
  corners.splice(index, 1);
}
