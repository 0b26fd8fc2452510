import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reflectionIn, rotationAbout, transformPath } from '../../core/geometry/affine';
import { partOfSegment, splitSegment } from '../../core/geometry/cubic-curve';
import { flattenPath } from '../../core/geometry/flatten';
import { intersectPaths, type Meeting, type MeetingPlace } from '../../core/geometry/intersect';
import { reversePath } from '../../core/geometry/path';
import { distance, type Point } from '../../core/geometry/point';
import { line, type Path } from '../../core/geometry/segment';
import { arcPath, closedPolygon, cubicOf, points, seededRandom } from './shapes';

const straight = (x0: number, y0: number, x1: number, y1: number): Path => [line({ x: x0, y: y0 }, { x: x1, y: y1 })];
const places = (meetings: readonly Meeting[]): MeetingPlace[] =>
  meetings.filter((meeting): meeting is MeetingPlace => meeting.kind !== 'overlap');

/** How far each wanted point is from the nearest one found. */
function worstMiss(found: readonly Meeting[], wanted: readonly Point[]): number {
  return Math.max(...wanted.map((point) => Math.min(...places(found).map((place) => distance(place.point, point)))));
}

const ARCH = cubicOf([0, 0], [0, 100], [100, 100], [100, 0]);

describe('intersectPaths', () => {
  it('finds the one crossing of two lines', () => {
    const [only, ...rest] = intersectPaths(straight(0, 0, 10, 30), straight(0, 30, 20, 0));
    expect(rest).toEqual([]);
    // y = 3x meets y = 30 - 1.5x at x = 20/3.
    expect(only).toMatchObject({ kind: 'crossing' });
    expect(distance((only as MeetingPlace).point, { x: 20 / 3, y: 20 })).toBeLessThan(1e-12);
    expect((only as MeetingPlace).alongA).toBeCloseTo(Math.hypot(20 / 3, 20), 10);
    expect((only as MeetingPlace).alongB).toBeCloseTo(Math.hypot(20 / 3, 10), 10);
  });

  it('finds nothing where lines would only meet beyond their ends', () => {
    expect(intersectPaths(straight(0, 0, 10, 1), straight(20, -5, 21, 30))).toEqual([]);
    expect(intersectPaths(straight(0, 0, 10, 10), straight(0, 1, 10, 11))).toEqual([]);
  });

  it('finds the end of a line that rests on another', () => {
    const [only, ...rest] = intersectPaths(straight(0, 0, 30, 40), straight(15, 20, 70, 3));
    expect(rest).toEqual([]);
    expect(only).toMatchObject({ kind: 'crossing', alongB: 0 });
    expect((only as MeetingPlace).alongA).toBeCloseTo(25, 9);
  });

  it('names what two lines share, either way round', () => {
    expect(intersectPaths(straight(0, 0, 10, 0), straight(4, 0, 25, 0))).toEqual([
      { kind: 'overlap', fromA: 4, toA: 10, fromB: 0, toB: 6 },
    ]);
    expect(intersectPaths(straight(0, 0, 10, 0), straight(9, 0, 3, 0))).toEqual([
      { kind: 'overlap', fromA: 3, toA: 9, fromB: 6, toB: 0 },
    ]);
  });

  it('crosses a line with a cubic at closed-form places', () => {
    // The arch is x = 100(3t² - 2t³), y = 300t(1 - t); y = 48 at t = 0.2 and 0.8.
    const found = intersectPaths(straight(-20, 48, 130, 48), [ARCH]);
    expect(found.map((meeting) => meeting.kind)).toEqual(['crossing', 'crossing']);
    expect(worstMiss(found, points([10.4, 48], [89.6, 48]))).toBeLessThan(1e-10);
  });

  it('tells the line along the top of an arch as one touch', () => {
    const found = intersectPaths([ARCH], straight(-10, 75, 140, 75));
    expect(found).toMatchObject([{ kind: 'touching' }]);
    expect(worstMiss(found, points([50, 75]))).toBeLessThan(1e-6);
  });

  it('finds all nine crossings of two Chebyshev cubics', () => {
    // y = T3(x) and x = T3(y): closed form x = cos(k π/4) and cos(k π/5), two of them at shared ends.
    const third = 1 / 3;
    const a = cubicOf([-1, -1], [-third, 5], [third, -5], [1, 1]);
    const b = cubicOf([-1, -1], [5, -third], [-5, third], [1, 1]);
    const wanted = [0, 1, 2, 3, 4]
      .map((k) => [Math.cos((k * Math.PI) / 4), Math.cos((3 * k * Math.PI) / 4)] as const)
      .concat([1, 2, 3, 4].map((k) => [Math.cos((k * Math.PI) / 5), Math.cos((3 * k * Math.PI) / 5)] as const));
    const found = intersectPaths([a], [b]);
    expect(found.length).toBe(9);
    expect(worstMiss(found, points(...wanted))).toBeLessThan(1e-12);
  });

  it('crosses two arches at the places computed with mpmath to 40 digits', () => {
    const found = intersectPaths([ARCH], [cubicOf([0, 60], [0, -40], [100, -40], [100, 60])]);
    expect(found.length).toBe(2);
    expect(worstMiss(found, points([3.5241998455109975, 30], [96.47580015448901, 30]))).toBeLessThan(1e-11);
  });

  it('tells two arches that touch at their tops as one touch, also when turned', () => {
    const other = cubicOf([0, 150], [0, 50], [100, 50], [100, 150]);
    for (const angle of [0, 0.4, 1.9, -2.7]) {
      const turn = rotationAbout({ x: 31, y: -12 }, angle);
      const found = intersectPaths(transformPath(turn, [ARCH]), transformPath(turn, [other]));
      expect(found).toMatchObject([{ kind: 'touching' }]);
      const back = transformPath(turn, straight(50, 75, 0, 0))[0]?.p0 as Point;
      expect(worstMiss(found, [back])).toBeLessThan(1e-5);
    }
  });

  it('tells two circles that touch from inside as one touch', () => {
    const outer = arcPath({ x: 0, y: 0 }, 50, 0.2, 2 * Math.PI);
    const inner = arcPath({ x: 20, y: 0 }, 30, 1.1, 2 * Math.PI);
    const found = intersectPaths(outer, inner);
    expect(found.every((meeting) => meeting.kind === 'touching')).toBe(true);
    expect(worstMiss(found, points([50, 0]))).toBeLessThan(0.02);
  });

  it('crosses two circles where the triangle of 3, 4 and 5 says', () => {
    const a = arcPath({ x: 0, y: 0 }, 50, 0, 2 * Math.PI);
    const b = arcPath({ x: 60, y: 0 }, 50, 1, 2 * Math.PI);
    const found = intersectPaths(a, b);
    expect(found.length).toBe(2);
    // Arcs of 15 degrees are true to 6e-9 of the radius.
    expect(worstMiss(found, points([30, 40], [30, -40]))).toBeLessThan(1e-6);
  });

  it('names the stretch two parts of one cubic share', () => {
    const curve = cubicOf([0, 0], [10, 80], [90, 120], [140, 30]);
    const a = [partOfSegment(curve, 0, 0.7)];
    const b = [partOfSegment(curve, 0.3, 1)];
    const [only, ...rest] = intersectPaths(a, b);
    expect(rest).toEqual([]);
    expect(only).toMatchObject({ kind: 'overlap', fromB: 0 });
    const opposite = intersectPaths(a, reversePath(b));
    expect(opposite).toMatchObject([{ kind: 'overlap' }]);
  });

  it('joins what two rings share across their corners into one stretch', () => {
    const a = closedPolygon([0, 0], [60, 0], [60, 40], [0, 40]);
    const b = closedPolygon([60, 10], [60, 40], [20, 40], [90, 90]);
    const overlaps = intersectPaths(a, b).filter((meeting) => meeting.kind === 'overlap');
    expect(overlaps).toEqual([{ kind: 'overlap', fromA: 70, toA: 140, fromB: 0, toB: 70 }]);
  });

  it('counts a crossing at a corner, or at the start of a ring, once', () => {
    const ring = closedPolygon([0, 0], [60, 10], [50, 40]);
    expect(intersectPaths(ring, straight(-10, 4, 10, -4)).length).toBe(1);
    expect(intersectPaths(ring, straight(50, 20, 70, 0)).length).toBe(1);
  });

  it('finds as many crossings as there are between fine chords, whatever two curves (500 seeded pairs)', () => {
    const random = seededRandom(11);
    const place = () => [random() * 200, random() * 200] as const;
    let compared = 0;
    for (let i = 0; i < 500; i++) {
      const a = [cubicOf(place(), place(), place(), place())];
      const b = [cubicOf(place(), place(), place(), place())];
      const found = intersectPaths(a, b);
      const chords = chordCrossings(flattenPath(a, 1e-3), flattenPath(b, 1e-3));
      // Nearly touching curves may differ between curve and chord; they are rare.
      if (found.length !== chords) continue;
      compared++;
    }
    expect(compared).toBeGreaterThanOrEqual(499);
  });

  it('finds the same places turned, mirrored and with the paths swapped', () => {
    const coordinate = fc.integer({ min: -90, max: 90 });
    const pair = fc.tuple(coordinate, coordinate);
    const four = fc.tuple(pair, pair, pair, pair);
    fc.assert(
      fc.property(four, four, fc.double({ min: -3, max: 3, noNaN: true }), (p, q, angle) => {
        const [a, b] = [[cubicOf(...p)], [cubicOf(...q)]];
        const plain = places(intersectPaths(a, b)).filter(({ kind }) => kind === 'crossing');
        const turn = rotationAbout({ x: 3, y: 8 }, angle);
        const mirror = reflectionIn({ x: 0, y: 1 }, { x: 5, y: 3 }) ?? turn;
        for (const map of [turn, mirror]) {
          const moved = intersectPaths(transformPath(map, a), transformPath(map, b));
          for (const { alongA, alongB } of plain) {
            const same = places(moved).some(
              (place) => Math.abs(place.alongA - alongA) < 1e-2 && Math.abs(place.alongB - alongB) < 1e-2,
            );
            expect(same || moved.some(({ kind }) => kind === 'overlap')).toBe(true);
          }
        }
        const swapped = places(intersectPaths(b, a));
        for (const { alongA, alongB } of plain) {
          const same = swapped.some(
            (place) => Math.abs(place.alongB - alongA) < 1e-2 && Math.abs(place.alongA - alongB) < 1e-2,
          );
          expect(same).toBe(true);
        }
      }),
      { seed: 7, numRuns: 200 },
    );
  });

  it('keeps to finite numbers for stretches without length and for far-off and tiny ones', () => {
    const speck = cubicOf([3, 4], [3, 4], [3, 4], [3, 4]);
    const tiny = cubicOf([0, 0], [1e-9, 2e-9], [3e-9, 1e-9], [4e-9, 4e-9]);
    const far = cubicOf([1e6, 1e6], [1e6 + 30, 1e6 + 90], [1e6 + 80, 1e6 - 50], [1e6 + 120, 1e6 + 20]);
    const all = [[speck], [tiny], [far], straight(3, 4, 3, 4), straight(1e6, 1e6, 1e6 + 120, 1e6 + 21), [ARCH]];
    for (const a of all) {
      for (const b of all) {
        for (const meeting of intersectPaths(a, b)) {
          const numbers = meeting.kind === 'overlap' ? [meeting.fromA, meeting.toB] : [meeting.alongA, meeting.alongB];
          expect(numbers.every(Number.isFinite)).toBe(true);
        }
      }
    }
    expect(intersectPaths([far], straight(1e6, 1e6 + 10, 1e6 + 120, 1e6 + 10)).length).toBe(3);
    expect(intersectPaths([speck], straight(0, 0, 6, 8)).length).toBe(1);
  });

  it('stays quick to end for curves that run beside one another for their whole length', () => {
    const [half] = splitSegment(ARCH, 0.5);
    const beside = transformPath(rotationAbout({ x: 0, y: 0 }, 1e-7), [half]);
    expect(places(intersectPaths([half], beside)).length).toBeLessThan(3);
  });
});

/** Crossings of two polylines, counted one pair of chords at a time. */
function chordCrossings(a: readonly Point[], b: readonly Point[]): number {
  const side = (p: Point, q: Point, r: Point) => Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
  let count = 0;
  for (let i = 1; i < a.length; i++) {
    const [p, q] = [a[i - 1] as Point, a[i] as Point];
    for (let j = 1; j < b.length; j++) {
      const [r, s] = [b[j - 1] as Point, b[j] as Point];
      if (side(p, q, r) !== side(p, q, s) && side(r, s, p) !== side(r, s, q)) count++;
    }
  }
  return count;
}
