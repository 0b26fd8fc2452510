import type { Point } from '../geometry/point';
import { type DxfEntity, numberOf, numbersOf } from './dxf-pairs';

/** Places looked up on each stretch of a spline between two knots. */
const EACH_STRETCH = 16;

/** Control points of one spline at most, and its highest degree. */
const MOST_CONTROLS = 5000;
const HIGHEST = 11;

/**
 * Places on the B-spline, rational or not, of a SPLINE entity, ends included; of one that tells only places it passes,
 * those. `undefined` when its knots do not fit its points. See: C. de Boor, A Practical Guide to Splines (1978).
 */
export function splinePoints(entity: DxfEntity): Point[] | undefined {
  const [xs, ys, weights] = [numbersOf(entity, 10), numbersOf(entity, 20), numbersOf(entity, 41)];
  const knots = numbersOf(entity, 40);
  const degree = numberOf(entity, 71, 3);
  if (xs.length === 0) return passedPoints(entity);
  const fits = Number.isInteger(degree) && degree >= 1 && degree <= HIGHEST && xs.length > degree;
  const isRising = knots.every((knot, i) => i === 0 || knot >= (knots[i - 1] as number));
  if (!fits || !isRising || xs.length > MOST_CONTROLS || knots.length !== xs.length + degree + 1) return undefined;
  const controls = xs.map((x, i): Control => {
    const w = weights[i] ?? 1;
    return [x * w, (ys[i] ?? 0) * w, w];
  });
  if (controls.some(([, , w]) => !(w > 0))) return undefined;
  const points: Point[] = [];
  for (let span = degree; span < controls.length; span++) {
    const [from, to] = [knots[span] as number, knots[span + 1] as number];
    if (!(to > from)) continue;
    for (let i = points.length === 0 ? 0 : 1; i <= EACH_STRETCH; i++) {
      points.push(atKnot(controls, knots, degree, span, from + ((to - from) * i) / EACH_STRETCH));
    }
  }
  return points.length > 1 ? points : undefined;
}

/** x, y and weight, the first two times the weight. */
type Control = readonly [number, number, number];

function atKnot(
  controls: readonly Control[],
  knots: readonly number[],
  degree: number,
  span: number,
  u: number,
): Point {
  let row = controls.slice(span - degree, span + 1);
  for (let level = 1; level <= degree; level++) {
    row = row.slice(1).map((next, i): Control => {
      const low = knots[span - degree + level + i] as number;
      const high = knots[span + 1 + i] as number;
      const t = (u - low) / (high - low);
      const [x, y, w] = row[i] as Control;
      return [x + (next[0] - x) * t, y + (next[1] - y) * t, w + (next[2] - w) * t];
    });
  }
  const [x, y, w] = row[0] as Control;
  return { x: x / w, y: y / w };
}

function passedPoints(entity: DxfEntity): Point[] | undefined {
  const [xs, ys] = [numbersOf(entity, 11), numbersOf(entity, 21)];
  return xs.length > 1 ? xs.map((x, i) => ({ x, y: ys[i] ?? 0 })) : undefined;
}
