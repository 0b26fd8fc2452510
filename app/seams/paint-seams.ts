import type { Garment } from '../../core/garment/garment';
import { outlineOf } from '../../core/garment/outline';
import type { EdgeRef } from '../../core/garment/seam';
import { edgeIndex, pieceOf } from '../../core/garment/with-piece';
import { type Affine, transformPath, transformPoint } from '../../core/geometry/affine';
import { pathAtLength, pathLength } from '../../core/geometry/path';
import { type Point, scaleVector, type Vector } from '../../core/geometry/point';
import type { Path } from '../../core/geometry/segment';
import { placeOnSide, type SeamSide } from '../../core/seams/seam-sides';
import { type SeamWalk, sewnPlaces, walkPose } from '../../core/seams/seam-walk';
import { layPath, writeWords } from '../table/ink';
import { handlePlace } from '../table/name-place';
import { paintName, paintPiece } from '../table/paint-piece';
import { canvasColours } from '../ui/canvas-colours';
import { seamsWords as words } from '../words/seams';
import { finely } from './seam-names';
import { looseEdges } from './seam-sums';
import { runsBetween } from './side-runs';
import { type StripNotch, stripOf } from './strip-marks';

type Ink = CanvasRenderingContext2D;

/** Every piece as it is. */
export function paintPieces(ink: Ink, garment: Garment, px: number): void {
  for (const piece of garment.pieces) {
    paintPiece(ink, piece, px, 'quiet');
    paintName(ink, piece, px);
  }
}

/** Edges that are sewn in a broad line, those that still want a partner in broad dashes. */
export function paintSewn(ink: Ink, garment: Garment, px: number): void {
  for (const { one, other } of garment.seams ?? []) {
    for (const edge of [...one, ...other])
      strokeEdge(ink, garment, edge, { px, width: 4, colour: canvasColours.chalk });
  }
  for (const edge of looseEdges(garment)) {
    strokeEdge(ink, garment, edge, { px, width: 4, colour: canvasColours.wrong, dash: [4, 6] });
  }
}

/** The edges pressed to be paired, the first and the second of them. */
export function paintPicked(ink: Ink, garment: Garment, picked: readonly EdgeRef[], px: number): void {
  picked.forEach((edge, index) => {
    strokeEdge(ink, garment, edge, { px, width: 7, colour: canvasColours.chalkDeep });
    const path = pathOf(garment, edge);
    if (!path) return;
    const { point } = pathAtLength(path, pathLength(path) * (index === 0 ? 0.45 : 0.55));
    writeWords(ink, index === 0 ? words.first : words.second, { at: point, px, sizePx: 16 });
  });
}

/** Both sides of the seam in hand where they are drawn, with their ends, their notches and where they part. */
export function paintSides(ink: Ink, garment: Garment, walk: SeamWalk, px: number): void {
  strokeSide(ink, walk.one, px, canvasColours.ink);
  strokeSide(ink, walk.other, px, canvasColours.chalk);
  const strip = stripOf(walk);
  for (const { one, by } of walk.partings) {
    const runs = runsBetween(walk.one, ...one);
    for (const { path } of runs) hatch(ink, path, px);
    const said = words.partsShort(finely(garment, Math.abs(by)), by > 0 ? 'long' : 'short');
    const middle = (one[0] + one[1]) / 2;
    const { point, direction, hand } = placeOnSide(walk.one, middle);
    writeBeside(ink, said, point, sideways(direction, hand), px, canvasColours.wrong);
  }
  for (const notch of strip.one.notches) tagNotch(ink, garment, walk.one, notch, px);
  for (const [along, said, way] of [
    [0, words.start, -1],
    [walk.one.length, words.end, 1],
  ] as const) {
    const { point, direction } = placeOnSide(walk.one, along);
    writeBeside(ink, said, point, scaleVector(direction, way), px, canvasColours.inkSoft);
  }
}

/** The second piece laid against the first at a place of the walk, in chalk, and where they touch. */
export function paintRolled(ink: Ink, garment: Garment, walk: SeamWalk, along: number, px: number): void {
  const { one, other } = sewnPlaces(walk, along);
  const pose = walkPose(walk, along);
  const piece = other.piece;
  ink.beginPath();
  layPath(ink, transformPath(pose, outlineOf(piece).whole));
  ink.globalAlpha = 0.14;
  ink.fillStyle = canvasColours.chalk;
  ink.fill();
  ink.globalAlpha = 1;
  stroke(ink, { px, width: 1.75, colour: canvasColours.chalk });
  for (const { pieceId, path } of runsBetween(walk.other, 0, walk.other.length)) {
    if (pieceId !== piece.id) continue;
    ink.beginPath();
    layPath(ink, transformPath(pose, path));
    stroke(ink, { px, width: 3.5, colour: canvasColours.chalk });
  }
  for (const { other: part } of walk.partings) {
    for (const { pieceId, path } of runsBetween(walk.other, ...part)) {
      if (pieceId === piece.id) hatch(ink, transformPath(pose, path), px);
    }
  }
  for (const notch of stripOf(walk).other.notches) {
    if (notch.pieceId === piece.id) tagNotch(ink, garment, walk.other, notch, px, pose);
  }
  writeWords(ink, piece.name, {
    at: transformPoint(pose, handlePlace(piece)),
    px,
    sizePx: 16,
    colour: canvasColours.chalkDeep,
  });
  ink.beginPath();
  ink.arc(one.point.x, one.point.y, 8 * px, 0, 2 * Math.PI);
  ink.fillStyle = canvasColours.sheet;
  ink.fill();
  stroke(ink, { px, width: 3, colour: canvasColours.chalkDeep });
}

interface Line {
  readonly px: number;
  readonly width: number;
  readonly colour: string;
  readonly dash?: readonly number[];
}

function stroke(ink: Ink, { px, width, colour, dash = [] }: Line): void {
  ink.strokeStyle = colour;
  ink.lineWidth = width * px;
  ink.setLineDash(dash.map((part) => part * px));
  ink.stroke();
  ink.setLineDash([]);
}

function strokeEdge(ink: Ink, garment: Garment, edge: EdgeRef, line: Line): void {
  const path = pathOf(garment, edge);
  if (!path) return;
  ink.beginPath();
  layPath(ink, path);
  stroke(ink, line);
}

function pathOf(garment: Garment, { pieceId, edgeId }: EdgeRef): Path | undefined {
  const piece = pieceOf(garment, pieceId);
  return piece && outlineOf(piece).edges[edgeIndex(piece, edgeId)];
}

function strokeSide(ink: Ink, side: SeamSide, px: number, colour: string): void {
  for (const { path } of runsBetween(side, 0, side.length)) {
    ink.beginPath();
    layPath(ink, path);
    stroke(ink, { px, width: 4, colour });
  }
}

/** A stretch where the sides part: short strokes across a broad band, so that it is seen without its colour. */
function hatch(ink: Ink, path: Path, px: number): void {
  ink.beginPath();
  layPath(ink, path);
  stroke(ink, { px, width: 11, colour: canvasColours.wrong, dash: [2, 4] });
}

function tagNotch(ink: Ink, garment: Garment, side: SeamSide, notch: StripNotch, px: number, pose?: Affine): void {
  const { point, direction, hand } = placeOnSide(side, notch.along);
  const inside = sideways(direction, hand);
  const tip = { x: point.x + inside.dx * 12 * px, y: point.y + inside.dy * 12 * px };
  const [from, to] = pose ? [transformPoint(pose, point), transformPoint(pose, tip)] : [point, tip];
  const colour = notch.state === 'meets' ? canvasColours.ink : canvasColours.wrong;
  ink.beginPath();
  ink.moveTo(from.x, from.y);
  ink.lineTo(to.x, to.y);
  stroke(ink, { px, width: 2.5, colour });
  const off = notch.state === 'off' ? finely(garment, Math.abs(notch.apart)) : undefined;
  // On the rolled piece the number alone is enough, since its partner says how far it is off.
  const said = words.notchTag(notch.number, pose ? undefined : off);
  const way = { dx: (to.x - from.x) / (12 * px), dy: (to.y - from.y) / (12 * px) };
  writeBeside(ink, said, to, way, px, colour);
}

/** A quarter turn of a direction, to the right to the eye for 1. */
function sideways({ dx, dy }: Vector, hand: 1 | -1): Vector {
  return { dx: -dy * hand, dy: dx * hand };
}

function writeBeside(ink: Ink, said: string, at: Point, way: Vector, px: number, colour: string): void {
  const align = way.dx > 0.4 ? 'left' : way.dx < -0.4 ? 'right' : 'center';
  writeWords(ink, said, { at, px, colour, align, offset: { x: way.dx * 10, y: way.dy * 14 } });
}
