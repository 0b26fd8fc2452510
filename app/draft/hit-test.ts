import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { pathAtLength, pathLength } from '../../core/geometry/path';
import { distance, type Point, type TablePoint } from '../../core/geometry/point';
import { type EdgeHit, hitEdge } from '../table/hit-edge';
import { handlePlace } from '../table/name-place';

/** What lies under the pointer on one piece. */
export type Hit =
  | { readonly kind: 'corner'; readonly cornerId: string; readonly at: TablePoint }
  | { readonly kind: 'through'; readonly edgeId: string; readonly index: number; readonly at: TablePoint }
  /** The mark in the middle of a stretch of edge, where a new point goes; `index` is its place among the others. */
  | { readonly kind: 'plus'; readonly edgeId: string; readonly index: number; readonly at: TablePoint }
  | { readonly kind: 'dart-point'; readonly id: string; readonly at: TablePoint }
  | { readonly kind: 'dart-mouth'; readonly id: string; readonly at: TablePoint }
  | { readonly kind: 'notch'; readonly id: string; readonly at: TablePoint }
  | { readonly kind: 'label'; readonly id: string; readonly at: TablePoint }
  | { readonly kind: 'grain-end'; readonly end: 'from' | 'to'; readonly at: TablePoint }
  | { readonly kind: 'handle'; readonly at: TablePoint }
  | EdgeHit;

/** The mark for a new point is shown only on stretches at least this long, in millimetres. */
interface PlusRule {
  readonly leastStretch: number;
}

/** The places of a piece that can be taken hold of, in the order in which they win where they coincide. */
export function grips(piece: Piece, plus: PlusRule): Hit[] {
  const outline = outlineOf(piece);
  const all: Hit[] = piece.corners.map(({ id, at }) => ({ kind: 'corner', cornerId: id, at }));
  for (const edge of piece.edges) {
    if (edge.shape.kind !== 'curve') continue;
    edge.shape.through.forEach((at, index) => {
      all.push({ kind: 'through', edgeId: edge.id, index, at });
    });
  }
  for (const dart of piece.darts) {
    all.push({ kind: 'dart-point', id: dart.id, at: dart.point });
    all.push({ kind: 'dart-mouth', id: dart.id, at: placeOnEdge(piece, dart.edgeId, dart.along) });
  }
  for (const notch of piece.notches) {
    all.push({ kind: 'notch', id: notch.id, at: placeOnEdge(piece, notch.edgeId, notch.along) });
  }
  for (const label of piece.labels) all.push({ kind: 'label', id: label.id, at: label.at });
  if (piece.grain) {
    all.push({ kind: 'grain-end', end: 'from', at: piece.grain.from });
    all.push({ kind: 'grain-end', end: 'to', at: piece.grain.to });
  }
  all.push({ kind: 'handle', at: handlePlace(piece) });
  piece.edges.forEach((edge, number) => {
    outline.edges[number]?.forEach((stretch, index) => {
      const length = pathLength([stretch], 0.1);
      if (length < plus.leastStretch) return;
      all.push({ kind: 'plus', edgeId: edge.id, index, at: pathAtLength([stretch], length / 2).point });
    });
  });
  return all;
}

/** What of a piece lies within `reach` of a place: the nearest grip, else the nearest edge, else nothing. */
export function hitPiece(piece: Piece, place: Point, reach: number, plus: PlusRule): Hit | undefined {
  return nearestGrip(grips(piece, plus), place, reach) ?? hitEdge(piece, place, reach);
}

/** The nearest grip within reach; of equally near ones the first. */
export function nearestGrip(all: readonly Hit[], place: Point, reach: number): Hit | undefined {
  let best: Hit | undefined;
  let off = reach;
  for (const grip of all) {
    const here = distance(grip.at, place);
    if (here < off || (here === off && !best)) {
      best = grip;
      off = here;
    }
  }
  return best;
}

/** Where a length along an edge falls; the middle of the piece for an edge it does not have. */
export function placeOnEdge(piece: Piece, edgeId: string, along: number): TablePoint {
  const path = outlineOf(piece).edges[piece.edges.findIndex((edge) => edge.id === edgeId)];
  return path ? pathAtLength(path, along).point : handlePlace(piece);
}
