import type { Box } from '../geometry/bounds';
import type { Point, TablePoint } from '../geometry/point';
import { joinedCells } from './joined-cells';
import { coordinates, emptyLists, type Strips, stripsOf, withoutDoubled } from './sheets-touched';

/** Sheets laid out in rows and columns. */
export interface Grid {
  readonly columns: number;
  readonly rows: number;
  /** From the start of one window to the start of the next. */
  readonly step: { readonly across: number; readonly down: number };
  readonly window: { readonly width: number; readonly height: number };
}

export interface PagesNeeded {
  /** Where the first window begins. */
  readonly origin: TablePoint;
  /** Row times columns plus column of every page that is needed, rising. */
  readonly cells: readonly number[];
}

/** Positions tried in each direction when the drawing has room to shift on its sheets. */
const SHIFTS = 12;

/** On more sheets than this a shift saves little, and looking for it takes long. */
const MOST_SHIFTED = 200;

/**
 * Which sheets of a grid show any of the places, with the grid shifted over `box` as far as it reaches beyond it; of all
 * shifts tried the one with fewest sheets. A sheet whose every place is also shown on another one is left out, and a
 * blank one is kept only where the others would not hang together without it. `undefined` where it would not be fewer
 * sheets than `fewerThan`.
 */
export function pagesNeeded(
  places: readonly Point[],
  box: Box,
  grid: Grid,
  fewerThan = Number.POSITIVE_INFINITY,
): PagesNeeded | undefined {
  const { columns, rows, step, window } = grid;
  const spareAcross = (columns - 1) * step.across + window.width - (box.maxX - box.minX);
  const spareDown = (rows - 1) * step.down + window.height - (box.maxY - box.minY);
  const shifts = columns * rows > MOST_SHIFTED ? 0 : SHIFTS;
  // From the middle outwards, so that of equally good shifts the most even one is taken.
  const away = Array.from({ length: shifts + 1 }, (_, index) => outwards(index));
  const at = coordinates(places);
  const acrossAt = away.map((share) => stripsOf(at.x, box.minX - spareAcross * share, across(grid)));
  const downAt = away.map((share) => stripsOf(at.y, box.minY - spareDown * share, down(grid)));
  const lists = emptyLists(places.length, columns * rows);
  let best: PagesNeeded | undefined;
  let least = fewerThan;
  for (const strips of acrossAt) {
    for (const bands of downAt) {
      const origin = { x: strips.start, y: bands.start };
      // Joining them up only adds to them.
      const needed = withoutDoubled(at, [strips, bands], lists, least);
      if (!needed) continue;
      const cells = joinedCells(needed, grid);
      if (cells.length >= least) continue;
      best = { origin, cells };
      least = cells.length;
    }
  }
  return best;
}

/** Which sheets of a grid that begins at a place show any of the places, joined up. */
export function cellsAt(places: readonly Point[], origin: TablePoint, grid: Grid): readonly number[] {
  const at = coordinates(places);
  const strips = stripsOf(at.x, origin.x, across(grid));
  const bands = stripsOf(at.y, origin.y, down(grid));
  const lists = emptyLists(places.length, grid.columns * grid.rows);
  return joinedCells(withoutDoubled(at, [strips, bands], lists) ?? [], grid);
}

/** 1/2, then a little to either side, up to 0 and 1. */
function outwards(index: number): number {
  const half = Math.ceil(index / 2) / SHIFTS;
  return index % 2 === 0 ? 0.5 + half : 0.5 - half;
}

const across = ({ columns, step, window }: Grid): Strips => ({
  count: columns,
  step: step.across,
  size: window.width,
});
const down = ({ rows, step, window }: Grid): Strips => ({ count: rows, step: step.down, size: window.height });
