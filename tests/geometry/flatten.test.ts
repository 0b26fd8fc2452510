import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { segmentAt } from '../../core/geometry/cubic-curve';
import { distanceToChord, flattenPath } from '../../core/geometry/flatten';
import { nearestOnPath } from '../../core/geometry/path';
import { between, type Point } from '../../core/geometry/point';
import { line } from '../../core/geometry/segment';
import { cubicOf } from './shapes';

const coordinate = fc.double({ min: -150, max: 150, noNaN: true });
const pair = fc.tuple(coordinate, coordinate);

describe('flattenPath', () => {
  it('stays within its tolerance both ways, whatever the curve', () => {
    fc.assert(
      fc.property(pair, pair, pair, pair, fc.constantFrom(0.01, 0.1, 2), (a, b, c, d, tolerance) => {
        const curve = cubicOf(a, b, c, d);
        const corners = flattenPath([curve], tolerance);
        const chords = corners.slice(1).map((point, i) => [corners[i] as Point, point] as const);
        for (let i = 0; i <= 100; i++) {
          const place = segmentAt(curve, i / 100);
          const off = Math.min(...chords.map(([from, to]) => distanceToChord(place, from, to)));
          expect(off).toBeLessThanOrEqual(tolerance + 1e-9);
        }
        for (const [from, to] of chords) {
          expect(nearestOnPath([curve], between(from, to, 0.5)).distance).toBeLessThanOrEqual(tolerance + 1e-9);
        }
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  it('keeps ends and corners exactly and needs no more for lines', () => {
    const path = [line({ x: 0, y: 1 }, { x: 5, y: 9 }), line({ x: 5, y: 9 }, { x: 20, y: 4 })];
    expect(flattenPath(path, 0.01)).toEqual([
      { x: 0, y: 1 },
      { x: 5, y: 9 },
      { x: 20, y: 4 },
    ]);
    expect(flattenPath([], 0.01)).toEqual([]);
  });

  it('doubles its chords when the tolerance is quartered', () => {
    const arch = [cubicOf([0, 0], [0, 100], [100, 100], [100, 0])];
    const [coarse, fine] = [flattenPath(arch, 0.16).length, flattenPath(arch, 0.0025).length];
    expect(fine / coarse).toBeGreaterThan(6);
    expect(fine / coarse).toBeLessThan(10);
  });

  it('ends also when asked for the impossible', () => {
    expect(flattenPath([cubicOf([0, 0], [1, 3], [4, -2], [5, 5])], 0).length).toBeGreaterThan(1000);
  });
});
