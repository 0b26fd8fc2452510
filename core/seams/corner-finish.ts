import { neighbourIndex } from '../garment/outline';
import type { Corner, CornerFinish, Edge, EdgeRole, Piece } from '../garment/piece';
import { cornerAngle } from './corner-angle';

/**
 * A corner is sharp below this angle inside the piece, 60 degrees: there a mitre reaches further than twice the
 * allowance, s / sin(a / 2) > 2 s (common practice: such a point is cut off).
 */
export const SHARP = Math.PI / 3;

/** Edges that run down to a hem and are folded up with it. */
const sideRoles: readonly EdgeRole[] = ['seam', 'opening', 'finished'];

/**
 * How the cut line turns the corner of that index: as she has set it, or as custom has it (common practice). A corner on
 * a fold is always mitred, so that the other cut edge is simply carried to the fold line; a hem and a side edge are
 * mirrored, so that the turned-up hem lies flat; a sharp corner is cut blunt; any other is mitred.
 */
export function cornerFinish(piece: Piece, cornerIndex: number): CornerFinish {
  const corner = piece.corners[cornerIndex];
  const before = piece.edges[neighbourIndex(piece, cornerIndex, -1)];
  const after = piece.edges[cornerIndex];
  if (!corner || !before || !after) throw new Error(`piece ${piece.id} has no corner ${cornerIndex}`);
  return finishBetween(before, after, corner, cornerAngle(piece, cornerIndex));
}

/** The same for two edges known to meet at `corner` in `angle` (radians, inside the piece). */
export function finishBetween(before: Edge, after: Edge, corner: Corner, angle: number): CornerFinish {
  if (before.role === 'fold' || after.role === 'fold') return 'mitred';
  if (corner.finish) return corner.finish;
  if (angle < Math.PI && isHemCorner(before, after)) return 'mirrored';
  return angle < SHARP ? 'blunt' : 'mitred';
}

function isHemCorner(before: Edge, after: Edge): boolean {
  return (
    (before.role === 'hem' && sideRoles.includes(after.role)) ||
    (after.role === 'hem' && sideRoles.includes(before.role))
  );
}
