import { outlineOf } from '../../core/garment/outline';
import type { EdgeRole, Piece } from '../../core/garment/piece';
import { pathAtLength, pathLength } from '../../core/geometry/path';
import { distance, type Point } from '../../core/geometry/point';

const PARTNER: Partial<Record<EdgeRole, EdgeRole>> = { hem: 'waist', waist: 'hem' };

/** The edge a slash from another one most likely ends on: the waist for the hem and so on, else the one furthest off. */
export function acrossFrom(piece: Piece, edgeId: string): string {
  const { edges } = outlineOf(piece);
  const middle = (index: number): Point => {
    const path = edges[index] ?? [];
    return pathAtLength(path, pathLength(path) / 2).point;
  };
  const own = piece.edges.findIndex(({ id }) => id === edgeId);
  const partner = PARTNER[piece.edges[own]?.role ?? 'seam'];
  const others = piece.edges.map((edge, index) => ({ edge, index })).filter(({ index }) => index !== own);
  const named = others.find(({ edge }) => edge.role === partner);
  const furthest = others.toSorted(
    (a, b) => distance(middle(b.index), middle(own)) - distance(middle(a.index), middle(own)),
  )[0];
  return (named ?? furthest)?.edge.id ?? edgeId;
}
