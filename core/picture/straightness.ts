/**
 * How well a page is squared up, by what should be straight and square on it: lines laid on the table at full size, and
 * how far they leave the straight, or the right angle, in mm.
 */
import { distance, type TablePoint } from '../geometry/point';
import { straightThrough } from './straight-through';

/** So far off, over so much, both in mm at full size. */
export interface GoodTo {
  readonly off: number;
  readonly over: number;
}

/** How far places along a line that should be straight lie from the nearest straight line; `undefined` for fewer than three. */
export function straightness(places: readonly TablePoint[]): GoodTo | undefined {
  const line = straightThrough(places);
  const [first, last] = [places[0], places[places.length - 1]];
  if (!line || !first || !last || places.length < 3) return undefined;
  const offs = places.map(({ x, y }) => Math.abs((x - line.at.x) * line.along.dy - (y - line.at.y) * line.along.dx));
  return { off: Math.max(...offs), over: distance(first, last) };
}

/** How far the end of the shorter of two lines lies from where a right angle with the other would put it. */
export function squareness(one: readonly TablePoint[], other: readonly TablePoint[]): GoodTo | undefined {
  const [a, b] = [straightThrough(one), straightThrough(other)];
  const [lengthA, lengthB] = [one, other].map((run) => {
    const [first, last] = [run[0], run[run.length - 1]];
    return first && last ? distance(first, last) : 0;
  }) as [number, number];
  if (!a || !b || !(lengthA > 0 && lengthB > 0)) return undefined;
  const over = Math.min(lengthA, lengthB);
  return { off: Math.abs(a.along.dx * b.along.dx + a.along.dy * b.along.dy) * over, over };
}

/** The worst of several, as it would grow over `over` mm: slips of the view grow with the length they are seen over. */
export function worstOver(found: readonly GoodTo[], over: number): number {
  return found.reduce((worst, each) => (each.over > 0 ? Math.max(worst, (each.off * over) / each.over) : worst), 0);
}
