import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { pathLength } from '../geometry/path';

/** A stretch of an edge taken up by a dart, as lengths from the edge's start. */
export interface Mouth {
  readonly from: number;
  readonly to: number;
}

/** The length of an edge along its stitch line; `undefined` when the piece has no such edge. */
export function edgeLength(piece: Piece, edgeId: string): number | undefined {
  const index = piece.edges.findIndex(({ id }) => id === edgeId);
  const path = outlineOf(piece).edges[index];
  return path && pathLength(path);
}

/** The length of an edge as it is sewn: its stitch line less the dart mouths on it, overlaps counted once. */
export function netEdgeLength(piece: Piece, edgeId: string): number | undefined {
  const length = edgeLength(piece, edgeId);
  return length === undefined ? undefined : netAlong(dartMouths(piece, edgeId, length), length);
}

/** The dart mouths on an edge of that length, in order, cut off at its ends and joined where they overlap. */
export function dartMouths(piece: Piece, edgeId: string, length: number): readonly Mouth[] {
  const mouths = piece.darts
    .filter((dart) => dart.edgeId === edgeId && dart.width > 0)
    .map(({ along, width }) => ({
      from: Math.min(length, Math.max(0, along - width / 2)),
      to: Math.min(length, Math.max(0, along + width / 2)),
    }))
    .sort((a, b) => a.from - b.from);
  const apart: Mouth[] = [];
  for (const mouth of mouths) {
    const last = apart[apart.length - 1];
    if (last && mouth.from <= last.to) apart[apart.length - 1] = { from: last.from, to: Math.max(last.to, mouth.to) };
    else apart.push(mouth);
  }
  return apart;
}

/** A length along an edge once the darts before it are sewn; inside a mouth, where that mouth closes. */
export function netAlong(mouths: readonly Mouth[], along: number): number {
  return mouths.reduce((left, { from, to }) => left - Math.max(0, Math.min(along, to) - from), along);
}
