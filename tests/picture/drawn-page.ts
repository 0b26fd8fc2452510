import { seededRandom } from '../../core/cloth/seeded-random';
import { distance, type Point } from '../../core/geometry/point';
import type { Grey } from '../../core/picture/grey';

/** A line to be drawn on a page: a run of points, how wide, how dark, and its dashes (drawn, left out and so on), in pixels. */
export interface DrawnLine {
  readonly run: readonly Point[];
  readonly width: number;
  readonly ink?: number;
  readonly dashes?: readonly number[];
}

interface PageOptions {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly DrawnLine[];
  /** How much lighter the paper is on the left than on the right. */
  readonly shadow?: number;
  /** The spread of the noise, grey. */
  readonly noise?: number;
}

/** A page with lines of known place on it. Coverage is exact for straight edges through a pixel within a hundredth or two. */
export function drawnPage({ width, height, lines, shadow = 0.2, noise = 0.02 }: PageOptions): Grey {
  const cover = new Float32Array(width * height);
  for (const line of lines) {
    for (const part of dashed(line.run, line.dashes)) {
      for (let i = 1; i < part.length; i++) {
        stamp(cover, width, height, part[i - 1] as Point, part[i] as Point, line.width, line.ink ?? 0.75);
      }
    }
  }
  const random = seededRandom(7);
  const data = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = y * width + x;
      const paper = 0.95 - (shadow * x) / width;
      const grain = (random() + random() + random() - 1.5) * 2 * noise;
      data[at] = Math.min(1, Math.max(0, paper * (1 - (cover[at] as number)) + grain));
    }
  }
  return { width, height, data };
}

function stamp(
  cover: Float32Array,
  width: number,
  height: number,
  a: Point,
  b: Point,
  lineWidth: number,
  ink: number,
): void {
  const r = lineWidth / 2 + 1;
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const size = dx * dx + dy * dy;
  for (
    let y = Math.max(0, Math.floor(Math.min(a.y, b.y) - r));
    y <= Math.min(height - 1, Math.max(a.y, b.y) + r);
    y++
  ) {
    for (
      let x = Math.max(0, Math.floor(Math.min(a.x, b.x) - r));
      x <= Math.min(width - 1, Math.max(a.x, b.x) + r);
      x++
    ) {
      const t = size > 0 ? Math.min(1, Math.max(0, ((x + 0.5 - a.x) * dx + (y + 0.5 - a.y) * dy) / size)) : 0;
      const off = Math.hypot(x + 0.5 - a.x - dx * t, y + 0.5 - a.y - dy * t);
      const here = ink * Math.min(1, Math.max(0, lineWidth / 2 - off + 0.5));
      const at = y * width + x;
      if (here > (cover[at] as number)) cover[at] = here;
    }
  }
}

/** The parts of a run that its dashes draw. */
function dashed(run: readonly Point[], dashes: readonly number[] | undefined): Point[][] {
  if (!dashes) return [[...run]];
  const parts: Point[][] = [];
  let which = 0;
  let left = dashes[0] as number;
  let part: Point[] = [run[0] as Point];
  for (let i = 1; i < run.length; i++) {
    let from = run[i - 1] as Point;
    const to = run[i] as Point;
    for (let length = distance(from, to); length > left; length = distance(from, to)) {
      const t = left / length;
      from = { x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t };
      if (which % 2 === 0) parts.push([...part, from]);
      part = [from];
      which += 1;
      left = dashes[which % dashes.length] as number;
    }
    left -= distance(from, to);
    part.push(to);
  }
  if (which % 2 === 0) parts.push(part);
  return parts;
}

/** An arc of a circle as a fine run, angles in radians. */
export function arcRun(centre: Point, radius: number, from: number, to: number): Point[] {
  const count = Math.max(8, Math.ceil(Math.abs(to - from) * radius));
  return Array.from({ length: count + 1 }, (_, i) => {
    const angle = from + ((to - from) * i) / count;
    return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
  });
}

/** Words as a row of letter-like strokes, about as high as given, beginning at a place. */
export function letteringAt(at: Point, height: number, letters: number): DrawnLine[] {
  return Array.from({ length: letters }, (_, i) => {
    const [x, h, w] = [at.x + i * height * 0.75, height, height * 0.5];
    const run = [
      { x, y: at.y },
      { x, y: at.y - h },
      { x: x + w, y: at.y - h * (i % 2 ? 0.5 : 1) },
      { x: x + w, y: at.y },
    ];
    return { run, width: Math.max(1.5, height / 9) };
  });
}

/** How far each of the places is from a run, at most. */
export function furthestOff(places: readonly Point[], run: readonly Point[]): number {
  return Math.max(...places.map((place) => offRun(place, run)));
}

/** How far a place is from a run. */
export function offRun(place: Point, run: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < run.length; i++) {
    const [a, b] = [run[i - 1] as Point, run[i] as Point];
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const size = dx * dx + dy * dy;
    const t = size > 0 ? Math.min(1, Math.max(0, ((place.x - a.x) * dx + (place.y - a.y) * dy) / size)) : 0;
    least = Math.min(least, Math.hypot(place.x - a.x - dx * t, place.y - a.y - dy * t));
  }
  return least;
}
