import { describe, expect, it } from 'vitest';
import { distance, type Point } from '../../core/geometry/point';
import { applyHomography } from '../../core/geometry/projective';
import {
  barsMeasured,
  type Calibration,
  calibrationLook,
  type FourCorners,
  mendedBy,
  type ScreenMap,
  screenMap,
} from '../../core/screen/calibration';

function mapOf(calibration: Calibration): ScreenMap {
  const map = screenMap(calibration);
  if (map.kind !== 'screen-map') throw new Error(map.why);
  return map;
}

const at = (map: ScreenMap, x: number, y: number) => applyHomography(map.toScreen, { x, y }) as Point;

/** A beam that falls aslant: a pinhole 900 mm over the table, tilted and turned, as a closed form. */
function throughPinhole({ x, y }: Point): Point {
  const [c, s] = [Math.cos(0.31), Math.sin(0.31)];
  const [u, v] = [x * Math.cos(0.1) - y * Math.sin(0.1), x * Math.sin(0.1) + y * Math.cos(0.1)];
  const depth = 900 + v * s;
  return { x: 640 + (1100 * u) / depth, y: 410 + (1100 * v * c) / depth };
}

describe('screenMap', () => {
  it('is a plain scale, across and down apart, for two measured bars', () => {
    // 1,000 px measured 254 mm and 600 px measured 151 mm.
    const map = mapOf(
      barsMeasured({ corner: { x: 24, y: 24 }, acrossPx: 1000, downPx: 600 }, { across: 254, down: 151 }),
    );
    const from = at(map, 30, 20);
    expect(distance(from, at(map, 130, 20))).toBeCloseTo((100 * 1000) / 254, 8);
    expect(distance(from, at(map, 30, 90))).toBeCloseTo((70 * 600) / 151, 8);
  });

  it('is the beam itself once its four corners lie on a rectangle, everywhere on the table', () => {
    const [across, down] = [610, 457];
    const corners = [
      { x: 0, y: 0 },
      { x: across, y: 0 },
      { x: across, y: down },
      { x: 0, y: down },
    ].map(throughPinhole) as unknown as FourCorners;
    const map = mapOf({ corners, across, down });
    for (const [x, y] of [
      [305, 228],
      [-120, 40],
      [700, 600],
      [11, 433],
    ] as const) {
      // Told to draw at (x, y), it lights what the beam throws there.
      expect(distance(at(map, x, y), throughPinhole({ x, y }))).toBeLessThan(1e-6);
      const back = applyHomography(map.toPlane, throughPinhole({ x, y })) as Point;
      expect(distance(back, { x, y })).toBeLessThan(1e-6);
    }
  });

  it('refuses corners that cross or lie in one line, and sides that were not measured', () => {
    const corners = [
      { x: 100, y: 100 },
      { x: 900, y: 120 },
      { x: 880, y: 600 },
      { x: 90, y: 590 },
    ] as const;
    const swapped = [corners[1], corners[0], corners[2], corners[3]] as const;
    const inLine = [corners[0], { x: 500, y: 500 }, { x: 600, y: 600 }, { x: 700, y: 700 }] as const;
    const sides = { across: 400, down: 300 };
    expect(screenMap({ corners: swapped, ...sides })).toEqual({ kind: 'no-screen-map', why: 'corners' });
    expect(screenMap({ corners: inLine, ...sides })).toEqual({ kind: 'no-screen-map', why: 'corners' });
    for (const across of [0, -5, Number.NaN, 12]) {
      expect(screenMap({ corners, across, down: 300 })).toEqual({ kind: 'no-screen-map', why: 'lengths' });
    }
  });
});

describe('mendedBy', () => {
  it('makes the square measure what it should', () => {
    const calibration = barsMeasured(
      { corner: { x: 24, y: 24 }, acrossPx: 900, downPx: 700 },
      { across: 240, down: 190 },
    );
    const before = mapOf(calibration);
    // The square of 100 mm measures 101.5 across and 99 down: a pixel is larger, and smaller, than was thought.
    const after = mapOf(mendedBy(calibration, 100, { across: 101.5, down: 99 }));
    const px = (map: ScreenMap, dx: number, dy: number) => distance(at(map, 10, 10), at(map, 10 + dx, 10 + dy));
    expect(px(after, 100, 0) / px(before, 100, 0)).toBeCloseTo(100 / 101.5, 10);
    expect(px(after, 0, 100) / px(before, 0, 100)).toBeCloseTo(100 / 99, 10);
  });
});

describe('calibrationLook', () => {
  const bars = { corner: { x: 24, y: 24 }, acrossPx: 1000, downPx: 700 };
  const look = (across: number, down: number, kind: 'screen' | 'beam') => {
    const calibration = barsMeasured(bars, { across, down });
    return calibrationLook(mapOf(calibration), calibration, kind);
  };

  it('says how much a pixel is', () => {
    // 96 px to the inch, the CSS reference pixel (CSS Values and Units, 5.2): 0.2646 mm.
    const { pixel, unlike } = look((1000 / 96) * 25.4, (700 / 96) * 25.4, 'screen');
    expect([pixel.across, pixel.down]).toEqual([expect.closeTo(25.4 / 96, 9), expect.closeTo(25.4 / 96, 9)]);
    expect(unlike).toBeUndefined();
  });

  it('doubts a screen whose pixels are not square, but not a beam', () => {
    expect(look(250, 160, 'screen').unlike).toBeCloseTo(250 / 1000 / (160 / 700) - 1, 9);
    expect(look(250, 160, 'beam').unlike).toBeUndefined();
  });
});
