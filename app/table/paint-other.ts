import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { canvasColours } from '../ui/canvas-colours';
import { layPath } from './ink';

/** The draft as it is now, laid over another one: the stitch lines in wide chalk dashes. */
export function paintNowOver(ink: CanvasRenderingContext2D, pieces: readonly Piece[], px: number): void {
  paintOutlines(ink, pieces, { colour: canvasColours.chalk, width: 2 * px, dash: [10 * px, 6 * px] });
}

/** Pieces as they were first drawn, laid under the draft: the stitch lines in dots. */
export function paintAsTraced(ink: CanvasRenderingContext2D, pieces: readonly Piece[], px: number): void {
  paintOutlines(ink, pieces, { colour: canvasColours.ink, width: 2.5 * px, dash: [2.5 * px, 4 * px] });
}

function paintOutlines(
  ink: CanvasRenderingContext2D,
  pieces: readonly Piece[],
  { colour, width, dash }: { readonly colour: string; readonly width: number; readonly dash: number[] },
): void {
  ink.strokeStyle = colour;
  ink.lineWidth = width;
  ink.setLineDash(dash);
  for (const piece of pieces) {
    ink.beginPath();
    layPath(ink, outlineOf(piece).whole);
    ink.stroke();
  }
  ink.setLineDash([]);
}
