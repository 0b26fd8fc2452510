import { outlineOf } from '../../core/garment/outline';
import { edgeIndex } from '../../core/garment/with-piece';
import { nearestOnPath, subPath } from '../../core/geometry/path';
import type { Point } from '../../core/geometry/point';
import type { Path } from '../../core/geometry/segment';
import { drawnPlace, type SeamSide, type SeamStretch } from '../../core/seams/seam-sides';
import { sewnAlong } from '../../core/seams/sewn-along';

/** The drawn line of a stretch, as its edge is drawn. */
function edgePath({ piece, edgeId }: SeamStretch): Path {
  return outlineOf(piece).edges[edgeIndex(piece, edgeId)] ?? [];
}

/** The drawn lines of a part of a side between two places of the walk (mm, as sewn), each with its piece. */
export function runsBetween(
  side: SeamSide,
  from: number,
  to: number,
): readonly { readonly pieceId: string; readonly path: Path }[] {
  return side.stretches.flatMap((stretch) => {
    const [low, high] = [Math.max(from, stretch.from), Math.min(to, stretch.from + stretch.length)];
    if (!(high > low)) return [];
    const [a, b] = [drawnPlace(stretch, low), drawnPlace(stretch, high)];
    const path = subPath(edgePath(stretch), Math.min(a, b), Math.max(a, b));
    return path ? [{ pieceId: stretch.pieceId, path }] : [];
  });
}

/** A place of the walk, found from a place on the table. */
export interface AlongSide {
  readonly along: number;
  /** How far the place lies from the seam line. */
  readonly off: number;
}

/**
 * The place of the walk (mm, as sewn) nearest to a place on the table. Where an edge comes more than once in the walk, it
 * is the coming nearest to `near`, where the walk is now.
 */
export function alongAt(side: SeamSide, place: Point, near: number): AlongSide | undefined {
  let best: AlongSide | undefined;
  for (const stretch of side.stretches) {
    const path = edgePath(stretch);
    if (path.length === 0) continue;
    const found = nearestOnPath(path, place);
    const sewn = sewnAlong(stretch.piece, stretch.edgeId, found.along) ?? 0;
    const drawn = stretch.from + (stretch.backwards ? stretch.length - sewn : sewn);
    // A place on a lap lies before or after the walk.
    const along = Math.min(side.length, Math.max(0, drawn));
    const isNearer =
      !best ||
      found.distance < best.off - SAME ||
      (found.distance < best.off + SAME && Math.abs(along - near) < Math.abs(best.along - near));
    if (isNearer) best = { along, off: found.distance };
  }
  return best;
}

/** Two comings of one edge lie equally far from a place, within rounding (mm). */
const SAME = 1e-6;
