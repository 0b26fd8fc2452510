import type { Garment, Ring } from '../garment/garment';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { pathLength } from '../geometry/path';
import { type GirthAtLevel, ringPieces } from './round-body';

/** An opening of a ring: edges named so that follow one another on one piece, by the first of them. */
export interface Opening {
  readonly pieceId: string;
  readonly edgeId: string;
  /** All of it, in mm. */
  readonly length: number;
}

/**
 * The longest opening in the pieces of a ring; `undefined` when no edge is named as one. Its two sides lie on two pieces
 * and are one opening, so they are never added together.
 */
export function longestOpening(garment: Garment, ring: Ring): Opening | undefined {
  let longest: Opening | undefined;
  for (const { piece } of ringPieces(garment, ring)) {
    for (const opening of openingsOf(piece)) if (!longest || opening.length > longest.length) longest = opening;
  }
  return longest;
}

function openingsOf(piece: Piece): Opening[] {
  const { edges } = outlineOf(piece);
  const found: Opening[] = [];
  const count = piece.edges.length;
  for (const [first, edge] of piece.edges.entries()) {
    if (edge.role !== 'opening' || piece.edges.at(first - 1)?.role === 'opening') continue;
    let length = 0;
    for (let step = 0; step < count; step++) {
      const index = (first + step) % count;
      if (piece.edges[index]?.role !== 'opening') break;
      length += pathLength(edges[index] ?? []);
    }
    found.push({ pieceId: piece.id, edgeId: edge.id, length });
  }
  return found;
}

/**
 * How far down an opening must reach before the pieces let the hips through (mm, 0 when they do so at the top): between
 * levels the girth is taken to grow evenly. Where no level is wide enough, the depth of the lowest.
 */
export function openingNeeded(girths: readonly GirthAtLevel[], hip: number): number {
  const known = girths
    .flatMap((girth) => (girth.kind === 'no-depth' || girth.total === 0 ? [] : [girth]))
    .sort((a, b) => a.depth - b.depth);
  const top = known[0];
  if (!top || top.total >= hip) return 0;
  let above = top;
  for (const below of known.slice(1)) {
    if (below.total < hip) above = below;
    else return above.depth + ((hip - above.total) / (below.total - above.total)) * (below.depth - above.depth);
  }
  return above.depth;
}
