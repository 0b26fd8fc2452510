/** How far a parallel is from the true one, measured both ways along normals. Slow and plain on purpose. */
import { segmentAt, segmentDerivative, segmentTangent } from '../../core/geometry/cubic-curve';
import { feetOnCubic, nearestOnSegment } from '../../core/geometry/nearest-point';
import { nearestOnPath } from '../../core/geometry/path';
import type { Point, Vector } from '../../core/geometry/point';
import type { Path } from '../../core/geometry/segment';

/**
 * How far the nearest of all normals of `path` that reach a place of `parallel` is from being `offset` long on the right
 * side, at the worst place. A path whose own end comes near its parallel does not count against it.
 */
export function errorAlongNormals(path: Path, parallel: Path, offset: number, looks = 24): number {
  let worst = 0;
  for (const segment of parallel) {
    for (let i = 0; i <= looks; i++) {
      worst = Math.max(worst, normalError(path, segmentAt(segment, i / looks), offset));
    }
  }
  return worst;
}

function normalError(path: Path, place: Point, offset: number): number {
  let best = Infinity;
  for (const segment of path) {
    // The ends stand for feet that rounding puts just beyond them.
    const feet =
      segment.kind === 'cubic' ? [0, ...feetOnCubic(segment, place), 1] : [nearestOnSegment(segment, place).t];
    for (const t of feet) {
      const foot = segmentAt(segment, t);
      const tangent = segmentTangent(segment, t) as Vector;
      const beside = (place.x - foot.x) * tangent.dy - (place.y - foot.y) * tangent.dx;
      const along = (place.x - foot.x) * tangent.dx + (place.y - foot.y) * tangent.dy;
      best = Math.min(best, Math.hypot(beside - offset, along));
      // A cusp has every normal at once.
      const speed = segmentDerivative(segment, t);
      if (Math.hypot(speed.dx, speed.dy) < 1e-4) {
        best = Math.min(best, Math.abs(Math.hypot(beside, along) - Math.abs(offset)));
      }
    }
  }
  return best;
}

/** The places of the true parallel, cast along the normals of `path`, that keep their distance from all of it. */
export function trueParallel(path: Path, offset: number, looks = 60): Point[] {
  const places: Point[] = [];
  for (const segment of path) {
    for (let i = 0; i <= looks; i++) {
      const at = segmentAt(segment, i / looks);
      const tangent = segmentTangent(segment, i / looks);
      if (!tangent) continue;
      const point = { x: at.x + tangent.dy * offset, y: at.y - tangent.dx * offset };
      if (nearestOnPath(path, point).distance >= Math.abs(offset) - 1e-7) places.push(point);
    }
  }
  return places;
}

/** The furthest any of the places is from `parallel`. */
export function errorOfMissing(places: readonly Point[], parallel: Path): number {
  return Math.max(0, ...places.map((place) => nearestOnPath(parallel, place).distance));
}
