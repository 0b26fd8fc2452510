import { describe, expect, it } from 'vitest';
import { pieceDrawing } from '../../core/drawing/piece-drawing';
import { boxContains } from '../../core/geometry/bounds';
import { pageJoins } from '../../core/paper/page-joins';
import { planPages } from '../../core/paper/page-plan';
import { A4, rectangle } from './pieces';

describe('pageJoins', () => {
  const plan = planPages(pieceDrawing(rectangle(40, 60, 500, 700)), A4);
  if (!plan) throw new Error('there is a plan');
  const joins = pageJoins(plan);

  it('finds each pair of neighbours once: 3 by 3 sheets with the middle one have 12', () => {
    expect([plan.columns, plan.rows, plan.pages.length]).toEqual([3, 3, 9]);
    expect(joins.filter(({ runs }) => runs === 'down')).toHaveLength(6);
    expect(joins.filter(({ runs }) => runs === 'across')).toHaveLength(6);
  });

  it('never gives two crosses the same mark', () => {
    const marks = joins.flatMap((join) => join.marks.map(({ mark }) => mark));
    expect(new Set(marks).size).toBe(marks.length);
    expect(marks).toHaveLength(24);
  });

  it('puts every cross on paper that both pages show, in the middle of it', () => {
    for (const { over, under, marks, runs } of joins) {
      for (const { at } of marks) {
        expect(boxContains(over.window, at) && boxContains(under.window, at)).toBe(true);
        const [end, start] =
          runs === 'down' ? [over.window.maxX, under.window.minX] : [over.window.maxY, under.window.minY];
        expect(runs === 'down' ? at.x : at.y).toBeCloseTo((end + start) / 2, 9);
      }
    }
  });
});
