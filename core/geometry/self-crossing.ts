/** Where a path crosses or touches itself. */
import { boxesMeet } from './bounds';
import { TOUCHING } from './cubic-crossings';
import { segmentAt, segmentBounds } from './cubic-curve';
import { isClosed } from './path';
import { type Point, SAME_POINT } from './point';
import { polynomialRoots } from './polynomial';
import type { Cubic, Path, Segment } from './segment';
import { partLength, segmentLength } from './segment-length';
import { segmentMeetings } from './segment-meetings';

/** A place a path comes to twice, by its two lengths along the path, `first` < `second`. */
export interface SelfCrossing {
  readonly point: Point;
  readonly first: number;
  readonly second: number;
}

/**
 * Every place a path comes to twice, ordered by the first visit; the joints of its stretches do not count, nor where a
 * closed path begins. Of a stretch run twice its two ends are given.
 */
export function selfCrossings(path: Path): SelfCrossing[] {
  const boxes = path.map(segmentBounds);
  const starts = [0];
  for (const segment of path) starts.push((starts[starts.length - 1] as number) + segmentLength(segment));
  const total = starts[path.length] as number;
  const round = isClosed(path) ? total : undefined;
  const found: SelfCrossing[] = [];
  const add = (i: number, ti: number, j: number, tj: number) => {
    const [one, other] = [path[i] as Segment, path[j] as Segment];
    const first = (starts[i] as number) + partLength(one, 0, ti);
    const second = (starts[j] as number) + partLength(other, 0, tj);
    const apart = second - first;
    if (apart <= SAME_POINT || (round !== undefined && round - apart <= SAME_POINT)) return;
    const known = found.some(
      (each) => Math.abs(each.first - first) <= SAME_POINT && Math.abs(each.second - second) <= SAME_POINT,
    );
    if (!known) found.push({ point: segmentAt(one, ti), first, second });
  };
  for (let i = 0; i < path.length; i++) {
    const one = path[i] as Segment;
    const loop = one.kind === 'cubic' ? cubicLoop(one) : undefined;
    if (loop) add(i, loop[0], i, loop[1]);
    for (let j = i + 1; j < path.length; j++) {
      if (!boxesMeet(boxes[i] as (typeof boxes)[0], boxes[j] as (typeof boxes)[0], TOUCHING)) continue;
      for (const meeting of segmentMeetings(one, path[j] as Segment)) {
        const places = meeting.kind === 'place' ? [meeting] : [meeting.from, meeting.to];
        for (const { ta, tb } of places) add(i, ta, j, tb);
      }
    }
  }
  return found.sort((a, b) => a.first - b.first);
}

/**
 * The two parameters at which a cubic comes to one place, if it does; at most once. With B = a t³ + b t² + c t + d,
 * (B(s) - B(t)) / (s - t) = a (s² + s t + t²) + b (s + t) + c is zero in both coordinates: linear in the sum u = s + t,
 * and then in the product s t.
 */
export function cubicLoop({ p0, p1, p2, p3 }: Cubic): readonly [number, number] | undefined {
  const ax = p3.x - 3 * p2.x + 3 * p1.x - p0.x;
  const ay = p3.y - 3 * p2.y + 3 * p1.y - p0.y;
  const bx = 3 * (p2.x - 2 * p1.x + p0.x);
  const by = 3 * (p2.y - 2 * p1.y + p0.y);
  const cx = 3 * (p1.x - p0.x);
  const cy = 3 * (p1.y - p0.y);
  const acrossB = ax * by - ay * bx;
  const sizeSq = ax * ax + ay * ay;
  if (acrossB === 0 || sizeSq === 0) return undefined;
  const sum = -(ax * cy - ay * cx) / acrossB;
  const product = sum * sum + ((ax * bx + ay * by) * sum + ax * cx + ay * cy) / sizeSq;
  if (!Number.isFinite(product)) return undefined;
  const [s, t] = polynomialRoots([product, -sum, 1]);
  return s !== undefined && t !== undefined && t > s ? [s, t] : undefined;
}
