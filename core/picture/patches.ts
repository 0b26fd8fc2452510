import { cross, type Point, vectorBetween } from '../geometry/point';

/** A connected patch of marked pixels. */
export interface Patch {
  readonly pixels: number;
  /** Its outermost pixel centres, clockwise to the eye. */
  readonly hull: readonly Point[];
}

/** The connected patches (also across corners) of pixels with `isIn` not 0, of at least `leastPixels` pixels. */
export function patchesOf(isIn: Uint8Array, width: number, options: { readonly leastPixels: number }): Patch[] {
  const height = Math.floor(isIn.length / Math.max(1, width));
  const seen = new Uint8Array(isIn.length);
  const stack = new Int32Array(isIn.length);
  const leftmost = new Int32Array(height);
  const rightmost = new Int32Array(height);
  const patches: Patch[] = [];
  for (let start = 0; start < width * height; start++) {
    if (!isIn[start] || seen[start]) continue;
    let [count, pixels, top, bottom] = [1, 0, height, -1];
    leftmost.fill(width);
    rightmost.fill(-1);
    seen[start] = 1;
    stack[0] = start;
    while (count > 0) {
      const at = stack[--count] as number;
      const y = (at / width) | 0;
      const x = at - y * width;
      pixels++;
      top = Math.min(top, y);
      bottom = Math.max(bottom, y);
      leftmost[y] = Math.min(leftmost[y] as number, x);
      rightmost[y] = Math.max(rightmost[y] as number, x);
      for (let ny = Math.max(0, y - 1); ny <= Math.min(height - 1, y + 1); ny++) {
        for (let nx = Math.max(0, x - 1); nx <= Math.min(width - 1, x + 1); nx++) {
          const next = ny * width + nx;
          if (!isIn[next] || seen[next]) continue;
          seen[next] = 1;
          stack[count++] = next;
        }
      }
    }
    if (pixels >= options.leastPixels) patches.push({ pixels, hull: hullOfRows(leftmost, rightmost, top, bottom) });
  }
  return patches;
}

/** The convex hull of rows given by their ends: down the right side and up the left (A. Andrew's scan, 1979). */
function hullOfRows(leftmost: Int32Array, rightmost: Int32Array, top: number, bottom: number): Point[] {
  const right: Point[] = [];
  const left: Point[] = [];
  for (let y = top; y <= bottom; y++) right.push({ x: (rightmost[y] as number) + 0.5, y: y + 0.5 });
  for (let y = bottom; y >= top; y--) left.push({ x: (leftmost[y] as number) + 0.5, y: y + 0.5 });
  return [...convexChain(right), ...convexChain(left)];
}

function convexChain(points: readonly Point[]): Point[] {
  const chain: Point[] = [];
  for (const point of points) {
    while (chain.length > 1) {
      const [a, b] = [chain[chain.length - 2] as Point, chain[chain.length - 1] as Point];
      if (cross(vectorBetween(a, b), vectorBetween(b, point)) > 0) break;
      chain.pop();
    }
    chain.push(point);
  }
  return chain;
}
