import { distance, type Point, unit, type Vector, vectorBetween } from '../geometry/point';
import type { Grey } from './grey';
import { type InkAcross, inkAcross } from './ink-profile';
import { median } from './median';

/** The middle of the printed line along a way, to a fraction of a pixel. */
export interface InkLine {
  /** Where the middle was seen, in order. Between them, in gaps and under lettering, the line runs straight. */
  readonly points: readonly Point[];
  /** How wide the line is, in pixels. */
  readonly width: number;
}

/** Places along the way are this far apart, in pixels. */
const APART = 1.5;

/** How far the direction of the way is looked for each way, in places. */
const BESIDE = 4;

/** How far from the way the line is looked for at first, in pixels: the widest line that is followed is about this wide. */
const FIRST_HALF = 8;

/** A cut so much wider than the others goes along a crossing line, or through lettering. */
const TOO_WIDE = 1.45;
/** And one so much narrower met a speck; a dot of a dotted line is narrower near its ends. */
const TOO_NARROW = 0.45;
/** The middle is seen where the ink is at least so dark, as a share of what is usual along the way. */
const DARK_ENOUGH = 0.4;

/**
 * The middle of the line along a way of pixels. What crosses the line, is lettered over it or leaves a gap in it says
 * nothing of where its middle is, and is passed over. `undefined` where less than a tenth of the way lies on ink.
 */
export function inkLine(grey: Grey, way: readonly Point[]): InkLine | undefined {
  const rough = spaced(smoothed(way, 3), APART);
  const first = seenAlong(grey, rough, FIRST_HALF);
  if (!first) return undefined;
  const better = spaced(smoothed(first.points, 1), APART);
  const half = Math.max(4, 1.7 * first.width + 1.5);
  return seenAlong(grey, better, half) ?? first;
}

/** How far apart the places of a line that is only shown are, in pixels. */
const SHOWN_APART = 6;

/** A way without the steps of its pixels, good enough to be shown while the pointer moves. */
export function shownLine(way: readonly Point[]): Point[] {
  return spaced(smoothed(way, 3), SHOWN_APART);
}

function seenAlong(grey: Grey, places: readonly Point[], half: number): InkLine | undefined {
  const cuts = places.map((place, i) => {
    const cut = squareTo(places, i);
    return cut && { place, cut, ink: inkAcross(grey, place, cut, half) };
  });
  const inks = cuts.flatMap((each) => (each?.ink && Number.isFinite(each.ink.width) ? [each.ink] : []));
  if (inks.length < Math.max(2, places.length / 10)) return undefined;
  const width = median(inks.map((ink) => ink.width));
  const depth = median(inks.map((ink) => ink.depth));
  const good = (ink: InkAcross) =>
    ink.width < width * TOO_WIDE && ink.width > width * TOO_NARROW && ink.depth > depth * DARK_ENOUGH;
  // What makes a cut too wide leans on the cuts beside it as well.
  const clear = (index: number) =>
    cuts.slice(Math.max(0, index - 2), index + 3).every((each) => !each?.ink || each.ink.width < width * TOO_WIDE);
  const points = cuts.flatMap((each, index) =>
    each?.ink && good(each.ink) && clear(index)
      ? [{ x: each.place.x + each.cut.dx * each.ink.off, y: each.place.y + each.cut.dy * each.ink.off }]
      : [],
  );
  return points.length >= 2 ? { points: withoutStrays(points, width), width } : undefined;
}

/** The direction square to the run at one of its points. */
function squareTo(run: readonly Point[], index: number): Vector | undefined {
  const from = run[Math.max(0, index - BESIDE)] as Point;
  const to = run[Math.min(run.length - 1, index + BESIDE)] as Point;
  const along = unit(vectorBetween(from, to));
  return along && { dx: -along.dy, dy: along.dx };
}

/** The run without points that jump aside from both their neighbours by more than a fair part of the line's width. */
function withoutStrays(points: readonly Point[], width: number): readonly Point[] {
  const limit = Math.max(1, width / 3);
  return points.filter((point, i) => {
    const [before, after] = [points[i - 1], points[i + 1]];
    if (!before || !after) return true;
    const run = unit(vectorBetween(before, after));
    if (!run) return false;
    const by = vectorBetween(before, point);
    const forward = by.dx * run.dx + by.dy * run.dy;
    return forward > 0 && Math.abs(by.dx * run.dy - by.dy * run.dx) < limit;
  });
}

/** Every point the mean of itself and `reach` neighbours each way; the ends stay. */
function smoothed(run: readonly Point[], reach: number): Point[] {
  return run.map((_, i) => {
    const here = Math.min(reach, i, run.length - 1 - i);
    let [x, y] = [0, 0];
    for (let k = i - here; k <= i + here; k++) {
      x += (run[k] as Point).x;
      y += (run[k] as Point).y;
    }
    return { x: x / (2 * here + 1), y: y / (2 * here + 1) };
  });
}

/** Places along a run at even distances of about `apart`, both ends among them. */
export function spaced(run: readonly Point[], apart: number): Point[] {
  const first = run[0];
  const last = run[run.length - 1];
  if (!first || !last) return [];
  const places: Point[] = [first];
  let left = apart;
  for (let i = 1; i < run.length; i++) {
    const [from, to] = [run[i - 1] as Point, run[i] as Point];
    const length = distance(from, to);
    for (; left <= length; left += apart) {
      const t = left / length;
      places.push({ x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t });
    }
    left -= length;
  }
  if (distance(places[places.length - 1] as Point, last) > apart / 4) places.push(last);
  return places;
}
