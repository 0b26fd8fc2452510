import { neighbourIndex, outlineOf } from '../garment/outline';
import type { Edge, Piece } from '../garment/piece';
import { withCorner, withEdge } from '../garment/with-piece';
import { endTangent, nearestOnPath, pathAtLength, pathEnd, pathLength, pathStart, reversePath } from '../geometry/path';
import { dot, move, type Point, type TablePoint, vectorBetween } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { backOnCourse } from './back-on-course';
import { carryMarks } from './carry-marks';
import { APART, NEAR, type PlaceAlong, placesOf } from './hold-course';

/** Which neighbour of the waist edge: the one before it in the ring of edges, or the one after. */
export type WaistEnd = 'before' | 'after';

/** Where a side is led. */
export interface SideCourse {
  /** Its corner with the waist. */
  readonly corner: TablePoint;
  /** Where its hip goes. */
  readonly via: TablePoint;
  /** How far down it the hip lies as drawn: nowhere for a side that ends higher up. */
  readonly hipAlong: number | undefined;
}

/** A side led anew. `passesVia` is false when the side ends above the hip, so that its far corner had to do instead. */
export interface LedSide {
  readonly piece: Piece;
  readonly passesVia: boolean;
}

/** A level line that ends within this of a side (mm) ends on it. */
const ON_SIDE = 0.1;

/** The place of the corner between the waist and its neighbour at one end. */
export function cornerIndexAt(piece: Piece, waistIndex: number, end: WaistEnd): number {
  return end === 'before' ? waistIndex : (waistIndex + 1) % piece.corners.length;
}

/** The neighbour of the waist at one end. */
export function sideIndexAt(piece: Piece, waistIndex: number, end: WaistEnd): number {
  return neighbourIndex(piece, waistIndex, end === 'before' ? -1 : 1);
}

/** The course of the side at one end of the waist, from the waist downwards. */
export function sideDownwards(piece: Piece, waistIndex: number, end: WaistEnd): Path | undefined {
  const path = outlineOf(piece).edges[sideIndexAt(piece, waistIndex, end)];
  return path && (end === 'after' ? path : reversePath(path));
}

/** How far down a side (run downwards) its end of a level line lies; `undefined` when the level ends on another edge. */
export function hipAlongSide(side: Path, level: Path, end: WaistEnd): number | undefined {
  const place = nearestOnPath(side, end === 'before' ? pathStart(level) : pathEnd(level));
  return place.distance <= ON_SIDE ? place.along : undefined;
}

/**
 * The piece with the side at one end of the waist led from another corner through another place at the hip. What the
 * side was above the hip is carried along with it, tapering; below, it runs straight on to where its old course takes it
 * over (`back-on-course.ts`), and keeps that.
 */
export function leadSide(piece: Piece, waistIndex: number, end: WaistEnd, course: SideCourse): LedSide {
  const edge = piece.edges[sideIndexAt(piece, waistIndex, end)];
  const corner = piece.corners[cornerIndexAt(piece, waistIndex, end)];
  const old = sideDownwards(piece, waistIndex, end);
  if (!edge || !corner || !old) return { piece, passesVia: false };
  const total = pathLength(old);
  const upper = course.hipAlong ?? total;
  const passesVia = course.hipAlong !== undefined && (upper < total - NEAR || liesAbove(course.via, old));
  const cornerMove = vectorBetween(corner.at, course.corner);
  const viaMove = passesVia ? vectorBetween(pathAtLength(old, upper).point, course.via) : { dx: 0, dy: 0 };
  const carried = ({ point, along }: PlaceAlong) => {
    const share = along / upper;
    return move(move(point, cornerMove, 1 - share), viaMove, share);
  };
  const points = downwards(edge, end).map((point) => ({ point, along: nearestOnPath(old, point).along }));
  const above = points.filter(({ along }) => along > APART && along < upper - APART);
  const shaped = above.length > 0 ? above : placesOf(old, upper > 4 * APART ? [upper / 2] : []);
  const below = passesVia ? backOnCourse(old, course.via, points) : [];
  const through = [...shaped.map(carried), ...(passesVia ? [course.via] : []), ...below.map(({ point }) => point)];
  const led = withEdge(piece, edge.id, (before) => ({ ...before, shape: curve(before, end, through) }));
  return { piece: withCorner(led, corner.id, (before) => ({ ...before, at: course.corner })), passesVia };
}

/** Whether a place lies clear above the lower end of a side. */
function liesAbove(place: Point, side: Path): boolean {
  return dot(vectorBetween(place, pathEnd(side)), endTangent(side)) > NEAR;
}

/** The marks on a side brought along: in proportion above the hip, and where they were on the old course below. */
export function carrySideMarks(
  before: Piece,
  after: Piece,
  waistIndex: number,
  end: WaistEnd,
  course: SideCourse,
): Piece {
  const edgeId = after.edges[sideIndexAt(after, waistIndex, end)]?.id;
  const old = sideDownwards(before, waistIndex, end);
  const led = sideDownwards(after, waistIndex, end);
  if (!edgeId || !old || !led) return after;
  const [oldTotal, ledTotal] = [pathLength(old), pathLength(led)];
  const oldHip = course.hipAlong ?? oldTotal;
  const ledHip = course.hipAlong === undefined ? ledTotal : nearestOnPath(led, course.via).along;
  const carried = (down: number) =>
    down < oldHip ? (down * ledHip) / oldHip : Math.max(ledHip, ledTotal - (oldTotal - down));
  return carryMarks(after, edgeId, (along) =>
    end === 'after' ? carried(along) : ledTotal - carried(oldTotal - along),
  );
}

function downwards(edge: Edge, end: WaistEnd): readonly Point[] {
  if (edge.shape.kind === 'straight') return [];
  return end === 'after' ? edge.shape.through : edge.shape.through.toReversed();
}

/** The end at the waist stands free: the waist it is that stands square to it. */
function curve(edge: Edge, end: WaistEnd, through: readonly Point[]): Edge['shape'] {
  const far = edge.shape.kind === 'straight' ? 'free' : end === 'after' ? edge.shape.meets : edge.shape.leaves;
  return end === 'after'
    ? { kind: 'curve', through, leaves: 'free', meets: far }
    : { kind: 'curve', through: through.toReversed(), leaves: far, meets: 'free' };
}
