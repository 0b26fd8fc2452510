import { outlineOf } from '../garment/outline';
import type { Dart, Piece } from '../garment/piece';
import { edgeIndex } from '../garment/with-piece';
import { rotationAbout, transformPoint } from '../geometry/affine';
import { intersectPaths } from '../geometry/intersect';
import { nearestOnPath, pathBounds, pathLength } from '../geometry/path';
import { move, turnBetween, unit, vectorBetween } from '../geometry/point';
import { line } from '../geometry/segment';
import { selfCrossings } from '../geometry/self-crossing';
import { type Cut, cutAt, type EdgePlace, holdsFold, pointAt, type Turn, turnPart } from './turn-part';

export interface DartNotMoved {
  readonly kind: 'dart-not-moved';
  /** `in-its-mouth`: the new place lies in the mouth of the dart itself. */
  readonly why: 'no-dart' | 'no-such-place' | 'in-its-mouth' | 'crosses';
}

/**
 * The piece with a dart moved to another place, round its own point: the angle between its legs stays, so its width
 * grows with the length of its legs, w2 = w1 L2 / L1 (common practice). The piece is slashed from the new place to the
 * point and turned until the old dart is closed.
 */
export function moveDart(piece: Piece, dartId: string, to: EdgePlace): Piece | DartNotMoved {
  const closed = closing(piece, dartId, to, 'held');
  if (closed.kind !== 'closing') return closed;
  const { dart, turn, without } = closed;
  const place = pointAt(piece, to);
  const shaped = turnPart(without, turn);
  const path = outlineOf(shaped).edges[edgeIndex(shaped, to.edgeId)];
  if (!place || !path) return { kind: 'dart-not-moved', why: 'no-such-place' };
  const other = transformPoint(rotationAbout(turn.about, turn.angle), place);
  const [one, two] = [nearestOnPath(path, place).along, nearestOnPath(path, other).along];
  const moved: Dart = { ...dart, edgeId: to.edgeId, along: (one + two) / 2, width: Math.abs(two - one) };
  return checked({ ...shaped, darts: [...shaped.darts, moved] });
}

/**
 * The piece with a dart closed and opened again at another edge as width left free: flare at a hem. The edge there grows by
 * 2 L sin(a/2), with a the angle of the dart and L from its point to the edge, and is trued with a smooth curve.
 */
export function closeDart(piece: Piece, dartId: string, opening: EdgePlace): Piece | DartNotMoved {
  const closed = closing(piece, dartId, opening, 'smooth');
  return closed.kind === 'closing' ? checked(turnPart(closed.without, closed.turn)) : closed;
}

/**
 * Where the middle line of a dart, carried on beyond its point, comes to a hem: the place at which it is closed into
 * flare. `undefined` when it meets none.
 */
export function flarePlace(piece: Piece, dartId: string): EdgePlace | undefined {
  const dart = piece.darts.find(({ id }) => id === dartId);
  const mouth = dart && pointAt(piece, dart);
  const way = mouth && unit(vectorBetween(mouth, dart.point));
  if (!dart || !way) return undefined;
  const { edges, whole } = outlineOf(piece);
  const box = pathBounds(whole);
  const reach = box.maxX - box.minX + (box.maxY - box.minY);
  const ray = [line(dart.point, move(dart.point, way, reach))];
  let found: { readonly place: EdgePlace; readonly off: number } | undefined;
  for (const [index, path] of edges.entries()) {
    const edge = piece.edges[index];
    if (edge?.role !== 'hem') continue;
    for (const meeting of intersectPaths(ray, path)) {
      if (meeting.kind === 'overlap' || (found && found.off <= meeting.alongA)) continue;
      found = { place: { edgeId: edge.id, along: meeting.alongB }, off: meeting.alongA };
    }
  }
  return found?.place;
}

interface Closing {
  readonly kind: 'closing';
  readonly dart: Dart;
  readonly without: Piece;
  readonly turn: Turn;
}

function closing(piece: Piece, dartId: string, to: EdgePlace, finish: Cut['finish']): Closing | DartNotMoved {
  const dart = piece.darts.find(({ id }) => id === dartId);
  if (!dart) return { kind: 'dart-not-moved', why: 'no-dart' };
  const path = outlineOf(piece).edges[edgeIndex(piece, dart.edgeId)];
  if (!path || !pointAt(piece, to)) return { kind: 'dart-not-moved', why: 'no-such-place' };
  const mouth = {
    from: Math.max(0, dart.along - dart.width / 2),
    to: Math.min(pathLength(path), dart.along + dart.width / 2),
  };
  if (to.edgeId === dart.edgeId && to.along > mouth.from && to.along < mouth.to) {
    return { kind: 'dart-not-moved', why: 'in-its-mouth' };
  }
  const leg = (along: number) => {
    const end = pointAt(piece, { edgeId: dart.edgeId, along });
    return end && vectorBetween(dart.point, end);
  };
  const [first, second] = [leg(mouth.from), leg(mouth.to)];
  if (!first || !second) return { kind: 'dart-not-moved', why: 'no-such-place' };
  const without = { ...piece, darts: piece.darts.filter((other) => other !== dart) };
  const behind: Cut = { edgeId: dart.edgeId, fixed: mouth.from, turned: mouth.to, finish: 'joined' };
  const ahead: Cut = { edgeId: dart.edgeId, turned: mouth.from, fixed: mouth.to, finish: 'joined' };
  const opened = cutAt(to, finish);
  const angle = turnBetween(second, first);
  const turn: Turn = holdsFold(without, behind, opened)
    ? { from: opened, to: ahead, about: dart.point, angle: -angle }
    : { from: behind, to: opened, about: dart.point, angle };
  return { kind: 'closing', dart, without, turn };
}

function checked(piece: Piece): Piece | DartNotMoved {
  return selfCrossings(outlineOf(piece).whole).length > 0 ? { kind: 'dart-not-moved', why: 'crosses' } : piece;
}
