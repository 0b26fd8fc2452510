/** Entities of DXF that draw a line, as paths in the file's own units, y up. What codes mean is from memory. */
import { type Affine, IDENTITY, transformPath } from '../geometry/affine';
import { arcOfCircle } from '../geometry/arc';
import { between, distance, move, type Point, quarterTurn, vectorBetween } from '../geometry/point';
import { line, type Path, type Segment } from '../geometry/segment';
import { splineThrough } from '../geometry/spline';
import { type DxfEntity, numberOf } from './dxf-pairs';
import { ellipseArc } from './elliptical-arc';
import { splinePoints } from './spline-points';

/** Entities that draw a line; POLYLINE comes with the vertices that follow it. */
export const DXF_SHAPES: ReadonlySet<string> = new Set([
  'LINE',
  'POLYLINE',
  'LWPOLYLINE',
  'ARC',
  'CIRCLE',
  'ELLIPSE',
  'SPLINE',
]);

/** How closely arcs of a circle are followed, as a share of the radius. */
const ARC_SHARE = 2e-7;

/**
 * The path of an entity; `undefined` for one that draws nothing or is not of the plane (a mesh, a spline of more points
 * than are read). Splines become smooth curves through places that lie on them.
 */
export function dxfPath(entity: DxfEntity, vertices: readonly DxfEntity[]): Path | undefined {
  const path = pathOf(entity, vertices);
  return path && path.length > 0 ? transformPath(planeOf(entity), path) : undefined;
}

function pathOf(entity: DxfEntity, vertices: readonly DxfEntity[]): readonly Segment[] | undefined {
  const centre = placeOf(entity, 10);
  const [from, to] = [numberOf(entity, 50), numberOf(entity, 51, 360)].map((degrees) => (degrees * Math.PI) / 180) as [
    number,
    number,
  ];
  switch (entity.kind) {
    case 'LINE':
      return [line(centre, placeOf(entity, 11))];
    case 'CIRCLE':
      return circle(centre, numberOf(entity, 40), 0, 2 * Math.PI);
    case 'ARC':
      return circle(centre, numberOf(entity, 40), from, sweepTo(from, to));
    case 'ELLIPSE':
      return ellipse(entity, centre);
    case 'LWPOLYLINE':
      return polyline(lightVertices(entity), (numberOf(entity, 70) & 1) === 1);
    case 'POLYLINE':
      return heavyPolyline(entity, vertices);
    default: {
      const points = splinePoints(entity);
      return points && splineThrough(points);
    }
  }
}

/** Arcs, circles and polylines are told in a plane of their own; seen from behind it is mirrored. */
function planeOf(entity: DxfEntity): Affine {
  const isOwn = entity.kind !== 'LINE' && entity.kind !== 'ELLIPSE' && entity.kind !== 'SPLINE';
  return isOwn && numberOf(entity, 230, 1) < 0 ? { ...IDENTITY, a: -1 } : IDENTITY;
}

export function placeOf(entity: DxfEntity, code: 10 | 11): Point {
  return { x: numberOf(entity, code), y: numberOf(entity, code + 10) };
}

function sweepTo(from: number, to: number): number {
  const turn = (to - from) % (2 * Math.PI);
  return turn > 0 ? turn : turn + 2 * Math.PI;
}

function circle(centre: Point, radius: number, from: number, sweep: number): Segment[] | undefined {
  if (!(radius > 0)) return undefined;
  const start = { x: centre.x + radius * Math.cos(from), y: centre.y + radius * Math.sin(from) };
  return arcOfCircle(centre, start, sweep, radius * ARC_SHARE);
}

/** The second axis stands square to the first, shorter by a ratio. */
function ellipse(entity: DxfEntity, centre: Point): Segment[] | undefined {
  const axis = placeOf(entity, 11);
  const ratio = numberOf(entity, 40, 1);
  if (!(Math.hypot(axis.x, axis.y) > 0 && ratio > 0)) return undefined;
  const side = numberOf(entity, 230, 1) < 0 ? -ratio : ratio;
  const across = { dx: axis.x, dy: axis.y };
  const down = { dx: -axis.y * side, dy: axis.x * side };
  const [from, to] = [numberOf(entity, 41), numberOf(entity, 42, 2 * Math.PI)];
  return ellipseArc({ centre, across, down, from, sweep: sweepTo(from, to) });
}

interface Vertex {
  readonly at: Point;
  /** The tangent of a quarter of the angle of the arc to the next vertex; 0 for a straight side. */
  readonly bulge: number;
}

/** Vertices are told by their x; what follows until the next x belongs to them. */
function lightVertices({ pairs }: DxfEntity): Vertex[] {
  const vertices: { at: { x: number; y: number }; bulge: number }[] = [];
  for (const { code, text } of pairs) {
    const last = vertices[vertices.length - 1];
    if (code === 10) vertices.push({ at: { x: Number(text), y: 0 }, bulge: 0 });
    else if (code === 20 && last) last.at.y = Number(text);
    else if (code === 42 && last) last.bulge = Number(text);
  }
  return vertices;
}

/** Flags 16 and 64 are nets of surfaces; vertices with flag 16 are handles of a curve that others draw. */
function heavyPolyline(entity: DxfEntity, vertices: readonly DxfEntity[]): Segment[] | undefined {
  const flags = numberOf(entity, 70);
  if ((flags & (16 | 64)) !== 0) return undefined;
  const drawn = vertices.filter((vertex) => (numberOf(vertex, 70) & 16) === 0);
  return polyline(
    drawn.map((vertex) => ({ at: placeOf(vertex, 10), bulge: numberOf(vertex, 42) })),
    (flags & 1) === 1,
  );
}

function polyline(vertices: readonly Vertex[], isClosed: boolean): Segment[] {
  const ends = isClosed ? vertices : vertices.slice(0, -1);
  return ends.flatMap(({ at, bulge }, i) => bulged(at, (vertices[(i + 1) % vertices.length] as Vertex).at, bulge));
}

/** A side of a polyline: an arc of angle 4 atan(bulge), to the right of its chord for a positive one, y up. */
function bulged(from: Point, to: Point, bulge: number): Segment[] {
  const chord = distance(from, to);
  if (!(chord > 0)) return [];
  if (Math.abs(bulge) < 1e-9) return [line(from, to)];
  const square = quarterTurn(vectorBetween(from, to));
  const centre = move(between(from, to, 0.5), square, (1 - bulge * bulge) / (4 * bulge));
  const arc = arcOfCircle(centre, from, 4 * Math.atan(bulge), distance(centre, from) * ARC_SHARE);
  return arc.map((piece, i) => (i === arc.length - 1 ? { ...piece, p3: to } : piece));
}
