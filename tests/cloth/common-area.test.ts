import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { commonArea } from '../../core/cloth/common-area';
import { rotationAbout, transformPoint } from '../../core/geometry/affine';
import type { Ring } from '../../core/geometry/polygon';
import { ringArea } from '../../core/geometry/polygon';
import { commonAreas } from '../../core/geometry/polygon-boolean';

const block = (x: number, y: number, wide: number, high: number): Ring => [
  { x, y },
  { x: x + wide, y },
  { x: x + wide, y: y + high },
  { x, y: y + high },
];

const turned = (ring: Ring, degrees: number) =>
  ring.map((point) => transformPoint(rotationAbout({ x: 31, y: -7 }, (degrees * Math.PI) / 180), point));

const yoke: Ring = [
  { x: 0, y: 0 },
  { x: 90, y: 0 },
  { x: 90, y: 60 },
  { x: 60, y: 60 },
  { x: 60, y: 20 },
  { x: 25, y: 20 },
  { x: 25, y: 70 },
  { x: 0, y: 70 },
];

describe('commonArea(a, b)', () => {
  it.each([0, 17, 45, 123])(
    'of two strips a yard long that lie in one another by so much, turned by %i°',
    (degrees) => {
      const strip = turned(block(0, 0, 914.4, 50.8), degrees);
      const beside = (by: number) => turned(block(20, 50.8 - by, 914.4, 50.8), degrees);
      expect(commonArea(strip, beside(0))).toBeLessThan(1e-8);
      expect(commonArea(strip, beside(-0.001))).toBe(0);
      expect(commonArea(strip, beside(0.001))).toBeCloseTo(894.4 * 0.001, 6);
      expect(commonArea(strip, beside(30))).toBeCloseTo(894.4 * 30, 5);
    },
  );

  it('of a block in the hollow of a yoke, and of one that is wider than it', () => {
    expect(commonArea(yoke, block(25, 20, 35, 80))).toBe(0);
    expect(commonArea(yoke, block(20, 20, 50, 20))).toBeCloseTo(5 * 20 + 10 * 20, 9);
    expect(commonArea(yoke, [...yoke].reverse())).toBeCloseTo(Math.abs(ringArea(yoke)), 9);
  });

  it('is what clipping finds, to the width of its grid', () => {
    const place = fc.record({
      x: fc.integer({ min: -80, max: 80 }),
      y: fc.integer({ min: -80, max: 80 }),
      degrees: fc.integer({ min: 0, max: 359 }),
    });
    fc.assert(
      fc.property(place, ({ x, y, degrees }) => {
        const other = turned(yoke, degrees).map((point) => ({ x: point.x + x, y: point.y + y }));
        const clipped = commonAreas([yoke], [other]);
        fc.pre(clipped.kind === 'areas');
        if (clipped.kind !== 'areas') return;
        const area = Math.abs(clipped.rings.reduce((sum, ring) => sum + ringArea(ring), 0));
        expect(Math.abs(commonArea(yoke, other) - area)).toBeLessThan(0.05);
      }),
      { seed: 5, numRuns: 200 },
    );
  });
});
