/**
 * One cubic along part of the true parallel of one stretch, as near as a cubic comes.
 *
 * The cubic has the ends and the end directions of the parallel; its two arms are free. They begin as long as the
 * parallel's own speed would have them (an error of the fourth order) and are then bettered by least squares on the
 * distances measured along the normals of the true parallel, which brings the sixth order: half the length, 64 times
 * nearer. The same distances decide whether the cubic is good enough.
 *
 * See: W. Tiller & E. Hanson, Offsets of Two-Dimensional Profiles, IEEE Computer Graphics & Applications 4:9 (1984), on
 * measuring along normals; R. Levien, Parallel curves of cubic Béziers (2022), on orders.
 */
import { segmentCurvature, segmentDerivative } from './cubic-curve';
import { type ParallelPlace, parallelPlace } from './parallel-source';
import { distance, type Point, turnBetween, type Vector } from './point';
import { cubic, line, type Segment } from './segment';

/** Inner places of a cubic at which its distance from the true parallel is measured. */
const CASTS = 8;

/** Places at most, and the longest step (as a share of the whole) and the sharpest turn between two before one is added. */
const MOST_CASTS = 48;
const LONGEST_STEP = 0.3;
const SHARPEST_STEP = 0.5;

/** Rounds of least squares; the second seldom changes anything that matters. */
const ROUNDS = 3;

/** Beyond a turn of this much (100 degrees) a single cubic is not tried. */
const LARGEST_TURN = 1.75;

/** A cubic and how good it is. */
export interface Fit {
  readonly piece: Segment;
  /** The largest distance found, or `undefined` when the cubic went astray. */
  readonly error: number | undefined;
}

/**
 * One cubic (or line, where all is straight) for the parallel of `segment` from parameter `from`, at `start`, to `to`,
 * at `stop`, with its error; it is bettered until that is within `accuracy`, or no more is to be had.
 */
export function fittedPiece(
  segment: Segment,
  offset: number,
  from: number,
  start: ParallelPlace,
  to: number,
  stop: ParallelPlace,
  accuracy: number,
): Fit {
  const chord = distance(start.point, stop.point);
  const middle = parallelPlace(segment, offset, (from + to) / 2);
  if (isStraight(start, middle, stop, chord)) return { piece: line(start.point, stop.point), error: 0 };
  const { casts, feet, length, turn, even } = castPlaces(segment, offset, from, start, to, stop);
  // Where the stretch all but stops its own speed says nothing about arms; a third of the way does.
  let armA = even ? armOf(segment, offset, from, to) : length / 3;
  let armB = even ? armOf(segment, offset, to, from) : length / 3;
  if (turn > LARGEST_TURN) return { piece: withArms(start, stop, armA, armB), error: undefined };

  let error: number | undefined;
  for (let round = 0; round < ROUNDS; round++) {
    const cast = castNormals(start, stop, armA, armB, casts, feet);
    if (!cast) return { piece: withArms(start, stop, armA, armB), error };
    error = cast.error;
    if (error <= accuracy || round === ROUNDS - 1) break;
    // Never shorter than nothing, never so long that the cubic could fold: a fit that wants that is split instead.
    const nextA = armA + cast.growA;
    const nextB = armB + cast.growB;
    if (!(nextA > 0 && nextB > 0 && nextA + nextB < 4 * chord)) break;
    armA = nextA;
    armB = nextB;
  }
  return { piece: withArms(start, stop, armA, armB), error };
}

interface CastPlaces {
  readonly casts: readonly ParallelPlace[];
  /** Where on the cubic, from 0 to 1, each cast may be expected to strike. */
  readonly feet: number[];
  /** The way along the parallel, and how much it turns on it, from place to place. */
  readonly length: number;
  readonly turn: number;
  /** Whether the parallel is travelled evenly enough for its own parameter to be the cubic's. */
  readonly even: boolean;
}

/** Places spread evenly over the stretch, and more where the parallel takes long steps or sharp turns between them. */
function castPlaces(
  segment: Segment,
  offset: number,
  from: number,
  start: ParallelPlace,
  to: number,
  stop: ParallelPlace,
): CastPlaces {
  const ts = [from];
  const places = [start];
  for (let i = 1; i <= CASTS; i++) {
    const t = from + ((to - from) * i) / (CASTS + 1);
    ts.push(t);
    places.push(parallelPlace(segment, offset, t));
  }
  ts.push(to);
  places.push(stop);
  const steps = places.slice(1).map((place, i) => stepBetween(places[i] as ParallelPlace, place));
  let length = steps.reduce((sum, step) => sum + step.way, 0);
  let even = true;
  while (places.length < MOST_CASTS) {
    const at = steps.findIndex(({ way, turn }) => way > LONGEST_STEP * length || turn > SHARPEST_STEP);
    if (at < 0) break;
    even = false;
    const t = ((ts[at] as number) + (ts[at + 1] as number)) / 2;
    const place = parallelPlace(segment, offset, t);
    ts.splice(at + 1, 0, t);
    places.splice(at + 1, 0, place);
    const [before, after] = [places[at] as ParallelPlace, places[at + 2] as ParallelPlace];
    steps.splice(at, 1, stepBetween(before, place), stepBetween(place, after));
    length = steps.reduce((sum, step) => sum + step.way, 0);
  }
  let way = 0;
  const feet = steps.slice(0, -1).map((step, i) => {
    way += step.way;
    return even ? (i + 1) / (CASTS + 1) : way / length;
  });
  const turn = steps.reduce((sum, step) => sum + step.turn, 0);
  return { casts: places.slice(1, -1), feet, length, turn, even };
}

function stepBetween(one: ParallelPlace, other: ParallelPlace): { readonly way: number; readonly turn: number } {
  return { way: distance(one.point, other.point), turn: Math.abs(turnBetween(one.tangent, other.tangent)) };
}

interface Cast {
  readonly error: number;
  /** How much longer least squares wants each arm. */
  readonly growA: number;
  readonly growB: number;
}

/**
 * Casts the normal of the true parallel at each place onto the cubic; `feet` holds where they strike and is kept up to
 * date. `undefined` when a normal misses or the strikes fall out of order.
 */
function castNormals(
  { point: p, tangent: t }: ParallelPlace,
  { point: q, tangent: v }: ParallelPlace,
  armA: number,
  armB: number,
  casts: readonly ParallelPlace[],
  feet: number[],
): Cast | undefined {
  const x1 = p.x + t.dx * armA;
  const y1 = p.y + t.dy * armA;
  const x2 = q.x - v.dx * armB;
  const y2 = q.y - v.dy * armB;
  let error = 0;
  let aa = 0;
  let ab = 0;
  let bb = 0;
  let ae = 0;
  let be = 0;
  let before = 0;
  for (let i = 0; i < casts.length; i++) {
    const { point, tangent } = casts[i] as ParallelPlace;
    let u = feet[i] as number;
    let offX = 0;
    let offY = 0;
    for (let step = 0; step < 4; step++) {
      const s = 1 - u;
      const [b0, b1, b2, b3] = [s * s * s, 3 * s * s * u, 3 * s * u * u, u * u * u];
      offX = b0 * p.x + b1 * x1 + b2 * x2 + b3 * q.x - point.x;
      offY = b0 * p.y + b1 * y1 + b2 * y2 + b3 * q.y - point.y;
      const along = offX * tangent.dx + offY * tangent.dy;
      const [d0, d1, d2] = [3 * s * s, 6 * s * u, 3 * u * u];
      const speedX = d0 * (x1 - p.x) + d1 * (x2 - x1) + d2 * (q.x - x2);
      const speedY = d0 * (y1 - p.y) + d1 * (y2 - y1) + d2 * (q.y - y2);
      const move = along / (speedX * tangent.dx + speedY * tangent.dy);
      if (!(Math.abs(move) < 1)) return undefined;
      u -= move;
      if (Math.abs(move) < 1e-4) {
        offX -= move * speedX;
        offY -= move * speedY;
        break;
      }
    }
    if (!(u > before && u < 1)) return undefined;
    before = u;
    feet[i] = u;
    const off = offY * tangent.dx - offX * tangent.dy;
    error = Math.max(error, Math.hypot(offX, offY));
    const s = 1 - u;
    const leverA = 3 * s * s * u * (t.dy * tangent.dx - t.dx * tangent.dy);
    const leverB = -3 * s * u * u * (v.dy * tangent.dx - v.dx * tangent.dy);
    aa += leverA * leverA;
    ab += leverA * leverB;
    bb += leverB * leverB;
    ae -= leverA * off;
    be -= leverB * off;
  }
  // A touch of damping keeps the arms still where neither has any leverage (an almost straight piece).
  const damping = 1e-9 * (aa + bb) + 1e-18;
  const det = (aa + damping) * (bb + damping) - ab * ab;
  return { error, growA: (ae * (bb + damping) - be * ab) / det, growB: (be * (aa + damping) - ae * ab) / det };
}

/** A third of the speed of the parallel at `at`, for a piece that reaches to `other`. */
function armOf(segment: Segment, offset: number, at: number, other: number): number {
  const { dx, dy } = segmentDerivative(segment, at);
  const speed = Math.hypot(dx, dy) * (1 + offset * segmentCurvature(segment, at));
  return Math.max(0, (speed * Math.abs(other - at)) / 3);
}

function withArms(start: ParallelPlace, stop: ParallelPlace, armA: number, armB: number): Segment {
  const { point: p, tangent: t } = start;
  const { point: q, tangent: v } = stop;
  return cubic(p, { x: p.x + t.dx * armA, y: p.y + t.dy * armA }, { x: q.x - v.dx * armB, y: q.y - v.dy * armB }, q);
}

/** Whether a piece runs straight on from start to stop, to rounding: then a line stands for it. */
function isStraight(start: ParallelPlace, middle: ParallelPlace, stop: ParallelPlace, chord: number): boolean {
  if (!(chord > 0)) return false;
  const along = { dx: (stop.point.x - start.point.x) / chord, dy: (stop.point.y - start.point.y) / chord };
  return (
    [start, middle, stop].every(({ tangent }) => tangent.dx * along.dx + tangent.dy * along.dy > 1 - 1e-15) &&
    offLine(middle.point, start.point, along) < 1e-9 * chord
  );
}

function offLine(point: Point, start: Point, along: Vector): number {
  return Math.abs((point.x - start.x) * along.dy - (point.y - start.y) * along.dx);
}
