import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../core/cloth/seeded-random';
import { cellsAt, pagesNeeded } from '../../core/paper/pages-needed';

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
    expect(pagesNeeded(places, box, grid)?.cells).toEqual([0, 1]);
  });

  it('shifts the sheets until two far places of a narrow box fall on one', () => {
    const box = { minX: 100, minY: 40, maxX: 190, maxY: 90 };
    const places = [
      { x: 104, y: 44 },
      { x: 186, y: 86 },
    ];
    expect(pagesNeeded(places, box, grid)?.cells).toHaveLength(1);
  });

  it('shows every place on some sheet, and has no more sheets than with the grid as it stands', () => {
    const random = seededRandom(11);
    for (let i = 0; i < 60; i++) {
      const box = { minX: -7, minY: 13, maxX: -7 + 190 + random() * 90, maxY: 13 + 60 + random() * 50 };
      const places = Array.from({ length: 3 + Math.floor(random() * 40) }, () => ({
        x: box.minX + 1 + random() * (box.maxX - box.minX - 2),
        y: box.minY + 1 + random() * (box.maxY - box.minY - 2),
      }));
      const needed = pagesNeeded(places, box, grid);
      if (!needed) throw new Error('without a bound there is always an answer');
      const { origin, cells } = needed;
      const windows = cells.map((cell) => ({
        left: origin.x + (cell % grid.columns) * grid.step.across,
        top: origin.y + Math.floor(cell / grid.columns) * grid.step.down,
      }));
      for (const { x, y } of places) {
        expect(windows.some(({ left, top }) => x >= left && x <= left + 100 && y >= top && y <= top + 60)).toBe(true);
      }
      expect(cells.length).toBeLessThanOrEqual(cellsAt(places, { x: box.minX, y: box.minY }, grid).length);
    }
  });

  it('has as few sheets as the best of all its shifts, each counted to its end', () => {
    const random = seededRandom(23);
    const shares = Array.from({ length: 13 }, (_, k) => k / 12);
    let fewer = 0;
    for (let i = 0; i < 40; i++) {
      const box = { minX: 5, minY: -3, maxX: 5 + 191 + random() * 60, maxY: -3 + 61 + random() * 35 };
      const places = Array.from({ length: 2 + Math.floor(random() * 9) }, () => ({
        x: box.minX + 1 + random() * (box.maxX - box.minX - 2),
        y: box.minY + 1 + random() * (box.maxY - box.minY - 2),
      }));
      const spare = { x: 280 - (box.maxX - box.minX), y: 110 - (box.maxY - box.minY) };
      const counts = shares.flatMap((across) =>
        shares.map((down) => {
          const origin = { x: box.minX - spare.x * across, y: box.minY - spare.y * down };
          return cellsAt(places, origin, grid).length;
        }),
      );
      const fewest = Math.min(...counts);
      expect(pagesNeeded(places, box, grid)?.cells).toHaveLength(fewest);
      expect(pagesNeeded(places, box, grid, fewest)).toBeUndefined();
      expect(pagesNeeded(places, box, grid, fewest + 1)).toEqual(pagesNeeded(places, box, grid));
      if (Math.max(...counts) > Math.min(...counts)) fewer += 1;
    }
    expect(fewer).toBeGreaterThan(20);
  });
});
