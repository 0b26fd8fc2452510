import { describe, expect, it } from 'vitest';
import { linesThrough } from '../../core/seams/corner-place';
import { chained, isClear, stitchCrossing } from '../../core/seams/cut-line-parts';
import { at, pieceOf } from './pieces';

const corners = [at(0, 0), at(90, 0), at(70, 80)];
const [a, b, c] = [at(-20, -11), at(120, -11), at(75, 110)];

describe('chained', () => {
  it('brings ends that nearly meet together exactly, and leaves empty parts out', () => {
    const near = at(120.004, -11.003);
    const parts = chained([
      { edgeIndex: 0, path: linesThrough(a, b) },
      { edgeIndex: 1, path: [] },
      { edgeIndex: 2, path: linesThrough(near, c, a) },
    ]);
    expect(parts?.map(({ edgeIndex }) => edgeIndex)).toEqual([0, 2]);
    expect(parts?.[1]?.path[0]?.p0).toEqual(b);
  });

  it('is none where ends lie apart, or there is nothing', () => {
    expect(
      chained([
        { edgeIndex: 0, path: linesThrough(a, b) },
        { edgeIndex: 1, path: linesThrough(at(120, -10.9), a) },
      ]),
    ).toBeUndefined();
    expect(chained([{ edgeIndex: 0, path: [] }])).toBeUndefined();
  });
});

describe('isClear and stitchCrossing', () => {
  const piece = pieceOf(corners, [{ allowance: 11 }, { allowance: 12 }, { allowance: 13 }]);
  const parts = (...points: readonly ReturnType<typeof at>[]) => [
    { edgeIndex: 0, path: linesThrough(...points, points[0] ?? a) },
  ];

  it('tell a line round the piece from one that crosses the stitch line or itself', () => {
    expect(isClear(piece, parts(a, b, c), 0.05)).toBe(true);
    expect(isClear(piece, parts(a, b, at(60, 40)), 0.05)).toBe(false);
    expect(isClear(piece, parts(a, b, at(140, 100), at(150, -60), c), 0.05)).toBe(false);
  });

  it('find where a stitch line crosses itself', () => {
    expect(stitchCrossing(piece, 0.05)).toBeUndefined();
    const bow = pieceOf([at(0, 0), at(100, 60), at(100, 0), at(0, 30)], []);
    // 0.6 x = 30 - 0.3 x.
    expect(stitchCrossing(bow, 0.05)?.x).toBeCloseTo(100 / 3, 9);
  });
});
