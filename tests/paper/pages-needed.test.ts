import { describe, expect, it } from 'vitest';
import { pagesNeeded } from '../../core/paper/pages-needed';

// Windows of 100 by 60 with 10 in common: steps of 90 and 50.
const grid = {
  columns: 3,
  rows: 2,
  step: { across: 90, down: 50 },
  window: { width: 100, height: 60 },
};

describe('pagesNeeded', () => {
  it('leaves out a sheet whose every place also lies in the overlap that another shows', () => {
    // Nothing can be shifted: the box is as large as all windows together.
    const box = { minX: 0, minY: 0, maxX: 280, maxY: 110 };
    const places = [
      { x: 20, y: 15 },
      { x: 94, y: 17 },
    ];
    expect(pagesNeeded(places, box, grid)).toEqual({ origin: { x: 0, y: 0 }, cells: [0] });
  });

  it('keeps it when one of them lies at the very edge, where half a line would be cut off', () => {
    const box = { minX: 0, minY: 0, maxX: 280, maxY: 110 };
    const places = [
      { x: 20, y: 15 },
      { x: 99.5, y: 17 },
    ];
    expect(pagesNeeded(places, box, grid).cells).toEqual([0, 1]);
  });

  it('shifts the sheets until two far places of a narrow box fall on one', () => {
    const box = { minX: 100, minY: 40, maxX: 190, maxY: 90 };
    const places = [
      { x: 104, y: 44 },
      { x: 186, y: 86 },
    ];
    expect(pagesNeeded(places, box, grid).cells).toHaveLength(1);
  });
});
