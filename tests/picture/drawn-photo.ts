// Photos of a drawn page by a camera of our own: tilt, curl towards the gutter, shadow, blur, noise and JPEG.
// The page is a sheet bent about lines that run down it, so lengths along it stay true; seen by the pinhole rule.
import type { Point } from '../../core/geometry/point';
import type { GreyPicture } from '../../core/picture/grey-picture';
import { type Page, printed } from './drawn-page';

export interface Shot {
  readonly width: number;
  readonly height: number;
  readonly focalPx: number;
  /** Degrees about the axis across, the axis down, and the line of sight. */
  readonly tilt: readonly [number, number, number];
  /** From the camera to the middle of the page, in mm. */
  readonly distance: number;
  /** How steeply the page rises at its left edge (radians), and over how many mm that fades to 1/e. */
  readonly curl?: { readonly slope: number; readonly over: number };
  readonly table?: number;
  /** The share of the light lost on the dark side of a soft shadow that falls aslant. */
  readonly shadow?: number;
  readonly blurPx?: number;
  /** The spread (one sigma) of the noise in grey levels. */
  readonly noise?: number;
  /** The quality of JPEG, 1 to 100. */
  readonly jpeg?: number;
  readonly seed?: number;
}

export interface DrawnPhoto {
  readonly picture: GreyPicture;
  /** Where a place of the page (mm) is seen. */
  readonly seen: (page: Point) => Point;
}

type Triple = readonly [number, number, number];

export function photoOf(page: Page, shot: Shot, pxPerMm = 6): DrawnPhoto {
  const { width, height, focalPx, tilt, distance, curl, table = 70, seed = 1 } = shot;
  const profile = bentProfile(page.across, curl);
  const turn = rotation(tilt);
  const [cx, cy] = [width / 2, height / 2];
  const middle = profile.at(page.across / 2);
  const seen = ({ x, y }: Point): Point => {
    const [px, pz] = profile.at(x);
    const [u, v, w] = times(turn, [px - middle[0], y - page.down / 2, pz - middle[1]]);
    return { x: cx + (focalPx * u) / (w + distance), y: cy + (focalPx * v) / (w + distance) };
  };
  const texture = printed(page, pxPerMm);
  const back = transposed(turn);
  const eye = times(back, [0, 0, -distance]);
  const [b0, b1, b2] = back as readonly [Triple, Triple, Triple];
  const grey = new Float32Array(width * height);
  const random = seeded(seed);
  for (let j = 0; j < height; j++) {
    let s = page.across / 2;
    for (let i = 0; i < width; i++) {
      let sum = 0;
      for (let sub = 0; sub < 4; sub++) {
        const [u, v] = [i + 0.25 + 0.5 * (sub & 1), j + 0.25 + 0.5 * (sub >> 1)];
        const [a, b] = [u - cx, v - cy];
        const dx = b0[0] * a + b0[1] * b + b0[2] * focalPx;
        const dy = b1[0] * a + b1[1] * b + b1[2] * focalPx;
        const dz = b2[0] * a + b2[1] * b + b2[2] * focalPx;
        s = profile.meets(eye[0] + middle[0], eye[2] + middle[1], dx, dz, s);
        const t = (profile.depthAt(s) - middle[1] - eye[2]) / dz;
        const y = eye[1] + t * dy + page.down / 2;
        const on = s >= 0 && s <= page.across && y >= 0 && y <= page.down;
        sum += on ? sampled(texture, s * pxPerMm, y * pxPerMm) : table + 12 * Math.sin(i / 23 + Math.sin(j / 31) * 2);
      }
      grey[j * width + i] = (sum / 4) * lightAt(i / width, j / height, shot.shadow ?? 0);
    }
  }
  const blurred = shot.blurPx ? blur(grey, width, height, shot.blurPx) : grey;
  const noise = shot.noise ?? 0;
  if (noise > 0) for (let i = 0; i < blurred.length; i++) blurred[i] = (blurred[i] as number) + noise * normal(random);
  if (shot.jpeg) throughJpeg(blurred, width, height, shot.jpeg);
  return { picture: { width, height, data: Uint8Array.from(Uint8ClampedArray.from(blurred)) }, seen };
}

/** A soft-edged shadow with its edge aslant across the picture, and light that falls off to one side. */
function lightAt(x: number, y: number, shadow: number): number {
  const edge = 1 / (1 + Math.exp(-(x * 0.9 + y * 0.6 - 0.7) * 16));
  return 1 - shadow * (0.75 * edge + 0.25 * y);
}

/** The section of the page: how far along (mm) to where in space, flat where it is not curled and beyond its ends. */
function bentProfile(across: number, curl: Shot['curl']) {
  const STEP = 0.25;
  const count = Math.ceil(across / STEP) + 1;
  const xs = new Float64Array(count + 1);
  const zs = new Float64Array(count + 1);
  const slopeAt = (s: number) => (curl ? curl.slope * Math.exp(-s / curl.over) : 0);
  for (let k = 1; k <= count; k++) {
    const slope = slopeAt((k - 0.5) * STEP);
    xs[k] = (xs[k - 1] as number) + STEP * Math.cos(slope);
    zs[k] = (zs[k - 1] as number) + STEP * Math.sin(slope);
  }
  const at = (s: number): readonly [number, number] => {
    const k = Math.min(Math.max(Math.floor(s / STEP), 0), count - 1);
    const t = s / STEP - k;
    const [x0, z0] = [xs[k] as number, zs[k] as number];
    return [x0 + ((xs[k + 1] as number) - x0) * t, z0 + ((zs[k + 1] as number) - z0) * t];
  };
  /** How far along the page a ray from (ox, oz) in direction (dx, dz) meets it, by Newton's method from a first guess. */
  const meets = (ox: number, oz: number, dx: number, dz: number, guess: number): number => {
    let s = guess;
    for (let round = 0; round < 8; round++) {
      const k = Math.min(Math.max(Math.floor(s / STEP), 0), count - 1);
      const [x0, z0] = [xs[k] as number, zs[k] as number];
      const [mx, mz] = [((xs[k + 1] as number) - x0) / STEP, ((zs[k + 1] as number) - z0) / STEP];
      const off = (x0 + mx * (s - k * STEP) - ox) * dz - (z0 + mz * (s - k * STEP) - oz) * dx;
      const step = off / (mx * dz - mz * dx);
      s -= step;
      if (Math.abs(step) < 1e-4) break;
    }
    return s;
  };
  return { at, meets, depthAt: (s: number) => at(s)[1] };
}

function rotation(tilt: Shot['tilt']): readonly Triple[] {
  const [a, b, c] = tilt.map((degrees) => (degrees * Math.PI) / 180) as unknown as Triple;
  const about = (p: Triple): Triple => {
    const [x1, y1, z1] = [p[0], p[1] * Math.cos(a) - p[2] * Math.sin(a), p[1] * Math.sin(a) + p[2] * Math.cos(a)];
    const [x2, y2, z2] = [x1 * Math.cos(b) + z1 * Math.sin(b), y1, -x1 * Math.sin(b) + z1 * Math.cos(b)];
    return [x2 * Math.cos(c) - y2 * Math.sin(c), x2 * Math.sin(c) + y2 * Math.cos(c), z2];
  };
  return transposed([about([1, 0, 0]), about([0, 1, 0]), about([0, 0, 1])]);
}

function transposed(m: readonly Triple[]): readonly Triple[] {
  return [0, 1, 2].map((i) => m.map((row) => row[i]) as unknown as Triple);
}

function times([a, b, c]: readonly Triple[], [x, y, z]: Triple): Triple {
  const row = (r: Triple | undefined) => (r ? r[0] * x + r[1] * y + r[2] * z : 0);
  return [row(a), row(b), row(c)];
}

function sampled({ width, height, data }: GreyPicture, x: number, y: number): number {
  const cx = Math.min(Math.max(x - 0.5, 0), width - 1.001);
  const cy = Math.min(Math.max(y - 0.5, 0), height - 1.001);
  const [x0, y0] = [cx | 0, cy | 0];
  const p = y0 * width + x0;
  const [fx, fy] = [cx - x0, cy - y0];
  return (
    ((data[p] as number) * (1 - fx) + (data[p + 1] as number) * fx) * (1 - fy) +
    ((data[p + width] as number) * (1 - fx) + (data[p + width + 1] as number) * fx) * fy
  );
}

/** A Gaussian blur of the given sigma. */
function blur(from: Float32Array, width: number, height: number, sigma: number): Float32Array {
  const reach = Math.ceil(3 * sigma);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, i) => Math.exp(-((i - reach) ** 2) / (2 * sigma * sigma)));
  const total = weights.reduce((a, b) => a + b, 0);
  const pass = (source: Float32Array, step: number, count: number, lines: number, stride: number) => {
    const to = new Float32Array(source.length);
    for (let l = 0; l < lines; l++) {
      for (let i = 0; i < count; i++) {
        let sum = 0;
        for (let k = -reach; k <= reach; k++) {
          const at = Math.min(Math.max(i + k, 0), count - 1);
          sum += (source[l * stride + at * step] as number) * (weights[k + reach] as number);
        }
        to[l * stride + i * step] = sum / total;
      }
    }
    return to;
  };
  return pass(pass(from, 1, width, height, width), width, height, width, 1);
}

/** Mulberry32: the same numbers on every machine. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

function normal(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

/** The luminance steps of ITU-T T.81 (JPEG), annex K, table K.1; scaled by quality the way the IJG's cjpeg does. */
const STEPS = [
  16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56, 14, 17, 22, 29, 51,
  87, 80, 62, 18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113, 92, 49, 64, 78, 87, 103, 121, 120, 101,
  72, 92, 95, 98, 112, 100, 103, 99,
];

/** What JPEG does to grey levels: blocks of 8 by 8, cosine transform, rounding to steps, and back. */
function throughJpeg(grey: Float32Array, width: number, height: number, quality: number): void {
  const scale = quality < 50 ? 5000 / quality : 200 - 2 * quality;
  const steps = STEPS.map((step) => Math.max(1, Math.floor((step * scale + 50) / 100)));
  const cos = Array.from({ length: 8 }, (_, u) =>
    Array.from(
      { length: 8 },
      (_, x) => (u === 0 ? Math.SQRT1_2 : 1) * 0.5 * Math.cos(((2 * x + 1) * u * Math.PI) / 16),
    ),
  );
  const c = Float64Array.from(cos.flat());
  const [block, half] = [new Float64Array(64), new Float64Array(64)];
  const transform = (from: Float64Array, to: Float64Array, back: 0 | 1) => {
    for (let r = 0; r < 8; r++) {
      for (let u = 0; u < 8; u++) {
        let sum = 0;
        for (let x = 0; x < 8; x++) sum += (from[r * 8 + x] as number) * (c[back ? x * 8 + u : u * 8 + x] as number);
        to[u * 8 + r] = sum;
      }
    }
  };
  for (let by = 0; by + 8 <= height; by += 8) {
    for (let bx = 0; bx + 8 <= width; bx += 8) {
      for (let i = 0; i < 64; i++) block[i] = (grey[(by + (i >> 3)) * width + bx + (i & 7)] as number) - 128;
      transform(block, half, 0);
      transform(half, block, 0);
      for (let i = 0; i < 64; i++) {
        const step = steps[i] as number;
        block[i] = Math.round((block[i] as number) / step) * step;
      }
      transform(block, half, 1);
      transform(half, block, 1);
      for (let i = 0; i < 64; i++) grey[(by + (i >> 3)) * width + bx + (i & 7)] = (block[i] as number) + 128;
    }
  }
}
