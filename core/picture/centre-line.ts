/**
 * The middle of a printed line, sub-pixel, from a rough way along it. Readings are taken square to the way: the course
 * that is most like one line of the given width, found by Viterbi's method; then smoothed, leaving out readings that
 * crossings, lettering and blots have pushed aside, and going over gaps.
 */
import {
  distance,
  dot,
  move,
  type PhotoPoint,
  type Point,
  quarterTurn,
  type Vector,
  vectorBetween,
} from '../geometry/point';
import { type GreyPicture, greyAt } from './grey-picture';
import { bowAt, robustBow } from './robust-fit';

/** Readings lie a third of a line's width apart, but not nearer than this and not further than that, in pixels. */
const STATION_PX = [1, 6] as const;

/** How far aside of the rough way the line is looked for, in widths, and at least this many pixels. */
const REACH_WIDTHS = 1.2;
const LEAST_REACH_PX = 3;

/** Readings across, in pixels. */
const STEP_PX = 0.5;

/** What a sideways step costs (in shares of full darkness, per half pixel squared). */
const STEP_COST = 0.03;

/** A reading with less than this share of the line's usual darkness is a gap. */
const GAP = 0.35;

/** Readings are smoothed over this many on either side, more where some are gaps. */
const SMOOTH_OVER = 7;
const MOST_OVER = 30;

/** The least scatter of readings, in pixels. */
const NOISE_PX = 0.08;

/** The middle of the line along a rough way (its points a pixel or a few apart), one point a station. */
export function centreLine(
  picture: GreyPicture,
  rough: readonly PhotoPoint[],
  options: { readonly widthPx: number },
): readonly PhotoPoint[] {
  const { widthPx } = options;
  const spacing = Math.min(STATION_PX[1], Math.max(STATION_PX[0], widthPx / 3));
  const stations = evenStations(smoothed(rough, Math.max(2, Math.round(widthPx * 0.75))), spacing);
  if (stations.length < 3) return rough;
  const normals = stations.map((_, i) => normalAt(stations, i));
  const reach = Math.max(4, Math.ceil(Math.max(LEAST_REACH_PX, REACH_WIDTHS * widthPx) / STEP_PX));
  const wide = 2 * reach + 1;
  const likeness = likenesses(picture, stations, normals, reach, widthPx);
  const course = bestCourse(likeness, stations.length, wide, spacing);
  const offsets = new Float64Array(stations.length);
  const weights = new Float64Array(stations.length);
  for (let i = 0; i < stations.length; i++) {
    const o = course[i] as number;
    offsets[i] = (o - reach + topShift(likeness, i * wide, o, wide)) * STEP_PX;
    weights[i] = Math.max(0, likeness[i * wide + o] as number);
  }
  const usual = weights.slice().sort()[Math.floor(weights.length * 0.7)] || 1;
  const readings = stations.map((station, i) => move(station, normals[i] as Vector, offsets[i] as number));
  for (let i = 0; i < weights.length; i++) {
    const share = (weights[i] as number) / usual;
    weights[i] = share > GAP ? Math.min(1, share) : 0;
  }
  return stations.map((station, i) => smoothPlace(readings, weights, station, i));
}

/** The mean of each point and its neighbours, `over` on either side; fewer near the ends, which stay. */
function smoothed(run: readonly Point[], over: number): Point[] {
  return run.map((_, i) => {
    const reach = Math.min(over, i, run.length - 1 - i);
    let [x, y] = [0, 0];
    for (let k = i - reach; k <= i + reach; k++) {
      x += (run[k] as Point).x;
      y += (run[k] as Point).y;
    }
    return { x: x / (2 * reach + 1), y: y / (2 * reach + 1) };
  });
}

/** Points at even distances along a run, both ends among them. */
export function evenStations(run: readonly Point[], spacing: number): Point[] {
  let whole = 0;
  for (let i = 1; i < run.length; i++) whole += distance(run[i - 1] as Point, run[i] as Point);
  const count = Math.max(1, Math.round(whole / spacing));
  const stations: Point[] = [];
  let [gone, i] = [0, 1];
  for (let k = 0; k <= count && run.length > 1; k++) {
    const wanted = (whole * k) / count;
    for (;;) {
      const step = distance(run[i - 1] as Point, run[i] as Point);
      if (gone + step >= wanted || i === run.length - 1) {
        const [a, b] = [run[i - 1] as Point, run[i] as Point];
        const t = step > 0 ? Math.min(1, (wanted - gone) / step) : 0;
        stations.push({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t });
        break;
      }
      gone += step;
      i++;
    }
  }
  return stations;
}

function normalAt(run: readonly Point[], i: number): Vector {
  const [a, b] = [run[Math.max(0, i - 2)] as Point, run[Math.min(run.length - 1, i + 2)] as Point];
  const length = distance(a, b) || 1;
  return quarterTurn({ dx: (b.x - a.x) / length, dy: (b.y - a.y) / length });
}

/** How like a line of this width it is at each offset of each station: darkness within less darkness beside, 0 to 1. */
function likenesses(
  picture: GreyPicture,
  stations: readonly Point[],
  normals: readonly Vector[],
  reach: number,
  widthPx: number,
): Float32Array {
  const half = Math.max(1, Math.round(widthPx / 2 / STEP_PX));
  const beside = half + Math.max(1, Math.round(0.35 * half));
  const far = beside + half;
  const count = 2 * (reach + far) + 1;
  const sums = new Float64Array(count + 1);
  const wide = 2 * reach + 1;
  const likeness = new Float32Array(stations.length * wide);
  for (let i = 0; i < stations.length; i++) {
    const [{ x, y }, { dx, dy }] = [stations[i] as Point, normals[i] as Vector];
    for (let k = 0; k < count; k++) {
      const off = (k - reach - far) * STEP_PX;
      sums[k + 1] = (sums[k] as number) + greyAt(picture, x + dx * off, y + dy * off);
    }
    const mean = (from: number, to: number) => ((sums[to + 1] as number) - (sums[from] as number)) / (to - from + 1);
    for (let o = 0; o < wide; o++) {
      const c = o + far;
      const inside = mean(c - half, c + half);
      // The darker side decides, so that the edge of something broad is no line.
      const paper = Math.min(mean(c - far, c - beside), mean(c + beside, c + far));
      likeness[i * wide + o] = Math.max(0, paper - inside) / (paper + 1);
    }
  }
  return likeness;
}

function bestCourse(likeness: Float32Array, count: number, wide: number, spacing: number): Int32Array {
  let best = new Float32Array(wide);
  let next = new Float32Array(wide);
  const cameFrom = new Int8Array(count * wide);
  const most = Math.max(1, Math.round(spacing));
  for (let i = 0; i < count; i++) {
    for (let o = 0; o < wide; o++) {
      let [top, step] = [-Infinity, 0];
      const reach = i === 0 ? 0 : most;
      for (let d = -reach; d <= reach; d++) {
        if (o + d < 0 || o + d >= wide) continue;
        const value = (best[o + d] as number) - STEP_COST * d * d;
        if (value > top) [top, step] = [value, d];
      }
      next[o] = top + (likeness[i * wide + o] as number);
      cameFrom[i * wide + o] = step;
    }
    [best, next] = [next, best];
  }
  let o = 0;
  for (let k = 1; k < wide; k++) if ((best[k] as number) > (best[o] as number)) o = k;
  const course = new Int32Array(count);
  for (let i = count - 1; i >= 0; i--) {
    course[i] = o;
    o += cameFrom[i * wide + o] as number;
  }
  return course;
}

function topShift(likeness: Float32Array, row: number, o: number, wide: number): number {
  if (o === 0 || o === wide - 1) return 0;
  const [a, b, c] = [likeness[row + o - 1] as number, likeness[row + o] as number, likeness[row + o + 1] as number];
  const bend = a - 2 * b + c;
  return bend < 0 ? Math.min(1, Math.max(-1, (a - c) / (2 * bend))) : 0;
}

/** The place on the normal of one station by a parabola through the readings about it; wider where gaps leave too few. */
function smoothPlace(readings: readonly Point[], weights: Float64Array, station: Point, i: number): Point {
  const last = readings.length - 1;
  let over = SMOOTH_OVER;
  let [low, high] = [i, i];
  for (; ; over = Math.ceil(over * 1.5)) {
    low = Math.max(0, i - over);
    high = Math.min(last, i + over);
    let [before, after] = [0, 0];
    for (let k = low; k < i; k++) before += weights[k] as number;
    for (let k = i; k <= high; k++) after += weights[k] as number;
    // Readings on one side only would be carried on into a gap.
    const isBothSides = (low === 0 || before >= 3) && (high === last || after >= 3);
    if ((before + after >= SMOOTH_OVER && isBothSides) || over > MOST_OVER) break;
  }
  const [a, b] = [readings[low] as Point, readings[high] as Point];
  const length = distance(a, b);
  if (!(length > 0)) return readings[i] as Point;
  const ahead = { dx: (b.x - a.x) / length, dy: (b.y - a.y) / length };
  const aside = quarterTurn(ahead);
  const at = new Float64Array(high - low + 1);
  const offs = new Float64Array(high - low + 1);
  for (let k = low; k <= high; k++) {
    const way = vectorBetween(station, readings[k] as Point);
    at[k - low] = dot(way, ahead) / length;
    offs[k - low] = dot(way, aside);
  }
  const fit = robustBow(at, offs, weights.slice(low, high + 1), { degree: 2, noise: NOISE_PX });
  return fit ? move(station, aside, bowAt(fit.terms, 0)) : (readings[i] as Point);
}
