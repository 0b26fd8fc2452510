import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fewerCorners } from '../../core/cloth/fewer-corners';
import { nearestOnPath } from '../../core/geometry/path';
import { placeInRing, ringArea } from '../../core/geometry/polygon';
import { line } from '../../core/geometry/segment';

it('fewerCorners(ring, most) holds the whole ring, with fewer corners, none further off than asked', () => {
  const wavy = fc.array(fc.double({ min: -1.5, max: 1.5, noNaN: true }), { minLength: 44, maxLength: 60 });
  fc.assert(
    fc.property(wavy, (bumps) => {
      const ring = bumps.map((bump, i) => {
        const angle = (2 * Math.PI * i) / bumps.length;
        return { x: (90 + bump) * Math.cos(angle), y: (60 + bump) * Math.sin(angle) };
      });
      const path = ring.map((point, i) => line(point, ring[(i + 1) % ring.length] ?? point));
      const fewer = fewerCorners(ring, 2);
      expect(fewer.length).toBeLessThan(ring.length);
      expect(ringArea(fewer)).toBeGreaterThanOrEqual(ringArea(ring) - 1e-9);
      for (const point of ring) expect(placeInRing(fewer, point)).not.toBe('outside');
      for (const point of fewer) expect(nearestOnPath(path, point).distance).toBeLessThan(2.001);
    }),
    { seed: 7, numRuns: 60 },
  );
});

it('fewerCorners(ring, most) leaves a rectangle as it is', () => {
  const rectangle = [
    { x: 0, y: 0 },
    { x: 914.4, y: 0 },
    { x: 914.4, y: 70 },
    { x: 0, y: 70 },
  ];
  expect(fewerCorners(rectangle, 3)).toEqual(rectangle);
});
