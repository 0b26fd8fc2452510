/**
 * Arcs of cubics as eight bare numbers, for work that halves them by the thousand: hulls, legs, values.
 */
import type { Cubic } from './segment';

/** Control points x0 y0 .. x3 y3. */
export type Arc = readonly [number, number, number, number, number, number, number, number];

/** A cubic as an arc, measured from (ox, oy) so that far-off curves keep their digits. */
export function arcOf({ p0, p1, p2, p3 }: Cubic, ox: number, oy: number): Arc {
  return [p0.x - ox, p0.y - oy, p1.x - ox, p1.y - oy, p2.x - ox, p2.y - oy, p3.x - ox, p3.y - oy];
}

/** 1 or -1 when every leg of `b` lies to that side of every leg of `a`; 0 when the directions overlap. */
export function sideOf(a: Arc, b: Arc): number {
  let sides = 0;
  for (let i = 0; i < 6; i += 2) {
    const ax = (a[i + 2] as number) - (a[i] as number);
    const ay = (a[i + 3] as number) - (a[i + 1] as number);
    for (let j = 0; j < 6; j += 2) {
      const bx = (b[j + 2] as number) - (b[j] as number);
      const by = (b[j + 3] as number) - (b[j + 1] as number);
      const turn = ax * by - ay * bx;
      if (turn > 0) sides |= 1;
      else if (turn < 0) sides |= 2;
    }
  }
  return sides === 1 ? 1 : sides === 2 ? -1 : 0;
}

/** Whether some direction shows the hulls further apart than `by`: across, down, and along and across each chord. */
export function apart(a: Arc, b: Arc, by: number): boolean {
  if (gapAlong(a, b, 1, 0, by) || gapAlong(a, b, 0, 1, by)) return true;
  return apartByChord(a, b, a, by) || apartByChord(a, b, b, by);
}

function apartByChord(a: Arc, b: Arc, of: Arc, by: number): boolean {
  const dx = of[6] - of[0];
  const dy = of[7] - of[1];
  const length = Math.hypot(dx, dy);
  if (!(length > 0)) return false;
  return gapAlong(a, b, -dy / length, dx / length, by) || gapAlong(a, b, dx / length, dy / length, by);
}

function gapAlong(a: Arc, b: Arc, ux: number, uy: number, by: number): boolean {
  const a0 = a[0] * ux + a[1] * uy;
  const a1 = a[2] * ux + a[3] * uy;
  const a2 = a[4] * ux + a[5] * uy;
  const a3 = a[6] * ux + a[7] * uy;
  const b0 = b[0] * ux + b[1] * uy;
  const b1 = b[2] * ux + b[3] * uy;
  const b2 = b[4] * ux + b[5] * uy;
  const b3 = b[6] * ux + b[7] * uy;
  return (
    Math.min(a0, a1, a2, a3) - Math.max(b0, b1, b2, b3) > by || Math.min(b0, b1, b2, b3) - Math.max(a0, a1, a2, a3) > by
  );
}

/** The larger side of the upright box round the control points. */
export function sizeOf(arc: Arc): number {
  const across = Math.max(arc[0], arc[2], arc[4], arc[6]) - Math.min(arc[0], arc[2], arc[4], arc[6]);
  const down = Math.max(arc[1], arc[3], arc[5], arc[7]) - Math.min(arc[1], arc[3], arc[5], arc[7]);
  return Math.max(across, down);
}

/** Both halves of an arc. */
export function halves([x0, y0, x1, y1, x2, y2, x3, y3]: Arc): readonly [Arc, Arc] {
  const ax = (x0 + x1) / 2;
  const ay = (y0 + y1) / 2;
  const bx = (x1 + x2) / 2;
  const by = (y1 + y2) / 2;
  const cx = (x2 + x3) / 2;
  const cy = (y2 + y3) / 2;
  const abx = (ax + bx) / 2;
  const aby = (ay + by) / 2;
  const bcx = (bx + cx) / 2;
  const bcy = (by + cy) / 2;
  const mx = (abx + bcx) / 2;
  const my = (aby + bcy) / 2;
  return [
    [x0, y0, ax, ay, abx, aby, mx, my],
    [mx, my, bcx, bcy, cx, cy, x3, y3],
  ];
}

/** One coordinate (0 across, 1 down) of an arc at `t`. */
export function at(arc: Arc, i: 0 | 1, t: number): number {
  const s = 1 - t;
  return s * s * (s * arc[i] + 3 * t * arc[(i + 2) as 2]) + t * t * (3 * s * arc[(i + 4) as 4] + t * arc[(i + 6) as 6]);
}

/** One coordinate of the derivative at `t`. */
export function slope(arc: Arc, i: 0 | 1, t: number): number {
  const s = 1 - t;
  const [d0, d1, d2] = [
    arc[(i + 2) as 2] - arc[i],
    arc[(i + 4) as 4] - arc[(i + 2) as 2],
    arc[(i + 6) as 6] - arc[(i + 4) as 4],
  ];
  return 3 * (s * s * d0 + 2 * s * t * d1 + t * t * d2);
}

/** One coordinate of the second derivative at `t`. */
export function bend(arc: Arc, i: 0 | 1, t: number): number {
  const before = arc[i] - 2 * arc[(i + 2) as 2] + arc[(i + 4) as 4];
  const after = arc[(i + 2) as 2] - 2 * arc[(i + 4) as 4] + arc[(i + 6) as 6];
  return 6 * ((1 - t) * before + t * after);
}
