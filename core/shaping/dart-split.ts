import { outlineOf } from '../garment/outline';
import type { Dart, Piece } from '../garment/piece';
import { edgeIndex } from '../garment/with-piece';
import { pathAtLength, pathLength } from '../geometry/path';
import { between, move, type Point, type TablePoint, turnBetween, vectorBetween } from '../geometry/point';
import { type DartNotMoved, moveDart } from './dart-move';
import { rootBetween } from './root';
import { type EdgePlace, pointAt } from './turn-part';

/** One of the darts that a dart is split into. */
export interface DartPart {
  readonly id: string;
  /** How much of the whole angle it takes, against the shares of the others. */
  readonly share: number;
  /** The middle of its mouth, on the piece as it is. */
  readonly at: EdgePlace;
  /** Its point; on the same edge it moves with the mouth unless said, on another edge it is that of the whole dart. */
  readonly point?: TablePoint;
}

export interface DartNotSplit {
  readonly kind: 'dart-not-split';
  readonly why: DartNotMoved['why'] | 'one-part' | 'overlap';
}

/** A sub-mouth's side is found to this many mm along the edge. */
const FOUND = 1e-9;

/**
 * The piece with one dart made into two or more. On the edge of the dart itself the widths of the parts add up to the
 * whole width, so the edge is sewn as long as before; a part on another edge is turned there round the point of the
 * whole dart and keeps its share of the angle (see `dart-move.ts`).
 */
export function splitDart(piece: Piece, dartId: string, parts: readonly DartPart[]): Piece | DartNotSplit {
  const dart = piece.darts.find(({ id }) => id === dartId);
  const path = dart && outlineOf(piece).edges[edgeIndex(piece, dart.edgeId)];
  if (!dart || !path) return refuse('no-dart');
  if (parts.length < 2 || parts.some(({ share }) => !(share > 0))) return refuse('one-part');
  if (parts.some(({ at }) => !pointAt(piece, at))) return refuse('no-such-place');
  // While parts are turned, the places of all of them are carried along as notches, their points as labels.
  const fans = fanned(dart, path, parts);
  let split: Piece = {
    ...piece,
    darts: [...piece.darts.filter((other) => other !== dart), ...fans],
    notches: [...piece.notches, ...parts.map(({ at }, i) => ({ id: placeId(i), ...at, count: 1 as const }))],
    labels: [...piece.labels, ...parts.map(({ point }, i) => ({ id: placeId(i), at: point ?? dart.point, text: '' }))],
  };
  for (const [i, part] of parts.entries()) {
    if (part.at.edgeId === dart.edgeId) continue;
    const moved = moveDart(split, part.id, placeOf(split, i));
    if ('why' in moved) return refuse(moved.why);
    split = withDart(moved, part.id, (own) => (part.point ? { ...own, point: pointOf(moved, i) ?? own.point } : own));
  }
  for (const [i, part] of parts.entries()) {
    if (part.at.edgeId !== dart.edgeId) continue;
    const { along } = placeOf(split, i);
    split = withDart(split, part.id, (own) => ({
      ...own,
      along,
      point: part.point ? (pointOf(split, i) ?? own.point) : besideMouth(split, own, along),
    }));
  }
  const mended = {
    ...split,
    notches: split.notches.filter(({ id }) => !parts.some((_, i) => id === placeId(i))),
    labels: split.labels.filter(({ id }) => !parts.some((_, i) => id === placeId(i))),
  };
  const own = parts.map(({ id }) => mended.darts.find((each) => each.id === id)).filter((each) => each !== undefined);
  return own.some((each) => isCrowded(mended, each)) ? refuse('overlap') : mended;
}

/** Darts side by side in the old mouth, all to the old point, each with its share of the angle. */
function fanned(dart: Dart, path: ReturnType<typeof outlineOf>['whole'], parts: readonly DartPart[]): Dart[] {
  const [low, high] = [
    Math.max(0, dart.along - dart.width / 2),
    Math.min(pathLength(path), dart.along + dart.width / 2),
  ];
  const first = vectorBetween(dart.point, pathAtLength(path, low).point);
  const angleTo = (along: number) => turnBetween(first, vectorBetween(dart.point, pathAtLength(path, along).point));
  const whole = angleTo(high);
  const shares = parts.reduce((sum, { share }) => sum + share, 0);
  let [done, begin] = [0, low];
  return parts.map(({ id, share }, i) => {
    done += share / shares;
    const isLast = i === parts.length - 1;
    const end = isLast ? high : (rootBetween((along) => angleTo(along) - whole * done, low, high, FOUND) ?? high);
    const part = { id, edgeId: dart.edgeId, along: (begin + end) / 2, width: end - begin, point: dart.point };
    begin = end;
    return part;
  });
}

/** The point of a dart whose mouth moves along its edge: it keeps its place against the mouth. */
function besideMouth(piece: Piece, dart: Dart, along: number): Point {
  const path = outlineOf(piece).edges[edgeIndex(piece, dart.edgeId)] ?? [];
  const middle = (at: number) =>
    between(pathAtLength(path, at - dart.width / 2).point, pathAtLength(path, at + dart.width / 2).point, 0.5);
  return move(dart.point, vectorBetween(middle(dart.along), middle(along)));
}

function isCrowded(piece: Piece, dart: Dart): boolean {
  const length = pathLength(outlineOf(piece).edges[edgeIndex(piece, dart.edgeId)] ?? []);
  const half = dart.width / 2;
  if (dart.along < half - TOUCHING || dart.along > length - half + TOUCHING) return true;
  return piece.darts.some(
    (other) =>
      other.id !== dart.id &&
      other.edgeId === dart.edgeId &&
      Math.abs(other.along - dart.along) < half + other.width / 2 - TOUCHING,
  );
}

/** Mouths may lie side by side: less than this is no overlap (mm). */
const TOUCHING = 1e-6;

function placeId(index: number): string {
  return `split place ${index}`;
}

function placeOf(piece: Piece, index: number): EdgePlace {
  const { edgeId, along } = piece.notches.find(({ id }) => id === placeId(index)) as EdgePlace;
  return { edgeId, along };
}

function pointOf(piece: Piece, index: number): Point | undefined {
  return piece.labels.find(({ id }) => id === placeId(index))?.at;
}

function withDart(piece: Piece, id: string, change: (dart: Dart) => Dart): Piece {
  return { ...piece, darts: piece.darts.map((dart) => (dart.id === id ? change(dart) : dart)) };
}

function refuse(why: DartNotSplit['why']): DartNotSplit {
  return { kind: 'dart-not-split', why };
}
