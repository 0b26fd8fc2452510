import type { Piece } from '../../core/garment/piece';
import { withPiece } from '../../core/garment/with-piece';
import { useGarment } from '../state/garment-store';

/** Changes one piece as one step that can be undone. */
export function editPiece(label: string, pieceId: string, change: (piece: Piece) => Piece): void {
  useGarment.getState().edit(label, (garment) => withPiece(garment, pieceId, change));
}
