import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pieceDrawing } from '../../core/drawing/piece-drawing';
import { boxContains, growBox } from '../../core/geometry/bounds';
import { flattenPath } from '../../core/geometry/flatten';
import { HEADER, planPages, windowSize, windowsFor } from '../../core/paper/page-plan';
import { inches } from '../../core/units/inch';
import { A4, LETTER, rectangle, straightPiece } from './pieces';

describe('windowsFor', () => {
  // n = (L - overlap) / (window - overlap), rounded up. A piece of 26 by 40 in, worked by hand:
  // A4, 10 mm margin, 10 mm overlap: 650.4 / 180 = 3.6 and 1006 / 267 = 3.8, so 4 by 4;
  // Letter, 1/2 in margin, 1/2 in overlap: 25.5 / 7 = 3.6 and 39.5 / 9.5 = 4.2, so 4 by 5.
  it('gives 4 by 4 for 26 by 40 in on A4 and 4 by 5 on Letter', () => {
    expect([windowsFor(inches(26), 190, 10), windowsFor(inches(40), 277, 10)]).toEqual([4, 4]);
    expect([windowsFor(26, 7.5, 0.5), windowsFor(40, 10, 0.5)]).toEqual([4, 5]);
  });

  it('gives one window for anything that fits it, and two for a hair more', () => {
    expect([windowsFor(5, 190, 10), windowsFor(190, 190, 10), windowsFor(190.01, 190, 10)]).toEqual([1, 1, 2]);
  });
});

describe('planPages', () => {
  it('lays a train of 2 by 6 m, and no piece of a kilometre, which no one would tape', () => {
    expect(planPages(pieceDrawing(rectangle(0, 0, 2000, 6000)), A4)?.pages.length).toBeGreaterThan(50);
    expect(planPages(pieceDrawing(rectangle(0, 0, 1e6, 700_000)), A4)).toBeUndefined();
    // 9 by 11 m are 150 sheets of A0, and more cloth than any garment has.
    expect(planPages(pieceDrawing(rectangle(0, 0, 9000, 11_000)), { ...A4, size: 'a0' })).toBeUndefined();
  });

  it('needs no more rows and columns for 26 by 40 in than that, heading and clearance taken off', () => {
    const marks = pieceDrawing(rectangle(30, 50, inches(26), inches(40)));
    expect(planPages(marks, A4)).toMatchObject({ columns: 4, rows: 4 });
    expect(planPages(marks, LETTER)).toMatchObject({ columns: 4, rows: 5 });
  });

  it('leaves out pages with nothing on them: of 4 by 4 round a large frame the inner ones but those with words', () => {
    const plan = planPages(pieceDrawing(rectangle(0, 0, inches(26), inches(40))), A4);
    const inner = plan?.pages.filter(({ row, column }) => row % 3 > 0 && column % 3 > 0) ?? [];
    expect(plan?.pages.length).toBe(12 + inner.length);
    expect(inner.length).toBeLessThan(4);
  });

  it('labels rows by letters and columns by numbers', () => {
    const plan = planPages(pieceDrawing(rectangle(0, 0, inches(12), inches(20))), A4);
    expect(plan?.pages.map(({ label }) => label)).toEqual(['A1', 'A2', 'B1', 'B2']);
  });

  it('shifts the sheets where that saves some: a bar 250 mm long fits one sheet on its side', () => {
    const bar = planPages(pieceDrawing(rectangle(-400, 70, 250, 40)), { ...A4, turned: 'sideways' });
    expect(bar?.pages).toHaveLength(1);
  });

  it('has no plan where margins leave no room for the test square, or nothing is drawn', () => {
    const marks = pieceDrawing(rectangle(0, 0, 300, 200));
    expect(planPages(marks, { ...A4, margin: 60 })).toBeUndefined();
    expect(planPages([], A4)).toBeUndefined();
  });

  it('shows every line of any piece on some sheet, and on every sheet some of it', () => {
    const corner = fc.tuple(
      fc.double({ min: -900, max: 900, noNaN: true }),
      fc.double({ min: -700, max: 700, noNaN: true }),
    );
    fc.assert(
      fc.property(corner, corner, corner, fc.constantFrom(A4, LETTER), (a, b, c, paper) => {
        fc.pre(Math.abs((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])) > 2000);
        const marks = pieceDrawing(straightPiece([a, b, c]));
        const plan = planPages(marks, paper);
        const windows = plan?.pages.map(({ window }) => window) ?? [];
        for (const mark of marks) {
          if (mark.kind === 'words') continue;
          for (const point of flattenPath(mark.path, 0.1)) {
            expect(windows.some((window) => boxContains(growBox(window, -0.25), point))).toBe(true);
          }
        }
        for (const window of windows) expect(plan?.ink.some((place) => boxContains(window, place))).toBe(true);
      }),
      { seed: 7, numRuns: 40 },
    );
  });
});

describe('windowSize', () => {
  it('is the sheet without its margins and the heading', () => {
    expect(windowSize(A4)).toEqual({ width: 190, height: 277 - HEADER });
  });
});
