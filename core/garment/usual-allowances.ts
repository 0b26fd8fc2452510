import { inches } from '../units/inch';
import type { Piece } from './piece';

/** Beside seams 5/8 in, as printed patterns have since the middle of the 20th century, and 2 in at hems (common practice). */
export const USUAL_ALLOWANCES = { seam: inches(0.625), hem: inches(2) } as const;

/** The piece with the usual allowance beside every edge of which none is said yet; the same piece where all are said. */
export function withUsualAllowances(piece: Piece): Piece {
  if (piece.edges.every(({ role, allowance }) => role === 'fold' || allowance !== undefined)) return piece;
  const edges = piece.edges.map((edge) => {
    if (edge.role === 'fold' || edge.allowance !== undefined) return edge;
    return { ...edge, allowance: edge.role === 'hem' ? USUAL_ALLOWANCES.hem : USUAL_ALLOWANCES.seam };
  });
  return { ...piece, edges };
}
