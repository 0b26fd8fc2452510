import { inches } from '../units/inch';
import { withAllowanceWhereNone } from './missing-allowances';
import type { Piece } from './piece';

/** Beside seams 5/8 in, as printed patterns have since the middle of the 20th century, and 2 in at hems (common practice). */
export const USUAL_ALLOWANCES = { seam: inches(0.625), hem: inches(2) } as const;

/** The piece with the usual allowance beside every edge of which none is said yet; the same piece where all are said. */
export function withUsualAllowances(piece: Piece): Piece {
  return withAllowanceWhereNone(piece, ({ role }) => (role === 'hem' ? USUAL_ALLOWANCES.hem : USUAL_ALLOWANCES.seam));
}
