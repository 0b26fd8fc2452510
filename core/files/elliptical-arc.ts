import { type Affine, transformPath } from '../geometry/affine';
import { arcOfCircle } from '../geometry/arc';
import type { Point } from '../geometry/point';
import { cubic, line, type Segment } from '../geometry/segment';

/** How closely arcs are followed by cubics, as a share of their radius: 0.0002 mm on a radius of a metre. */
const ARC_SHARE = 2e-7;

/** An ellipse by its middle and two half axes as vectors, and the angles on it, measured from the first to the second axis. */
export interface EllipseArc {
  readonly centre: Point;
  readonly across: { readonly dx: number; readonly dy: number };
  readonly down: { readonly dx: number; readonly dy: number };
  readonly from: number;
  readonly sweep: number;
}

/** Part of an ellipse as cubics, within a share of 2e-7 of its longer half axis. */
export function ellipseArc({ centre, across, down, from, sweep }: EllipseArc): Segment[] {
  const start = { x: Math.cos(from), y: Math.sin(from) };
  const map: Affine = { a: across.dx, b: across.dy, c: down.dx, d: down.dy, e: centre.x, f: centre.y };
  return [...transformPath(map, arcOfCircle({ x: 0, y: 0 }, start, sweep, ARC_SHARE))];
}

/** How SVG tells an arc: radii, the turn of the first axis in radians, and which of four arcs between two places. */
export interface ArcBetween {
  readonly rx: number;
  readonly ry: number;
  readonly turn: number;
  readonly isLarge: boolean;
  readonly isClockwise: boolean;
}

/**
 * The arc from one place to another: radii too small grow until they reach, a radius of 0 gives a straight line, and no
 * way gives nothing. Starts and ends exactly. See: SVG 2, appendix B.2 (elliptical arc implementation notes).
 */
export function arcBetween(from: Point, to: Point, { rx, ry, turn, isLarge, isClockwise }: ArcBetween): Segment[] {
  if (from.x === to.x && from.y === to.y) return [];
  if (!(Math.abs(rx) > 0 && Math.abs(ry) > 0)) return [line(from, to)];
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const [halfX, halfY] = [(from.x - to.x) / 2, (from.y - to.y) / 2];
  // In the frame of the axes, with the middle between the two places at the origin and the ellipse made a unit circle.
  const grow = Math.max(1, Math.hypot((cos * halfX + sin * halfY) / rx, (cos * halfY - sin * halfX) / ry));
  const [radiusX, radiusY] = [Math.abs(rx) * grow, Math.abs(ry) * grow];
  const u = (cos * halfX + sin * halfY) / radiusX;
  const v = (cos * halfY - sin * halfX) / radiusY;
  const reachSq = u * u + v * v;
  if (!(reachSq > 0)) return [line(from, to)];
  const off = Math.sqrt(Math.max(0, 1 / reachSq - 1)) * (isLarge === isClockwise ? -1 : 1);
  const [cu, cv] = [off * v, -off * u];
  const start = Math.atan2(v - cv, u - cu);
  let sweep = Math.atan2(-v - cv, -u - cu) - start;
  if (isClockwise && sweep < 0) sweep += 2 * Math.PI;
  if (!isClockwise && sweep > 0) sweep -= 2 * Math.PI;
  const across = { dx: radiusX * cos, dy: radiusX * sin };
  const down = { dx: -radiusY * sin, dy: radiusY * cos };
  const centre = {
    x: (from.x + to.x) / 2 + across.dx * cu + down.dx * cv,
    y: (from.y + to.y) / 2 + across.dy * cu + down.dy * cv,
  };
  return withEnds(ellipseArc({ centre, across, down, from: start, sweep }), from, to);
}

/** The run with its very ends put where they were told to be. */
function withEnds(segments: readonly Segment[], from: Point, to: Point): Segment[] {
  return segments.map((segment, index) => {
    const [first, last] = [index === 0, index === segments.length - 1];
    if (segment.kind === 'line') return line(first ? from : segment.p0, last ? to : segment.p1);
    return cubic(first ? from : segment.p0, segment.p1, segment.p2, last ? to : segment.p3);
  });
}
