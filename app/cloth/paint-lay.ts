import { isPlace, type PlaceKey } from '../../core/cloth/lay-by-hand';
import type { LayFault } from '../../core/cloth/lay-check';
import type { ToLay } from '../../core/cloth/lay-task';
import { ringCentre } from '../../core/cloth/ring-middle';
import { lineStyles } from '../../core/drawing/line-styles';
import { boxOfPoints } from '../../core/geometry/bounds';
import type { Point } from '../../core/geometry/point';
import { writeWords } from '../table/ink';
import type { Ground } from '../table/painted';
import { canvasColours } from '../ui/canvas-colours';
import { hatch, layRing } from './paint-cloth';
import type { Shown } from './shown-lay';

/** As on the pieces of the other rooms: a quarter of a millimetre on paper is one pixel. */
const PX_A_WIDTH = 4;

interface LayPainted {
  readonly shown: readonly Shown[];
  readonly faults: readonly LayFault[];
  readonly inHand: PlaceKey | undefined;
  readonly name: (id: string) => string;
}

/** The pieces on the cloth, the one in hand last; what overlaps is hatched and marked. */
export function paintLay(ink: CanvasRenderingContext2D, lay: LayPainted, ground: Ground): void {
  const { shown, faults, inHand, name } = lay;
  const ordered = [...shown].sort((a, b) => Number(isPlace(a.place, inHand)) - Number(isPlace(b.place, inHand)));
  for (const one of ordered) paintPiece(ink, one, { ground, inHand: isPlace(one.place, inHand) });
  for (const one of ordered)
    paintWords(ink, one, { ground, text: name(one.place.id), inHand: isPlace(one.place, inHand) });
  for (const fault of faults) if (fault.kind === 'overlap') paintOverlap(ink, fault.at, ground);
}

function paintPiece(
  ink: CanvasRenderingContext2D,
  { ring, piece }: Shown,
  { ground: { px }, inHand }: { readonly ground: Ground; readonly inHand: boolean },
): void {
  layRing(ink, ring);
  ink.globalAlpha = inHand ? 0.85 : 0.7;
  ink.fillStyle = inHand ? canvasColours.chalkPale : canvasColours.paper;
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

function paintWords(
  ink: CanvasRenderingContext2D,
  { ring, place, piece }: Shown,
  { ground: { px }, text, inHand }: { readonly ground: Ground; readonly text: string; readonly inHand: boolean },
): void {
  const middle = middleOf({ ring, place, piece });
  const box = boxOfPoints(ring);
  if (!box) return;
  const stance = piece.stances[place.stance];
  if (stance)
    paintGrain(ink, middle, { px, turn: stance.turn, room: Math.min(box.maxX - box.minX, box.maxY - box.minY) });
  if ((box.maxX - box.minX) / px < 24) return;
  writeWords(ink, text, {
    at: middle,
    px,
    sizePx: 14,
    offset: { x: 0, y: -13 },
    ...(inHand ? { colour: canvasColours.chalkDeep } : {}),
  });
  if (place.pinned) paintPin(ink, middle, px);
}

/** The middle of each piece in each way it lies, from the corner of its box. */
const middles = new WeakMap<ToLay, Map<number, Point>>();

function middleOf({ ring, place, piece }: Shown): Point {
  const known = middles.get(piece) ?? new Map<number, Point>();
  middles.set(piece, known);
  const { at, stance } = place;
  const had = known.get(stance);
  if (had) return { x: at.x + had.x, y: at.y + had.y };
  const middle = ringCentre(ring);
  known.set(stance, { x: middle.x - at.x, y: middle.y - at.y });
  return middle;
}

/** The straight of the grain, as an arrow at both ends. */
function paintGrain(
  ink: CanvasRenderingContext2D,
  at: Point,
  { px, turn, room }: { readonly px: number; readonly turn: number; readonly room: number },
): void {
  const half = Math.min(room * 0.3, 60 * px);
  if (half < 8 * px) return;
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
function paintPin(ink: CanvasRenderingContext2D, at: Point, px: number): void {
  const [x, y] = [at.x, at.y + 16 * px];
  ink.strokeStyle = canvasColours.ink;
  ink.fillStyle = canvasColours.chalk;
  ink.lineWidth = 2 * px;
  ink.beginPath();
  ink.moveTo(x - 14 * px, y + 5 * px);
  ink.lineTo(x + 8 * px, y - 3 * px);
  ink.stroke();
  ink.beginPath();
  ink.arc(x + 11 * px, y - 4 * px, 5 * px, 0, 2 * Math.PI);
  ink.fill();
  ink.stroke();
}

/** Where two pieces lie over one another: hatched both ways in a heavy line, with a mark. */
function paintOverlap(ink: CanvasRenderingContext2D, rings: readonly (readonly Point[])[], { px }: Ground): void {
  for (const ring of rings) {
    hatch(ink, ring, { px, colour: canvasColours.wrong, both: true });
    layRing(ink, ring);
    ink.strokeStyle = canvasColours.wrong;
    ink.lineWidth = 3 * px;
    ink.stroke();
    const at = ringCentre(ring);
    writeWords(ink, '!', { at, px, sizePx: 22, colour: canvasColours.wrong });
  }
}
