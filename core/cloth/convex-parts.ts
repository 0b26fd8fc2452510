import { cross, type Point, vectorBetween } from '../geometry/point';
import { type Ring, ringArea } from '../geometry/polygon';

/** A turn is still straight when the corner stands off the line of its neighbours by less than this share of their reach. */
const STRAIGHT = 1e-9;

/**
 * A simple ring cut into convex rings that cover it exactly and share no area, each clockwise to the eye. Ears are cut
 * off one by one and put together again wherever the whole stays convex (Hertel and Mehlhorn 1983: at most four times
 * the fewest parts there could be). Empty for a ring without area; a ring that crosses itself is not handled.
 */
export function convexParts(ring: Ring): Point[][] {
  const area = ringArea(ring);
  if (area === 0) return [];
  const corners = area > 0 ? [...ring] : [...ring].reverse();
  return mergedParts(corners, earsOf(corners)).map((part) => part.map((index) => corners[index] as Point));
}

function turn(a: Point, b: Point, c: Point): number {
  return cross(vectorBetween(a, b), vectorBetween(b, c));
}

function isHollow(a: Point, b: Point, c: Point): boolean {
  const reach = Math.abs(c.x - a.x) + Math.abs(c.y - a.y) + Math.abs(b.x - a.x) + Math.abs(b.y - a.y);
  return turn(a, b, c) < -STRAIGHT * reach * reach;
}

/** Triangles as indexes of corners; corners in line with their neighbours give none. */
function earsOf(corners: readonly Point[]): number[][] {
  const at = (index: number) => corners[index] as Point;
  const left = corners.map((_, index) => index);
  const ears: number[][] = [];
  while (left.length > 3) {
    let ear = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let k = 0; k < left.length; k++) {
      const [i, j, m] = around(left, k);
      const size = turn(at(i), at(j), at(m));
      if (size < 0 || left.some((n) => n !== i && n !== j && n !== m && isInEar(at(n), at(i), at(j), at(m)))) continue;
      // The ear with the shortest third side keeps triangles stout; an empty ear goes at once.
      const reach = size === 0 ? -1 : Math.hypot(at(m).x - at(i).x, at(m).y - at(i).y);
      if (reach < least) {
        least = reach;
        ear = k;
      }
    }
    const k = Math.max(ear, 0);
    const triangle = around(left, k);
    if (turn(at(triangle[0]), at(triangle[1]), at(triangle[2])) > 0) ears.push(triangle);
    left.splice(k, 1);
  }
  if (left.length === 3) ears.push(left);
  return ears;
}

function around(left: readonly number[], k: number): [number, number, number] {
  const count = left.length;
  return [left[(k + count - 1) % count] as number, left[k] as number, left[(k + 1) % count] as number];
}

/** Whether a corner stands in the way of an ear: inside it or on its third side, but not at one of its corners. */
function isInEar(point: Point, a: Point, b: Point, c: Point): boolean {
  if ((point.x === a.x && point.y === a.y) || (point.x === c.x && point.y === c.y)) return false;
  if (point.x === b.x && point.y === b.y) return false;
  return turn(a, b, point) >= 0 && turn(b, c, point) >= 0 && turn(c, a, point) >= 0;
}

function mergedParts(corners: readonly Point[], triangles: number[][]): number[][] {
  const parts = triangles.map((part) => [...part]);
  for (let i = 0; i < parts.length; i++) {
    for (let j = i + 1; j < parts.length; j++) {
      const joined = joinedIfConvex(corners, parts[i] as number[], parts[j] as number[]);
      if (!joined) continue;
      parts[i] = joined;
      parts.splice(j, 1);
      j = i;
    }
  }
  return parts;
}

/** Two parts along the side they share as one, if that is convex. */
function joinedIfConvex(corners: readonly Point[], a: readonly number[], b: readonly number[]): number[] | undefined {
  for (let i = 0; i < a.length; i++) {
    const from = a[i] as number;
    const to = a[(i + 1) % a.length] as number;
    const k = b.indexOf(to);
    if (k < 0 || b[(k + 1) % b.length] !== from) continue;
    const rest = [...b.slice(k + 1), ...b.slice(0, k + 1)].slice(1, -1);
    const joined = [...a.slice(0, i + 1), ...rest, ...a.slice(i + 1)];
    const hollow = joined.some((index, n) => {
      const before = joined[(n + joined.length - 1) % joined.length] as number;
      const after = joined[(n + 1) % joined.length] as number;
      return isHollow(corners[before] as Point, corners[index] as Point, corners[after] as Point);
    });
    if (!hollow) return joined;
  }
  return undefined;
}
