import { describe, expect, it } from 'vitest';
import { segmentAt } from '../../core/geometry/cubic-curve';
import { distanceToChord } from '../../core/geometry/flatten';
import { nearestOnPath } from '../../core/geometry/path';
import type { Point } from '../../core/geometry/point';
import type { Path } from '../../core/geometry/segment';
import { throughPointsFor } from '../../core/geometry/simplify';
import { closedSplineThrough, splineThrough } from '../../core/geometry/spline';
import { points, seededRandom } from './shapes';

/** Even places along a path, `each` a stretch; a closed one does not repeat its start. */
function placesAlong(path: Path, each: number, closed: boolean): Point[] {
  const places = path.flatMap((segment) => Array.from({ length: each }, (_, i) => segmentAt(segment, i / each)));
  const last = path[path.length - 1];
  return closed || !last ? places : [...places, segmentAt(last, 1)];
}

/** The largest distance from the run to the spline, and from the spline to the run. */
function missBothWays(run: readonly Point[], spline: Path, closed: boolean): number {
  const chords = run.map((point, i) => [point, run[(i + 1) % run.length] as Point] as const);
  if (!closed) chords.pop();
  const toSpline = run.map((point) => nearestOnPath(spline, point).distance);
  const toRun = placesAlong(spline, 40, closed).map((place) =>
    Math.min(...chords.map(([from, to]) => distanceToChord(place, from, to))),
  );
  return Math.max(...toSpline, ...toRun);
}

const KNOTS = points([0, 0], [50, 60], [120, 70], [170, 20], [260, 40]);

describe('throughPointsFor', () => {
  it('needs no more points than the spline a run was taken from', () => {
    const run = placesAlong(splineThrough(KNOTS), 30, false);
    const through = throughPointsFor(run, { within: 0.2 });
    expect(through.length).toBeLessThanOrEqual(KNOTS.length);
    expect(missBothWays(run, splineThrough(through), false)).toBeLessThanOrEqual(0.21);
    expect([through[0], through[through.length - 1]]).toEqual([run[0], run[run.length - 1]]);
  });

  it('keeps what it promises, both ways, for a shaky hand and three limits', () => {
    const random = seededRandom(9);
    const run = placesAlong(splineThrough(KNOTS), 30, false).map(({ x, y }) => ({
      x: x + (random() - 0.5) * 0.6,
      y: y + (random() - 0.5) * 0.6,
    }));
    const counts = [0.5, 1, 4].map((within) => {
      const through = throughPointsFor(run, { within });
      expect(missBothWays(run, splineThrough(through), false)).toBeLessThanOrEqual(within * 1.05);
      return through.length;
    });
    expect(counts[0]).toBeGreaterThanOrEqual(counts[1] as number);
    expect(counts[1]).toBeGreaterThanOrEqual(counts[2] as number);
    expect(counts[1]).toBeLessThanOrEqual(7);
  });

  it('draws a circle of 60 mm to 0.1 mm with at most 8 points', () => {
    const run = Array.from({ length: 90 }, (_, i) => ({
      x: 60 * Math.cos((2 * Math.PI * i) / 90),
      y: 60 * Math.sin((2 * Math.PI * i) / 90),
    }));
    const through = throughPointsFor(run, { within: 0.1, closed: true });
    expect(through.length).toBeLessThanOrEqual(8);
    expect(missBothWays(run, closedSplineThrough(through), true)).toBeLessThanOrEqual(0.11);
  });

  it('leaves two points of a straight run', () => {
    const run = Array.from({ length: 40 }, (_, i) => ({ x: 3 * i, y: 5 * i }));
    expect(throughPointsFor(run, { within: 0.01 })).toEqual([
      { x: 0, y: 0 },
      { x: 117, y: 195 },
    ]);
  });

  it('gives short and repeated runs back without repeats', () => {
    expect(throughPointsFor([], { within: 1 })).toEqual([]);
    expect(throughPointsFor(points([4, 7], [4, 7]), { within: 1 })).toEqual(points([4, 7]));
    expect(throughPointsFor(points([4, 7], [9, 1], [4, 7]), { within: 1, closed: true })).toEqual(
      points([4, 7], [9, 1]),
    );
  });

  it('keeps every point when nothing less will do', () => {
    const zigzag = Array.from({ length: 9 }, (_, i) => ({ x: i * 10, y: i % 2 ? 25 : 0 }));
    expect(throughPointsFor(zigzag, { within: 1e-9 }).length).toBe(9);
  });
});
