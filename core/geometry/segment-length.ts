/**
 * Lengths along one stretch, both ways: how long, and where a given length falls.
 *
 * The speed of a cubic is |q(t)| for a quadratic q with complex coefficients, x' + i y'. As a function of t it is smooth
 * except at the two roots of q, and how far these are from the interval says beforehand how exact a Gauss–Legendre sum
 * is. So each interval is summed once, over 8 or 16 places; one with a root close by (a cusp or nearly one) is split
 * at it. A cusp costs some splits but no accuracy, and no lucky agreement of two wrong sums can deceive.
 *
 * Nodes and weights: Abramowitz & Stegun, Handbook of Mathematical Functions, table 25.4.
 * Error: |I - Iₙ| ≤ 64/15 M ρ^(2-2n) / (1 - ρ⁻²) with M the largest value on the ellipse of radius ρ round the
 * interval: L. N. Trefethen, Is Gauss Quadrature Better than Clenshaw–Curtis?, SIAM Review 50 (2008), theorem 4.5.
 */
import type { Cubic, Segment } from './segment';

/** How near a length is to the true one unless the caller says otherwise, in mm: a thousandth of a thread. */
export const LENGTH_ACCURACY = 1e-6;

/** Splits before a sum is taken as it stands: an interval of 2⁻⁴⁰ adds less than rounding does. */
const DEEPEST = 40;

/** The share of a curve's largest speed below which an error is rounding only, whatever accuracy was asked. */
const ROUNDING = 1e-15;

const NODES_8 = [0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363] as const;
const WEIGHTS_8 = [0.362683783378362, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763] as const;
const NODES_16 = [
  0.09501250983763744, 0.2816035507792589, 0.45801677765722737, 0.6178762444026438, 0.755404408355003,
  0.8656312023878318, 0.9445750230732326, 0.9894009349916499,
] as const;
const WEIGHTS_16 = [
  0.1894506104550685, 0.18260341504492358, 0.16915651939500254, 0.14959598881657674, 0.12462897125553388,
  0.09515851168249279, 0.062253523938647894, 0.027152459411754096,
] as const;

/** The length of a stretch, within `accuracy` of the true one (and rounding), cusps included. */
export function segmentLength(segment: Segment, accuracy = LENGTH_ACCURACY): number {
  if (segment.kind === 'line') return Math.hypot(segment.p1.x - segment.p0.x, segment.p1.y - segment.p0.y);
  return lengthBetween(segment, 0, 1, accuracy);
}

/** The length of the part of a stretch from `from` to `to` (0 ≤ from ≤ to ≤ 1), within `accuracy`. */
export function partLength(segment: Segment, from: number, to: number, accuracy = LENGTH_ACCURACY): number {
  return segment.kind === 'line'
    ? segmentLength(segment) * Math.max(0, to - from)
    : lengthBetween(segment, from, to, accuracy);
}

/**
 * The `t` up to which the stretch is `length` long, within `accuracy` of length. Lengths below 0 give 0 and lengths
 * beyond the end give 1.
 */
export function parameterAtLength(segment: Segment, length: number, accuracy = LENGTH_ACCURACY): number {
  if (!(length > 0)) return 0;
  const total = segmentLength(segment, accuracy / 4);
  if (length >= total) return 1;
  if (segment.kind === 'line') return length / total;
  // Newton on length(t) - length, whose slope is the speed, kept inside a shrinking fence; each step adds only the
  // length of the step itself.
  let low = 0;
  let high = 1;
  let t = length / total;
  let reached = lengthBetween(segment, 0, t, accuracy / 8);
  for (let step = 0; step < 60; step++) {
    const over = reached - length;
    if (Math.abs(over) <= accuracy / 2) return t;
    if (over > 0) high = t;
    else low = t;
    const next = t - over / speedAt(segment, t);
    const inside = next > low && next < high ? next : (low + high) / 2;
    if (inside === t) return t;
    const moved = lengthBetween(segment, Math.min(t, inside), Math.max(t, inside), accuracy / 256);
    reached += inside > t ? moved : -moved;
    t = inside;
  }
  return t;
}

/** The speed of a cubic as |q(t)|, q = a + t b + t² c, with the roots of q: (zx, zy) and (wx, wy), Infinity where none. */
interface SpeedForm {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  readonly cx: number;
  readonly cy: number;
  readonly zx: number;
  readonly zy: number;
  readonly wx: number;
  readonly wy: number;
  /** The size of the leading coefficient: |c|, or |b| with one root, or |a| with none. */
  readonly lead: number;
}

function lengthBetween(curve: Cubic, from: number, to: number, accuracy: number): number {
  if (!(to > from)) return 0;
  const form = speedForm(curve);
  const most = Math.abs(form.ax) + Math.abs(form.ay) + Math.abs(form.bx) + Math.abs(form.by);
  return summed(form, from, to, Math.max(accuracy, ROUNDING * (most + Math.abs(form.cx) + Math.abs(form.cy))), 0);
}

function speedForm({ p0, p1, p2, p3 }: Cubic): SpeedForm {
  const ax = 3 * (p1.x - p0.x);
  const ay = 3 * (p1.y - p0.y);
  const bx = 6 * (p2.x - 2 * p1.x + p0.x);
  const by = 6 * (p2.y - 2 * p1.y + p0.y);
  const cx = 3 * (p3.x - 3 * p2.x + 3 * p1.x - p0.x);
  const cy = 3 * (p3.y - 3 * p2.y + 3 * p1.y - p0.y);
  // Complex square root of b² - 4ac, its sign chosen so that it adds to b: the stable way to solve a quadratic.
  const dx = bx * bx - by * by - 4 * (ax * cx - ay * cy);
  const dy = 2 * bx * by - 4 * (ax * cy + ay * cx);
  const d = Math.sqrt(dx * dx + dy * dy);
  let rx = Math.sqrt((d + Math.abs(dx)) / 2);
  let ry = rx > 0 ? Math.abs(dy) / (2 * rx) : 0;
  if (dx < 0) [rx, ry] = [ry, rx];
  if (dy < 0) ry = -ry;
  const sign = rx * bx + ry * by < 0 ? 1 : -1;
  const ux = (sign * rx - bx) / 2;
  const uy = (sign * ry - by) / 2;
  const cSq = cx * cx + cy * cy;
  const uSq = ux * ux + uy * uy;
  if (!(uSq > 0)) {
    // b² = 4ac = 0: q is c t² or a alone.
    const none = cSq > 0 ? 0 : Infinity;
    return {
      ax,
      ay,
      bx,
      by,
      cx,
      cy,
      zx: none,
      zy: 0,
      wx: none,
      wy: 0,
      lead: Math.sqrt(cSq > 0 ? cSq : ax * ax + ay * ay),
    };
  }
  const two = cSq > 0;
  return {
    ax,
    ay,
    bx,
    by,
    cx,
    cy,
    zx: (ax * ux + ay * uy) / uSq,
    zy: (ay * ux - ax * uy) / uSq,
    wx: two ? (ux * cx + uy * cy) / cSq : Infinity,
    wy: two ? (uy * cx - ux * cy) / cSq : 0,
    lead: two ? Math.sqrt(cSq) : Math.sqrt(uSq),
  };
}

function summed(form: SpeedForm, from: number, to: number, accuracy: number, depth: number): number {
  const half = (to - from) / 2;
  const middle = (from + to) / 2;
  const { zx, zy, wx, wy, lead } = form;
  const reachZ = zx === Infinity ? 1 : Math.max(apart(zx - from, zy), apart(zx - to, zy));
  const reachW = wx === Infinity ? 1 : Math.max(apart(wx - from, wy), apart(wx - to, wy));
  const radiusZ = ellipseRadius((zx - middle) / half, zy / half, 40 * zy * zy * lead * reachW <= accuracy);
  const radiusW = ellipseRadius((wx - middle) / half, wy / half, 40 * wy * wy * lead * reachZ <= accuracy);
  const radiusSq = Math.min(radiusZ, radiusW, 1e9) ** 2;
  const power4 = radiusSq * radiusSq;
  const power12 = power4 * power4 * power4;
  // The largest value on the ellipse is at most ρ² times that on the interval, which is at most `lead` times both reaches.
  const bound = ((64 / 15) * half * lead * reachZ * reachW) / (1 - 1 / radiusSq);
  if (bound <= accuracy * power12) return half * sum8(form, middle, half);
  // No bound, and no root inside to blame: the numbers are no numbers, or overflow. Splitting would go on for ever.
  const boundless = !(bound < Infinity) && radiusSq !== 1;
  if (bound <= accuracy * power12 * power12 * power4 || depth >= DEEPEST || boundless) {
    return half * sum16(form, middle, half);
  }
  const split = splitAt(from, to, radiusZ < radiusW ? zx : wx);
  return summed(form, from, split, accuracy / 2, depth + 1) + summed(form, split, to, accuracy / 2, depth + 1);
}

/** At the root's own place if that is well inside, else halfway. */
function splitAt(from: number, to: number, root: number): number {
  const margin = (to - from) / 64;
  return root > from + margin && root < to - margin ? root : (from + to) / 2;
}

/**
 * The radius ρ of the ellipse with foci -1 and 1 through x + i y: half the distances to the foci, a, gives
 * a + √(a² - 1). A `negligible` root, so near the real line that it is a cusp, does no harm once it is not inside.
 */
function ellipseRadius(x: number, y: number, negligible: boolean): number {
  if (negligible && !(Math.abs(x) < 1 - 1e-9)) return Infinity;
  if (!(Math.abs(x) < Infinity)) return Infinity;
  const a = Math.max(1, (apart(x - 1, y) + apart(x + 1, y)) / 2);
  return a + Math.sqrt(a * a - 1);
}

function apart(x: number, y: number): number {
  return Math.sqrt(x * x + y * y);
}

function sum8({ ax, ay, bx, by, cx, cy }: SpeedForm, middle: number, half: number): number {
  let sum = 0;
  for (let i = 0; i < 4; i++) {
    const step = half * (NODES_8[i] as number);
    const l = middle - step;
    const r = middle + step;
    const lx = ax + l * (bx + l * cx);
    const ly = ay + l * (by + l * cy);
    const rx = ax + r * (bx + r * cx);
    const ry = ay + r * (by + r * cy);
    sum += (WEIGHTS_8[i] as number) * (Math.sqrt(lx * lx + ly * ly) + Math.sqrt(rx * rx + ry * ry));
  }
  return sum;
}

function sum16({ ax, ay, bx, by, cx, cy }: SpeedForm, middle: number, half: number): number {
  let sum = 0;
  for (let i = 0; i < 8; i++) {
    const step = half * (NODES_16[i] as number);
    const l = middle - step;
    const r = middle + step;
    const lx = ax + l * (bx + l * cx);
    const ly = ay + l * (by + l * cy);
    const rx = ax + r * (bx + r * cx);
    const ry = ay + r * (by + r * cy);
    sum += (WEIGHTS_16[i] as number) * (Math.sqrt(lx * lx + ly * ly) + Math.sqrt(rx * rx + ry * ry));
  }
  return sum;
}

function speedAt({ p0, p1, p2, p3 }: Cubic, t: number): number {
  const s = 1 - t;
  const dx = 3 * (s * s * (p1.x - p0.x) + 2 * s * t * (p2.x - p1.x) + t * t * (p3.x - p2.x));
  const dy = 3 * (s * s * (p1.y - p0.y) + 2 * s * t * (p2.y - p1.y) + t * t * (p3.y - p2.y));
  return Math.hypot(dx, dy);
}
