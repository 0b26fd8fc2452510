import { distance, type Point, unit, vectorBetween } from '../geometry/point';

/** Places kept along a line that should be straight. */
const KEPT = 48;

/** A followed line that leaves the straight way by more than this share of it went another way. */
const ASTRAY = 0.08;

/** From the first to the last place that was seen there is at least this share of the line. */
const LEAST_SEEN = 0.8;

/**
 * Places, in order, along the middle of a line that was followed between two ends of what should be straight, few enough to
 * be kept. `undefined` where it strays too far, was seen along too little of the way, or not at all.
 */
export function straightRun(followed: readonly Point[], from: Point, to: Point): Point[] | undefined {
  const length = distance(from, to);
  const along = unit(vectorBetween(from, to));
  if (!along) return undefined;
  const laid = followed.map((place) => {
    const { dx, dy } = vectorBetween(from, place);
    return { place, forward: dx * along.dx + dy * along.dy, aside: Math.abs(dx * along.dy - dy * along.dx) };
  });
  if (laid.some(({ aside }) => aside > ASTRAY * length)) return undefined;
  const [first, last] = [laid[0], laid.at(-1)];
  if (!first || !last || last.forward - first.forward < length * LEAST_SEEN) return undefined;
  const count = Math.min(KEPT, laid.length);
  if (count < 3) return undefined;
  return Array.from(
    { length: count },
    (_, k) => laid[Math.round((k * (laid.length - 1)) / (count - 1))]?.place as Point,
  );
}
