import type { LineKind, Mark } from '../../core/drawing/drawing';
import { lineStyles } from '../../core/drawing/line-styles';
import { strokesAlong, strokesWithin } from '../../core/drawing/piece-drawing';
import { isGuide } from '../../core/garment/cut-pieces';
import { outlineOf } from '../../core/garment/outline';
import type { EdgeRole, Piece } from '../../core/garment/piece';
import { pathAtLength, pathLength } from '../../core/geometry/path';
import type { Vector } from '../../core/geometry/point';
import { windingOf } from '../../core/seams/corner-angle';
import { canvasColours } from '../ui/canvas-colours';
import { layPath, writeWords } from './ink';
import { handlePlace } from './name-place';

/** A line a quarter of a millimetre wide on paper is one pixel wide on the screen, however near. */
const PX_A_WIDTH = 4;
/** Dashes are drawn this many pixels to a printed millimetre. */
const PX_A_DASH = 3;

/** The stitch line of the piece in hand is unbroken but where its role breaks it, so that its run is plain to see. */
const IN_HAND_DASHES: Readonly<Record<EdgeRole, readonly number[]>> = {
  seam: [],
  waist: [],
  hem: [],
  finished: [],
  opening: [9, 4],
  fold: [14, 4, 3, 4],
};

/**
 * A piece as it will be printed, in lines of a steady width; what is written on it beyond labels is left to the notebook.
 * Its cut line and notches may be those it had a moment ago, brought to where it is now.
 */
export function paintPiece(
  ink: CanvasRenderingContext2D,
  piece: Piece,
  px: number,
  look: 'in-hand' | 'quiet',
  along: { readonly piece: Piece; readonly by: Vector } = { piece, by: { dx: 0, dy: 0 } },
): void {
  const outline = outlineOf(piece);
  const inHand = look === 'in-hand';
  if (isGuide(piece) && !inHand) {
    paintGuide(ink, piece, px);
    return;
  }
  ink.beginPath();
  layPath(ink, outline.whole);
  ink.globalAlpha = inHand ? 0.12 : 0.22;
  ink.fillStyle = inHand ? canvasColours.chalk : canvasColours.sheet;
  ink.fill();
  ink.globalAlpha = 1;
  ink.lineJoin = 'round';
  ink.save();
  ink.translate(along.by.dx, along.by.dy);
  strokeMarks(ink, strokesAlong(along.piece), px, inHand);
  ink.restore();
  strokeMarks(ink, strokesWithin(piece), px, inHand);
  if (inHand) {
    ink.strokeStyle = canvasColours.chalk;
    ink.lineWidth = 2.25 * px;
    outline.edges.forEach((path, index) => {
      ink.setLineDash(IN_HAND_DASHES[piece.edges[index]?.role ?? 'seam'].map((dash) => dash * px));
      ink.beginPath();
      layPath(ink, path);
      ink.stroke();
    });
  }
  ink.setLineDash([]);
  for (const { at, text } of piece.labels) {
    // In hand the words stand below their place, which has a point to take hold of.
    if (text.trim() !== '') writeWords(ink, text, { at, px, weight: 400, offset: { x: 0, y: inHand ? 16 : 0 } });
  }
}

function strokeMarks(ink: CanvasRenderingContext2D, marks: readonly Mark[], px: number, inHand: boolean): void {
  for (const mark of marks) {
    if (mark.kind !== 'stroke' || (inHand && ownLines.has(mark.line))) continue;
    const { width, dash } = lineStyles[mark.line];
    ink.strokeStyle = inHand && mark.line !== 'cut' ? canvasColours.chalk : canvasColours.ink;
    ink.lineWidth = width * PX_A_WIDTH * px;
    ink.setLineDash(dash.map((part) => part * PX_A_DASH * px));
    ink.beginPath();
    layPath(ink, mark.path);
    ink.stroke();
  }
}

/** A base pattern to lay under a draft: long dashes with two dots, as drawings show another place of a part (ISO 128-2). */
function paintGuide(ink: CanvasRenderingContext2D, piece: Piece, px: number): void {
  ink.strokeStyle = canvasColours.inkSoft;
  ink.lineWidth = 1.5 * px;
  ink.setLineDash([16, 4, 2, 4, 2, 4].map((dash) => dash * px));
  ink.beginPath();
  layPath(ink, outlineOf(piece).whole);
  ink.stroke();
  ink.setLineDash([]);
}

/** What the piece in hand draws for itself. */
const ownLines: ReadonlySet<LineKind> = new Set(['stitch', 'fold']);

/** The name in the middle of a piece. */
export function paintName(ink: CanvasRenderingContext2D, piece: Piece, px: number): void {
  writeWords(ink, piece.name, { at: handlePlace(piece), px, sizePx: 16 });
}

/** Words along the inside of an edge, upright to the eye; left out where the edge is too short for them. */
export function paintAlongEdge(
  ink: CanvasRenderingContext2D,
  piece: Piece,
  index: number,
  words: string,
  px: number,
): void {
  const path = outlineOf(piece).edges[index];
  if (!path) return;
  const length = pathLength(path, 0.1);
  if (length / px < words.length * 6.5) return;
  const { point, tangent } = pathAtLength(path, length / 2);
  let angle = Math.atan2(tangent.dy, tangent.dx);
  // Before turning about, the inside lies at positive y of a ring that runs clockwise.
  let inside: number = windingOf(piece);
  if (Math.abs(angle) > Math.PI / 2 + 1e-9) {
    angle += Math.PI;
    inside = -inside;
  }
  writeWords(ink, words, { at: point, px, angle, offset: { x: 0, y: inside * 15 }, colour: canvasColours.chalkDeep });
}
