import { cutPieces } from '../garment/cut-pieces';
import type { Piece } from '../garment/piece';
import type { EdgeRef } from '../garment/seam';
import { netEdgeLength } from './edge-length';
import { SEAM_MATCH } from './walk';

/** Two edges that are probably sewn together. `difference` is the sewn length of the first less that of the second. */
export interface SeamPair {
  readonly one: EdgeRef;
  readonly other: EdgeRef;
  readonly difference: number;
  readonly by: 'name' | 'length';
}

interface NamedEdge extends EdgeRef {
  readonly name: string;
  readonly length: number;
}

/**
 * Seams of the pieces that probably belong together: first edges of the same name, whatever their lengths, then the
 * nearest in length within {@link SEAM_MATCH}, on different pieces before two of one piece. Each edge once. Only edges
 * whose role is a seam are looked at, none of a guide, and none for which `leaveOut` says so.
 */
export function proposeSeamPairs(
  pieces: readonly Piece[],
  { leaveOut = () => false }: { readonly leaveOut?: (edge: EdgeRef) => boolean } = {},
): readonly SeamPair[] {
  const edges = cutPieces({ pieces })
    .flatMap(seamsOf)
    .filter((edge) => !leaveOut(edge));
  const candidates: SeamPair[] = [];
  edges.forEach((one, i) => {
    for (const other of edges.slice(i + 1)) {
      const difference = one.length - other.length;
      const named = one.name !== '' && one.name === other.name;
      if (!named && Math.abs(difference) > SEAM_MATCH) continue;
      candidates.push({ one: refOf(one), other: refOf(other), difference, by: named ? 'name' : 'length' });
    }
  });
  candidates.sort((a, b) => rank(a) - rank(b) || Math.abs(a.difference) - Math.abs(b.difference));
  const used = new Set<string>();
  return candidates.filter(({ one, other }) => {
    const [a, b] = [keyOf(one), keyOf(other)];
    if (used.has(a) || used.has(b)) return false;
    used.add(a).add(b);
    return true;
  });
}

function seamsOf(piece: Piece): NamedEdge[] {
  return piece.edges
    .filter(({ role }) => role === 'seam')
    .map(({ id, name }) => ({
      pieceId: piece.id,
      edgeId: id,
      name: name.trim().toLowerCase(),
      length: netEdgeLength(piece, id) ?? 0,
    }));
}

function rank({ by, one, other }: SeamPair): number {
  return (by === 'name' ? 0 : 2) + (one.pieceId === other.pieceId ? 1 : 0);
}

function refOf({ pieceId, edgeId }: EdgeRef): EdgeRef {
  return { pieceId, edgeId };
}

function keyOf({ pieceId, edgeId }: EdgeRef): string {
  return JSON.stringify([pieceId, edgeId]);
}
