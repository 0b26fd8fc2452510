import { describe, expect, it } from 'vitest';
import { arcOfCircle } from '../../core/geometry/arc';
import { segmentAt } from '../../core/geometry/cubic-curve';
import { pathEnd } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';

/** The furthest any of many places is from the circle. */
function offCircle(sweep: number, radius: number, accuracy: number): number {
  const arc = arcOfCircle({ x: 7, y: -3 }, { x: 7 + radius, y: -3 }, sweep, accuracy);
  let worst = 0;
  for (const piece of arc) {
    for (let i = 0; i <= 200; i++) {
      worst = Math.max(worst, Math.abs(distance(segmentAt(piece, i / 200), { x: 7, y: -3 }) - radius));
    }
  }
  return worst;
}

describe('arcOfCircle', () => {
  it('is off by what such arcs are, computed with mpmath', () => {
    const single = [
      [15, 5.82262765192061e-9],
      [30, 3.72661856304366e-7],
      [45, 4.245527875356312e-6],
      [60, 2.3864414794310316e-5],
      [90, 2.725299524410202e-4],
    ] as const;
    for (const [degrees, error] of single) {
      expect(Math.abs(offCircle((degrees * Math.PI) / 180, 1, 1) / error - 1)).toBeLessThan(1e-3);
    }
  });

  it('keeps any accuracy for any sweep either way', () => {
    for (const sweep of [0.3, -2, 5.5, -6.283]) {
      for (const accuracy of [0.1, 0.01, 1e-4]) {
        expect(offCircle(sweep, 200, accuracy)).toBeLessThanOrEqual(accuracy);
      }
    }
  });

  it('ends where the sweep says, clockwise to the eye for positive sweeps', () => {
    const arc = arcOfCircle({ x: 0, y: 0 }, { x: 10, y: 0 }, Math.PI / 2, 0.01);
    expect(distance(pathEnd(arc), { x: 0, y: 10 })).toBeLessThan(1e-12);
  });
});
