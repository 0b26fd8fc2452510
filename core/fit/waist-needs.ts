import type { Garment, Ring } from '../garment/garment';
import { currentSet } from '../garment/measure-value';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { pathLength } from '../geometry/path';
import { type CurvedWaist, curvedWaist, type NoCurvedWaist } from '../shaping/curved-waist';
import { inches } from '../units/inch';
import { girthsOf, levelDepth, ringPieces } from './round-body';

/** What one waist edge of a ring must become so that all of them together fit the waist. */
export type WaistNeed = { readonly pieceId: string; readonly edgeId: string } & (
  | {
      readonly kind: 'needs-curve';
      readonly curve: CurvedWaist;
      /** Whether the waist already is that curve, as near as a needle goes. */
      readonly settled: boolean;
    }
  | { readonly kind: 'no-curve'; readonly why: NoCurvedWaist['why'] | 'measure-missing' }
);

/** A waist this near in length and with both ends square needs nothing more. */
const AS_GOOD = inches(1 / 16);

/**
 * The curved waist of every waist edge in a ring. Together they come to the body and ease; each piece takes its share
 * by the length it has as drawn, and what its darts take up is added.
 */
export function waistNeeds(garment: Garment, ring: Ring): WaistNeed[] {
  const set = currentSet(garment);
  const waist = girthsOf(garment, ring).find((girth) => girth.level.girth === 'waist');
  const hipLevel = ring.levels.find((level) => level.girth === 'hip');
  const hipDepth = hipLevel && levelDepth(hipLevel, set);
  return ringPieces(garment, ring).flatMap(({ piece, from }) =>
    piece.edges.flatMap((edge): WaistNeed[] => {
      // A piece that hangs from elsewhere has no waist of the body.
      if (edge.role !== 'waist' || from) return [];
      const here = { pieceId: piece.id, edgeId: edge.id };
      if (waist?.kind !== 'measured' || waist.total === 0 || typeof hipDepth !== 'number') {
        return [{ ...here, kind: 'no-curve', why: 'measure-missing' }];
      }
      const drawn = drawnLength(piece, edge.id);
      const inDarts = piece.darts.reduce((sum, dart) => (dart.edgeId === edge.id ? sum + dart.width : sum), 0);
      const length = (drawn - inDarts) * (waist.wanted / waist.total) + inDarts;
      const curve = curvedWaist(piece, { waistEdgeId: edge.id, length, hipDepth });
      if (curve.kind === 'no-curved-waist') return [{ ...here, kind: 'no-curve', why: curve.why }];
      const isSquare = edge.shape.kind === 'curve' && edge.shape.leaves === 'square' && edge.shape.meets === 'square';
      const settled = isSquare && Math.abs(curve.length - drawn) <= AS_GOOD;
      return [{ ...here, kind: 'needs-curve', curve, settled }];
    }),
  );
}

function drawnLength(piece: Piece, edgeId: string): number {
  const path = outlineOf(piece).edges[piece.edges.findIndex((edge) => edge.id === edgeId)];
  return path ? pathLength(path) : 0;
}
