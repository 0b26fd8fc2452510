import { describe, expect, it } from 'vitest';
import { pieceDrawing } from '../../core/drawing/piece-drawing';
import { transformPoint } from '../../core/geometry/affine';
import { distance, type Point } from '../../core/geometry/point';
import { barsMeasured, type ScreenMap, screenMap } from '../../core/screen/calibration';
import { type Lying, lineOnScreen, linesOnScreen, onPlane } from '../../core/screen/full-size';
import { fromItsCorner, gridLines, planeInSight, stepped, tableInSight } from '../../core/screen/pan-steps';
import { testSquare } from '../../core/screen/test-square';
import { rectangle } from '../paper/pieces';

const size = { width: 1048, height: 748 };

/** 4 px to the mm across and 3.5 px down: 1,000 px are 250 mm and 700 px are 200 mm. */
function plain(): ScreenMap {
  const map = screenMap(
    barsMeasured({ corner: { x: 24, y: 24 }, acrossPx: 1000, downPx: 700 }, { across: 250, down: 200 }),
  );
  if (map.kind !== 'screen-map') throw new Error('no map');
  return map;
}

/** A beam so tilted that its horizon crosses the plane. */
function tilted(): ScreenMap {
  const corners = [
    { x: 400, y: 200 },
    { x: 600, y: 200 },
    { x: 900, y: 700 },
    { x: 100, y: 700 },
  ] as const;
  const map = screenMap({ corners, across: 300, down: 200 });
  if (map.kind !== 'screen-map') throw new Error('no map');
  return map;
}

const inSight = (map: ScreenMap) => planeInSight(map, size) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };

describe('linesOnScreen', () => {
  it('draws a rectangle of 110 by 70 mm 440 px wide and 245 px high', () => {
    const piece = rectangle(30, 40, 110, 70);
    const [cut] = linesOnScreen(pieceDrawing(piece), { from: { x: 10, y: 20 }, turns: 0 }, plain());
    const xs = cut?.points.map(({ x }) => x) ?? [];
    const ys = cut?.points.map(({ y }) => y) ?? [];
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(440, 6);
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(245, 6);
    // 20 mm of the table lie before it each way, counted from the corner of the bars.
    expect(Math.min(...xs)).toBeCloseTo(24 + 20 * 4, 6);
    expect(Math.min(...ys)).toBeCloseTo(24 + 20 * 3.5, 6);
  });

  it('turns by quarters clockwise to the eye', () => {
    const right = { x: 5, y: 0 };
    const turned = ([0, 1, 2, 3] as const).map((turns) =>
      transformPoint(onPlane({ from: { x: 0, y: 0 }, turns }), right),
    );
    const expected = [
      [5, 0],
      [0, 5],
      [-5, 0],
      [0, -5],
    ];
    turned.forEach(({ x, y }, index) => {
      expect([x, y]).toEqual(expected[index]?.map((each) => expect.closeTo(each, 9)));
    });
  });

  it('cuts off what lies behind the horizon of a beam, and keeps straight lines straight', () => {
    const [run, ...more] = lineOnScreen(
      [
        { x: 150, y: 150 },
        { x: 150, y: 5000 },
      ],
      tilted(),
    );
    expect(more).toEqual([]);
    for (const { x, y } of run ?? []) {
      expect(x).toBeCloseTo(500, 6);
      expect(Number.isFinite(y)).toBe(true);
    }
    expect(run).toHaveLength(2);
    expect(
      lineOnScreen(
        [
          { x: 0, y: 5000 },
          { x: 300, y: 5000 },
        ],
        tilted(),
      ),
    ).toEqual([]);
  });
});

describe('stepped', () => {
  it('goes on by whole squares, so that the grid stays where it is on the screen', () => {
    const map = plain();
    const sight = inSight(map);
    expect(sight).toEqual({
      minX: expect.closeTo(-6, 9),
      minY: expect.closeTo(-24 / 3.5, 9),
      maxX: expect.closeTo(256, 9),
      maxY: expect.closeTo(724 / 3.5, 9),
    });
    const square = 25.4;
    for (const turns of [0, 1, 2, 3] as const) {
      let lying: Lying = fromItsCorner(
        { minX: 13, minY: 7, maxX: 500, maxY: 900 },
        turns,
        sight,
        { x: 0, y: 0 },
        square,
      );
      const crossing = (now: Lying): Point => {
        const { x, y } = transformPoint(onPlane(now), { x: 0, y: 0 });
        return { x: ((x % square) + square) % square, y: ((y % square) + square) % square };
      };
      const first = crossing(lying);
      const sightBefore = tableInSight(sight, lying);
      for (const way of ['right', 'down', 'down', 'left'] as const) {
        lying = stepped(lying, way, sight, square);
        const now = crossing(lying);
        // Just under one square is as good as none.
        for (const axis of ['x', 'y'] as const) {
          const apart = Math.abs(now[axis] - first[axis]);
          expect(Math.min(apart, square - apart)).toBeLessThan(1e-6);
        }
      }
      expect(tableInSight(sight, lying)).not.toEqual(sightBefore);
    }
  });

  it('comes back by the opposite way, and leaves a quarter of what was in sight', () => {
    const sight = inSight(plain());
    const lying: Lying = { from: { x: 3, y: 5 }, turns: 0 };
    const there = stepped(lying, 'right', sight, 25.4);
    // 262 mm are in sight: 7 squares of 25.4 mm are the most within three quarters of it.
    expect(there.from.x - 3).toBeCloseTo(7 * 25.4, 9);
    expect(stepped(there, 'left', sight, 25.4).from.x).toBeCloseTo(3, 9);
  });
});

describe('fromItsCorner', () => {
  it('shows the corner of the piece near the corner of the screen, whichever way it is turned', () => {
    const sight = inSight(plain());
    const piece = { minX: 113, minY: -47, maxX: 613, maxY: 853 };
    for (const turns of [0, 1, 2, 3] as const) {
      const lying = fromItsCorner(piece, turns, sight, { x: 101.6, y: -50.8 }, 25.4);
      const corners = [
        { x: piece.minX, y: piece.minY },
        { x: piece.maxX, y: piece.maxY },
      ].map((corner) => transformPoint(onPlane(lying), corner));
      const [x, y] = [Math.min(...corners.map((p) => p.x)), Math.min(...corners.map((p) => p.y))];
      expect(x).toBeGreaterThanOrEqual(sight.minX);
      expect(y).toBeGreaterThanOrEqual(sight.minY);
      expect(distance({ x, y }, { x: sight.minX, y: sight.minY })).toBeLessThan(60);
    }
  });
});

describe('gridLines', () => {
  it('bears the numbers of the piece, not of the screen', () => {
    const lines = gridLines({ minX: 103, minY: -7, maxX: 182, maxY: 31 }, { x: 100, y: -25 }, 20);
    expect(lines).toEqual({ across: [20, 40, 60, 80], down: [20, 40] });
  });
});

describe('testSquare', () => {
  it('is the largest that fits, in the corner where nothing is drawn', () => {
    const sight = { minX: 0, minY: 0, maxX: 300, maxY: 250 };
    expect(testSquare(sight, 'in', []).side).toBeCloseTo(4 * 25.4, 9);
    expect(testSquare(sight, 'cm', []).side).toBe(100);
    const topRight = [{ x: 260, y: 60 }];
    expect(testSquare(sight, 'cm', []).at.x).toBeGreaterThan(150);
    expect(testSquare(sight, 'cm', topRight).at.x).toBeLessThan(100);
    expect(testSquare(sight, 'cm', topRight).at.y).toBeLessThan(100);
  });

  it('stands between lines where every corner is crossed, smaller if it must, and covers none of them', () => {
    const sight = { minX: 10, minY: -20, maxX: 410, maxY: 230 };
    const line = (from: Point, to: Point) =>
      Array.from({ length: 401 }, (_, k) => ({
        x: from.x + ((to.x - from.x) * k) / 400,
        y: from.y + ((to.y - from.y) * k) / 400,
      }));
    for (const [drawn, side] of [
      // A strip of 130 mm between two uprights holds 100 mm, one of 75 mm only 50 mm.
      [
        [
          ...line({ x: 140, y: -20 }, { x: 140, y: 230 }),
          ...line({ x: 270, y: -20 }, { x: 270, y: 230 }),
          ...line({ x: 70, y: -20 }, { x: 70, y: 230 }),
          ...line({ x: 340, y: -20 }, { x: 340, y: 230 }),
        ],
        100,
      ],
      [[40, 115, 190, 265, 340, 405].flatMap((x) => line({ x, y: -20 }, { x, y: 230 })), 50],
    ] as const) {
      const square = testSquare(sight, 'cm', drawn);
      expect(square.side).toBe(side);
      const { x, y } = square.at;
      expect(drawn.filter((at) => at.x >= x && at.x <= x + side && at.y >= y && at.y <= y + side)).toEqual([]);
    }
    // Where lines are 30 mm apart none is clear: the largest, for one too small would prove nothing.
    const close = Array.from({ length: 14 }, (_, k) =>
      line({ x: 10 + 30 * k, y: -20 }, { x: 10 + 30 * k, y: 230 }),
    ).flat();
    expect(testSquare(sight, 'cm', close).side).toBe(100);
  });
});
