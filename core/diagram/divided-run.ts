import { between, type PhotoPoint } from '../geometry/point';
import type { DiagramMap } from './diagram-map';
import { fromPlane, type NotSquared, onPlane } from './squared-plane';

/** Where a line of the picture is divided into equal parts on the page, its ends left out; along the picture where it is not squared up. */
export function dividedRun(
  map: DiagramMap | NotSquared,
  { from, to }: { readonly from: PhotoPoint; readonly to: PhotoPoint },
  parts: number,
): PhotoPoint[] {
  const shares = Array.from({ length: Math.max(0, parts - 1) }, (_, i) => (i + 1) / parts);
  const ends = map.kind === 'map' ? { a: onPlane(map.plane, from), b: onPlane(map.plane, to) } : undefined;
  return shares.flatMap((share) => {
    if (map.kind !== 'map' || !ends?.a || !ends.b) return [between(from, to, share)];
    return fromPlane(map.plane, between(ends.a, ends.b, share)) ?? [];
  });
}
