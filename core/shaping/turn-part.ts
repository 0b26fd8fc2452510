import { carriedFullness, type Fullness } from '../garment/fullness';
import { outlineOf } from '../garment/outline';
import type { Edge, Piece } from '../garment/piece';
import { edgeIndex } from '../garment/with-piece';
import { rotationAbout, transformPoint } from '../geometry/affine';
import { flattenPath } from '../geometry/flatten';
import { nearestOnPath, pathAtLength, pathLength, reversePath, subPath } from '../geometry/path';
import { between, isSamePoint, type Point, type TablePoint } from '../geometry/point';
import { placeInRing } from '../geometry/polygon';
import type { Path } from '../geometry/segment';
import { heldFrom, NEAR, type PlaceAlong } from './hold-course';

/** A place on an edge, `along` from its start (mm). */
export interface EdgePlace {
  readonly edgeId: string;
  readonly along: number;
}

/** Where the turned part of a piece parts from the rest. The two places are one, but for a dart that closes. */
export interface Cut {
  readonly edgeId: string;
  /** Where the part that turns begins or ends. */
  readonly turned: number;
  /** Where the part that stays ends or begins. */
  readonly fixed: number;
  /** `joined`: the two come together in one point. `held`: the edge keeps its course on both sides. Else it is smoothed. */
  readonly finish: 'smooth' | 'held' | 'joined';
}

/** The part of a piece from one cut to the other, in the order of its edges, turned about a place (clockwise positive). */
export interface Turn {
  readonly from: Cut;
  readonly to: Cut;
  readonly about: Point;
  readonly angle: number;
}

/** The cut at one place of an edge. */
export function cutAt({ edgeId, along }: EdgePlace, finish: Cut['finish']): Cut {
  return { edgeId, turned: along, fixed: along, finish };
}

/** The place itself; `undefined` for an edge the piece has not, or beyond its ends. */
export function pointAt(piece: Piece, { edgeId, along }: EdgePlace): TablePoint | undefined {
  const path = outlineOf(piece).edges[edgeIndex(piece, edgeId)];
  if (!path || along < 0 || along > pathLength(path)) return undefined;
  return pathAtLength(path, along).point;
}

/** Whether a fold has a corner in the part from one cut to the other; a fold should stay where it is. */
export function holdsFold(piece: Piece, from: Cut, to: Cut): boolean {
  const corners = turnedCorners(piece, from, to);
  return piece.edges.some(
    ({ role }, index) => role === 'fold' && (corners.has(index) || corners.has((index + 1) % piece.corners.length)),
  );
}

/**
 * The piece with a part of it turned. Edges cut through become curves through both sides of the cut; every other edge
 * of the part turns as it is. Darts, notches, fullness, labels and the grain go with the part they lie in.
 */
export function turnPart(piece: Piece, turn: Turn): Piece {
  const { from, to } = turn;
  const outline = outlineOf(piece);
  const [first, last] = [edgeIndex(piece, from.edgeId), edgeIndex(piece, to.edgeId)];
  const map = rotationAbout(turn.about, turn.angle);
  const turned = (point: Point) => transformPoint(map, point);
  const corners = turnedCorners(piece, from, to);
  const edges = piece.edges.map((edge, index): Edge => {
    const path = outline.edges[index];
    if (!path || (index !== first && index !== last)) {
      const isTurned = corners.has(index) && edge.shape.kind === 'curve';
      return isTurned && edge.shape.kind === 'curve'
        ? { ...edge, shape: { ...edge.shape, through: edge.shape.through.map(turned) } }
        : edge;
    }
    const cuts = [...(index === first ? [from] : []), ...(index === last ? [to] : [])];
    return { ...edge, shape: { ...endsOf(edge), through: throughCuts(edge, path, { cuts, turn, turned }) } };
  });
  const shaped: Piece = {
    ...piece,
    corners: piece.corners.map((corner, index) => (corners.has(index) ? { ...corner, at: turned(corner.at) } : corner)),
    edges,
  };
  return withMarks(piece, shaped, { turn, turned, corners });
}

/** The corners inside the turned part. */
function turnedCorners(piece: Piece, from: Cut, to: Cut): ReadonlySet<number> {
  const [first, last] = [edgeIndex(piece, from.edgeId), edgeIndex(piece, to.edgeId)];
  const count = piece.corners.length;
  const steps = first === last && from.turned <= to.turned ? 0 : ((last - first + count - 1) % count) + 1;
  return new Set(Array.from({ length: steps }, (_, i) => (first + 1 + i) % count));
}

function endsOf(edge: Edge) {
  return edge.shape.kind === 'curve' ? edge.shape : ({ kind: 'curve', leaves: 'free', meets: 'free' } as const);
}

interface Cutting {
  readonly cuts: readonly Cut[];
  readonly turn: Turn;
  readonly turned: (point: Point) => Point;
}

/** The points of an edge that is cut once or twice, turned where they must be. */
function throughCuts(edge: Edge, path: Path, { cuts, turn, turned }: Cutting): TablePoint[] {
  const total = pathLength(path);
  const own = (edge.shape.kind === 'curve' ? edge.shape.through : []).map((point) => ({
    point,
    along: nearestOnPath(path, point).along,
  }));
  const sorted = cuts.toSorted((a, b) => a.turned - b.turned);
  const through: TablePoint[] = [];
  let begin = 0;
  let heldBehind = false;
  for (const [i, cut] of [...sorted, undefined].entries()) {
    // Behind the cut where the part begins it turns; up to the cut where it ends, too.
    const isTurned = cut ? cut === turn.to : sorted[i - 1] === turn.from;
    const end = cut ? (isTurned ? cut.turned : cut.fixed) : total;
    const places = stretch(path, own, { begin, end, heldBehind, heldAhead: cut?.finish === 'held' });
    through.push(...places.map(({ point }) => (isTurned ? turned(point) : point)));
    if (!cut) break;
    const [fixed, moved] = [pathAtLength(path, cut.fixed).point, turned(pathAtLength(path, cut.turned).point)];
    const atEnd = Math.min(cut.fixed, cut.turned) < 0.5 || Math.max(cut.fixed, cut.turned) > total - 0.5;
    if (cut.finish === 'joined' || isSamePoint(fixed, moved))
      through.push(...(atEnd ? [] : [between(fixed, moved, 0.5)]));
    else through.push(...(isTurned ? [moved, fixed] : [fixed, moved]));
    begin = isTurned ? cut.fixed : cut.turned;
    heldBehind = cut.finish === 'held';
  }
  return through;
}

interface Stretch {
  readonly begin: number;
  readonly end: number;
  readonly heldBehind: boolean;
  readonly heldAhead: boolean;
}

/** The points between two cuts, with pins towards the cuts that hold the course. */
function stretch(path: Path, own: readonly PlaceAlong[], { begin, end, heldBehind, heldAhead }: Stretch): PlaceAlong[] {
  const total = pathLength(path);
  const isWithin = ({ along }: PlaceAlong) => along > begin + 1 && along < end - 1;
  let places = own.filter(isWithin);
  if (heldBehind) places = heldFrom(path, begin, places);
  if (heldAhead) {
    const back = places.map(({ point, along }) => ({ point, along: total - along })).reverse();
    const held = heldFrom(reversePath(path), total - end, back);
    places = held.map(({ point, along }) => ({ point, along: total - along })).reverse();
  }
  return places.filter(isWithin).filter(({ along }, i, all) => i === 0 || along - (all[i - 1]?.along ?? 0) > NEAR / 2);
}

interface Turning {
  readonly turn: Turn;
  readonly turned: (point: Point) => Point;
  readonly corners: ReadonlySet<number>;
}

function withMarks(before: Piece, after: Piece, { turn, turned, corners }: Turning): Piece {
  const [old, now] = [outlineOf(before), outlineOf(after)];
  const { from, to } = turn;
  const isTurned = ({ edgeId, along }: EdgePlace) => {
    const index = edgeIndex(before, edgeId);
    const behind = edgeId === from.edgeId ? along > (from.turned + from.fixed) / 2 : undefined;
    const ahead = edgeId === to.edgeId ? along < (to.turned + to.fixed) / 2 : undefined;
    if (behind === undefined && ahead === undefined) return corners.has(index);
    if (behind !== undefined && ahead !== undefined) return corners.size === 0 ? behind && ahead : behind || ahead;
    return behind ?? ahead ?? false;
  };
  const carried = <Mark extends EdgePlace>(mark: Mark): Mark => {
    if (mark.edgeId !== from.edgeId && mark.edgeId !== to.edgeId) return mark;
    const index = edgeIndex(before, mark.edgeId);
    const [path, led] = [old.edges[index], now.edges[index]];
    if (!path || !led) return mark;
    const at = pathAtLength(path, mark.along).point;
    return { ...mark, along: nearestOnPath(led, isTurned(mark) ? turned(at) : at).along };
  };
  const carriedAlong = (one: Fullness) => carriedFullness(one, (along) => carried({ edgeId: one.edgeId, along }).along);
  const region = regionOf(before, turn);
  const liesIn = (point: Point) => placeInRing(region, point) === 'inside';
  const placed = (point: Point) => (liesIn(point) ? turned(point) : point);
  const { grain } = before;
  const turnsGrain = grain !== undefined && liesIn(between(grain.from, grain.to, 0.5));
  return {
    ...after,
    darts: before.darts.map((dart) => ({ ...carried(dart), point: isTurned(dart) ? turned(dart.point) : dart.point })),
    notches: before.notches.map(carried),
    ...(before.fullness && { fullness: before.fullness.map(carriedAlong) }),
    labels: before.labels.map((label) => ({ ...label, at: placed(label.at) })),
    ...(turnsGrain && grain ? { grain: { from: turned(grain.from), to: turned(grain.to) } } : {}),
  };
}

/** The turned part as a ring of corners: its own outline, and back to what it turns about. */
function regionOf(piece: Piece, { from, to, about }: Turn): Point[] {
  const { edges, whole } = outlineOf(piece);
  const alongWhole = (edgeId: string, along: number) =>
    edges.slice(0, edgeIndex(piece, edgeId)).reduce((sum, path) => sum + pathLength(path), along);
  const part = subPath(whole, alongWhole(from.edgeId, from.turned), alongWhole(to.edgeId, to.turned));
  return part ? [...flattenPath(part, 0.5), about] : [];
}
