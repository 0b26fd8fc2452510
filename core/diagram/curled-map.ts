/**
 * A photo of a curled page laid flat: a sheet bent about parallel lines (rulings), as a page curls into a gutter.
 *
 * The rulings are parallel in space, so in the photo they run to one point, where the two straight edges of the page
 * meet; each joins a place of the first bowed edge to the same place of the second. As every ruling is equally long in
 * space, what the photo shows of it tells its distance from the camera, up to one common factor; so the bowed edge is
 * known in space and can be measured along. See: J. Liang, D. DeMenthon & D. Doermann, Geometric Rectification of
 * Camera-Captured Document Images, PAMI 30 (2008), on developable pages; the sums here are our own.
 *
 * Limits: sheets twisted or bent both ways; the focal length, where nothing tells it, is taken for a phone's.
 */
import { flattenPath } from '../geometry/flatten';
import { distance, type PhotoPoint, type Point } from '../geometry/point';
import { splineThrough } from '../geometry/spline';
import { cross, edgeInSpace, type SpaceEdge, steadyFocal, type Triple } from './edge-in-space';

/** The two bowed edges of a page, each along the page, beginning at the same straight edge. */
export interface CurledEdges {
  /** Top and bottom edge from left to right, or left and right edge downwards. */
  readonly bowed: 'top-and-bottom' | 'left-and-right';
  readonly first: readonly PhotoPoint[];
  readonly second: readonly PhotoPoint[];
}

/** A curled page and the flat rectangle it makes, whose unit is about one pixel of the picture. */
export interface CurledMap {
  readonly kind: 'curled';
  readonly across: number;
  readonly down: number;
  readonly bowed: CurledEdges['bowed'];
  readonly focalPx: number;
  /** Whether the photo told the focal length, or it was said, or taken for a phone's. */
  readonly focalFrom: 'photo' | 'said' | 'phone';
  readonly centre: Point;
  /** The first edge in space at even steps along it: x, y (in pixels from the centre) and depth, each times depth. */
  readonly edge: Float64Array;
  /** The ruling in the same measure. */
  readonly ruling: readonly [number, number, number];
}

/** Why the edges make no page. */
export interface NotCurled {
  readonly kind: 'not-curled';
  readonly why: 'too-few-points' | 'too-small' | 'edges-cross' | 'behind-camera';
}

/** The photo the edges lie in. */
export interface CurledPhoto {
  readonly widthPx: number;
  readonly heightPx: number;
  /** From the camera's own note, where there is one. */
  readonly focalPx?: number;
}

/** The focal length of a phone's main camera as a share of the longer side: 26 mm on 36 mm, and the crop to 4:3 (common practice). */
const PHONE_FOCAL = 0.75;

/** Edges shorter than this on the picture say too little. */
const SMALLEST_SIDE_PX = 20;

/** Steps along the first edge: cubic between them, the error is far below a hundredth of a pixel. */
const STEPS = 128;

/** How near, in pixels, the edges are followed from their points. */
const FLATNESS_PX = 0.02;

/** Steps of Newton's method from a photo to the page; three bring all figures. */
const ROUNDS = 6;

/** The map of a curled page from its two bowed edges. */
export function curledMap(edges: CurledEdges, photo: CurledPhoto): CurledMap | NotCurled {
  const { first, second, bowed } = edges;
  const [a0, a1, b0, b1] = [first[0], first[first.length - 1], second[0], second[second.length - 1]];
  if (!a0 || !a1 || !b0 || !b1 || first.length < 2 || second.length < 2)
    return { kind: 'not-curled', why: 'too-few-points' };
  const sides = [distance(a0, a1), distance(b0, b1), distance(a0, b0), distance(a1, b1)] as const;
  if (Math.min(...sides) < SMALLEST_SIDE_PX) return { kind: 'not-curled', why: 'too-small' };
  const centre = { x: photo.widthPx / 2, y: photo.heightPx / 2 };
  const one = flattenPath(splineThrough(first), FLATNESS_PX);
  const other = flattenPath(splineThrough(second), FLATNESS_PX);
  const space = edgeInSpace(one, other, centre);
  if (typeof space === 'string') return { kind: 'not-curled', why: space };
  const longer = Math.max(photo.widthPx, photo.heightPx);
  const read = photo.focalPx === undefined ? steadyFocal(one, other, centre, longer) : undefined;
  const focalPx = photo.focalPx ?? read ?? PHONE_FOCAL * longer;
  const { edge, aspect } = evenlyAlong(space, focalPx);
  // The area of the page stays about what it was on the picture, whatever its proportion.
  const size = ((sides[0] + sides[1]) * (sides[2] + sides[3])) / 4;
  const along = Math.sqrt(size * aspect);
  const [across, down] = bowed === 'top-and-bottom' ? [along, along / aspect] : [along / aspect, along];
  const focalFrom = photo.focalPx !== undefined ? 'said' : read !== undefined ? 'photo' : 'phone';
  return { kind: 'curled', across, down, bowed, focalPx, focalFrom, centre, edge, ruling: space.ruling };
}

/** Where a place of the flat page is seen; beyond the page it goes on straight. `undefined` behind the camera. */
export function curledToPhoto(map: CurledMap, { x, y }: Point): PhotoPoint | undefined {
  const isLevel = map.bowed === 'top-and-bottom';
  const u = isLevel ? x / map.across : y / map.down;
  const v = isLevel ? y / map.down : x / map.across;
  const { edge, ruling, centre } = map;
  const w = onEdge(edge, 2, u) + v * ruling[2];
  if (!(w > 0)) return undefined;
  return {
    x: centre.x + (onEdge(edge, 0, u) + v * ruling[0]) / w,
    y: centre.y + (onEdge(edge, 1, u) + v * ruling[1]) / w,
  };
}

/**
 * Where a place of the photo lies on the flat page, by Newton's method, to 1e-6 of a pixel; `undefined` where the page
 * does not reach, even gone on straight.
 */
export function photoToCurled(map: CurledMap, point: PhotoPoint): Point | undefined {
  const { edge, ruling, centre } = map;
  const [x, y] = [point.x - centre.x, point.y - centre.y];
  // The ruling through the point is the plane of the camera, the point and the direction of the rulings.
  const n = cross([x, y, 1], ruling);
  const off = (u: number) => n[0] * onEdge(edge, 0, u) + n[1] * onEdge(edge, 1, u) + n[2] * onEdge(edge, 2, u);
  const u = edgePlace(off);
  if (u === undefined) return undefined;
  const [cx, cy, cw] = [onEdge(edge, 0, u), onEdge(edge, 1, u), onEdge(edge, 2, u)];
  const [px, py] = [ruling[0] - x * ruling[2], ruling[1] - y * ruling[2]];
  const v = ((x * cw - cx) * px + (y * cw - cy) * py) / (px * px + py * py);
  if (!Number.isFinite(v) || !(cw + v * ruling[2] > 0)) return undefined;
  return map.bowed === 'top-and-bottom'
    ? { x: u * map.across, y: v * map.down }
    : { x: v * map.across, y: u * map.down };
}

/** The zero of a function along the edge: between two of its steps, or beyond an end, where it is straight. */
function edgePlace(off: (u: number) => number): number | undefined {
  let [low, high] = [0, 1];
  const atLow = off(low);
  const rising = off(high) - atLow > 0;
  if (!Number.isFinite(atLow)) return undefined;
  const isBefore = (value: number) => (rising ? value < 0 : value > 0);
  let u = 0.5;
  if (!isBefore(atLow)) u = -0.25;
  else if (isBefore(off(high))) u = 1.25;
  else {
    for (let halving = 0; halving < 7; halving++) {
      u = (low + high) / 2;
      if (isBefore(off(u))) low = u;
      else high = u;
    }
    u = (low + high) / 2;
  }
  for (let round = 0; round < ROUNDS; round++) {
    const step = 1e-5;
    const slope = (off(u + step) - off(u - step)) / (2 * step);
    const change = off(u) / slope;
    if (!Number.isFinite(change)) return undefined;
    u -= change;
    if (Math.abs(change) < 1e-12) break;
  }
  return Math.abs(u) < 4 ? u : undefined;
}

/** The edge at even steps of its true length, and its length in rulings. */
function evenlyAlong({ places: p, ruling: m }: SpaceEdge, focalPx: number) {
  const count = p.length / 3;
  const inner = (a: Triple, b: Triple) => (a[0] * b[0] + a[1] * b[1]) / focalPx ** 2 + a[2] * b[2];
  const rulingSq = inner(m, m);
  const lengths = new Float64Array(count);
  for (let i = 1, q = 3; i < count; i++, q += 3) {
    const step = [0, 1, 2].map((k) => (p[q + k] as number) - (p[q + k - 3] as number)) as unknown as Triple;
    // Square to the rulings: what runs along them is a slip of the edges.
    const squareOn = inner(step, step) - inner(step, m) ** 2 / rulingSq;
    lengths[i] = (lengths[i - 1] as number) + Math.sqrt(Math.max(0, squareOn));
  }
  const whole = lengths[count - 1] as number;
  const edge = new Float64Array((STEPS + 1) * 3);
  for (let k = 0, i = 0; k <= STEPS; k++) {
    const wanted = (whole * k) / STEPS;
    while (i < count - 2 && (lengths[i + 1] as number) < wanted) i++;
    const span = (lengths[i + 1] as number) - (lengths[i] as number);
    const t = span > 0 ? (wanted - (lengths[i] as number)) / span : 0;
    for (let axis = 0; axis < 3; axis++) {
      const [from, to] = [p[3 * i + axis] as number, p[3 * i + 3 + axis] as number];
      edge[3 * k + axis] = from + (to - from) * t;
    }
  }
  return { edge, aspect: whole / Math.sqrt(rulingSq) };
}

/** One coordinate of the edge a share `u` along it: cubic between steps (Catmull & Rom), straight beyond the ends. */
function onEdge(edge: Float64Array, axis: 0 | 1 | 2, u: number): number {
  const at = (k: number) => edge[3 * k + axis] as number;
  if (u <= 0) return at(0) + (at(1) - at(0)) * STEPS * u;
  if (u >= 1) return at(STEPS) + (at(STEPS) - at(STEPS - 1)) * STEPS * (u - 1);
  const k = Math.min(STEPS - 1, Math.floor(u * STEPS));
  const t = u * STEPS - k;
  const [b, c] = [at(k), at(k + 1)];
  const a = k > 0 ? at(k - 1) : 2 * b - c;
  const d = k < STEPS - 1 ? at(k + 2) : 2 * c - b;
  return b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
}
