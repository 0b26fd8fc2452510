import type { Laying } from '../../core/cloth/garment-laying';
import type { LayGround } from '../../core/cloth/lay-task';
import type { Point } from '../../core/geometry/point';
import type { ShownIn } from '../../core/units/inch';
import { writeWords } from '../table/ink';
import type { Ground } from '../table/painted';
import { canvasColours } from '../ui/canvas-colours';
import { clothWords as words } from '../words/cloth';
import { writeLength } from '../words/written';

/** The cloth as it lies: where it ends, which sides are fold and selvedge, and what is to be kept clear of. */
export interface ClothLaidOut {
  readonly laying: Laying;
  readonly ground: LayGround;
  /** How much of it is shown, and where the cloth at hand ends if it does, as it lies. */
  readonly length: number;
  readonly end: number | undefined;
  readonly shownIn: ShownIn;
}

/** How far the selvedge is drawn at least, so that it can be seen (mm). */
const LEAST_SELVEDGE = 8;

/** The cloth under the pieces. */
export function paintCloth(ink: CanvasRenderingContext2D, laid: ClothLaidOut, ground: Ground): void {
  const { cloth } = laid.laying;
  if (cloth.shape) paintRemnant(ink, cloth.shape, ground);
  else paintLength(ink, laid, ground);
  paintRepeat(ink, laid, ground);
  if (!cloth.shape) for (const kept of laid.ground.kept) paintFlaw(ink, kept, ground);
  else {
    const [left, top] = [Math.min(...cloth.shape.map(({ x }) => x)), Math.min(...cloth.shape.map(({ y }) => y))];
    for (const flaw of cloth.flaws)
      paintFlaw(
        ink,
        flaw.map(({ x, y }) => ({ x: x - left, y: y - top })),
        ground,
      );
  }
}

function paintLength(ink: CanvasRenderingContext2D, laid: ClothLaidOut, { px }: Ground): void {
  const { laying, length, ground } = laid;
  const { cloth } = laying;
  const { across } = ground;
  const folded = cloth.folded;
  const selvedge = Math.max(cloth.selvedge, LEAST_SELVEDGE);
  ink.fillStyle = canvasColours.cloth;
  ink.globalAlpha = 0.9;
  ink.fillRect(0, 0, length, across);
  ink.globalAlpha = 1;
  const bands = folded === 'lengthwise' ? [across] : [-selvedge, across];
  for (const y of bands) {
    ink.fillStyle = canvasColours.clothDeep;
    ink.fillRect(0, y, length, selvedge);
    ink.strokeStyle = canvasColours.inkSoft;
    ink.lineWidth = px;
    ink.setLineDash([2 * px, 3 * px]);
    ink.strokeRect(0, y, length, selvedge);
    ink.setLineDash([]);
  }
  const line = (from: Point, to: Point, width: number, dash: readonly number[]) => {
    ink.strokeStyle = canvasColours.ink;
    ink.lineWidth = width * px;
    ink.setLineDash(dash.map((part) => part * px));
    ink.beginPath();
    ink.moveTo(from.x, from.y);
    ink.lineTo(to.x, to.y);
    ink.stroke();
    ink.setLineDash([]);
  };
  const foldDash = [14, 4, 3, 4];
  line({ x: 0, y: 0 }, { x: 0, y: across }, folded === 'crosswise' ? 3 : 1.5, folded === 'crosswise' ? foldDash : []);
  if (folded === 'lengthwise') line({ x: 0, y: 0 }, { x: length, y: 0 }, 3, foldDash);
  const say = (text: string, at: Point, angle: number, offset: Point) =>
    writeWords(ink, text, { at, px, angle, offset, sizePx: 13, weight: 400 });
  say(
    folded === 'lengthwise' ? words.canvas.fold : words.canvas.selvedge,
    { x: length / 2, y: folded === 'lengthwise' ? 0 : -selvedge },
    0,
    { x: 0, y: -10 },
  );
  say(words.canvas.selvedge, { x: length / 2, y: across + selvedge }, 0, { x: 0, y: 11 });
  say(folded === 'crosswise' ? words.canvas.fold : words.canvas.cutEnd, { x: 0, y: across / 2 }, -Math.PI / 2, {
    x: 0,
    y: -10,
  });
}

/** Where the cloth at hand ends, over the pieces that reach beyond it. */
export function paintEnd(ink: CanvasRenderingContext2D, laid: ClothLaidOut, { px }: Ground): void {
  const { laying, end, ground, shownIn } = laid;
  const { cloth } = laying;
  if (end === undefined) return;
  const selvedge = Math.max(cloth.selvedge, LEAST_SELVEDGE);
  ink.strokeStyle = canvasColours.ink;
  ink.lineWidth = 2.5 * px;
  ink.setLineDash([10 * px, 5 * px]);
  ink.beginPath();
  ink.moveTo(end, -selvedge);
  ink.lineTo(end, ground.across + selvedge);
  ink.stroke();
  ink.setLineDash([]);
  const opened = cloth.folded === 'crosswise' ? 2 * end : end;
  writeWords(ink, words.canvas.endOfCloth(writeLength(opened, { shownIn, step: 'eighth' })), {
    at: { x: end, y: ground.across / 2 },
    px,
    angle: -Math.PI / 2,
    offset: { x: 0, y: 11 },
    sizePx: 13,
    weight: 400,
  });
}

function paintRemnant(ink: CanvasRenderingContext2D, shape: readonly Point[], { px }: Ground): void {
  const [left, top] = [Math.min(...shape.map(({ x }) => x)), Math.min(...shape.map(({ y }) => y))];
  layRing(
    ink,
    shape.map(({ x, y }) => ({ x: x - left, y: y - top })),
  );
  ink.fillStyle = canvasColours.cloth;
  ink.globalAlpha = 0.9;
  ink.fill();
  ink.globalAlpha = 1;
  ink.strokeStyle = canvasColours.ink;
  ink.lineWidth = 2 * px;
  ink.stroke();
}

function paintRepeat(ink: CanvasRenderingContext2D, { ground, length }: ClothLaidOut, { px }: Ground): void {
  const { repeat, across } = ground;
  if (!repeat) return;
  ink.strokeStyle = canvasColours.chalk;
  ink.globalAlpha = 0.35;
  ink.lineWidth = px;
  ink.beginPath();
  // Nearer than three pixels they would be one grey.
  if (repeat.along > 3 * px) {
    for (let x = 0; x <= length; x += repeat.along) {
      ink.moveTo(x, 0);
      ink.lineTo(x, across);
    }
  }
  if (repeat.across > 3 * px) {
    for (let y = 0; y <= across; y += repeat.across) {
      ink.moveTo(0, y);
      ink.lineTo(length, y);
    }
  }
  ink.stroke();
  ink.globalAlpha = 1;
}

/** A place to keep clear of: hatched both ways, in a dashed line. */
function paintFlaw(ink: CanvasRenderingContext2D, ring: readonly Point[], { px }: Ground): void {
  hatch(ink, ring, { px, colour: canvasColours.inkSoft, both: true });
  layRing(ink, ring);
  ink.strokeStyle = canvasColours.ink;
  ink.lineWidth = 1.5 * px;
  ink.setLineDash([5 * px, 4 * px]);
  ink.stroke();
  ink.setLineDash([]);
}

/** Fills a ring with slanting lines, and lines the other way too where asked. */
export function hatch(
  ink: CanvasRenderingContext2D,
  ring: readonly Point[],
  { px, colour, both }: { readonly px: number; readonly colour: string; readonly both: boolean },
): void {
  const [minX, maxX] = [Math.min(...ring.map(({ x }) => x)), Math.max(...ring.map(({ x }) => x))];
  const [minY, maxY] = [Math.min(...ring.map(({ y }) => y)), Math.max(...ring.map(({ y }) => y))];
  const tall = maxY - minY;
  ink.save();
  layRing(ink, ring);
  ink.clip();
  ink.strokeStyle = colour;
  ink.lineWidth = 1.5 * px;
  ink.beginPath();
  for (let x = minX - tall; x < maxX; x += 8 * px) {
    ink.moveTo(x, maxY);
    ink.lineTo(x + tall, minY);
    if (!both) continue;
    ink.moveTo(x, minY);
    ink.lineTo(x + tall, maxY);
  }
  ink.stroke();
  ink.restore();
}

/** Adds a closed ring to a fresh path. */
export function layRing(ink: CanvasRenderingContext2D, ring: readonly Point[]): void {
  ink.beginPath();
  ring.forEach(({ x, y }, i) => {
    if (i === 0) ink.moveTo(x, y);
    else ink.lineTo(x, y);
  });
  ink.closePath();
}
