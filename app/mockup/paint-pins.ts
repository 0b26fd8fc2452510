import type { Garment } from '../../core/garment/garment';
import type { PinnedChange } from '../../core/garment/mockup';
import { outlineOf } from '../../core/garment/outline';
import { edgeIndex, pieceOf } from '../../core/garment/with-piece';
import { pathAtLength, pathLength, signedArea } from '../../core/geometry/path';
import { move, type Point, quarterTurn, scaleVector } from '../../core/geometry/point';
import { line, type Path } from '../../core/geometry/segment';
import { type PinnedOnEdge, placesOn } from '../../core/mockup/pin-places';
import type { PinnedLength } from '../../core/mockup/pinned-length';
import type { PinnedPoint } from '../../core/mockup/pinned-point';
import { lineAcrossPiece } from '../../core/shaping/lengthen-garment';
import { layPath, writeWords } from '../table/ink';
import { canvasColours } from '../ui/canvas-colours';
import { writeLength } from '../words/written';

type Ink = CanvasRenderingContext2D;

/** How a change is drawn: the one in hand, one still to be carried over, or one that is in the draft already. */
export type PinLook = 'in-hand' | 'noted' | 'carried';

interface Drawn {
  readonly look: PinLook;
  /** The number by which the notebook names it. */
  readonly number: number | undefined;
  /** Which of its pins is in hand. */
  readonly pin?: number;
  readonly px: number;
}

/** What was pinned, on the pieces: pins on their edge and the line that fades between them, lines across, arrows. */
export function paintPinned(ink: Ink, garment: Garment, { what }: PinnedChange, drawn: Drawn): void {
  if (what.kind === 'edge') paintEdge(ink, garment, what, drawn);
  else if (what.kind === 'length') paintLength(ink, garment, what, drawn);
  else paintPoint(ink, garment, what, drawn);
}

function colourOf(look: PinLook): string {
  return look === 'carried' ? canvasColours.inkSoft : canvasColours.chalkDeep;
}

function stroke(ink: Ink, px: number, width: number, colour: string, dash: readonly number[] = []): void {
  ink.strokeStyle = colour;
  ink.lineWidth = width * px;
  ink.setLineDash(dash.map((part) => part * px));
  ink.stroke();
  ink.setLineDash([]);
}

function paintEdge(ink: Ink, garment: Garment, what: PinnedOnEdge, { look, number, pin, px }: Drawn): void {
  const piece = pieceOf(garment, what.edge.pieceId);
  const path = piece && outlineOf(piece).edges[edgeIndex(piece, what.edge.edgeId)];
  if (!piece || !path) return;
  const colour = colourOf(look);
  if (look === 'in-hand') {
    ink.beginPath();
    layPath(ink, path);
    stroke(ink, px, 5, canvasColours.chalk);
  }
  const { pins, from, to, length } = placesOn(what, pathLength(path));
  const graded = [
    { along: from ?? 0, by: 0 },
    ...pins.toSorted((a, b) => a.along - b.along),
    { along: to ?? length, by: 0 },
  ].filter(({ along, by }) => by !== 0 || pins.every((one) => one.along !== along || one.by === 0));
  const inward = signedArea(outlineOf(piece).whole) > 0 ? 1 : -1;
  const off = ({ along, by }: { readonly along: number; readonly by: number }): Point => {
    const { point, tangent } = pathAtLength(path, along);
    return move(point, scaleVector(quarterTurn(tangent), inward), by);
  };
  ink.beginPath();
  graded.forEach((place, i) => {
    const { x, y } = off(place);
    if (i === 0) ink.moveTo(x, y);
    else ink.lineTo(x, y);
  });
  stroke(ink, px, 2, colour, [6, 4]);
  what.pins.forEach((place, i) => {
    const { point, tangent } = pathAtLength(path, place.along);
    const head = move(point, scaleVector(quarterTurn(tangent), -inward), 16 * px);
    const tip = off(place);
    ink.beginPath();
    ink.moveTo(head.x, head.y);
    ink.lineTo(tip.x, tip.y);
    stroke(ink, px, 2, colour);
    pinHead(ink, head, px, { colour, isFull: look !== 'carried', isLarge: i === pin });
    const said = `${number === undefined || i > 0 ? '' : `${number}: `}${writeLength(Math.abs(place.by), { shownIn: garment.shownIn })}`;
    const out = scaleVector(quarterTurn(tangent), -inward);
    const align = out.dx > 0.4 ? 'left' : out.dx < -0.4 ? 'right' : 'center';
    writeWords(ink, said, { at: head, px, colour, align, offset: { x: out.dx * 14, y: out.dy * 16 } });
  });
}

function pinHead(
  ink: Ink,
  { x, y }: Point,
  px: number,
  { colour, isFull, isLarge }: { readonly colour: string; readonly isFull: boolean; readonly isLarge: boolean },
): void {
  ink.beginPath();
  ink.arc(x, y, (isLarge ? 9 : 6) * px, 0, 2 * Math.PI);
  ink.fillStyle = isFull ? colour : canvasColours.sheet;
  ink.fill();
  stroke(ink, px, isLarge ? 3 : 1.5, isLarge ? canvasColours.ink : colour);
}

function paintLength(ink: Ink, garment: Garment, what: PinnedLength, { look, number, px }: Drawn): void {
  const colour = colourOf(look);
  const { at } = what;
  let first: Point | undefined;
  for (const pieceId of what.pieceIds) {
    const piece = pieceOf(garment, pieceId);
    if (!piece) continue;
    const across = at.kind === 'depth' ? lineAcrossPiece(piece, at.depth) : undefined;
    const hems = outlineOf(piece).edges.filter((_, i) => piece.edges[i]?.role === 'hem');
    const paths: readonly Path[] = at.kind === 'hem' ? hems : across ? [[line(across.from, across.to)]] : [];
    for (const path of paths) {
      ink.beginPath();
      layPath(ink, path);
      stroke(ink, px, look === 'in-hand' ? 4 : 2.5, colour, [10, 4, 2, 4]);
      first ??= pathAtLength(path, pathLength(path) / 2).point;
    }
  }
  if (!first) return;
  const sign = what.by < 0 ? '−' : '+';
  const said = `${number === undefined ? '' : `${number}: `}${sign} ${writeLength(Math.abs(what.by), { shownIn: garment.shownIn })}`;
  writeWords(ink, said, { at: first, px, colour, offset: { x: 0, y: 16 } });
}

function paintPoint(ink: Ink, garment: Garment, what: PinnedPoint, { look, number, px }: Drawn): void {
  const colour = colourOf(look);
  const pieces = garment.pieces.filter(({ id }) => what.pieceId === '' || id === what.pieceId);
  if (look === 'in-hand') {
    for (const { corners } of pieces) {
      for (const { at } of corners) pinHead(ink, at, px, { colour, isFull: false, isLarge: false });
    }
  }
  const corner = pieceOf(garment, what.pieceId)?.corners.find(({ id }) => id === what.cornerId);
  if (!corner) return;
  const to = move(corner.at, what.by);
  ink.beginPath();
  ink.moveTo(corner.at.x, corner.at.y);
  ink.lineTo(to.x, to.y);
  stroke(ink, px, 2.5, colour);
  pinHead(ink, to, px, { colour, isFull: look !== 'carried', isLarge: look === 'in-hand' });
  if (number !== undefined) writeWords(ink, String(number), { at: to, px, colour, offset: { x: 0, y: -18 } });
}
