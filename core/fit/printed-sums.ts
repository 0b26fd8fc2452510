import type { Garment } from '../garment/garment';
import { outlineOf } from '../garment/outline';
import type { Edge, Piece } from '../garment/piece';
import type { PrintedWhole } from '../garment/printed-whole';
import type { EdgeRef } from '../garment/seam';
import { edgeIndex, pieceOf } from '../garment/with-piece';
import { pathLength } from '../geometry/path';
import { timesInGarment } from './whole-garment';

/** One edge in a sum: how long it is by its printed figure, or as drawn where none is printed or the drawing rules. */
export interface SumPart {
  readonly ref: EdgeRef;
  readonly length: number;
  readonly isPrinted: boolean;
  readonly drawn: number;
  readonly times: number;
}

/** What the edges of a printed whole come to. */
export interface PrintedSum {
  readonly parts: readonly SumPart[];
  readonly sum: number;
  readonly drawn: number;
}

/** The sum of the single figures that a printed whole is made of; an edge that is no longer there is passed over. */
export function printedSum(garment: Garment, whole: PrintedWhole): PrintedSum {
  const parts = whole.edges.flatMap((ref) => {
    const found = edgeOf(garment, ref);
    if (!found) return [];
    const times = whole.counted === 'in-garment' ? timesInGarment(garment, found.piece) : 1;
    return [{ ref, times, ...figureOf(found) }];
  });
  return {
    parts,
    sum: parts.reduce((sum, { length, times }) => sum + length * times, 0),
    drawn: parts.reduce((sum, { drawn, times }) => sum + drawn * times, 0),
  };
}

interface FoundEdge {
  readonly piece: Piece;
  readonly edge: Edge;
  readonly drawn: number;
}

export function edgeOf(garment: Garment, { pieceId, edgeId }: EdgeRef): FoundEdge | undefined {
  const piece = pieceOf(garment, pieceId);
  const index = piece ? edgeIndex(piece, edgeId) : -1;
  const edge = piece?.edges[index];
  return piece && edge && { piece, edge, drawn: pathLength(outlineOf(piece).edges[index] ?? []) };
}

/** The printed figure of an edge where one rules or may rule; else its drawn length. */
export function figureOf({ edge, drawn }: FoundEdge): Pick<SumPart, 'length' | 'isPrinted' | 'drawn'> {
  const isPrinted = edge.stated !== undefined && edge.stated.rules !== 'drawing';
  return { length: isPrinted && edge.stated ? edge.stated.length : drawn, isPrinted, drawn };
}
