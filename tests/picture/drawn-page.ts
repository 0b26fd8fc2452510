// A printed page drawn by distance to its strokes: its ink is known everywhere, without the program under test.

import type { Point } from '../../core/geometry/point';
import type { GreyPicture } from '../../core/picture/grey-picture';

/** A line of ink on the page, in mm; `dashes` are lengths on and off in turn. */
export interface Stroke {
  readonly points: readonly Point[];
  readonly width: number;
  readonly dashes?: readonly number[];
}

export interface Page {
  readonly across: number;
  readonly down: number;
  readonly paper: number;
  readonly ink: number;
  readonly strokes: readonly Stroke[];
}

/** The page from straight above at `pxPerMm`, each pixel by the share of it that is covered (to a few hundredths). */
export function printed({ across, down, paper, ink, strokes }: Page, pxPerMm: number): GreyPicture {
  const [width, height] = [Math.round(across * pxPerMm), Math.round(down * pxPerMm)];
  const cover = new Float32Array(width * height);
  for (const { points, width: mm, dashes } of strokes) {
    for (const [from, to] of dashed(points, dashes)) {
      const reach = mm / 2 + 1 / pxPerMm;
      const x0 = Math.max(0, Math.floor((Math.min(from.x, to.x) - reach) * pxPerMm));
      const x1 = Math.min(width - 1, Math.ceil((Math.max(from.x, to.x) + reach) * pxPerMm));
      const y0 = Math.max(0, Math.floor((Math.min(from.y, to.y) - reach) * pxPerMm));
      const y1 = Math.min(height - 1, Math.ceil((Math.max(from.y, to.y) + reach) * pxPerMm));
      for (let y = y0; y <= y1; y++) {
        for (let x = x0; x <= x1; x++) {
          const off = offChord({ x: (x + 0.5) / pxPerMm, y: (y + 0.5) / pxPerMm }, from, to);
          const share = Math.min(1, Math.max(0, 0.5 + (mm / 2 - off) * pxPerMm));
          const at = y * width + x;
          if (share > (cover[at] as number)) cover[at] = share;
        }
      }
    }
  }
  return { width, height, data: Uint8Array.from(cover, (share) => Math.round(paper + (ink - paper) * share)) };
}

/** The chords of a run that carry ink. */
function dashed(points: readonly Point[], dashes: readonly number[] | undefined): (readonly [Point, Point])[] {
  const chords = points.slice(1).map((to, i) => [points[i] as Point, to] as const);
  if (!dashes) return chords;
  const drawn: (readonly [Point, Point])[] = [];
  let index = 0;
  let left = dashes[0] as number;
  for (const [from, to] of chords) {
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const at = (s: number) => ({
      x: from.x + ((to.x - from.x) * s) / length,
      y: from.y + ((to.y - from.y) * s) / length,
    });
    for (let s = 0; s < length; ) {
      const step = Math.min(left, length - s);
      if (index % 2 === 0) drawn.push([at(s), at(s + step)]);
      s += step;
      left -= step;
      if (left <= 1e-9) {
        index = (index + 1) % dashes.length;
        left = dashes[index] as number;
      }
    }
  }
  return drawn;
}

export function offChord(p: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const t = Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}

/** The distance of a place from a run of chords. */
export function offRun(p: Point, run: readonly Point[]): number {
  return run.slice(1).reduce((least, to, i) => Math.min(least, offChord(p, run[i] as Point, to)), Infinity);
}

export function rectangleStroke(x: number, y: number, across: number, down: number, width: number): Stroke {
  const ring = [
    { x, y },
    { x: x + across, y },
    { x: x + across, y: y + down },
    { x, y: y + down },
    { x, y },
  ];
  return { points: ring, width };
}

/** A grid of `columns` by `rows` squares with its top left corner at (x, y). */
export function gridStrokes(at: Point, columns: number, rows: number, square: number, width: number): Stroke[] {
  const down = Array.from({ length: columns + 1 }, (_, i) => ({
    points: [
      { x: at.x + i * square, y: at.y },
      { x: at.x + i * square, y: at.y + rows * square },
    ],
    width,
  }));
  const across = Array.from({ length: rows + 1 }, (_, j) => ({
    points: [
      { x: at.x, y: at.y + j * square },
      { x: at.x + columns * square, y: at.y + j * square },
    ],
    width,
  }));
  return [...down, ...across];
}

/** Something like a row of handwriting: a small zigzag of strokes, `high` mm tall. */
export function lettering(x: number, y: number, letters: number, high: number): Stroke[] {
  return Array.from({ length: letters }, (_, i) => {
    const left = x + i * high * 0.8;
    const wobble = ((i * 7) % 5) / 5;
    return {
      points: [
        { x: left, y: y + high },
        { x: left + high * 0.15, y: y + high * wobble * 0.4 },
        { x: left + high * 0.35, y: y + high * 0.9 },
        { x: left + high * 0.55, y: y + high * (0.2 + 0.4 * wobble) },
      ],
      width: high * 0.13,
    };
  });
}

/** Many places along a curve given by a function of 0 to 1. */
export function curveRun(at: (t: number) => Point, count = 120): Point[] {
  return Array.from({ length: count + 1 }, (_, i) => at(i / count));
}
