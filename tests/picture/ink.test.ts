import { describe, expect, it } from 'vitest';
import { segmentAt } from '../../core/geometry/cubic-curve';
import { distance, type Point } from '../../core/geometry/point';
import { splineThrough } from '../../core/geometry/spline';
import { inkCosts } from '../../core/picture/ink-costs';
import { followedLine } from '../../core/picture/ink-followed';
import { inkLine, shownLine } from '../../core/picture/ink-line';
import { inkNear } from '../../core/picture/ink-meeting';
import { inkTree, wayTo } from '../../core/picture/ink-tree';
import { arcRun, type DrawnLine, drawnPage, furthestOff, letteringAt } from './drawn-page';

const arc = arcRun({ x: 40, y: 330 }, 290, -1.45, -0.1);
const [from, to] = [arc[0] as Point, arc[arc.length - 1] as Point];

function follow(lines: readonly DrawnLine[], a: Point, b: Point) {
  const grey = drawnPage({ width: 360, height: 340, lines });
  const way = wayTo(inkTree(inkCosts(grey), a, { reach: 400 }), b);
  const line = way && inkLine(grey, way);
  if (!line) throw new Error('there is a line to follow');
  return { line, points: followedLine(line, { from: a, to: b }) };
}

describe('a line drawn as an arc is followed within half its width, as one curve of few points', () => {
  it.each<[string, DrawnLine[]]>([
    ['solid', [{ run: arc, width: 3 }]],
    ['pale', [{ run: arc, width: 3, ink: 0.35 }]],
    ['dashed', [{ run: arc, width: 3, dashes: [18, 9] }]],
    ['dotted', [{ run: arc, width: 3, dashes: [2, 7] }]],
    ['broken', [{ run: arc, width: 3, dashes: [110, 17, 90, 13] }]],
    [
      'crossed',
      [
        { run: arc, width: 3 },
        {
          run: [
            { x: 150, y: 5 },
            { x: 200, y: 330 },
          ],
          width: 4,
        },
      ],
    ],
    ['lettered', [{ run: arc, width: 3 }, ...letteringAt({ x: 225, y: 130 }, 18, 3)]],
  ])('%s', (_, lines) => {
    const { line, points } = follow(lines, from, to);
    expect(furthestOff(line.points, arc)).toBeLessThan(1.5);
    expect(points.every((point) => point.kind === 'curve')).toBe(true);
    expect(points.length).toBeLessThanOrEqual(3);
  });
});

describe('a dashed or dotted line is kept to beside a solid one', () => {
  const [a, b] = [
    { x: 31, y: 170 },
    { x: 411, y: 183 },
  ];
  const solid = [
    { x: 20, y: 150 },
    { x: 430, y: 163 },
  ];
  const turned = (point: Point): Point => ({ x: point.y, y: point.x });
  const ways: [string, (point: Point) => Point][] = [
    ['as it is', (point) => point],
    ['mirrored', turned],
    ['upside down', ({ x, y }) => ({ x, y: 340 - y })],
  ];

  it.each(
    ways.flatMap(([how, laid]) => [
      { how, laid, kind: 'dashed', dashes: [18, 11] },
      { how, laid, kind: 'dotted', dashes: [2, 8] },
    ]),
  )('$kind, $how', ({ laid, dashes }) => {
    const straight = [laid(a), laid(b)];
    const grey = drawnPage({
      width: 440,
      height: 440,
      lines: [
        { run: straight, width: 3, dashes },
        { run: solid.map(laid), width: 3 },
      ],
    });
    const way = wayTo(inkTree(inkCosts(grey), laid(a), { reach: 440 }), laid(b));
    expect(furthestOff(way ?? [], straight)).toBeLessThan(3);
  });
});

it('a line that is only shown keeps to the way, at far fewer places', () => {
  const way = wayTo(
    inkTree(inkCosts(drawnPage({ width: 360, height: 340, lines: [{ run: arc, width: 3 }] })), from, { reach: 400 }),
    to,
  );
  const shown = shownLine(way ?? []);
  expect(shown.length).toBeGreaterThan(50);
  expect(shown.length).toBeLessThan((way?.length ?? 0) / 5);
  expect(furthestOff(shown, arc)).toBeLessThan(2);
});

it('turns a corner where the line does', () => {
  const run = [
    { x: 31, y: 47 },
    { x: 253.4, y: 70.2 },
    { x: 311, y: 290 },
  ];
  const { points } = follow([{ run, width: 3 }], run[0] as Point, run[2] as Point);
  expect(points.map((point) => point.kind)).toEqual(['corner']);
  expect(distance((points[0] as { at: Point }).at, run[1] as Point)).toBeLessThan(0.5);
});

it('points crowd neither a corner nor one another where an end was put beside the ink', () => {
  const lines = [{ run: arc, width: 3 }];
  for (const [aside, up] of [
    [2, 2],
    [-2, -2],
    [3, -1],
    [0, 3],
  ] as const) {
    const beside = { x: to.x + aside, y: to.y + up };
    const { points, line } = follow(lines, from, beside);
    const stops = [from, ...points.map(({ at }) => at), beside];
    const gaps = stops.slice(1).map((stop, i) => distance(stop, stops[i] as Point));
    expect(Math.min(...gaps)).toBeGreaterThan((290 * 1.35) / 12 - 2);
    // It runs into the end as it was put, and is on the ink elsewhere.
    const elsewhere = arc.filter((place) => distance(place, beside) > (290 * 1.35) / 12);
    const curve = splineThrough(stops).flatMap((segment) =>
      Array.from({ length: 60 }, (_, i) => segmentAt(segment, i / 59)),
    );
    expect(furthestOff(elsewhere, curve)).toBeLessThan(0.6 * line.width);
  }
});

describe('inkNear', () => {
  const meeting = { x: 120.3, y: 110.7 };
  const ray = (turn: number, length = 80) => ({
    x: meeting.x + length * Math.cos(turn),
    y: meeting.y + length * Math.sin(turn),
  });

  it.each([0, 0.3, 0.8])('finds corners and end ticks, turned by %d', (turn) => {
    const corner = [ray(turn), meeting, ray(turn + 1.4)];
    const tick = [ray(turn + Math.PI / 2, 12), ray(turn - Math.PI / 2, 12)];
    for (const lines of [
      [{ run: corner, width: 3 }],
      [
        { run: [meeting, ray(turn)], width: 2 },
        { run: tick, width: 2 },
      ],
    ]) {
      const found = inkNear(drawnPage({ width: 240, height: 220, lines }), { x: 124, y: 107 }, 11);
      expect(found?.what).toBe('meeting');
      expect(distance(found?.at ?? { x: 0, y: 0 }, meeting)).toBeLessThan(0.75);
    }
  });

  it.each([0, 0.04, 0.3, 0.8])('finds a fine end tick from every place beside it and on it, turned by %d', (turn) => {
    const lines = [
      { run: [meeting, ray(turn)], width: 2.2 },
      { run: [ray(turn + Math.PI / 2, 12), ray(turn - Math.PI / 2, 12)], width: 2.2 },
    ];
    const grey = drawnPage({ width: 240, height: 220, lines });
    for (let dx = -5; dx <= 5; dx++) {
      for (let dy = -5; dy <= 5; dy++) {
        const found = inkNear(grey, { x: meeting.x + dx, y: meeting.y + dy }, 10);
        expect(found?.what, `${dx} ${dy}`).toBe('meeting');
        expect(distance(found?.at ?? { x: 0, y: 0 }, meeting)).toBeLessThan(0.5);
      }
    }
  });

  it('finds a sharp corner from every place beside it', () => {
    for (const turn of [0, 0.7, 1.9, 3.1, 4.4]) {
      const grey = drawnPage({
        width: 240,
        height: 220,
        lines: [{ run: [ray(turn), meeting, ray(turn + 0.9)], width: 4 }],
      });
      for (let look = 0; look < 24; look++) {
        const angle = (look * Math.PI) / 12;
        const press = { x: meeting.x + 5 * Math.cos(angle), y: meeting.y + 5 * Math.sin(angle) };
        const found = inkNear(grey, press, 12);
        expect(found?.what, `${turn} ${look}`).toBe('meeting');
        expect(distance(found?.at ?? { x: 0, y: 0 }, meeting)).toBeLessThan(1.5);
      }
    }
  });

  it('finds nothing on bare paper', () => {
    expect(inkNear(drawnPage({ width: 90, height: 70, lines: [] }), { x: 41, y: 33 }, 11)).toBeUndefined();
  });
});
