import { isPlace, type PlaceKey } from '../../core/cloth/lay-by-hand';
import type { LayFault } from '../../core/cloth/lay-check';
import { placedJoin } from '../../core/cloth/placed-join';
import { ringCentre } from '../../core/cloth/ring-middle';
import { lineStyles } from '../../core/drawing/line-styles';
import type { PieceJoin } from '../../core/garment/garment-cloth';
import { boxOfPoints } from '../../core/geometry/bounds';
import type { Point } from '../../core/geometry/point';
import { wordsWide, writeWords } from '../table/ink';
import type { Ground } from '../table/painted';
import { canvasColours } from '../ui/canvas-colours';
import { hatch, layRing } from './paint-cloth';
import { roomOf } from './room-for-words';
import type { Shown } from './shown-lay';

/** As on the pieces of the other rooms: a quarter of a millimetre on paper is one pixel. */
const PX_A_WIDTH = 4;

/** A piece less wide than this (px) has room for its name only. */
const NARROW = 40;

/** The size of a piece's name, in CSS pixels. */
const WORDS_PX = 14;

interface LayPainted {
  readonly shown: readonly Shown[];
  readonly faults: readonly LayFault[];
  readonly inHand: PlaceKey | undefined;
  readonly name: (id: string) => string;
  readonly joins: readonly PieceJoin[];
  /** Where words have to be turned to so that they read across the screen. */
  readonly angle: number;
}

/** The pieces on the cloth, the one in hand last; what overlaps is hatched and marked. */
export function paintLay(ink: CanvasRenderingContext2D, lay: LayPainted, ground: Ground): void {
  const { shown, faults, inHand, name, joins, angle } = lay;
  const ordered = [...shown].sort((a, b) => Number(isPlace(a.place, inHand)) - Number(isPlace(b.place, inHand)));
  for (const one of ordered) paintPiece(ink, one, { ground, inHand: isPlace(one.place, inHand) });
  if (joins.length > 0) for (const one of ordered) paintJoin(ink, one, { ground, joins });
  for (const one of ordered)
    paintWords(ink, one, { ground, text: name(one.place.id), inHand: isPlace(one.place, inHand), angle });
  for (const fault of faults) if (fault.kind === 'overlap') paintOverlap(ink, fault.at, ground, angle);
}

function paintPiece(
  ink: CanvasRenderingContext2D,
  { ring, piece }: Shown,
  { ground: { px }, inHand }: { readonly ground: Ground; readonly inHand: boolean },
): void {
  layRing(ink, ring);
  ink.globalAlpha = 0.85;
  ink.fillStyle = inHand ? canvasColours.chalkPale : canvasColours.sheet;
  ink.fill();
  ink.globalAlpha = 1;
  ink.lineJoin = 'round';
  ink.strokeStyle = inHand ? canvasColours.chalk : canvasColours.ink;
  ink.lineWidth = (inHand ? 3 : lineStyles.cut.width * PX_A_WIDTH) * px;
  ink.stroke();
  if (!piece.onFold) return;
  // The side on the fold is not cut.
  const box = boxOfPoints(ring);
  if (!box) return;
  ink.strokeStyle = canvasColours.sheet;
  ink.lineWidth = 4 * px;
  ink.beginPath();
  ink.moveTo(box.minX, box.minY);
  if (piece.onFold === 'along') ink.lineTo(box.maxX, box.minY);
  else ink.lineTo(box.minX, box.maxY);
  ink.stroke();
  ink.strokeStyle = canvasColours.ink;
  ink.lineWidth = lineStyles.fold.width * PX_A_WIDTH * px;
  ink.setLineDash([14, 4, 3, 4].map((dash) => dash * px));
  ink.stroke();
  ink.setLineDash([]);
}

interface Worded {
  readonly ground: Ground;
  readonly text: string;
  readonly inHand: boolean;
  readonly angle: number;
}

function paintWords(ink: CanvasRenderingContext2D, one: Shown, { ground: { px }, text, inHand, angle }: Worded): void {
  const { place, piece } = one;
  const { middle, wide, high } = roomOf(one);
  const turn = piece.stances[place.stance]?.turn ?? 0;
  const [less, more] = [Math.min(wide, high) / px, Math.max(wide, high) / px];
  if (less < NARROW) {
    // Along it, and its grain is not shown: there is no room beside the words. Words longer than it would lie on others.
    const along = uprightFor(wide >= high ? turn : turn - Math.PI / 2, angle);
    const colours = inHand ? { colour: canvasColours.chalkDeep } : {};
    if (inHand || more >= wordsWide(ink, text, WORDS_PX))
      writeWords(ink, text, { at: middle, px, angle: less < more / 2 ? along : angle, sizePx: WORDS_PX, ...colours });
    if (place.pinned) paintPin(ink, middle, { px, angle, below: 0 });
    return;
  }
  const half = grainHalf(Math.min(wide, high), px);
  if (half > 0) paintGrain(ink, middle, { px, turn, half });
  // Over the grain line, clear of it where it stands upright on the screen.
  const upright = Math.abs(Math.sin(turn - angle)) * half;
  writeWords(ink, text, {
    at: middle,
    px,
    angle,
    sizePx: WORDS_PX,
    offset: { x: 0, y: -13 - upright / px },
    ...(inHand ? { colour: canvasColours.chalkDeep } : {}),
  });
  if (place.pinned) paintPin(ink, middle, { px, angle, below: upright });
}

/** Where a piece is cut apart and joined: a stitch line across each of its parts. */
function paintJoin(
  ink: CanvasRenderingContext2D,
  { piece, place }: Shown,
  { ground: { px }, joins }: { readonly ground: Ground; readonly joins: readonly PieceJoin[] },
): void {
  const line = placedJoin(piece, place, joins);
  if (!line) return;
  const [from, to] = line;
  ink.strokeStyle = canvasColours.ink;
  ink.lineWidth = lineStyles.stitch.width * PX_A_WIDTH * px;
  ink.setLineDash([8 * px, 4 * px]);
  ink.beginPath();
  ink.moveTo(from.x, from.y);
  ink.lineTo(to.x, to.y);
  ink.stroke();
  ink.setLineDash([]);
}

/** The way words run along a line, turned about where they would stand on their head on the screen. */
function uprightFor(along: number, angle: number): number {
  return Math.cos(along - angle) < -1e-9 ? along + Math.PI : along;
}

/** Half the length of the grain line drawn where there is so much room; none where it would be too short to read. */
function grainHalf(room: number, px: number): number {
  const half = Math.min(room * 0.3, 60 * px);
  return half < 8 * px ? 0 : half;
}

/** The straight of the grain, as an arrow at both ends. */
function paintGrain(
  ink: CanvasRenderingContext2D,
  at: Point,
  { px, turn, half }: { readonly px: number; readonly turn: number; readonly half: number },
): void {
  const head = 5 * px;
  ink.save();
  ink.translate(at.x, at.y);
  ink.rotate(turn);
  ink.strokeStyle = canvasColours.ink;
  ink.lineWidth = lineStyles.grain.width * PX_A_WIDTH * px;
  ink.beginPath();
  ink.moveTo(-half, 0);
  ink.lineTo(half, 0);
  for (const end of [-half, half]) {
    const back = end < 0 ? head : -head;
    ink.moveTo(end + back, -head * 0.6);
    ink.lineTo(end, 0);
    ink.lineTo(end + back, head * 0.6);
  }
  ink.stroke();
  ink.restore();
}

/** A pin through the piece, seen from above. */
function paintPin(
  ink: CanvasRenderingContext2D,
  at: Point,
  { px, angle, below }: { readonly px: number; readonly angle: number; readonly below: number },
): void {
  ink.save();
  ink.translate(at.x, at.y);
  ink.rotate(angle);
  // Below the grain line, or beside it where that stands upright.
  if (below > 10 * px) ink.translate(26 * px, 0);
  else ink.translate(0, 16 * px);
  ink.scale(px, px);
  ink.strokeStyle = canvasColours.ink;
  ink.fillStyle = canvasColours.chalk;
  ink.lineWidth = 2;
  ink.beginPath();
  ink.moveTo(-14, 5);
  ink.lineTo(8, -3);
  ink.stroke();
  ink.beginPath();
  ink.arc(11, -4, 5, 0, 2 * Math.PI);
  ink.fill();
  ink.stroke();
  ink.restore();
}

/** Where two pieces lie over one another: hatched both ways in a heavy line, with a mark. */
function paintOverlap(
  ink: CanvasRenderingContext2D,
  rings: readonly (readonly Point[])[],
  { px }: Ground,
  angle: number,
): void {
  for (const ring of rings) {
    hatch(ink, ring, { px, colour: canvasColours.wrong, both: true });
    layRing(ink, ring);
    ink.strokeStyle = canvasColours.wrong;
    ink.lineWidth = 3 * px;
    ink.stroke();
    const at = ringCentre(ring);
    writeWords(ink, '!', { at, px, angle, sizePx: 22, colour: canvasColours.wrong });
  }
}
