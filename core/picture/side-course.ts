/**
 * Where the edge of a page or a printed line runs beside a straight guess: the strongest unbroken course through a strip
 * laid along the guess, found by Viterbi's method, so that what crosses or lies beside it is passed by.
 */
import { distance, move, type PhotoPoint, quarterTurn, type Vector, vectorBetween } from '../geometry/point';
import { type GreyPicture, greyAt } from './grey-picture';
import { type BowFit, bowAt, robustBow } from './robust-fit';

/** A light page ending on something darker, or a dark line on paper. */
export type SideKind = 'paper-edge' | 'printed-line';

export interface SideOptions {
  readonly kind: SideKind;
  /** How far from the guess the side may run, in pixels. */
  readonly reachPx: number;
  /** The degree of the curve fitted to it: 1 straight, up to about 6 for a curled page. */
  readonly degree: number;
  /** A curve already known (terms in pixels), about which the reach counts; straight unless said. */
  readonly about?: readonly number[];
}

/** A side followed from one corner of a rectangle to the next, the rectangle lying clockwise of the way to the eye. */
export interface SideCourse {
  readonly from: PhotoPoint;
  readonly to: PhotoPoint;
  /** The direction in which offsets count: square to the guess, into the rectangle. */
  readonly inward: Vector;
  /** How far inward the side runs, over -1 at `from` to 1 at `to`. */
  readonly fit: BowFit;
  /** The share of the way on which the side is there to be seen, 0 to 1. */
  readonly seen: number;
  /** The mean strength of what was followed, as a share of the brightness round it. */
  readonly strength: number;
}

const MOST_SAMPLES = 200;

/** Strength, as a share of the brightness, below which there is nothing to follow, and above which more is no better. */
const FAINT = 0.05;
const STRONG = 0.2;

/** What one pixel of sideways step costs, and what lying at the end of the reach does, in strengths; near corners more. */
const STEP_COST = 0.02;
const REACH_COST = 0.12;
const CORNER_COST = 0.5;

/** Within a reach shorter than this, in pixels, the guess is good and being off it costs little. */
const FAR_PX = 24;

/** The least spread of readings, in pixels: sampling alone leaves as much. */
const NOISE_PX = 0.1;

/** A reading this far from the fitted curve, in pixels, still belongs to it. */
const ON_CURVE = 1.5;

/** How far a line's paper is looked for on either side of it, and how deep an edge is looked at, in pixels. */
const BESIDE = [2, 3.5] as const;
const EDGE_DEPTH = 3;

/** Beyond the edge of a page it stays dark this far out; beyond a printed line the paper is back. */
const STAYS_DARK = [6, 7] as const;

/** Follows a side; `undefined` where the guess has no length. */
export function followSide(
  picture: GreyPicture,
  from: PhotoPoint,
  to: PhotoPoint,
  { kind, reachPx, degree, about = [] }: SideOptions,
): SideCourse | undefined {
  const length = distance(from, to);
  if (!(length > 4)) return undefined;
  const along = vectorBetween(from, to);
  const inward = quarterTurn({ dx: along.dx / length, dy: along.dy / length });
  const count = Math.max(12, Math.min(MOST_SAMPLES, Math.round(length / 2)));
  const reach = Math.max(2, Math.round(reachPx));
  const strengths = stripStrengths(picture, { from, along, inward, count, reach, kind, about });
  const course = strongestCourse(strengths, count, reach);
  const at = new Float64Array(count);
  const offsets = new Float64Array(count);
  const weights = new Float64Array(count);
  const wide = 2 * reach + 1;
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const o = topNear(strengths, i * wide, course[i] as number, wide);
    const strength = strengths[i * wide + o] as number;
    at[i] = (2 * (i + 0.5)) / count - 1;
    offsets[i] = o - reach + peakShift(strengths, i * wide, o, wide) + bowAt(about, at[i] as number);
    weights[i] = strength > FAINT ? Math.min(1, strength / STRONG) : 0;
    sum += Math.min(strength, STRONG);
  }
  const fit = robustBow(at, offsets, weights, { degree, noise: NOISE_PX });
  if (!fit) return undefined;
  let on = 0;
  for (let i = 0; i < count; i++) {
    const off = Math.abs((offsets[i] as number) - bowAt(fit.terms, at[i] as number));
    if ((weights[i] as number) > 0 && off < ON_CURVE) on++;
  }
  return { from, to, inward, fit, seen: on / count, strength: sum / count };
}

/** The place on the fitted side at `t`, -1 at `from` to 1 at `to`; a little beyond either end goes as well. */
export function placeOnSide({ from, to, inward, fit }: SideCourse, t: number): PhotoPoint {
  const way = vectorBetween(from, to);
  return move(move(from, way, (t + 1) / 2), inward, bowAt(fit.terms, t));
}

interface Strip {
  readonly from: PhotoPoint;
  readonly along: Vector;
  readonly inward: Vector;
  readonly count: number;
  readonly reach: number;
  readonly kind: SideKind;
  readonly about: readonly number[];
}

/** For each place along the guess and each offset, how much it looks like the side. */
function stripStrengths(picture: GreyPicture, { from, along, inward, count, reach, kind, about }: Strip): Float32Array {
  const margin = 8;
  const half = reach + margin;
  const profile = new Float32Array(2 * half + 1);
  const strengths = new Float32Array(count * (2 * reach + 1));
  for (let i = 0, p = 0; i < count; i++) {
    const t = (i + 0.5) / count;
    const bow = bowAt(about, 2 * t - 1);
    const [x, y] = [from.x + along.dx * t + inward.dx * bow, from.y + along.dy * t + inward.dy * bow];
    for (let o = -half; o <= half; o++) profile[o + half] = greyAt(picture, x + inward.dx * o, y + inward.dy * o);
    for (let o = -reach; o <= reach; o++, p++) {
      const outside = x + inward.dx * (o - 1) < 0 || y + inward.dy * (o - 1) < 0;
      const beyond = x + inward.dx * (o + 1) > picture.width || y + inward.dy * (o + 1) > picture.height;
      strengths[p] = outside || beyond ? 0 : strengthAt(profile, o + half, kind);
    }
  }
  return strengths;
}

function strengthAt(profile: Float32Array, at: number, kind: SideKind): number {
  if (kind === 'paper-edge') {
    let [inside, outside] = [0, 0];
    for (let k = 1; k <= EDGE_DEPTH; k++) {
      inside += profile[at + k] as number;
      outside += profile[at - k] as number;
    }
    const far = ((profile[at - STAYS_DARK[0]] as number) + (profile[at - STAYS_DARK[1]] as number)) * (EDGE_DEPTH / 2);
    outside = Math.max(outside, far);
    return (inside - outside) / (inside + outside + 1);
  }
  const near = Math.min(between(profile, at + BESIDE[0]), between(profile, at - BESIDE[0]));
  const far = Math.min(between(profile, at + BESIDE[1]), between(profile, at - BESIDE[1]));
  const paper = Math.max(near, far);
  const middle = ((profile[at - 1] as number) + 2 * (profile[at] as number) + (profile[at + 1] as number)) / 4;
  return (paper - middle) / (paper + 1);
}

function between(profile: Float32Array, at: number): number {
  const k = Math.floor(at);
  const t = at - k;
  const here = profile[k] as number;
  return t === 0 ? here : here + ((profile[k + 1] as number) - here) * t;
}

/** The offsets (as indexes) of the course with the greatest sum of strengths less the costs of stepping aside. */
function strongestCourse(strengths: Float32Array, count: number, reach: number): Int32Array {
  const wide = 2 * reach + 1;
  let best = new Float32Array(wide);
  let next = new Float32Array(wide);
  const cameFrom = new Int8Array(count * wide);
  for (let i = 0; i < count; i++) {
    const cost = REACH_COST + CORNER_COST * ((2 * (i + 0.5)) / count - 1) ** 6;
    for (let o = 0; o < wide; o++) {
      let [top, step] = [-Infinity, 0];
      for (let d = i === 0 ? 0 : -2; d <= (i === 0 ? 0 : 2); d++) {
        const value = o + d >= 0 && o + d < wide ? (best[o + d] as number) - STEP_COST * d * d : -Infinity;
        if (value > top) [top, step] = [value, d];
      }
      const aside = (o - reach) / Math.max(reach, FAR_PX);
      next[o] = top + Math.min(STRONG, strengths[i * wide + o] as number) - cost * aside * aside;
      cameFrom[i * wide + o] = step;
    }
    [best, next] = [next, best];
  }
  let o = best.reduce((top, value, k) => (value > (best[top] as number) ? k : top), 0);
  const course = new Int32Array(count);
  for (let i = count - 1; i >= 0; i--) {
    course[i] = o;
    o += cameFrom[i * wide + o] as number;
  }
  return course;
}

/** The offset of the nearest top uphill: strengths are capped while the course is found, so it may lie beside its top. */
function topNear(strengths: Float32Array, row: number, from: number, wide: number): number {
  let o = from;
  for (;;) {
    const here = strengths[row + o] as number;
    if (o > 0 && (strengths[row + o - 1] as number) > here) o--;
    else if (o < wide - 1 && (strengths[row + o + 1] as number) > here) o++;
    else return o;
  }
}

/** How far the top of the parabola through three neighbours lies from the middle one, within half a pixel. */
function peakShift(strengths: Float32Array, row: number, o: number, wide: number): number {
  if (o === 0 || o === wide - 1) return 0;
  const [a, b, c] = [strengths[row + o - 1] as number, strengths[row + o] as number, strengths[row + o + 1] as number];
  const bend = a - 2 * b + c;
  return bend < 0 ? Math.min(0.5, Math.max(-0.5, (a - c) / (2 * bend))) : 0;
}
