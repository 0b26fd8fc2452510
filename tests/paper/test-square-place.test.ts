import { describe, expect, it } from 'vitest';
import { pieceDrawing } from '../../core/drawing/piece-drawing';
import type { PaperChoice } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { pageJoins } from '../../core/paper/page-joins';
import { planPages } from '../../core/paper/page-plan';
import { testSquarePlaces } from '../../core/paper/test-square-place';
import { A4, LETTER, rectangle } from './pieces';

const SIDE = 101.6;

function planOf(piece: Piece, paper: PaperChoice) {
  const plan = planPages(pieceDrawing(piece), paper);
  if (!plan) throw new Error('there is a plan');
  const joins = pageJoins(plan);
  return { plan, joins, squares: testSquarePlaces(plan, joins, []) };
}

describe('testSquarePlaces', () => {
  it.each([A4, LETTER])('lies on every page within the rulers and the joins ($size)', (paper) => {
    const { plan, joins, squares } = planOf(rectangle(0, 0, 700, 900), paper);
    expect(squares).toHaveLength(plan.pages.length);
    plan.pages.forEach(({ label, window }, index) => {
      const { x = Number.NaN, y = Number.NaN } = squares[index] ?? {};
      expect(Math.min(x - window.minX, y - window.minY)).toBeGreaterThanOrEqual(5);
      expect(Math.min(window.maxX - x - SIDE, window.maxY - y - SIDE)).toBeGreaterThanOrEqual(5);
      for (const join of joins) {
        if (join.over.label !== label && join.under.label !== label) continue;
        const [at, from] = join.runs === 'down' ? [join.from.x, x] : [join.from.y, y];
        expect(at < from || at > from + SIDE).toBe(true);
        for (const mark of join.marks) {
          const [across, down] = [mark.at.x - x, mark.at.y - y];
          expect(Math.max(-across, across - SIDE, -down, down - SIDE)).toBeGreaterThan(6);
        }
      }
    });
  });

  it('keeps off every line where there is room beside them, and says so', () => {
    // Two lines 130 mm apart, on one page of 190 mm: the square has 14 mm to spare on either side.
    const { squares } = planOf(rectangle(0, 0, 130, 220), A4);
    expect(squares).toHaveLength(1);
    for (const { x, y, isClear } of squares) {
      expect(isClear).toBe(true);
      expect(Math.min(x, 130 - x - SIDE, y, 220 - y - SIDE)).toBeGreaterThan(2.5);
    }
  });

  it('says where there is none', () => {
    // Strips of 90 mm, closer to one another than the square is wide.
    const grain = { from: { x: 90, y: 5 }, to: { x: 90, y: 245 } };
    const { squares } = planOf(rectangle(0, 0, 180, 250, { grain }), A4);
    expect(squares.map(({ isClear }) => isClear)).toEqual([false]);
  });
});
