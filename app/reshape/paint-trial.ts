import type { WhatChanges } from '../../core/check/what-changes';
import type { Garment } from '../../core/garment/garment';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { pathAtLength, pathLength } from '../../core/geometry/path';
import type { ShownIn } from '../../core/units/inch';
import { layPath, writeWords } from '../table/ink';
import { paintAlongEdge, paintName, paintPiece } from '../table/paint-piece';
import { canvasColours } from '../ui/canvas-colours';
import { writeLength } from '../words/written';
import type { Grip, TrialLine } from './change';

/** Every piece as it is; what a change would replace is left out, since it is drawn with the change. */
export function paintPieces(ink: CanvasRenderingContext2D, garment: Garment, after: Garment | undefined, px: number) {
  for (const piece of garment.pieces) {
    if (after && !after.pieces.includes(piece)) continue;
    paintPiece(ink, piece, px, 'quiet');
    paintName(ink, piece, px);
  }
}

/** The piece she has chosen, with the edge she has chosen in a broad line. */
export function paintChosen(ink: CanvasRenderingContext2D, piece: Piece, edgeId: string | undefined, px: number) {
  paintPiece(ink, piece, px, 'in-hand');
  paintName(ink, piece, px);
  const path = outlineOf(piece).edges[piece.edges.findIndex(({ id }) => id === edgeId)];
  if (!path) return;
  ink.beginPath();
  layPath(ink, path);
  ink.strokeStyle = canvasColours.chalk;
  ink.lineWidth = 5 * px;
  ink.stroke();
}

/** The lengths that change, along their edges as they would be. */
export function paintLengths(
  ink: CanvasRenderingContext2D,
  edges: WhatChanges['edges'],
  shownIn: ShownIn,
  px: number,
): void {
  for (const { piece, edge, after } of edges) {
    const index = piece.edges.findIndex(({ id }) => id === edge.id);
    paintAlongEdge(ink, piece, index, writeLength(after, { shownIn }), px);
  }
}

/** The lines and grips of the change itself. */
export function paintTrial(
  ink: CanvasRenderingContext2D,
  lines: readonly TrialLine[],
  grips: readonly Grip[],
  px: number,
) {
  for (const { path, look, words } of lines) {
    ink.beginPath();
    layPath(ink, path);
    ink.strokeStyle = look === 'cut' ? canvasColours.wrong : canvasColours.chalkDeep;
    ink.lineWidth = (look === 'cut' ? 2 : 1.25) * px;
    ink.setLineDash(look === 'cut' ? [10 * px, 4 * px, 2 * px, 4 * px] : [3 * px, 4 * px]);
    ink.stroke();
    ink.setLineDash([]);
    if (!words) continue;
    const { point } = pathAtLength(path, pathLength(path) / 2);
    writeWords(ink, words, { at: point, px, colour: canvasColours.chalkDeep, offset: { x: 0, y: -13 } });
  }
  for (const { at } of grips) {
    ink.beginPath();
    ink.arc(at.x, at.y, 7 * px, 0, 2 * Math.PI);
    ink.fillStyle = canvasColours.sheet;
    ink.fill();
    ink.strokeStyle = canvasColours.chalkDeep;
    ink.lineWidth = 2.5 * px;
    ink.stroke();
  }
}
