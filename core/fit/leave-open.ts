import { insertCorner, NEAR_CORNER } from '../garment/corner-edits';
import type { Garment, Ring } from '../garment/garment';
import { neighbourIndex, outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { type EdgeRef, isSameEdge } from '../garment/seam';
import { edgeIndex, withEdge, withPiece } from '../garment/with-piece';
import { pathLength } from '../geometry/path';
import { ringPieces } from './round-body';

/** A seam edge that comes down from a waist edge, and which of its ends lies at the waist. */
export interface FromWaist extends EdgeRef {
  readonly waistAt: 'start' | 'end';
  /** All of it, in mm. */
  readonly length: number;
}

/** The seam edges of a ring that come down from the waist, where part of a seam can be left open to get into the garment. */
export function seamsFromWaist(garment: Garment, ring: Ring): FromWaist[] {
  return ringPieces(garment, ring).flatMap(({ piece }) => fromWaistOf(piece));
}

function fromWaistOf(piece: Piece): FromWaist[] {
  const { edges } = outlineOf(piece);
  const isWaist = (index: number) => piece.edges[index]?.role === 'waist';
  return piece.edges.flatMap(({ id, role }, index) => {
    const waistAt = isWaist(neighbourIndex(piece, index, -1))
      ? 'start'
      : isWaist(neighbourIndex(piece, index, 1))
        ? 'end'
        : undefined;
    if (role !== 'seam' || waistAt === undefined) return [];
    return [{ pieceId: piece.id, edgeId: id, waistAt, length: pathLength(edges[index] ?? []) }];
  });
}

/**
 * The garment with the uppermost `depth` mm of a seam from the waist left open, on the edge named and on those sewn to it
 * that come from the waist too. A corner is put at the foot of the opening, unless that is where the seam ends; the seam keeps both parts of each edge.
 */
export function leaveOpen(garment: Garment, ring: Ring, at: EdgeRef, depth: number, newId: () => string): Garment {
  const partners = (garment.seams ?? []).flatMap(({ one, other }) =>
    one.some((edge) => isSameEdge(edge, at)) ? other : other.some((edge) => isSameEdge(edge, at)) ? one : [],
  );
  const sides = seamsFromWaist(garment, ring).filter((seam) =>
    [at, ...partners].some((edge) => isSameEdge(edge, seam)),
  );
  return sides.reduce((now, side) => openOne(now, side, depth, newId), garment);
}

function openOne(garment: Garment, side: FromWaist, depth: number, newId: () => string): Garment {
  const { pieceId, edgeId, waistAt, length } = side;
  const opened = (piece: Piece, id: string) => withEdge(piece, id, (edge) => ({ ...edge, role: 'opening' }));
  return withPiece(garment, pieceId, (piece) => {
    if (depth > length - NEAR_CORNER) return opened(piece, edgeId);
    const index = edgeIndex(piece, edgeId);
    const cut = insertCorner(piece, edgeId, waistAt === 'start' ? depth : length - depth, newId);
    return opened(cut, cut.edges[waistAt === 'start' ? index : index + 1]?.id ?? edgeId);
  });
}
