import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { pathBounds } from '../../core/geometry/path';
import type { TablePoint } from '../../core/geometry/point';
import { layPath, lettering } from '../table/ink';
import { handlePlace } from '../table/name-place';
import { canvasColours } from '../ui/canvas-colours';
import { grips } from './hit-test';

/** Which part of the piece is chosen, in the words of the hit test. */
export interface ChosenPart {
  readonly cornerId?: string;
  readonly edgeId?: string;
  readonly throughIndex?: number;
  readonly markId?: string;
}

/** The plus marks are shown on stretches of at least this many CSS pixels. */
export const LEAST_PLUS_PX = 64;

/** The corners (squares), curve points (rounds), places for new points (pluses) and the name of the piece in hand. */
export function paintGrips(ink: CanvasRenderingContext2D, piece: Piece, px: number, chosen: ChosenPart): void {
  const edgeIndex = piece.edges.findIndex((edge) => edge.id === chosen.edgeId);
  const edgePath = outlineOf(piece).edges[edgeIndex];
  if (edgePath && chosen.throughIndex === undefined) {
    ink.beginPath();
    layPath(ink, edgePath);
    ink.strokeStyle = canvasColours.chalkDeep;
    ink.lineWidth = 5 * px;
    ink.stroke();
  }
  for (const grip of grips(piece, { leastStretch: LEAST_PLUS_PX * px })) {
    if (grip.kind === 'corner') square(ink, grip.at, px, grip.cornerId === chosen.cornerId);
    else if (grip.kind === 'through') {
      round(ink, grip.at, px, grip.edgeId === chosen.edgeId && grip.index === chosen.throughIndex);
    } else if (grip.kind === 'plus') plus(ink, grip.at, px);
    else if (grip.kind === 'grain-end') round(ink, grip.at, px, chosen.markId === 'grain');
    else if (grip.kind !== 'handle' && grip.kind !== 'edge') round(ink, grip.at, px, grip.id === chosen.markId);
  }
}

function square(ink: CanvasRenderingContext2D, at: TablePoint, px: number, filled: boolean): void {
  const half = (filled ? 6.5 : 5) * px;
  ink.beginPath();
  ink.rect(at.x - half, at.y - half, 2 * half, 2 * half);
  finish(ink, px, filled);
}

function round(ink: CanvasRenderingContext2D, at: TablePoint, px: number, filled: boolean): void {
  ink.beginPath();
  ink.arc(at.x, at.y, (filled ? 6.5 : 5) * px, 0, 2 * Math.PI);
  finish(ink, px, filled);
}

function finish(ink: CanvasRenderingContext2D, px: number, filled: boolean): void {
  ink.fillStyle = filled ? canvasColours.chalk : canvasColours.sheet;
  ink.fill();
  ink.strokeStyle = filled ? canvasColours.sheet : canvasColours.chalkDeep;
  ink.lineWidth = 2 * px;
  ink.stroke();
}

function plus(ink: CanvasRenderingContext2D, at: TablePoint, px: number): void {
  const arm = 4.5 * px;
  for (const [colour, width] of [
    [canvasColours.sheet, 5],
    [canvasColours.chalkDeep, 1.75],
  ] as const) {
    ink.beginPath();
    ink.moveTo(at.x - arm, at.y);
    ink.lineTo(at.x + arm, at.y);
    ink.moveTo(at.x, at.y - arm);
    ink.lineTo(at.x, at.y + arm);
    ink.strokeStyle = colour;
    ink.lineWidth = width * px;
    ink.stroke();
  }
}

/** The name of the piece in hand on a slip of paper: the one thing by which the whole piece is moved. */
export function paintHandle(ink: CanvasRenderingContext2D, piece: Piece, px: number): void {
  const at = handlePlace(piece);
  ink.save();
  ink.translate(at.x, at.y);
  ink.scale(px, px);
  ink.font = lettering(16, 700);
  const named = ink.measureText(piece.name).width / 2 + 22;
  const box = pathBounds(outlineOf(piece).whole);
  // On a piece that is small on the screen the slip would hide it, and only the arrows are left.
  const small = (box.maxX - box.minX) / px < 2 * named + 50;
  const half = small ? 14 : named;
  ink.beginPath();
  ink.rect(-half, -14, 2 * half, 28);
  ink.fillStyle = canvasColours.sheet;
  ink.fill();
  ink.strokeStyle = canvasColours.chalkDeep;
  ink.lineWidth = 1.5;
  ink.stroke();
  // Four small arrows: it can go any way.
  ink.beginPath();
  for (const [dx, dy] of [
    [1, 0],
    [-1, 0],
    [0, 1],
    [0, -1],
  ] as const) {
    const x = -half + 14;
    ink.moveTo(x, 0);
    ink.lineTo(x + dx * 7, dy * 7);
    ink.moveTo(x + dx * 4 - dy * 3, dy * 4 - dx * 3);
    ink.lineTo(x + dx * 7, dy * 7);
    ink.lineTo(x + dx * 4 + dy * 3, dy * 4 + dx * 3);
  }
  ink.stroke();
  if (!small) {
    ink.fillStyle = canvasColours.ink;
    ink.textAlign = 'center';
    ink.textBaseline = 'middle';
    ink.fillText(piece.name, 8, 1);
  }
  ink.restore();
}
