import { describe, expect, it } from 'vitest';
import { pieceDrawing } from '../../core/drawing/piece-drawing';
import { assembledTotals, longestBetweenCorners } from '../../core/paper/assembled-totals';
import { inches } from '../../core/units/inch';
import { rectangle, straightPiece } from './pieces';

describe('assembledTotals', () => {
  // The carpenter's right angle: 18, 24 and 30 in.
  it('gives 30 in from corner to corner of 18 by 24 in', () => {
    const grain = { from: { x: 20, y: 30 }, to: { x: 20, y: 30 + inches(7) } };
    const piece = rectangle(10, 20, inches(18), inches(24), { grain });
    const totals = assembledTotals(piece, pieceDrawing(piece));
    expect(totals.diagonal.length).toBeCloseTo(inches(30), 9);
    expect([totals.diagonal.from, totals.diagonal.to]).toEqual([1, 3]);
    expect([totals.across, totals.down, totals.grain]).toEqual(
      [inches(18), inches(24), inches(7)].map((mm) => expect.closeTo(mm, 9)),
    );
  });

  it('counts the allowance in, for the taped pages show the cut line', () => {
    const net = rectangle(10, 20, 300, 400, { drawnAs: 'net' });
    const piece = { ...net, edges: net.edges.map((edge) => ({ ...edge, allowance: 15 })) };
    expect(assembledTotals(piece, pieceDrawing(piece))).toMatchObject({
      across: expect.closeTo(330, 2),
      down: expect.closeTo(430, 2),
      grain: undefined,
    });
  });
});

describe('longestBetweenCorners', () => {
  it('takes the sides of a triangle, longest first, for want of anything else', () => {
    const triangle = straightPiece([
      [0, 0],
      [50, 0],
      [0, 120],
    ]);
    expect(longestBetweenCorners(triangle).map(({ length }) => length)).toEqual([130, 120, 50]);
  });
});
