import { segmentAt, segmentCurvature } from '../../core/geometry/cubic-curve';
import { distance, type Point } from '../../core/geometry/point';
import type { Path } from '../../core/geometry/segment';
import { inches } from '../../core/units/inch';

const STEPS = 40;

/** A stretch in which a line turns one way only. */
interface Bend {
  readonly way: 1 | -1;
  readonly points: readonly Point[];
}

function bendsOf(path: Path): Bend[] {
  const bends: Bend[] = [];
  for (const segment of path) {
    for (let i = 0; i < STEPS; i++) {
      const way = segmentCurvature(segment, (i + 0.5) / STEPS) > 0 ? 1 : -1;
      const to = segmentAt(segment, (i + 1) / STEPS);
      const last = bends.at(-1);
      if (last?.way === way) bends[bends.length - 1] = { way, points: [...last.points, to] };
      else bends.push({ way, points: [segmentAt(segment, i / STEPS), to] });
    }
  }
  return bends;
}

/** How deep each stretch bows off its chord, with the sign of the way it turns (mm), from the start of the line. */
export function bowsOf(path: Path): number[] {
  return bendsOf(path).map(({ way, points }) => {
    const [from, to] = [points[0] as Point, points.at(-1) as Point];
    const off = points.map((point) => offChord(point, from, to));
    return way * Math.max(...off);
  });
}

function offChord(point: Point, from: Point, to: Point): number {
  const length = distance(from, to);
  if (length === 0) return distance(point, from);
  return Math.abs((to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x)) / length;
}

/** A bow no deeper than this (mm) is not seen in a cut edge: a thirty-second of an inch. */
const NOT_SEEN = inches(1 / 32);

/** How often a line changes the way it turns, as far as it can be seen. */
export function changesOfBend(path: Path, least = NOT_SEEN): number {
  const seen = bowsOf(path).filter((bow) => Math.abs(bow) > least);
  return seen.filter((bow, i) => i > 0 && Math.sign(bow) !== Math.sign(seen[i - 1] ?? 0)).length;
}
