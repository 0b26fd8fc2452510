import { describe, expect, it } from 'vitest';
import { pathEnd, pathStart } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { allowanceOf, allowanceStrips, startingAt } from '../../core/seams/allowance-strips';
import { linesThrough } from '../../core/seams/corner-place';
import { at, pieceOf, runBackwards } from './pieces';

const corners = [at(0, 0), at(200, 0), at(200, 300), at(0, 300)];
const piece = pieceOf(corners, [{ allowance: 9 }, { allowance: 15 }, { allowance: 40 }, { role: 'fold' }]);

describe('allowanceStrips', () => {
  it('run from corner to corner at each width, joined all round, whichever way the piece is run', () => {
    for (const each of [piece, runBackwards(piece)]) {
      const { strips, joined, blunted } = allowanceStrips(each);
      expect([joined, blunted]).toEqual([true, []]);
      expect(strips.map(({ width }) => width).toSorted((p, q) => p - q)).toEqual([0, 9, 15, 40]);
      const ends = strips.map(({ cut }) => pathStart(cut));
      for (const tip of [at(0, -9), at(215, -9), at(215, 340), at(0, 340)]) {
        expect(Math.min(...ends.map((end) => distance(end, tip)))).toBeLessThan(1e-9);
      }
      strips.forEach(({ cut }, i) => {
        expect(distance(pathEnd(cut), pathStart(strips[(i + 1) % 4]?.cut ?? []))).toBeLessThan(1e-9);
      });
    }
  });

  it('leave out an edge without length', () => {
    const doubled = pieceOf(
      [...corners, at(0, 300)],
      [{ allowance: 9 }, { allowance: 15 }, { allowance: 40 }, {}, { role: 'fold' }],
    );
    expect(allowanceStrips(doubled).strips.map(({ edgeIndex }) => edgeIndex)).toEqual([0, 1, 2, 4]);
  });

  it('follow a changed width although the stitch line stays the same', () => {
    const wider = { ...piece, edges: piece.edges.map((edge, i) => (i === 1 ? { ...edge, allowance: 22 } : edge)) };
    allowanceStrips(piece);
    expect(pathStart(allowanceStrips(wider).strips[1]?.cut ?? [])).toEqual({ x: 222, y: -9 });
  });
});

it('allowanceOf is nothing at a fold, unknown where not said, and never negative', () => {
  const [top, side, , fold] = piece.edges;
  if (!top || !side || !fold) throw new Error('four edges');
  expect([allowanceOf(top), allowanceOf({ ...fold, allowance: 7 }), allowanceOf({ ...side, allowance: -3 })]).toEqual([
    9, 0, 0,
  ]);
  const { allowance: _, ...unsaid } = side;
  expect(allowanceOf(unsaid)).toBeUndefined();
});

it('startingAt moves a start and keeps its direction', () => {
  const curve = { kind: 'cubic', p0: at(1, 2), p1: at(11, 7), p2: at(30, 40), p3: at(50, 45) } as const;
  expect(startingAt([curve], at(1.5, 2.25))[0]).toMatchObject({
    p0: at(1.5, 2.25),
    p1: at(11.5, 7.25),
    p3: at(50, 45),
  });
  expect(startingAt(linesThrough(at(1, 2), at(9, 4)), at(1, 3))).toEqual(linesThrough(at(1, 3), at(9, 4)));
  expect(startingAt([], at(1, 3))).toEqual([]);
});
