import { outlineOf } from '../garment/outline';
import type { Corner, Edge, Grain, Label, Piece } from '../garment/piece';
import type { EdgeRef } from '../garment/seam';
import { splitEdge } from '../garment/split-edge';
import { edgeIndex, withCorner } from '../garment/with-piece';
import { boxCentre, boxOfPoints } from '../geometry/bounds';
import { flattenPath } from '../geometry/flatten';
import { nearestOnPath, pathAtLength, pathLength } from '../geometry/path';
import { between, distance, move, type Point, type TablePoint, unit, vectorBetween } from '../geometry/point';
import { placeInRing } from '../geometry/polygon';
import { selfCrossings } from '../geometry/self-crossing';
import { splineThrough } from '../geometry/spline';
import { type EdgePlace, pointAt } from './turn-part';

/** How a dart becomes a seam from its edge to another. */
export interface GoreSeamWish {
  /** Where the seam ends, mostly on the hem. */
  readonly to: EdgePlace;
  /** Her line from the point of the dart to there, without its ends; straight for none. */
  readonly through: readonly TablePoint[];
  /** The names of the piece that ends at the dart along the dart's edge, and of the one that begins there. */
  readonly names: readonly [string, string];
  readonly seamName: string;
  readonly newId: () => string;
}

/** The two pieces, the first with the old id, and the edges that are sewn together again. */
export interface GoreSeam {
  readonly kind: 'gore-seam';
  readonly pieces: readonly [Piece, Piece];
  readonly edges: readonly [EdgeRef, EdgeRef];
}

export interface NoGoreSeam {
  readonly kind: 'no-gore-seam';
  readonly why: 'no-dart' | 'no-such-place' | 'crosses';
}

/** The seam turns within so much of the dart's point on both sides of it (mm): what an iron can shape. */
const ROUNDED = 12;

/** Pins keep it to the leg and to the line (mm from the point). */
const PINS = [ROUNDED, 40, 120] as const;

/** Both edges are brought to one length within this many mm. */
const EVEN = 1e-4;
const MOST_TRIES = 12;

/** How closely an outline is followed to sort labels (mm). */
const FOLLOW = 0.5;

/**
 * A dart made a seam right through: the piece is cut along both legs and on from the point. Legs of different lengths are
 * evened, half of the difference each, so that both edges are equally long; a notch on each marks the old point.
 */
export function dartToGore(piece: Piece, dartId: string, wish: GoreSeamWish): GoreSeam | NoGoreSeam {
  const dart = piece.darts.find(({ id }) => id === dartId);
  const path = dart && outlineOf(piece).edges[edgeIndex(piece, dart.edgeId)];
  if (!dart || !path) return refuse('no-dart');
  const [low, high] = [dart.along - dart.width / 2, dart.along + dart.width / 2];
  const foot = pointAt(piece, wish.to);
  if (
    wish.to.edgeId === dart.edgeId ||
    !foot ||
    low <= 0 ||
    high >= pathLength(path) ||
    !isBetweenCorners(piece, wish.to)
  ) {
    return refuse('no-such-place');
  }
  const { newId } = wish;
  const ids = () => ({ cornerId: newId(), edgeId: newId() });
  const [first, second, third] = [ids(), ids(), ids()];
  const bare = { ...piece, darts: piece.darts.filter((other) => other !== dart) };
  const atHigh = splitEdge(bare, dart.edgeId, high, first);
  const cut = splitEdge(splitEdge(atHigh, dart.edgeId, low, second), wish.to.edgeId, wish.to.along, third);
  const line = lineFrom(dart.point, wish.through, foot);
  const [one, two] = [newId(), newId()];
  const begins = goreOf(
    cut,
    { from: first.cornerId, to: third.cornerId, seamId: two, line, point: dart.point, way: 'up' },
    wish,
  );
  const ends = goreOf(
    cut,
    { from: third.cornerId, to: second.cornerId, seamId: one, line, point: dart.point, way: 'down' },
    wish,
  );
  const even = evened(ends, begins, [one, two], [second.cornerId, first.cornerId], dart.point);
  const pieces = [
    withMark({ ...even[0], name: wish.names[0] }, one, dart.point, newId),
    withMark({ ...even[1], id: newId(), name: wish.names[1] }, two, dart.point, newId),
  ] as const;
  if (pieces.some((each) => selfCrossings(outlineOf(each).whole).length > 0)) return refuse('crosses');
  return {
    kind: 'gore-seam',
    pieces,
    edges: [
      { pieceId: pieces[0].id, edgeId: one },
      { pieceId: pieces[1].id, edgeId: two },
    ],
  };
}

function isBetweenCorners(piece: Piece, { edgeId, along }: EdgePlace): boolean {
  return along > 0 && along < pathLength(outlineOf(piece).edges[edgeIndex(piece, edgeId)] ?? []);
}

/** Points of the line from the point of the dart to its foot, the ends left out: hers, and pins near the point. */
function lineFrom(point: TablePoint, through: readonly TablePoint[], foot: TablePoint): TablePoint[] {
  const path = splineThrough([point, ...through, foot]);
  const own = through.map((each) => ({ point: each, along: nearestOnPath(path, each).along }));
  const pins = PINS.filter(
    (along) => along < pathLength(path) - ROUNDED && own.every((each) => Math.abs(each.along - along) > ROUNDED),
  ).map((along) => ({ point: pathAtLength(path, along).point, along }));
  return [...own, ...pins].sort((a, b) => a.along - b.along).map((each) => each.point);
}

interface GoreCut {
  readonly from: string;
  readonly to: string;
  readonly seamId: string;
  /** From the point downwards. */
  readonly line: readonly TablePoint[];
  readonly point: TablePoint;
  /** Whether the new edge runs up to the dart's edge or down from it. */
  readonly way: 'up' | 'down';
}

/** The part of the ring between two corners, closed by the new edge along a leg and the line. */
function goreOf(piece: Piece, { from, to, seamId, line, point, way }: GoreCut, { seamName }: GoreSeamWish): Piece {
  const count = piece.corners.length;
  const start = piece.corners.findIndex(({ id }) => id === from);
  const end = piece.corners.findIndex(({ id }) => id === to);
  const steps = (end - start + count) % count;
  const indexes = Array.from({ length: steps }, (_, i) => (start + i) % count);
  const corners = [...indexes, end].map((index) => piece.corners[index] as Corner);
  const mouth = (way === 'up' ? corners[0] : corners.at(-1)) as Corner;
  const leg = distance(point, mouth.at);
  const legPins = PINS.filter((along) => along < leg - ROUNDED).map((along) => between(point, mouth.at, along / leg));
  const down = [...legPins.reverse(), ...line];
  const seam: Edge = {
    id: seamId,
    name: seamName,
    role: 'seam',
    shape: { kind: 'curve', through: way === 'up' ? down.toReversed() : down, leaves: 'free', meets: 'free' },
    ...allowanceLike(piece),
  };
  const edges = [...indexes.map((index) => piece.edges[index] as Edge), seam];
  const ids = new Set(edges.map(({ id }) => id));
  const isOn = ({ edgeId }: { readonly edgeId: string }) => ids.has(edgeId);
  const { fullness, grain, ...rest } = piece;
  const ringed: Piece = { ...rest, corners, edges, darts: [], notches: [], labels: [] };
  const ring = flattenPath(outlineOf(ringed).whole, FOLLOW);
  const isIn = (at: Point) => placeInRing(ring, at) === 'inside';
  const labels: readonly Label[] = piece.labels.filter(({ at }) => isIn(at));
  const hasFold = edges.some(({ role }) => role === 'fold');
  const shared = fullness?.filter(isOn) ?? [];
  return {
    ...ringed,
    cut: piece.cut.how === 'fold' && !hasFold ? { how: 'pair', count: 2 * piece.cut.count } : piece.cut,
    darts: piece.darts.filter(isOn),
    notches: piece.notches.filter(isOn),
    labels,
    ...(shared.length > 0 && { fullness: shared }),
    ...(grain && { grain: isIn(between(grain.from, grain.to, 0.5)) ? grain : grainWithin(grain, ring) }),
  };
}

/** What the seams of a piece are allowed, where all of them are alike. */
function allowanceLike(piece: Piece): { readonly allowance?: number } {
  const said = piece.edges.filter(({ role }) => role === 'seam').map(({ allowance }) => allowance);
  const first = said[0];
  return first !== undefined && said.every((each) => each === first) ? { allowance: first } : {};
}

/** The grain, as long and the same way, in the middle of a part it does not lie in. */
function grainWithin(grain: Grain, ring: readonly Point[]): Grain {
  const box = boxOfPoints(ring);
  if (!box) return grain;
  const by = vectorBetween(between(grain.from, grain.to, 0.5), boxCentre(box));
  return { from: move(grain.from, by), to: move(grain.to, by) };
}

/** Both pieces with their new edges brought to one length: each mouth corner moves along its leg by half the difference. */
function evened(
  one: Piece,
  two: Piece,
  seamIds: readonly [string, string],
  cornerIds: readonly [string, string],
  point: TablePoint,
): readonly [Piece, Piece] {
  let pair: readonly [Piece, Piece] = [one, two];
  const length = (index: 0 | 1) =>
    pathLength(outlineOf(pair[index]).edges[edgeIndex(pair[index], seamIds[index])] ?? []);
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const off = length(0) - length(1);
    if (Math.abs(off) <= EVEN) break;
    pair = [drawnIn(pair[0], cornerIds[0], point, off / 2), drawnIn(pair[1], cornerIds[1], point, -off / 2)];
  }
  return pair;
}

function drawnIn(piece: Piece, cornerId: string, towards: TablePoint, by: number): Piece {
  return withCorner(piece, cornerId, (corner) => {
    const way = unit(vectorBetween(corner.at, towards));
    return way ? { ...corner, at: move(corner.at, way, by) } : corner;
  });
}

/** A notch where the new edge passes the old point of the dart. */
function withMark(piece: Piece, edgeId: string, point: TablePoint, newId: () => string): Piece {
  const path = outlineOf(piece).edges[edgeIndex(piece, edgeId)];
  if (!path) return piece;
  const { along } = nearestOnPath(path, point);
  return { ...piece, notches: [...piece.notches, { id: newId(), edgeId, along, count: 1 }] };
}

function refuse(why: NoGoreSeam['why']): NoGoreSeam {
  return { kind: 'no-gore-seam', why };
}
