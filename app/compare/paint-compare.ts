import type { Differences } from '../../core/compare/differences';
import type { Gap } from '../../core/compare/gaps';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { commonBox, growBox, unionBox } from '../../core/geometry/bounds';
import { pathBounds } from '../../core/geometry/path';
import { between, distance } from '../../core/geometry/point';
import type { Path } from '../../core/geometry/segment';
import { dartShape } from '../../core/seams/dart-cap';
import { layPath, writeWords } from '../table/ink';
import type { Ground } from '../table/painted';
import { canvasColours } from '../ui/canvas-colours';
import type { Pair } from './figures';
import { FILL_STEP, type Fill, LOOKS } from './looks';

/** Both outlines with what one has more and less than the other. */
export function paintPair(ink: CanvasRenderingContext2D, { under, over }: Pair, ground: Ground): void {
  const { px } = ground;
  const [below, above] = [outlineOf(under).whole, outlineOf(over).whole];
  ink.beginPath();
  layPath(ink, below);
  ink.globalAlpha = 0.35;
  ink.fillStyle = canvasColours.sheet;
  ink.fill();
  ink.globalAlpha = 1;
  paintOnly(ink, above, below, 'more', ground);
  paintOnly(ink, below, above, 'less', ground);
  paintLine(ink, under, 'under', px);
  paintLine(ink, over, 'over', px);
}

/** The piece of the garment while there is nothing to lay over it. */
export function paintAlone(ink: CanvasRenderingContext2D, piece: Piece, px: number): void {
  paintLine(ink, piece, 'under', px);
}

function paintLine(ink: CanvasRenderingContext2D, piece: Piece, look: 'under' | 'over', px: number): void {
  const { colour, width, dash } = LOOKS[look];
  ink.lineJoin = 'round';
  ink.beginPath();
  layPath(ink, outlineOf(piece).whole);
  for (const dart of piece.darts) {
    const shape = dartShape(piece, dart);
    if (!shape) continue;
    ink.moveTo(shape.from.x, shape.from.y);
    ink.lineTo(dart.point.x, dart.point.y);
    ink.lineTo(shape.to.x, shape.to.y);
  }
  ink.strokeStyle = canvasColours[colour];
  ink.lineWidth = width * px;
  ink.setLineDash(dash.map((part) => part * px));
  ink.stroke();
  ink.setLineDash([]);
}

/** What lies in one outline and not in the other, filled so that it reads without colour. */
function paintOnly(ink: CanvasRenderingContext2D, inside: Path, outside: Path, fill: Fill, { px, seen }: Ground): void {
  const box = commonBox(pathBounds(inside), seen);
  if (!box) return;
  const { colour, width, dash, rises } = LOOKS[fill];
  const round = growBox(unionBox(pathBounds(inside), pathBounds(outside)), 1);
  ink.save();
  ink.beginPath();
  layPath(ink, inside);
  ink.clip();
  ink.beginPath();
  ink.rect(round.minX, round.minY, round.maxX - round.minX, round.maxY - round.minY);
  layPath(ink, outside);
  ink.clip('evenodd');
  ink.globalAlpha = 0.12;
  ink.fillStyle = canvasColours[colour];
  ink.fillRect(box.minX, box.minY, box.maxX - box.minX, box.maxY - box.minY);
  ink.globalAlpha = 1;
  ink.strokeStyle = canvasColours[colour];
  ink.lineWidth = width * px;
  ink.setLineDash(dash.map((part) => part * px));
  ink.beginPath();
  const tall = box.maxY - box.minY;
  const step = FILL_STEP * px;
  // Counted from the zero of the table, so that the lines stay where they are while it is moved.
  const first = Math.floor((box.minX - tall) / step) * step;
  for (let x = first; x < box.maxX + tall; x += step) {
    ink.moveTo(x, rises ? box.maxY : box.minY);
    ink.lineTo(x + tall, rises ? box.minY : box.maxY);
  }
  ink.stroke();
  ink.restore();
}

/** The widest gaps with their widths; the widest of all in a ring. */
export function paintGaps(
  ink: CanvasRenderingContext2D,
  { gap, gaps }: Pick<Differences, 'gap' | 'gaps'>,
  write: (mm: number) => string,
  px: number,
): void {
  for (const one of [gaps.in, gaps.out]) {
    if (one && one.width >= LEAST_SHOWN) paintGap(ink, one, write(one.width), one === gap, px);
  }
}

/** A gap narrower than this (mm) is less than a line is wide. */
export const LEAST_SHOWN = 0.4;

function paintGap(ink: CanvasRenderingContext2D, { from, to }: Gap, words: string, widest: boolean, px: number): void {
  const middle = between(from, to, 0.5);
  ink.strokeStyle = canvasColours.ink;
  ink.lineWidth = 1.5 * px;
  ink.beginPath();
  ink.moveTo(from.x, from.y);
  ink.lineTo(to.x, to.y);
  ink.stroke();
  for (const end of [from, to]) {
    ink.beginPath();
    ink.arc(end.x, end.y, 2.5 * px, 0, 2 * Math.PI);
    ink.fillStyle = canvasColours.ink;
    ink.fill();
  }
  const radius = distance(from, to) / 2 + 9 * px;
  if (widest) {
    ink.beginPath();
    ink.arc(middle.x, middle.y, radius, 0, 2 * Math.PI);
    ink.lineWidth = 2 * px;
    ink.stroke();
  }
  writeWords(ink, words, { at: middle, px, sizePx: widest ? 17 : 14, offset: { x: 0, y: -(radius / px) - 11 } });
}
