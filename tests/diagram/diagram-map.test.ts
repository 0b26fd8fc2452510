import { describe, expect, it } from 'vitest';
import { type DiagramMap, diagramMap, photoToTable } from '../../core/diagram/diagram-map';
import type { Quad } from '../../core/garment/diagram';
import { distance, type Point } from '../../core/geometry/point';
import { seenBy } from './camera';
import { known, sampleDiagram, set } from './sample-diagram';

const inch = 25.4;

function mapOf(diagram: Parameters<typeof diagramMap>[0]): DiagramMap {
  const map = diagramMap(diagram, set);
  if (map.kind !== 'map') throw new Error(map.why);
  return map;
}

function onTable(map: DiagramMap, photo: Point): Point {
  const at = photoToTable(map, photo);
  if (!at) throw new Error('beyond the horizon');
  return at;
}

describe('squaring up', () => {
  // A worked squaring of a page of 10 by 14 in, computed independently by solving the eight equations with numpy.
  const corners: Quad = [
    { x: 100, y: 120 },
    { x: 1080, y: 150 },
    { x: 1030, y: 1500 },
    { x: 140, y: 1460 },
  ];
  const worked = sampleDiagram({
    corners,
    knownLengths: [
      known('across', corners[0], corners[1], 10 * inch),
      known('down', corners[0], corners[3], 14 * inch),
    ],
  });

  it.each([
    [600, 800, 5.1583, 6.5806],
    [580, 135, 4.9241, 0.0029],
    [300, 400, 2.0113, 2.6464],
  ])('photo point (%d, %d) lies at (%d, %d) in', (x, y, across, down) => {
    const at = onTable(mapOf(worked), { x, y });
    expect(at.x / inch).toBeCloseTo(across, 3);
    expect(at.y / inch).toBeCloseTo(down, 3);
  });

  it('a page seen at 10 degrees has every distance right to a hundredth of a per cent', () => {
    const see = seenBy({
      focalPx: 2900,
      centre: { x: 1000, y: 1300 },
      tilt: [10, -7, 3],
      distance: 330,
      lookAt: { x: 92, y: 131 },
    });
    const page = (x: number, y: number) => see({ x, y });
    const diagram = sampleDiagram({
      corners: [page(0, 0), page(190, 0), page(190, 260), page(0, 260)],
      knownLengths: [known('a', page(20, 30), page(170, 30), 150), known('b', page(40, 20), page(40, 240), 220)],
    });
    const map = mapOf(diagram);
    const places = [
      [12, 17],
      [180, 25],
      [95, 133],
      [31, 249],
      [166, 211],
    ] as const;
    for (const [x, y] of places) {
      for (const [u, v] of places) {
        const true_ = Math.hypot(u - x, v - y);
        const found = distance(onTable(map, page(x, y)), onTable(map, page(u, v)));
        expect(Math.abs(found - true_)).toBeLessThanOrEqual(true_ * 1e-4 + 1e-9);
      }
    }
  });

  it('reads the proportion of the rectangle off the photo when nothing else says it', () => {
    const see = seenBy({
      focalPx: 3000,
      centre: { x: 1000, y: 1300 },
      tilt: [22, 14, 5],
      distance: 420,
      lookAt: { x: 60, y: 110 },
    });
    const page = (x: number, y: number) => see({ x, y });
    const diagram = sampleDiagram({
      corners: [page(0, 0), page(148, 0), page(148, 210), page(0, 210)],
      knownLengths: [known('a', page(10, 20), page(140, 20), 130)],
    });
    const map = mapOf(diagram);
    expect(map.plane.aspectFrom).toBe('photo');
    expect(distance(onTable(map, page(30, 15)), onTable(map, page(30, 195)))).toBeCloseTo(180, 3);
  });

  // A camera tilted about one axis only, corners placed within a pixel: the photo's own perspective says next to nothing.
  it.each([
    [10, 0.4, -0.9, 0.7],
    [10, -0.8, 0.6, -0.3],
    [5, 0.9, 0.5, -0.7],
    [15, -0.6, 0.8, 0.9],
  ])('does not believe a proportion that a pixel would upset: tilt %d', (tilt, a, b, c) => {
    const see = seenBy({
      focalPx: 2900,
      centre: { x: 1000, y: 1300 },
      tilt: [tilt, 0, 2],
      distance: 330,
      lookAt: { x: 92, y: 131 },
    });
    const slipped = (x: number, y: number, dx: number, dy: number) => ({
      x: see({ x, y }).x + dx,
      y: see({ x, y }).y + dy,
    });
    const corners: Quad = [
      slipped(0, 0, a, b),
      slipped(190, 0, b, c),
      slipped(190, 260, c, a),
      slipped(0, 260, -b, -a),
    ];
    const { plane } = mapOf(sampleDiagram({ corners }));
    expect(plane.aspectFrom).toBe('sides');
    // The mean of the sides is off by about what the tilt foreshortens, 1 - cos(tilt), and a pixel.
    const off = Math.abs(plane.across / plane.down / (190 / 260) - 1);
    expect(off).toBeLessThan(1 / Math.cos((tilt * Math.PI) / 180) - 1 + 0.003);
  });

  it.each([
    [
      'three-in-line',
      [
        [100, 100],
        [900, 100],
        [1700, 100],
        [100, 1500],
      ],
    ],
    [
      'crossed',
      [
        [100, 100],
        [1700, 140],
        [150, 1500],
        [1650, 1450],
      ],
    ],
    [
      'concave',
      [
        [100, 100],
        [1700, 120],
        [420, 380],
        [130, 1500],
      ],
    ],
    [
      'too-small',
      [
        [100, 100],
        [112, 100],
        [112, 111],
        [100, 111],
      ],
    ],
  ] as const)('refuses corners that are %s', (why, places) => {
    const corners = places.map(([x, y]) => ({ x, y })) as unknown as Quad;
    expect(diagramMap(sampleDiagram({ corners }), set)).toEqual({ kind: 'not-squared', why });
  });

  it('a quarter turn lays a sideways piece upright', () => {
    const map = mapOf(
      sampleDiagram({ quarterTurns: 1, knownLengths: [known('a', { x: 0, y: 0 }, { x: 2000, y: 0 }, 2000)] }),
    );
    expect(onTable(map, { x: 0, y: 2600 })).toEqual({ x: expect.closeTo(0, 9), y: expect.closeTo(0, 9) });
    expect(onTable(map, { x: 0, y: 0 })).toEqual({ x: expect.closeTo(2600, 9), y: expect.closeTo(0, 9) });
  });
});

describe('scale', () => {
  it('412 px that are 7 in make 58.857 px an inch, and 1,530 px are 25.995 in (arithmetic)', () => {
    const map = mapOf(sampleDiagram({ knownLengths: [known('a', { x: 50, y: 60 }, { x: 462, y: 60 }, 7 * inch)] }));
    expect(inch / map.across).toBeCloseTo(58.857, 3);
    expect(distance(onTable(map, { x: 100, y: 300 }), onTable(map, { x: 100, y: 1830 })) / inch).toBeCloseTo(25.995, 3);
    expect(map.scale?.split).toBe(false);
  });

  it('a picture stretched by 1 per cent across is corrected from two lengths at right angles', () => {
    const map = mapOf(
      sampleDiagram({
        knownLengths: [
          known('across', { x: 100, y: 200 }, { x: 100 + 909, y: 200 }, 900),
          known('down', { x: 150, y: 300 }, { x: 150, y: 1500 }, 1200),
        ],
      }),
    );
    expect(map.scale?.split).toBe(true);
    expect(map.across).toBeCloseTo(900 / 909, 9);
    expect(map.down).toBeCloseTo(1, 9);
  });

  it('finds the line that disagrees, and what the others make of it', () => {
    const map = mapOf(
      sampleDiagram({
        knownLengths: [
          known('a', { x: 0, y: 0 }, { x: 1000, y: 0 }, 500),
          known('b', { x: 0, y: 0 }, { x: 0, y: 2000 }, 1000),
          known('c', { x: 100, y: 100 }, { x: 900, y: 700 }, 515),
        ],
      }),
    );
    const c = map.scale?.lines.find((line) => line.id === 'c');
    expect(c?.byOthers).toBeCloseTo(500, 6);
    expect(c?.measures).toBeGreaterThan(500);
    expect(c?.measures).toBeLessThan(515);
  });

  it('a share of a measure is the same scale as its length written out', () => {
    const run = [
      { x: 90, y: 100 },
      { x: 890, y: 100 },
    ] as const;
    const share = mapOf(
      sampleDiagram({
        knownLengths: [
          { id: 's', from: run[0], to: run[1], says: { kind: 'share', measure: 'waist', parts: 1, of: 4, ease: 12.7 } },
        ],
      }),
    );
    const length = mapOf(sampleDiagram({ knownLengths: [known('l', run[0], run[1], 711.2 / 4 + 12.7)] }));
    expect(share.across).toBeCloseTo(length.across, 12);
  });

  it('without a known length there is no scale, only a stand-in', () => {
    const map = mapOf(sampleDiagram());
    expect(map.scale).toBeUndefined();
    expect(map.down * 2600).toBeCloseTo(500, 9);
  });
});
