// Sixty-four photos of pages of our own, every one different in tilt, turn, curl, light, blur, noise and JPEG.
import type { Point } from '../../core/geometry/point';
import { curveRun, gridStrokes, lettering, type Page, rectangleStroke, type Stroke } from './drawn-page';
import { type DrawnPhoto, photoOf, type Shot, seeded } from './drawn-photo';

export interface PhotoCase {
  readonly name: string;
  readonly page: Page;
  readonly shot: Shot;
  /** The corners of the page and of what is printed, in mm, top left first. */
  readonly paper: readonly Point[];
  readonly frame: readonly Point[];
}

export const SET_SIZE = 64;

function corners(x: number, y: number, across: number, down: number): Point[] {
  return [
    { x, y },
    { x: x + across, y },
    { x: x + across, y: y + down },
    { x, y: y + down },
  ];
}

/** A gore with a curved hem inside the frame, a dart, some words: ink that is no frame. */
function gore(x: number, y: number): Stroke[] {
  return [
    {
      width: 0.5,
      points: [
        { x: x + 20, y },
        { x: x + 38, y: y + 2 },
        { x: x + 52, y: y + 62 },
        ...curveRun((t) => ({ x: x + 52 - 50 * t, y: y + 62 + 6 * Math.sin(Math.PI * t) }), 20),
        { x: x + 20, y },
      ],
    },
    ...lettering(x + 18, y + 30, 6, 3),
  ];
}

/** The photo set; `sizePx` is the longer side of each photo. */
export function photoCases(sizePx: number): PhotoCase[] {
  return Array.from({ length: SET_SIZE }, (_, i) => photoCase(i, sizePx));
}

export function shotOf({ page, shot }: PhotoCase, pxPerMm: number): DrawnPhoto {
  return photoOf(page, shot, pxPerMm);
}

function photoCase(i: number, sizePx: number): PhotoCase {
  const random = seeded(100 + i);
  const spread = (most: number) => (random() * 2 - 1) * most;
  const [across, down] = i % 3 === 0 ? [120, 160] : [160, 118];
  const inset = 11 + (i % 5);
  const isGrid = i % 4 === 1;
  const square = 12 + (i % 3);
  const columns = Math.floor((across - 2 * inset) / square);
  const rows = Math.floor((down - 2 * inset) / square);
  const frame = isGrid
    ? corners(inset, inset + 2, columns * square, rows * square)
    : corners(inset, inset + 2, across - 2 * inset, down - 2 * inset - 3);
  const [tl, , br] = frame as [Point, Point, Point, Point];
  const strokes = isGrid
    ? gridStrokes(tl, columns, rows, square, 0.45)
    : [rectangleStroke(tl.x, tl.y, br.x - tl.x, br.y - tl.y, 0.5 + 0.1 * (i % 4))];
  const width = sizePx;
  const height = Math.round(sizePx * 0.75);
  const focalPx = sizePx * (0.8 + 0.3 * random());
  const fill = 0.66 + 0.1 * random();
  const curl = i % 2 === 1 ? { slope: -(0.35 + 0.55 * random()), over: 22 + 15 * random() } : undefined;
  const shot: Shot = {
    width,
    height,
    focalPx,
    tilt: [spread(25), spread(i % 2 === 1 ? 14 : 25), spread(10)],
    distance: (focalPx * Math.max(across / width, down / height)) / fill,
    ...(curl ? { curl } : {}),
    table: 35 + 70 * random(),
    shadow: i % 3 === 2 ? 0.25 + 0.3 * random() : 0.1 * random(),
    blurPx: (0.3 + 0.9 * random()) * (sizePx / 640),
    noise: 2 + 6 * random(),
    jpeg: 45 + Math.round(50 * random()),
    seed: 900 + i,
  };
  const page = {
    across,
    down,
    paper: 205 + 30 * random(),
    ink: 25 + 40 * random(),
    strokes: [...strokes, ...gore(tl.x + 22, tl.y + 12)],
  };
  return {
    name: `${i}: ${isGrid ? 'grid' : 'frame'}${curl ? ', curled' : ''}`,
    page,
    shot,
    paper: corners(0, 0, across, down),
    frame,
  };
}
