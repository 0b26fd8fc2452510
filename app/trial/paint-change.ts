import type { Garment } from '../../core/garment/garment';
import { outlineOf } from '../../core/garment/outline';
import { pieceOf } from '../../core/garment/with-piece';
import { layPath } from '../table/ink';
import { paintName, paintPiece } from '../table/paint-piece';
import { canvasColours } from '../ui/canvas-colours';

/** What a change makes: pieces it changes or takes away as they were, in thin dashes; as they would be, in chalk. */
export function paintChange(ink: CanvasRenderingContext2D, before: Garment, after: Garment, px: number): void {
  for (const piece of before.pieces) {
    if (after.pieces.includes(piece)) continue;
    ink.beginPath();
    layPath(ink, outlineOf(piece).whole);
    ink.strokeStyle = canvasColours.inkSoft;
    ink.lineWidth = 1.25 * px;
    ink.setLineDash([5 * px, 4 * px]);
    ink.stroke();
    ink.setLineDash([]);
  }
  for (const piece of after.pieces) {
    if (pieceOf(before, piece.id) === piece) continue;
    paintPiece(ink, piece, px, 'in-hand');
    paintName(ink, piece, px);
  }
}
