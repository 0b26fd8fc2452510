/**
 * A bent page as a general cylinder: sheets bend without stretching, a booklet's page along lines parallel to its spine.
 *
 * Two opposite sides of the page are such lines and look straight; their pictures meet in the vanishing point of all of
 * them. With the focal length, each line of sight to one bowed side and to the other fixes where the line between them
 * lies in space, up to one scale; the way across the lines is then the length of paper. See: H. Cao, X. Ding & C. Liu,
 * A cylindrical surface model to rectify the bound document image (ICCV 2003), for the model; the sums are our own.
 */
import type { Point } from '../geometry/point';
import { type Side, sideAt } from './curl-side';

/** How the camera saw it: focal length, and where its axis meets the picture, in pixels. */
export interface Lens {
  readonly focalPx: number;
  readonly centre: Point;
}

/** A bent page laid out: places along its upper side at even steps of paper, and the run from there to the lower side. */
export interface Cylinder {
  readonly lens: Lens;
  /** Three numbers a station, in space with the camera at 0; lengths are such that `run` is 1 long. */
  readonly upper: Float64Array;
  readonly run: Triple;
  /** How long the upper side is, in lengths of the run. */
  readonly across: number;
  /** How far the upper side is from standing square on the run, as a share of its length: 0 for a true rectangle. */
  readonly leaning: number;
}

export type Triple = readonly [number, number, number];

const STATIONS = 192;

/** The pictures of lines of a cylinder, each from the upper side to the lower, and of the place where they would all meet. */
export interface PairedSides {
  readonly pairs: readonly (readonly [Point, Point])[];
  /** Homogeneous: at infinity where the lines look parallel. */
  readonly meet: Triple;
}

/** Lines of the cylinder between two bowed sides (both from left to right); `undefined` where one misses the lower side. */
export function pairedSides(upper: Side, lower: Side): PairedSides | undefined {
  const meet = crossOf(
    crossOf(homogeneous(upper.from), homogeneous(lower.from)),
    crossOf(homogeneous(upper.to), homogeneous(lower.to)),
  );
  const pairs: (readonly [Point, Point])[] = [];
  let t = 0;
  for (let k = 0; k <= STATIONS; k++) {
    const above = sideAt(upper, k / STATIONS);
    const found = onLine(lower, crossOf(homogeneous(above), meet), t);
    if (found === undefined) return undefined;
    t = found;
    pairs.push([above, sideAt(lower, t)]);
  }
  return { pairs, meet };
}

/** The cylinder whose lines are seen so through a lens; `undefined` when no sheet in front of the camera is. */
export function cylinderThrough({ pairs, meet }: PairedSides, lens: Lens): Cylinder | undefined {
  const { focalPx, centre } = lens;
  const towards: Triple = [meet[0] - meet[2] * centre.x, meet[1] - meet[2] * centre.y, meet[2] * focalPx];
  const long = Math.hypot(...towards);
  const [first] = pairs;
  if (!(long > 0) || !first) return undefined;
  // As seen from the upper side, the lines run towards the lower one.
  const [at, below] = first;
  const seen = { x: meet[0] - meet[2] * at.x, y: meet[1] - meet[2] * at.y };
  const sign = seen.x * (below.x - at.x) + seen.y * (below.y - at.y) >= 0 ? 1 : -1;
  const run = towards.map((each) => (sign * each) / long) as unknown as Triple;
  const places: Triple[] = [];
  for (const pair of pairs) {
    const [above, under] = [sightTo(pair[0], lens), sightTo(pair[1], lens)];
    // under · b − above · a = run: the two multiples by least squares.
    const [aa, bb, ab] = [dot(above, above), dot(under, under), dot(above, under)];
    const [ra, rb] = [dot(above, run), dot(under, run)];
    const times = (ab * rb - bb * ra) / (aa * bb - ab * ab);
    if (!(times > 0) || !(aa * rb - ab * ra > 0)) return undefined;
    places.push([above[0] * times, above[1] * times, above[2] * times]);
  }
  return evenly(places, run, lens);
}

/** The share of the way along a side where it meets a line, by the secant method from a share near it. */
function onLine(side: Side, line: Triple, near: number): number | undefined {
  const miss = (t: number) => dot(homogeneous(sideAt(side, t)), line);
  let [s, t] = [near, near + 0.01];
  let [ms, mt] = [miss(s), miss(t)];
  for (let round = 0; round < 30; round++) {
    if (mt === ms) break;
    const next = t - (mt * (t - s)) / (mt - ms);
    if (!(Math.abs(next - near) < 0.3)) return undefined;
    [s, ms] = [t, mt];
    t = next;
    mt = miss(t);
    if (Math.abs(t - s) < 1e-10) break;
  }
  return Math.abs(t - s) < 1e-6 ? t : undefined;
}

/** Stations at even lengths of paper across the run. */
function evenly(places: readonly Triple[], run: Triple, lens: Lens): Cylinder | undefined {
  const first = places[0] as Triple;
  const alongRun = places.map((place) => dot(minus(place, first), run));
  const lengths = [0];
  for (let k = 1; k < places.length; k++) {
    const step = minus(places[k] as Triple, places[k - 1] as Triple);
    const along = dot(step, run);
    lengths.push((lengths[k - 1] as number) + Math.sqrt(Math.max(dot(step, step) - along * along, 0)));
  }
  const across = lengths.at(-1) as number;
  if (!(across > 0)) return undefined;
  const upper = new Float64Array(3 * (STATIONS + 1));
  let from = 0;
  for (let k = 0; k <= STATIONS; k++) {
    const wanted = (across * k) / STATIONS;
    while (from < STATIONS - 1 && (lengths[from + 1] as number) < wanted) from++;
    const [a, b] = [places[from] as Triple, places[from + 1] as Triple];
    const gap = (lengths[from + 1] as number) - (lengths[from] as number);
    const part = gap > 0 ? (wanted - (lengths[from] as number)) / gap : 0;
    for (let axis = 0; axis < 3; axis++) {
      upper[3 * k + axis] = (a[axis as 0] as number) * (1 - part) + (b[axis as 0] as number) * part;
    }
  }
  const mean = alongRun.reduce((sum, each) => sum + each, 0) / alongRun.length;
  const leaning = Math.sqrt(alongRun.reduce((sum, each) => sum + (each - mean) ** 2, 0) / alongRun.length) / across;
  return { lens, upper, run, across, leaning };
}

/** Where a place of the page is seen: `u` in lengths of the run from the left, `v` from the upper side (0) to the lower (1). */
export function cylinderToPhoto({ lens, upper, run, across }: Cylinder, u: number, v: number): Point {
  const at = (u / across) * STATIONS;
  const k = Math.min(Math.max(Math.floor(at), 0), STATIONS - 1);
  const part = at - k;
  const [x, y, z] = [0, 1, 2].map((axis) => {
    const a = upper[3 * k + axis] as number;
    return a + ((upper[3 * k + 3 + axis] as number) - a) * part + v * (run[axis as 0] as number);
  }) as [number, number, number];
  // Behind the camera there is nothing to see.
  return z > 0
    ? { x: lens.centre.x + (lens.focalPx * x) / z, y: lens.centre.y + (lens.focalPx * y) / z }
    : { x: Number.NaN, y: Number.NaN };
}

/** The place of the page seen at a place of the photo, beyond its sides too as far as the cylinder is continued straight. */
export function photoToCylinder({ lens, upper, run, across }: Cylinder, photo: Point): Point | undefined {
  const sight = sightTo(photo, lens);
  const normal = crossOf(run, sight);
  const side = (k: number) =>
    (upper[3 * k] as number) * normal[0] +
    (upper[3 * k + 1] as number) * normal[1] +
    (upper[3 * k + 2] as number) * normal[2];
  const rises = side(STATIONS) > side(0);
  let [low, high] = [0, STATIONS];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (side(middle) > 0 === rises) high = middle;
    else low = middle;
  }
  const [a, b] = [side(low), side(high)];
  if (a === b) return undefined;
  const part = a / (a - b);
  const place = [0, 1, 2].map((axis) => {
    const from = upper[3 * low + axis] as number;
    return from + ((upper[3 * high + axis] as number) - from) * part;
  }) as unknown as Triple;
  // place + v run = depth · sight, by least squares.
  const [ss, sr, ps, pr] = [dot(sight, sight), dot(sight, run), dot(place, sight), dot(place, run)];
  const det = ss - sr * sr;
  if (!(Math.abs(det) > 1e-12)) return undefined;
  const y = (sr * ps - ss * pr) / det;
  return ps + y * sr > 0 ? { x: ((low + part) * across) / STATIONS, y } : undefined;
}

function sightTo({ x, y }: Point, { focalPx, centre }: Lens): Triple {
  return [(x - centre.x) / focalPx, (y - centre.y) / focalPx, 1];
}

function homogeneous({ x, y }: Point): Triple {
  return [x, y, 1];
}

function dot(a: Triple, b: Triple): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

function minus(a: Triple, b: Triple): Triple {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

function crossOf(a: Triple, b: Triple): Triple {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}
