import { describe, expect, it } from 'vitest';
import { pieceDrawing } from '../../core/drawing/piece-drawing';
import { planPages } from '../../core/paper/page-plan';
import { testSquarePlace } from '../../core/paper/test-square-place';
import { A4, LETTER, rectangle } from './pieces';

const SIDE = 101.6;

describe('testSquarePlace', () => {
  it.each([A4, LETTER])('lies on every page inside the joins ($size)', (paper) => {
    const plan = planPages(pieceDrawing(rectangle(0, 0, 700, 900)), paper);
    for (const page of plan?.pages ?? []) {
      const { x, y } = testSquarePlace(plan as NonNullable<typeof plan>, page);
      const half = paper.overlap / 2;
      expect(x).toBeGreaterThan(page.window.minX + half);
      expect(y).toBeGreaterThan(page.window.minY + half);
      expect(x + SIDE).toBeLessThan(page.window.maxX - half);
      expect(y + SIDE).toBeLessThan(page.window.maxY - half);
    }
  });

  it('keeps its sides off a line where there is room beside it', () => {
    const plan = planPages(pieceDrawing(rectangle(0, 0, 170, 900)), A4);
    if (!plan) throw new Error('there is a plan');
    for (const page of plan.pages) {
      const { x } = testSquarePlace(plan, page);
      for (const side of [x, x + SIDE]) {
        for (const edge of [0, 170]) expect(Math.abs(side - edge)).toBeGreaterThan(3);
      }
    }
  });
});
