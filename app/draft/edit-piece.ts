import type { Piece } from '../../core/garment/piece';
import { withPiece } from '../../core/garment/with-piece';
import type { ShownIn } from '../../core/units/inch';
import { useGarment } from '../state/garment-store';

/** Changes one piece as one step that can be undone. */
export function editPiece(label: string, pieceId: string, change: (piece: Piece) => Piece): void {
  useGarment.getState().edit(label, (garment) => withPiece(garment, pieceId, change));
}

/** What lengths are shown in. */
export function useShownIn(): ShownIn {
  return useGarment((state) => state.garment?.shownIn ?? 'in');
}
