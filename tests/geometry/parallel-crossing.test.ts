import { describe, expect, it } from 'vitest';
import { segmentAt } from '../../core/geometry/cubic-curve';
import { lastCrossing } from '../../core/geometry/parallel-crossing';
import { line } from '../../core/geometry/segment';
import { cubicOf } from './shapes';

describe('lastCrossing', () => {
  it('finds where the two arms of a parabola, moved inwards, cross on its axis', () => {
    // y = x²/80, 60 inside: the normals of length 60 meet the axis from x² = 2000.
    const parabola = cubicOf([-120, 180], [-40, -60], [40, -60], [120, 180]);
    const found = lastCrossing(
      { segment: parabola, span: { from: 0, to: 0.35 } },
      { segment: parabola, span: { from: 0.65, to: 1 } },
      -60,
    );
    expect(segmentAt(parabola, found?.first ?? 0).x).toBeCloseTo(-Math.sqrt(2000), 9);
    expect(segmentAt(parabola, found?.second ?? 0).x).toBeCloseTo(Math.sqrt(2000), 9);
  });

  it('finds none where there is none', () => {
    const across = { segment: line({ x: 0, y: 0 }, { x: 50, y: 0 }), span: { from: 0, to: 1 } };
    const beside = { segment: line({ x: 0, y: 40 }, { x: 50, y: 45 }), span: { from: 0, to: 1 } };
    expect(lastCrossing(across, beside, 10)).toBeUndefined();
  });
});
