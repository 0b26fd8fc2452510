import { distance, move, type PhotoPoint, quarterTurn, unit, type Vector, vectorBetween } from '../geometry/point';
import { type InkLevels, levelsNear, middleAcross } from './arm';
import { type GreyPicture, greyAt } from './grey-picture';
import { lineAt } from './line-width';
import { straightThrough } from './straight-through';

/** A dimension line or scale bar made straight by its own ink, and how dark it is on it and beside it. */
export interface LineBeside {
  readonly from: PhotoPoint;
  readonly along: Vector;
  readonly length: number;
  readonly widthPx: number;
  readonly levels: InkLevels;
}

/** The share of the line, in from either click, by which it is made straight. */
const MARGIN = 0.08;

/** The line between two clicks, moved onto its ink where there is any; `undefined` for clicks a few pixels apart or no contrast. */
export function lineBetween(picture: GreyPicture, a: PhotoPoint, b: PhotoPoint): LineBeside | undefined {
  const length = distance(a, b);
  const way = unit(vectorBetween(a, b));
  if (!way || length < 12) return undefined;
  const middle = move(a, way, length / 2);
  const levels = levelsNear(picture, middle, Math.max(16, length * 0.3));
  if (!levels) return undefined;
  const there = [0.3, 0.5, 0.7].flatMap((share) => {
    const found = lineAt(picture, move(a, way, length * share), { withinPx: 4, mostPx: Math.max(8, length / 8) });
    return found ? [found.widthPx] : [];
  });
  const widthPx = there.sort((x, y) => x - y)[there.length >> 1] ?? 2;
  const aside = quarterTurn(way);
  const middles: PhotoPoint[] = [];
  for (let k = 0; k <= 60; k++) {
    const at = move(a, way, length * (MARGIN + ((1 - 2 * MARGIN) * k) / 60));
    const found = middleAcross(picture, at, aside, Math.max(3, widthPx), levels);
    if (found) middles.push(found);
  }
  const line = middles.length > 30 ? straightThrough(middles) : undefined;
  if (!line) return { from: a, along: way, length, widthPx, levels };
  const along =
    line.along.dx * way.dx + line.along.dy * way.dy < 0 ? { dx: -line.along.dx, dy: -line.along.dy } : line.along;
  const reach = (p: PhotoPoint) => (p.x - line.at.x) * along.dx + (p.y - line.at.y) * along.dy;
  const from = move(line.at, along, reach(a));
  return { from, along, length: reach(b) - reach(a), widthPx, levels };
}

/** How dark it is, 0 paper to 1 ink, at `s` along the line: the mean over offsets from `near` to `far` to one side. */
export function darkBeside(
  picture: GreyPicture,
  { from, along, levels }: LineBeside,
  s: number,
  offsets: { readonly near: number; readonly far: number },
): number {
  const aside = quarterTurn(along);
  const at = move(from, along, s);
  const count = Math.max(2, Math.ceil(Math.abs(offsets.far - offsets.near)));
  let sum = 0;
  for (let k = 0; k <= count; k++) {
    const off = offsets.near + ((offsets.far - offsets.near) * k) / count;
    const grey = greyAt(picture, at.x + aside.dx * off, at.y + aside.dy * off);
    sum += Math.min(1, Math.max(0, (levels.paper - grey) / (levels.paper - levels.ink)));
  }
  return sum / (count + 1);
}

/** Readings less the least within `reach` on either side: what a shadow or toned paper adds is taken off. */
export function aboveGround(readings: Float64Array, reach: number): Float64Array {
  return readings.map((reading, i) => {
    let least = reading;
    for (let k = Math.max(0, i - reach); k <= Math.min(readings.length - 1, i + reach); k++) {
      least = Math.min(least, readings[k] as number);
    }
    return reading - least;
  });
}

/** The tops of a row of readings above `least`, each as the middle of what rises above half of it. */
export function topsOf(
  readings: Float64Array,
  least: number,
): readonly { readonly at: number; readonly height: number }[] {
  const tops: { at: number; height: number }[] = [];
  for (let i = 0; i < readings.length; i++) {
    if ((readings[i] as number) < least) continue;
    let end = i;
    let height = 0;
    while (end < readings.length && (readings[end] as number) >= least / 2)
      height = Math.max(height, readings[end++] as number);
    let start = i;
    while (start > 0 && (readings[start - 1] as number) >= least / 2) start--;
    let [sum, moment] = [0, 0];
    for (let k = start; k < end; k++) {
      const above = Math.max(0, (readings[k] as number) - height / 2);
      sum += above;
      moment += above * k;
    }
    tops.push({ at: sum > 0 ? moment / sum : (start + end - 1) / 2, height });
    i = end;
  }
  return tops;
}
