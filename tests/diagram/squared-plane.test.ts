import { describe, expect, it } from 'vitest';
import { inFrontOnly } from '../../core/diagram/laid-out';
import { fromPlane, onPlane, squaredPlane } from '../../core/diagram/squared-plane';
import type { Quad } from '../../core/garment/diagram';
import { distance } from '../../core/geometry/point';
import { at } from '../seams/pieces';
import { seenBy } from './camera';
import { sampleDiagram } from './sample-diagram';

const corners: Quad = [at(200, 190), at(1800, 230), at(1750, 2400), at(160, 2350)];

function planeOf(more: Parameters<typeof sampleDiagram>[0]) {
  const plane = squaredPlane(sampleDiagram(more));
  if (plane.kind !== 'squared') throw new Error(plane.why);
  return plane;
}

describe('squaredPlane', () => {
  it('leaves a flat picture as it is, and turns it by quarters clockwise', () => {
    expect(planeOf({})).toMatchObject({ across: 2000, down: 2600, aspectFrom: 'flat' });
    const turned = planeOf({ quarterTurns: 1 });
    expect([turned.across, turned.down]).toEqual([2600, 2000]);
    // Its bottom left corner comes to the top left.
    expect(distance(onPlane(turned, at(0, 2600)) ?? at(9, 9), at(0, 0))).toBeLessThan(1e-9);
    expect(distance(onPlane(turned, at(700, 300)) ?? at(9, 9), at(2300, 700))).toBeLessThan(1e-9);
    for (const quarterTurns of [0, 1, 2, 3] as const) {
      const plane = planeOf({ quarterTurns, corners });
      const there = onPlane(plane, at(700, 300)) ?? at(0, 0);
      expect(distance(fromPlane(plane, there) ?? at(0, 0), at(700, 300))).toBeLessThan(1e-6);
    }
  });

  it('brings the four corners to those of a rectangle of the proportion said', () => {
    const squareUp = { kind: 'rectangle', corners, sides: { kind: 'ratio', across: 210, down: 297 } } as const;
    const plane = planeOf({ squareUp });
    expect(plane.aspectFrom).toBe('said');
    expect(plane.across / plane.down).toBeCloseTo(210 / 297, 12);
    const wanted = [at(0, 0), at(plane.across, 0), at(plane.across, plane.down), at(0, plane.down)];
    corners.forEach((corner, i) => {
      expect(distance(onPlane(plane, corner) ?? at(-1, -1), wanted[i] ?? at(0, 0))).toBeLessThan(1e-6);
    });
  });

  it('takes the means of opposite sides where neither she nor the perspective says', () => {
    // A leaning parallelogram has no perspective to read.
    const leaning: Quad = [at(100, 100), at(700, 130), at(720, 930), at(120, 900)];
    const plane = planeOf({ corners: leaning });
    expect(plane.aspectFrom).toBe('sides');
    expect(plane.across / plane.down).toBeCloseTo(Math.hypot(600, 30) / Math.hypot(20, 800), 9);
  });

  it('takes the proportion from the focal length a camera noted, where the perspective leaves it open', () => {
    // Held over the page and tilted about one axis only: the view says nothing of the lens.
    const [width, height] = [2000, 2600];
    const camera = { focalPx: 2100, centre: at(width / 2, height / 2), distance: 2600, lookAt: at(600, 850) };
    for (const tilt of [12, 25]) {
      const seen = seenBy({ ...camera, tilt: [tilt, 0, 0] });
      const page = [at(0, 0), at(1200, 0), at(1200, 1700), at(0, 1700)].map(seen) as unknown as Quad;
      const told = planeOf({ corners: page, focalPx: 2100 });
      expect(told.aspectFrom).toBe('photo');
      expect(told.across / told.down).toBeCloseTo(1200 / 1700, 6);
      // Without it the means of the sides are off by about 1 less the cosine of the tilt.
      const untold = planeOf({ corners: page });
      expect(untold.aspectFrom).toBe('sides');
      const off = untold.across / untold.down / (1200 / 1700) - 1;
      expect(off).toBeGreaterThan(0.7 * (1 - Math.cos((tilt * Math.PI) / 180)));
    }
  });

  it.each<readonly [string, Quad]>([
    ['too-small', [at(0, 0), at(15, 1), at(16, 900), at(2, 910)]],
    ['crossed', [at(100, 100), at(900, 800), at(880, 120), at(130, 790)]],
    ['concave', [at(100, 100), at(900, 110), at(350, 300), at(130, 790)]],
    ['three-in-line', [at(100, 100), at(500, 100), at(900, 100), at(300, 800)]],
  ])('refuses corners that are %s', (why, each) => {
    expect(squaredPlane(sampleDiagram({ corners: each }))).toEqual({ kind: 'not-squared', why });
  });
});

describe('inFrontOnly', () => {
  it('gives no place on the horizon or beyond it', () => {
    // The horizon is x = 500: the denominator is 1 - x / 500.
    const map = [1, 0, 0, 0, 1, 0, -1 / 500, 0, 1] as const;
    expect(inFrontOnly(map, at(100, 40), at(7, 9))).toEqual({ x: 125, y: 50 });
    expect(inFrontOnly(map, at(500, 40), at(7, 9))).toBeUndefined();
    expect(inFrontOnly(map, at(600, 40), at(7, 9))).toBeUndefined();
    expect(inFrontOnly(map, at(600, 40), at(900, 9))).toBeDefined();
  });
});
