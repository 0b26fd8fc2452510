import type { Mark, Words } from '../../core/drawing/drawing';
import { lineStyles } from '../../core/drawing/line-styles';
import { transformPoint } from '../../core/geometry/affine';
import type { Box } from '../../core/geometry/bounds';
import type { Point, TablePoint } from '../../core/geometry/point';
import { applyHomography } from '../../core/geometry/projective';
import type { ScreenMap } from '../../core/screen/calibration';
import { type Lying, lineOnScreen, linesOnScreen, onPlane } from '../../core/screen/full-size';
import { gridLines, type ScreenSize, tableInSight } from '../../core/screen/pan-steps';
import { squareCorners, type TestSquare } from '../../core/screen/test-square';

/** How the lines look. */
export interface Look {
  readonly ground: 'black' | 'white';
  /** How wide a cut line is (CSS px). */
  readonly line: number;
  readonly grid: boolean;
  /** Whether the test square is in sight. */
  readonly square: boolean;
}

export interface Shown {
  readonly marks: readonly Mark[];
  readonly map: ScreenMap;
  readonly lying: Lying;
  readonly size: ScreenSize;
  /** What is in sight of the plane (mm). */
  readonly sight: Box;
  readonly look: Look;
  readonly grid: { readonly origin: TablePoint; readonly square: number; readonly say: (mm: number) => string };
  readonly test: TestSquare & { readonly says: string };
  readonly words: (mark: Words) => string;
}

/** Letters of the grid and the square, and the least letters of the piece (CSS px). */
const LETTERS = 15;

/** Paints the piece at full size. One CSS pixel is one unit of `ink`. */
export function paintFullSize(ink: CanvasRenderingContext2D, shown: Shown): void {
  const { size, look } = shown;
  const [ground, line] = look.ground === 'black' ? ['#000', '#fff'] : ['#fff', '#000'];
  ink.fillStyle = ground;
  ink.fillRect(0, 0, size.width, size.height);
  ink.strokeStyle = line;
  ink.fillStyle = line;
  ink.lineJoin = 'round';
  if (look.grid) paintGrid(ink, shown, ground);
  paintLines(ink, shown);
  paintWords(ink, shown, ground);
  if (look.square) paintTestSquare(ink, shown, ground);
}

function paintGrid(ink: CanvasRenderingContext2D, shown: Shown, ground: string): void {
  const { map, lying, sight, grid, look, size } = shown;
  const box = tableInSight(sight, lying);
  const way = onPlane(lying);
  const { across, down } = gridLines(box, grid.origin, grid.square);
  const said: Point[] = [];
  const draw = (from: Point, to: Point, number: number) => {
    const run = lineOnScreen([transformPoint(way, from), transformPoint(way, to)], map)[0];
    if (!run) return;
    ink.globalAlpha = 0.4;
    trace(ink, run);
    ink.stroke();
    ink.globalAlpha = 1;
    const [start, end] = [run[0] as Point, run.at(-1) as Point];
    // Numbers stand at the end that is nearer to the top or the left of the screen.
    const at = start.x + start.y <= end.x + end.y ? start : end;
    const x = Math.min(Math.max(at.x, LETTERS), size.width - LETTERS);
    const y = Math.min(Math.max(at.y, LETTERS), size.height - LETTERS);
    // Where squares are small, numbers that would stand on one another are left out.
    if (said.some((other) => Math.hypot(other.x - x, other.y - y) < 2 * LETTERS)) return;
    said.push({ x, y });
    letters(ink, grid.say(number), { x, y }, LETTERS, ground);
  };
  ink.setLineDash([]);
  ink.lineWidth = Math.max(1, look.line / 3);
  for (const number of across) {
    const x = grid.origin.x + number;
    draw({ x, y: box.minY }, { x, y: box.maxY }, number);
  }
  for (const number of down) {
    const y = grid.origin.y + number;
    draw({ x: box.minX, y }, { x: box.maxX, y }, number);
  }
}

function paintLines(ink: CanvasRenderingContext2D, { marks, map, lying, look }: Shown): void {
  for (const { line, points } of linesOnScreen(marks, lying, map)) {
    const { width, dash } = lineStyles[line];
    // A cut line is 0.5 mm on paper: that is the width she chose, and all others stand to it as on paper.
    ink.lineWidth = Math.max(1, (look.line * width) / 0.5);
    ink.setLineDash(dash.map((part) => part * Math.max(3, look.line)));
    trace(ink, points);
    ink.stroke();
  }
  ink.setLineDash([]);
}

function paintWords(ink: CanvasRenderingContext2D, shown: Shown, ground: string): void {
  const { marks, map, lying } = shown;
  const way = onPlane(lying);
  const to = (point: Point) => applyHomography(map.toScreen, transformPoint(way, point));
  for (const mark of marks) {
    if (mark.kind !== 'words') continue;
    const along = { x: mark.at.x + Math.cos(mark.angle), y: mark.at.y + Math.sin(mark.angle) };
    const [at, next] = [to(mark.at), to(along)];
    if (!at || !next) continue;
    const pxPerMm = Math.hypot(next.x - at.x, next.y - at.y);
    const angle = Math.atan2(next.y - at.y, next.x - at.x);
    letters(ink, shown.words(mark), at, Math.max(LETTERS, mark.size * pxPerMm), ground, angle);
  }
}

/** Clear of the lines where there is room for it. */
function paintTestSquare(ink: CanvasRenderingContext2D, { map, test, look }: Shown, ground: string): void {
  const { at, side, says } = test;
  const corners = squareCorners(at, side);
  const run = lineOnScreen([...corners, corners[0] as Point], map)[0];
  const middle = applyHomography(map.toScreen, { x: at.x + side / 2, y: at.y + side / 2 });
  if (!run || !middle) return;
  trace(ink, run);
  ink.lineWidth = Math.max(1, look.line / 2);
  ink.stroke();
  letters(ink, says, middle, LETTERS, ground);
}

function trace(ink: CanvasRenderingContext2D, points: readonly Point[]): void {
  ink.beginPath();
  points.forEach(({ x, y }, index) => {
    if (index === 0) ink.moveTo(x, y);
    else ink.lineTo(x, y);
  });
}

function letters(
  ink: CanvasRenderingContext2D,
  text: string,
  at: Point,
  size: number,
  ground: string,
  angle = 0,
): void {
  ink.save();
  ink.translate(at.x, at.y);
  ink.rotate(angle);
  ink.font = `700 ${size}px "Alegreya Sans", sans-serif`;
  ink.textAlign = 'center';
  ink.textBaseline = 'middle';
  const line = ink.strokeStyle;
  ink.setLineDash([]);
  ink.lineWidth = size / 3;
  ink.strokeStyle = ground;
  ink.strokeText(text, 0, 0);
  ink.strokeStyle = line;
  ink.fillText(text, 0, 0);
  ink.restore();
}
