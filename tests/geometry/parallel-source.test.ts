import { describe, expect, it } from 'vitest';
import { segmentAt, segmentCurvature } from '../../core/geometry/cubic-curve';
import { forwardSpans, parallelPlace, type Span, steadyStretches } from '../../core/geometry/parallel-source';
import { distance } from '../../core/geometry/point';
import { line, type Segment } from '../../core/geometry/segment';
import { cubicOf, seededRandom } from './shapes';

const PARABOLA = cubicOf([-120, 180], [-40, -60], [40, -60], [120, 180]);

describe('parallelPlace', () => {
  it('lies square to the stretch, to the left of travel', () => {
    const { point } = parallelPlace(cubicOf([0, 0], [0, 100], [100, 100], [100, 0]), 10, 0.5);
    // Travelling right along the top of the arch (its largest y, the lowest place to the eye), left is up: y less.
    expect(distance(point, { x: 50, y: 65 })).toBeLessThan(1e-12);
  });
});

describe('forwardSpans', () => {
  it('leave out where the distance exceeds the radius: the parabola y = x²/80 at 60 inside', () => {
    // Radius 40·(1 + x²/1600)^(3/2) = 60 at x² = 1600·(1.5^(2/3) - 1).
    const x = Math.sqrt(1600 * (1.5 ** (2 / 3) - 1));
    const [before, after] = forwardSpans(PARABOLA, -60) as [Span, Span];
    expect(segmentAt(PARABOLA, before.to).x).toBeCloseTo(-x, 9);
    expect(segmentAt(PARABOLA, after.from).x).toBeCloseTo(x, 9);
    expect(forwardSpans(PARABOLA, 60)).toEqual([{ from: 0, to: 1 }]);
    expect(forwardSpans(PARABOLA, -39.9)).toEqual([{ from: 0, to: 1 }]);
    expect(forwardSpans(line({ x: 0, y: 0 }, { x: 9, y: 1 }), -60)).toEqual([{ from: 0, to: 1 }]);
  });

  it('agree with the sign of 1 + d·k at many places of 300 seeded curves', () => {
    const random = seededRandom(6);
    const place = () => [random() * 200, random() * 200] as const;
    for (let i = 0; i < 300; i++) {
      const curve = cubicOf(place(), place(), place(), place());
      const spans = forwardSpans(curve, 14);
      for (let k = 1; k < 200; k++) {
        const factor = 1 + 14 * segmentCurvature(curve, k / 200);
        if (Math.abs(factor) < 1e-6) continue;
        expect(spans.some(({ from, to }) => k / 200 > from && k / 200 < to)).toBe(factor > 0);
      }
    }
  });
});

describe('steadyStretches', () => {
  it('split at a cusp and at a turning back, and leave out what has no length', () => {
    const cusp = cubicOf([0, 0], [100, 100], [0, 100], [100, 0]);
    expect(steadyStretches([cusp]).map(({ p0 }) => p0.x)).toEqual([0, expect.closeTo(50, 9)]);
    const back = cubicOf([0, 0], [90, 120], [90, 120], [0, 0]);
    expect(steadyStretches([back]).length).toBe(2);
    const none: Segment[] = [line({ x: 5, y: 6 }, { x: 5, y: 6 }), cubicOf([5, 6], [5, 6], [5, 6], [5, 6])];
    expect(steadyStretches(none)).toEqual([]);
    expect(steadyStretches([PARABOLA])).toEqual([PARABOLA]);
  });
});
