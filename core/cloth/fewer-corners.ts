import { distanceToChord } from '../geometry/flatten';
import { cross, move, type Point, vectorBetween } from '../geometry/point';
import { type Ring, ringCrossing } from '../geometry/polygon';

/** A corner, and by how much the ring has already grown beside it. */
interface Grown {
  readonly at: Point;
  readonly by: number;
}

/** So far to either side of a change savings are reckoned anew. */
const REACH = 5;

/** A change of a ring: a corner left out, or it and the next brought to one point; the ring grows there by `by`. */
interface Saving {
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
  const savings = corners.map((_, index) => savingAt(corners, index));
  while (corners.length > 3) {
    let least = -1;
    savings.forEach((saving, index) => {
      if (saving && saving.by <= most && !(saving.by >= (savings[least]?.by ?? Number.POSITIVE_INFINITY)))
        least = index;
    });
    const best = savings[least];
    if (!best) break;
    const gone = take(corners, least, best);
    savings.splice(gone, 1);
    // A saving looks at the corner before and the two after it, and a change reaches one corner to either side.
    for (let k = -REACH; k <= REACH; k++) {
      const index = (least + k + REACH * corners.length) % corners.length;
      savings[index] = savingAt(corners, index);
    }
  }
  const fewer = corners.map(({ at }) => at);
  return ringCrossing(fewer) ? [...ring] : fewer;
}

function savingAt(corners: readonly Grown[], index: number): Saving | undefined {
  const at = (k: number) => corners[(k + corners.length) % corners.length] as Grown;
  const [a, b, c, d] = [at(index - 1), at(index), at(index + 1), at(index + 2)];
  const [ab, bc, cd] = [vectorBetween(a.at, b.at), vectorBetween(b.at, c.at), vectorBetween(c.at, d.at)];
  const already = Math.max(b.by, c.by);
  if (cross(ab, bc) <= 0) return { by: distanceToChord(b.at, a.at, c.at) + Math.max(a.by, already) };
  if (cross(bc, cd) <= 0 || cross(ab, cd) <= 0) return undefined;
  const t = cross(vectorBetween(a.at, d.at), cd) / cross(ab, cd);
  const point = move(a.at, ab, t);
  return { point, by: distanceToChord(point, b.at, c.at) + already };
}

/** Makes the change at corner `index`; which corner is gone. */
function take(corners: Grown[], index: number, { point, by }: Saving): number {
  const count = corners.length;
  if (point) {
    const gone = (index + 1) % count;
    corners[index] = { at: point, by };
    corners.splice(gone, 1);
    return gone;
  }
  for (const k of [(index + count - 1) % count, (index + 1) % count]) corners[k] = { at: (corners[k] as Grown).at, by };
  corners.splice(index, 1);
  return index;
}
