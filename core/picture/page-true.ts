/** How true a page lies once it is squared up: lines that should be straight, corners that should be square. */
import type { Point } from '../geometry/point';

/** How far something is off (mm at full size) over a length (mm at full size). */
export interface OffOver {
  readonly off: number;
  readonly over: number;
}

/** A check of one line or one corner, and how far off it is. */
export type TrueCheck =
  | ({ readonly kind: 'straight'; readonly line: number } & OffOver)
  /** Two lines, by their numbers, that should stand square. */
  | ({ readonly kind: 'square'; readonly lines: readonly [number, number] } & OffSquare)
  /** The crossings of printed squares, the worst of those that agree against an even grid. */
  | ({ readonly kind: 'crossings' } & OffOver);

/** How true a page is. */
export interface PageTruth {
  readonly checks: readonly TrueCheck[];
  /** The worst check brought to the length asked for. */
  readonly worst: OffOver;
}

/**
 * How far the places of a line lie from the straight line that fits them best: half the width of the narrowest strip along
 * it that holds them all. `undefined` for fewer than three places or no length.
 */
export function straightness(places: readonly Point[]): OffOver | undefined {
  const line = bestLine(places);
  if (!line || places.length < 3) return undefined;
  const offs = places.map(({ x, y }) => (x - line.x) * line.dy - (y - line.y) * line.dx);
  return { off: (Math.max(...offs) - Math.min(...offs)) / 2, over: line.length };
}

/** By how much two lines stand off a right angle: `turn` in radians, 0 to a quarter turn, and over the longer of them. */
export interface OffSquare extends OffOver {
  readonly turn: number;
}

/** `undefined` where one of the two has no length. */
export function offSquare(first: readonly Point[], second: readonly Point[]): OffSquare | undefined {
  const [a, b] = [bestLine(first), bestLine(second)];
  if (!(a && b)) return undefined;
  const turn = Math.asin(Math.min(Math.abs(a.dx * b.dx + a.dy * b.dy), 1));
  const over = Math.max(a.length, b.length);
  return { turn, off: Math.sin(turn) * over, over };
}

/**
 * Everything together for lines that should be straight (places along them, mm at full size) and pairs of them, by number,
 * that should stand square, with what else was checked. Each check is told over its own length, a corner over the longer of its two lines; the worst is
 * the one that comes to most over `over` mm, in proportion. `undefined` when nothing can be checked.
 */
export function pageTruth(
  lines: readonly (readonly Point[])[],
  square: readonly (readonly [number, number])[],
  over: number,
  others: readonly TrueCheck[] = [],
): PageTruth | undefined {
  const straight = lines.flatMap((places, line): TrueCheck[] => {
    const found = straightness(places);
    return found ? [{ kind: 'straight', line, ...found }] : [];
  });
  const corners = square.flatMap(([i, k]): TrueCheck[] => {
    const found = offSquare(lines[i] ?? [], lines[k] ?? []);
    return found ? [{ kind: 'square', lines: [i, k], ...found }] : [];
  });
  const checks = [...straight, ...corners, ...others];
  if (checks.length === 0) return undefined;
  const off = Math.max(...checks.map((each) => (each.off / each.over) * over));
  return { checks, worst: { off, over } };
}

/** The straight line of least squares across itself: a place on it, its direction, and how far the places reach along it. */
function bestLine(places: readonly Point[]) {
  if (places.length < 2) return undefined;
  const x = places.reduce((sum, each) => sum + each.x, 0) / places.length;
  const y = places.reduce((sum, each) => sum + each.y, 0) / places.length;
  let [xx, yy, xy] = [0, 0, 0];
  for (const each of places) {
    xx += (each.x - x) ** 2;
    yy += (each.y - y) ** 2;
    xy += (each.x - x) * (each.y - y);
  }
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
  const along = places.map((each) => (each.x - x) * dx + (each.y - y) * dy);
  const length = Math.max(...along) - Math.min(...along);
  return length > 0 ? { x, y, dx, dy, length } : undefined;
}
