import { distance, type Point, turnVector, vectorBetween } from './point';
import { type Cubic, cubic } from './segment';

/**
 * Part of the circle about `centre` from `start` on, turning by `sweep` (clockwise to the eye for positive sweeps), in
 * equal cubics within `accuracy` of the circle. Arms are 4/3 tan(a/4) of the radius for a piece of angle a; such a
 * piece lies outside the circle by at most 2/27 sin⁶(a/4) / cos²(a/4) of the radius.
 */
export function arcOfCircle(centre: Point, start: Point, sweep: number, accuracy: number): Cubic[] {
  const radius = distance(centre, start);
  let count = Math.max(1, Math.ceil(Math.abs(sweep) / (Math.PI / 2)));
  while (offCircle(Math.abs(sweep) / count) * radius > accuracy && count < 1024) count++;
  const step = sweep / count;
  const arm = (4 / 3) * Math.tan(step / 4);
  const pieces: Cubic[] = [];
  let spoke = vectorBetween(centre, start);
  let from = start;
  for (let i = 0; i < count; i++) {
    const next = turnVector(spoke, step);
    const to = { x: centre.x + next.dx, y: centre.y + next.dy };
    pieces.push(
      cubic(
        from,
        { x: from.x - spoke.dy * arm, y: from.y + spoke.dx * arm },
        { x: to.x + next.dy * arm, y: to.y - next.dx * arm },
        to,
      ),
    );
    spoke = next;
    from = to;
  }
  return pieces;
}

/** The share of the radius by which one such cubic over `angle` is off the circle at most. */
function offCircle(angle: number): number {
  return ((2 / 27) * Math.sin(angle / 4) ** 6) / Math.cos(angle / 4) ** 2;
}
