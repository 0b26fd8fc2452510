import type { Diagram } from '../../core/garment/diagram';
import { between, type PhotoPoint, type Point } from '../../core/geometry/point';
import { lettering } from '../table/ink';
import { canvasColours as colours } from '../ui/canvas-colours';
import { diagramWords } from '../words/diagram';
import type { SidePlace } from './change-diagram';
import type { FreshLine } from './desk-store';
import type { Face } from './face';
import { outlineInPhoto, squareLines } from './followed-lines';

const { ruled } = diagramWords;

/** A place that is seen in another picture too. */
export interface Match {
  readonly at: PhotoPoint;
  readonly letter: string;
}

interface Marks {
  readonly diagram: Diagram;
  readonly face: Face;
  readonly corner: number | undefined;
  readonly sidePlace: SidePlace | undefined;
  /** A point is being dragged: lines are fine and its handle is open, so that what it is put on stays in sight. */
  readonly held: boolean;
  readonly lengthId: string | undefined;
  readonly fresh: FreshLine | undefined;
  readonly firstEnd: Point | undefined;
  /** The corners make no rectangle. */
  readonly wrong: boolean;
  readonly matches: readonly Match[];
  /** Where a line of the picture is divided into equal parts. */
  readonly divided: (line: Pick<FreshLine, 'from' | 'to'>, parts: number) => readonly PhotoPoint[];
}

/** The corners with the outline between them, and the known lengths. `px` is world units in a CSS pixel. */
export function paintMarks(pen: CanvasRenderingContext2D, px: number, marks: Marks): void {
  const { diagram, face, corner, sidePlace, held, lengthId, fresh, firstEnd, wrong, divided, matches } = marks;
  pen.lineJoin = 'round';
  if (diagram.squareUp.kind === 'rectangle') {
    const corners = diagram.squareUp.corners.flatMap((point) => face.toWorld(point) ?? []);
    const outline = outlineInPhoto(diagram.squareUp).flatMap((point) => face.toWorld(point) ?? []);
    drawQuad(pen, outline, px, { wrong, width: held ? 1 : 2 });
    const { followed } = diagram.squareUp;
    if (followed?.kind === 'squares') drawSquares(pen, squareLines(followed.map), face, px);
    if (face.kind === 'photo') {
      const through = followed?.kind === 'sides' ? followed.through : [];
      for (const [side, places] of through.entries()) {
        for (const [index, point] of places.entries()) {
          const chosen = sidePlace?.side === side && sidePlace.index === index;
          if (!(chosen && held)) drawSidePlace(pen, point, px, chosen);
        }
      }
      for (const [index, point] of corners.entries()) {
        if (index !== corner || !held) drawHandle(pen, point, px, index === corner);
      }
    }
  }
  const strokesOf = (line: Pick<FreshLine, 'from' | 'to'>, parts: number) =>
    divided(line, parts).flatMap((place) => face.toWorld(place) ?? []);
  diagram.knownLengths.forEach(({ id, from, to, says }, index) => {
    const strokes = says.kind === 'bar' ? strokesOf({ from, to }, says.intervals) : [];
    const chosen = id === lengthId;
    drawLength(pen, face.toWorld(from), face.toWorld(to), px, { number: index + 1, chosen, held, strokes });
  });
  if (fresh?.diagramId === diagram.id) {
    const strokes = strokesOf(fresh, fresh.intervals ?? 1);
    drawLength(pen, face.toWorld(fresh.from), face.toWorld(fresh.to), px, {
      number: undefined,
      chosen: true,
      held,
      strokes,
    });
  } else if (firstEnd) drawEnd(pen, firstEnd, px);
  diagram.ruled?.forEach(({ places }, index) => {
    const run = places.flatMap((place) => face.toWorld(place) ?? []);
    if (run.length > 1) drawRuled(pen, run, px, ruled.letter(index));
  });
  for (const { at, letter } of matches) {
    const place = face.toWorld(at);
    if (place) drawMatch(pen, place, px, letter);
  }
}

/** A small cross on the very place, and its letter beside it. */
function drawMatch(pen: CanvasRenderingContext2D, { x, y }: Point, px: number, letter: string): void {
  pen.beginPath();
  for (const [dx, dy] of [
    [7, 0],
    [0, 7],
  ] as const) {
    pen.moveTo(x - dx * px, y - dy * px);
    pen.lineTo(x + dx * px, y + dy * px);
  }
  stroked(pen, px, 2, colours.chalkDeep);
  drawNumber(pen, x + 15 * px, y - 15 * px, px, { number: letter, colour: colours.chalkDeep });
}

/** A line that should be straight, as it was followed, with its letter. */
function drawRuled(pen: CanvasRenderingContext2D, run: readonly Point[], px: number, letter: string): void {
  pen.beginPath();
  for (const { x, y } of run) pen.lineTo(x, y);
  stroked(pen, px, 1.5, colours.ink, [12, 4, 2, 4]);
  const { x, y } = run[run.length >> 1] as Point;
  drawNumber(pen, x, y, px, { number: letter, colour: colours.ink });
}

/** Every line has a light ground under it, so that it shows on dark and on light pictures. */
function stroked(pen: CanvasRenderingContext2D, px: number, width: number, colour: string, dash: number[] = []): void {
  pen.setLineDash([]);
  pen.strokeStyle = colours.sheet;
  pen.globalAlpha = 0.75;
  pen.lineWidth = (width > 1 ? width + 2.5 : width) * px;
  pen.stroke();
  pen.globalAlpha = 1;
  pen.setLineDash(dash.map((each) => each * px));
  pen.strokeStyle = colour;
  pen.lineWidth = width * px;
  pen.stroke();
}

function drawQuad(
  pen: CanvasRenderingContext2D,
  corners: readonly Point[],
  px: number,
  { wrong, width }: { readonly wrong: boolean; readonly width: number },
): void {
  pen.beginPath();
  for (const { x, y } of corners) pen.lineTo(x, y);
  pen.closePath();
  stroked(pen, px, width, wrong ? colours.wrong : colours.chalk, wrong ? [2, 5] : [9, 6]);
}

const HANDLE_PX = 12;

/** A ring with a small cross in the middle: what lies under the corner itself stays in sight. */
function drawHandle(pen: CanvasRenderingContext2D, { x, y }: Point, px: number, chosen: boolean): void {
  pen.beginPath();
  pen.arc(x, y, (chosen ? HANDLE_PX + 3 : HANDLE_PX) * px, 0, 2 * Math.PI);
  stroked(pen, px, chosen ? 4.5 : 3, chosen ? colours.chalkDeep : colours.chalk);
  pen.beginPath();
  pen.moveTo(x - 3 * px, y);
  pen.lineTo(x + 3 * px, y);
  pen.moveTo(x, y - 3 * px);
  pen.lineTo(x, y + 3 * px);
  stroked(pen, px, 1, colours.chalkDeep);
}

const PLACE_PX = 6;

/** A place that a curved side passes through: an open ring, smaller than a corner's. */
function drawSidePlace(pen: CanvasRenderingContext2D, { x, y }: Point, px: number, chosen: boolean): void {
  pen.beginPath();
  pen.arc(x, y, (chosen ? PLACE_PX + 2 : PLACE_PX) * px, 0, 2 * Math.PI);
  stroked(pen, px, chosen ? 3 : 2, chosen ? colours.chalkDeep : colours.chalk);
}

/** The squares as they were found, so that she sees that they lie on the printed ones. */
function drawSquares(
  pen: CanvasRenderingContext2D,
  lines: readonly (readonly Point[])[],
  face: Face,
  px: number,
): void {
  pen.beginPath();
  for (const line of lines) {
    line
      .flatMap((point) => face.toWorld(point) ?? [])
      .forEach(({ x, y }, k) => {
        if (k === 0) pen.moveTo(x, y);
        else pen.lineTo(x, y);
      });
  }
  pen.setLineDash([]);
  pen.globalAlpha = 0.6;
  pen.strokeStyle = colours.chalkDeep;
  pen.lineWidth = px;
  pen.stroke();
  pen.globalAlpha = 1;
}

interface LengthMarks {
  readonly number: number | undefined;
  readonly chosen: boolean;
  readonly held: boolean;
  /** Between the intervals of a scale bar. */
  readonly strokes: readonly Point[];
}

/** How far along a known length its number stands. */
const NUMBER_AT = 0.2;

function drawLength(
  pen: CanvasRenderingContext2D,
  from: Point | undefined,
  to: Point | undefined,
  px: number,
  { number, chosen, held, strokes }: LengthMarks,
): void {
  if (!from || !to) return;
  const colour = chosen ? colours.chalkDeep : colours.ink;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const tick =
    length > 0 ? { x: (-(to.y - from.y) / length) * 9 * px, y: ((to.x - from.x) / length) * 9 * px } : { x: 0, y: 0 };
  pen.beginPath();
  pen.moveTo(from.x, from.y);
  pen.lineTo(to.x, to.y);
  for (const end of [from, to]) {
    pen.moveTo(end.x - tick.x, end.y - tick.y);
    pen.lineTo(end.x + tick.x, end.y + tick.y);
  }
  for (const { x, y } of strokes) {
    pen.moveTo(x - tick.x / 2, y - tick.y / 2);
    pen.lineTo(x + tick.x / 2, y + tick.y / 2);
  }
  stroked(pen, px, held ? 1 : chosen ? 3 : 2, colour);
  if (number === undefined) return;
  // Not in the middle, where the figure is mostly printed.
  const at = between(from, to, NUMBER_AT);
  drawNumber(pen, at.x, at.y, px, { number, colour });
}

function drawEnd(pen: CanvasRenderingContext2D, { x, y }: Point, px: number): void {
  pen.beginPath();
  pen.arc(x, y, 5 * px, 0, 2 * Math.PI);
  stroked(pen, px, 2, colours.chalkDeep);
}

function drawNumber(
  pen: CanvasRenderingContext2D,
  x: number,
  y: number,
  px: number,
  { number, colour }: { readonly number: number | string; readonly colour: string },
): void {
  pen.beginPath();
  pen.arc(x, y, 10 * px, 0, 2 * Math.PI);
  pen.fillStyle = colours.sheet;
  pen.fill();
  pen.setLineDash([]);
  pen.lineWidth = 1.5 * px;
  pen.strokeStyle = colour;
  pen.stroke();
  // Words are set at a size the canvas knows how to draw well, whatever a world unit is.
  pen.save();
  pen.translate(x, y);
  pen.scale(px, px);
  pen.fillStyle = colour;
  pen.font = lettering(14, 700);
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  pen.fillText(String(number), 0, 1);
  pen.restore();
}
