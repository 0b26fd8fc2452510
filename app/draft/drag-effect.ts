import { addThrough } from '../../core/garment/curve-edits';
import { putDart, putLabel, putNotch, setGrain } from '../../core/garment/mark-edits';
import { movePiece } from '../../core/garment/move-piece';
import { moveCorner, moveThrough } from '../../core/garment/move-point';
import { outlineOf } from '../../core/garment/outline';
import type { Dart, Piece } from '../../core/garment/piece';
import { edgeIndex } from '../../core/garment/with-piece';
import { nearestOnPath, pathLength } from '../../core/geometry/path';
import { type TablePoint, vectorBetween } from '../../core/geometry/point';
import type { Chosen } from '../state/table-store';
import type { Hit } from './hit-test';

/** The piece with what was taken hold of brought to a place; always counted from the piece as it was at the start. */
export function dragged(piece: Piece, hit: Hit, to: TablePoint): Piece {
  switch (hit.kind) {
    case 'corner':
      return moveCorner(piece, hit.cornerId, to);
    case 'through':
      return moveThrough(piece, hit.edgeId, hit.index, to);
    case 'plus': {
      const added = addThrough(piece, hit.edgeId, hit.at);
      return added ? moveThrough(added.piece, hit.edgeId, added.index, to) : piece;
    }
    case 'handle':
      return movePiece(piece, vectorBetween(hit.at, to));
    case 'dart-point':
      return changeOf(piece.darts, hit.id, (dart) => putDart(piece, { ...dart, point: to })) ?? piece;
    case 'dart-mouth':
      return changeOf(piece.darts, hit.id, (dart) => slidDart(piece, dart, to)) ?? piece;
    case 'notch':
      return (
        changeOf(piece.notches, hit.id, (notch) =>
          putNotch(piece, { ...notch, along: alongEdge(piece, notch.edgeId, to) ?? notch.along }),
        ) ?? piece
      );
    case 'label':
      return changeOf(piece.labels, hit.id, (label) => putLabel(piece, { ...label, at: to })) ?? piece;
    case 'grain-end':
      return piece.grain ? setGrain(piece, { ...piece.grain, [hit.end]: to }) : piece;
    case 'edge':
      return piece;
  }
}

/** What is chosen once something has been taken hold of. A new point counts from `plus` being put in. */
export function chosenBy(piece: Piece, hit: Hit): Chosen {
  const pieceId = piece.id;
  switch (hit.kind) {
    case 'corner':
      return { kind: 'corner', pieceId, cornerId: hit.cornerId };
    case 'through':
      return { kind: 'through', pieceId, edgeId: hit.edgeId, index: hit.index };
    case 'plus':
      return { kind: 'through', pieceId, edgeId: hit.edgeId, index: addThrough(piece, hit.edgeId, hit.at)?.index ?? 0 };
    case 'dart-point':
    case 'dart-mouth':
      return { kind: 'dart', pieceId, id: hit.id };
    case 'notch':
    case 'label':
      return { kind: hit.kind, pieceId, id: hit.id };
    case 'grain-end':
      return { kind: 'grain', pieceId };
    case 'edge':
      return { kind: 'edge', pieceId, edgeId: hit.edgeId };
    case 'handle':
      return { kind: 'piece', pieceId };
  }
}

/** How far along an edge its place nearest to somewhere lies. */
export function alongEdge(piece: Piece, edgeId: string, near: TablePoint): number | undefined {
  const path = outlineOf(piece).edges[edgeIndex(piece, edgeId)];
  return path && nearestOnPath(path, near).along;
}

/** A dart moved along its edge, kept whole on it; its point goes along by as much. */
function slidDart(piece: Piece, dart: Dart, to: TablePoint): Piece {
  const path = outlineOf(piece).edges[edgeIndex(piece, dart.edgeId)];
  if (!path) return piece;
  const length = pathLength(path);
  const half = Math.min(dart.width, length) / 2;
  const near = nearestOnPath(path, to);
  const along = Math.min(length - half, Math.max(half, near.along));
  const before = nearestOnPath(path, dart.point);
  const shift = vectorBetween(before.point, near.point);
  return putDart(piece, { ...dart, along, point: { x: dart.point.x + shift.dx, y: dart.point.y + shift.dy } });
}

function changeOf<Mark extends { readonly id: string }>(
  marks: readonly Mark[],
  id: string,
  change: (mark: Mark) => Piece,
): Piece | undefined {
  const mark = marks.find((one) => one.id === id);
  return mark && change(mark);
}
