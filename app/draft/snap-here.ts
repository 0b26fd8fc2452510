import type { Piece } from '../../core/garment/piece';
import type { TablePoint } from '../../core/geometry/point';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import { type PointerAt, REACH_PX } from '../table/tool';
import { stopsOf } from '../table/walk';
import type { SnapTo } from './snap';

/** How near a point must be to be met, in CSS pixels: the same for finger and mouse, since the magnifier helps. */
export const SNAP_REACH_PX = 9;

/** World units in a CSS pixel where the pointer is. */
export function pixelAt(at: PointerAt): number {
  return at.reach / REACH_PX[at.kind];
}

/** What a pointer snaps to now: the switch and the step of the table, the points of all pieces but one. */
export function snapHere(at: PointerAt, points: readonly TablePoint[], inLineWith: readonly TablePoint[]): SnapTo {
  const { snapping, snapStep } = useTable.getState();
  const reach = SNAP_REACH_PX * pixelAt(at);
  if (at.free) return { step: undefined, reach };
  return { step: snapping ? snapStep : undefined, points, inLineWith, reach };
}

/** The points of every piece but one, for meeting them exactly. */
export function pointsOfOthers(pieceId: string | undefined): readonly TablePoint[] {
  const pieces = useGarment.getState().garment?.pieces ?? [];
  return pieces.filter((piece) => piece.id !== pieceId).flatMap((piece) => stopsOf(piece).map((stop) => stop.at));
}

/** The points of a piece but the one at a place. */
export function pointsBeside(piece: Piece, at: TablePoint): readonly TablePoint[] {
  return stopsOf(piece)
    .map((stop) => stop.at)
    .filter((point) => point.x !== at.x || point.y !== at.y);
}
