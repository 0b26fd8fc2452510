/** The bowed edge of a curled page in space, from the photo alone, and the focal length where it tells one. */
import { distance, type Point } from '../geometry/point';

/** Three coordinates: x and y in pixels from the middle of the photo, and depth, the first two times depth. */
export type Triple = readonly [number, number, number];

/** A focal length read off the photo is believed within these shares of the longer side, and if a pixel's slip moves it by less than that share. */
const BELIEVABLE = [0.45, 3] as const;
const STEADY = 0.15;

/** The product square to both. */
export function cross(a: Triple, b: Triple): Triple {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** A bowed edge in space, up to the focal length and one common factor. */
export interface SpaceEdge {
  /** Places of the first edge in space: x, y and depth, one after another. */
  readonly places: Float64Array;
  readonly ruling: Triple;
}

/** The first edge in space, up to the focal length: at each of its places, the depth at which its ruling is as long as all others. */
export function edgeInSpace(
  one: readonly Point[],
  other: readonly Point[],
  centre: Point,
): SpaceEdge | 'edges-cross' | 'behind-camera' {
  const ray = ({ x, y }: Point): Triple => [x - centre.x, y - centre.y, 1];
  const [a0, a1] = [ray(one[0] as Point), ray(one[one.length - 1] as Point)];
  const [b0, b1] = [ray(other[0] as Point), ray(other[other.length - 1] as Point)];
  const meeting = cross(cross(a0, b0), cross(a1, b1));
  const size = Math.hypot(meeting[0], meeting[1], meeting[2] * distance(one[0] as Point, other[0] as Point));
  if (!(size > 0)) return 'edges-cross';
  // Towards the second edge, as long as that edge is away in pixels where the page is about one unit off.
  const sign = depthOf(a0, b0, meeting) > 0 ? 1 : -1;
  const ruling = meeting.map((each) => (each * sign) / size) as unknown as Triple;
  const places = new Float64Array(one.length * 3);
  let k = 0;
  for (let i = 0; i < one.length; i++) {
    const a = ray(one[i] as Point);
    const n = cross(a, ruling);
    const off = (index: number) => {
      const b = ray(other[index] as Point);
      return n[0] * b[0] + n[1] * b[1] + n[2] * b[2];
    };
    const rising = off(other.length - 1) - off(0) > 0;
    while (k < other.length - 2 && (rising ? off(k + 1) < 0 : off(k + 1) > 0)) k++;
    const [before, after] = [off(k), off(k + 1)];
    const t = before === after ? 0 : before / (before - after);
    const [p, q] = [other[k] as Point, other[k + 1] as Point];
    const depth = depthOf(a, ray({ x: p.x + (q.x - p.x) * t, y: p.y + (q.y - p.y) * t }), ruling);
    if (!Number.isFinite(depth)) return 'edges-cross';
    if (!(depth > 0 && depth + ruling[2] > 0)) return 'behind-camera';
    places[3 * i] = a[0] * depth;
    places[3 * i + 1] = a[1] * depth;
    places[3 * i + 2] = depth;
  }
  return { places, ruling };
}

/** The depth z of place a for which (z + m3) b − z a = m: the ruling m leads from one to the other. */
function depthOf(a: Triple, b: Triple, m: Triple): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  return ((m[0] - m[2] * b[0]) * dx + (m[1] - m[2] * b[1]) * dy) / (dx * dx + dy * dy);
}

/** The focal length at which the first edge runs square to the rulings; `undefined` when a pixel's slip would change it. */
export function steadyFocal(one: readonly Point[], other: readonly Point[], centre: Point, longer: number) {
  const read = focalOf(one, other, centre);
  if (read === undefined || !(read > BELIEVABLE[0] * longer && read < BELIEVABLE[1] * longer)) return undefined;
  let spread = 0;
  for (const end of ['start', 'finish'] as const) {
    for (const [dx, dy] of [
      [1, 0],
      [0, 1],
    ] as const) {
      for (const which of [0, 1] as const) {
        const slipped = [one, other].map((run, i) => (i === which ? slippedEnd(run, end, dx, dy) : run));
        const also = focalOf(slipped[0] as readonly Point[], slipped[1] as readonly Point[], centre);
        if (also === undefined) return undefined;
        spread += (also / read - 1) ** 2;
      }
    }
  }
  return Math.sqrt(spread) < STEADY ? read : undefined;
}

/** The run with one end moved and the rest following in proportion. */
function slippedEnd(run: readonly Point[], end: 'start' | 'finish', dx: number, dy: number): Point[] {
  const last = run.length - 1;
  return run.map(({ x, y }, i) => {
    const share = end === 'start' ? 1 - i / last : i / last;
    return { x: x + dx * share, y: y + dy * share };
  });
}

function focalOf(one: readonly Point[], other: readonly Point[], centre: Point): number | undefined {
  const space = edgeInSpace(one, other, centre);
  if (typeof space === 'string') return undefined;
  const { places: p, ruling: m } = space;
  let [top, bottom] = [0, 0];
  for (let i = 3; i < p.length; i += 3) {
    const flat = ((p[i] as number) - (p[0] as number)) * m[0] + ((p[i + 1] as number) - (p[1] as number)) * m[1];
    const deep = ((p[i + 2] as number) - (p[2] as number)) * m[2];
    top -= flat * deep;
    bottom += flat * flat;
  }
  const inverseSq = top / bottom;
  return inverseSq > 0 && Number.isFinite(inverseSq) ? 1 / Math.sqrt(inverseSq) : undefined;
}
