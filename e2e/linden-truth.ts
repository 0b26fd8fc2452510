import { lindenCorners, lindenFrame, lindenHemThrough, lindenSideThrough } from '../app/demo/linden-panel';
import { move, type Point, type Vector } from '../core/geometry/point';
import { line, type Path } from '../core/geometry/segment';
import { splineThrough } from '../core/geometry/spline';

/** The outline that was drawn into the demo's picture, moved by some way. */
export function lindenTruth(by: Vector): Path {
  const [a, b, c, d] = lindenCorners.map((corner) => move(corner, by)) as [Point, Point, Point, Point];
  const moved = (points: readonly Point[]) => points.map((point) => move(point, by));
  const side = splineThrough([b, ...moved(lindenSideThrough), c]);
  const hem = splineThrough([c, ...moved(lindenHemThrough), d], {
    directions: [undefined, undefined, { dx: -1, dy: 0 }],
  });
  return [line(a, b), ...side, ...hem, line(d, a)];
}

/** The points of the panel in the order in which they are traced, on the table: it begins at the corner of the frame. */
export function lindenTrace(): { readonly at: Point; readonly kind: RegExp }[] {
  const [a, b, c, d] = lindenCorners;
  const [{ x, y }] = lindenFrame;
  const as = (kind: RegExp) => (point: Point) => ({ at: move(point, { dx: -x, dy: -y }), kind });
  const [corner, along] = [as(/Corner/), as(/Along a curve/)];
  return [corner(a), corner(b), ...lindenSideThrough.map(along), corner(c), ...lindenHemThrough.map(along), corner(d)];
}
