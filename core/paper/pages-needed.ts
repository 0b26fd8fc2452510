import type { Box } from '../geometry/bounds';
import type { Point, TablePoint } from '../geometry/point';
import { joinedCells } from './joined-cells';

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

/** A place this near to the edge of a window (mm) does not count as shown there, for lines have width; less than drawings keep clear. */
const EDGE = 0.99;

/**
 * Which sheets of a grid show any of the places, with the grid shifted over `box` as far as it reaches beyond it; of all
 * shifts tried the one with fewest sheets. A sheet whose every place is also shown on another one is left out, and a
 * blank one is kept only where the others would not hang together without it.
 */
export function pagesNeeded(places: readonly Point[], box: Box, grid: Grid): PagesNeeded {
  const { columns, rows, step, window } = grid;
  const spareAcross = (columns - 1) * step.across + window.width - (box.maxX - box.minX);
  const spareDown = (rows - 1) * step.down + window.height - (box.maxY - box.minY);
  const shifts = columns * rows > MOST_SHIFTED ? 0 : SHIFTS;
  let best: PagesNeeded | undefined;
  for (let i = 0; i <= shifts; i++) {
    for (let j = 0; j <= shifts; j++) {
      // From the middle outwards, so that of equally good shifts the most even one is taken.
      const origin = {
        x: box.minX - spareAcross * outwards(i),
        y: box.minY - spareDown * outwards(j),
      };
      const cells = cellsAt(places, origin, grid);
      if (!best || cells.length < best.cells.length) best = { origin, cells };
    }
  }
  return best ?? { origin: { x: box.minX, y: box.minY }, cells: [] };
}

/** Which sheets of a grid that begins at a place show any of the places, joined up. */
export function cellsAt(places: readonly Point[], origin: TablePoint, grid: Grid): readonly number[] {
  return joinedCells(withoutDoubled(cellsTouched(places, origin, grid), origin, grid), grid);
}

/** 1/2, then a little to either side, up to 0 and 1. */
function outwards(index: number): number {
  const half = Math.ceil(index / 2) / SHIFTS;
  return index % 2 === 0 ? 0.5 + half : 0.5 - half;
}

/** Each place belongs to one sheet: the one on whose side of the joins, in the middle of the overlaps, it lies. */
function cellsTouched(places: readonly Point[], origin: Point, grid: Grid): Map<number, Point[]> {
  const { columns, rows, step, window } = grid;
  const left = origin.x + (window.width - step.across) / 2;
  const top = origin.y + (window.height - step.down) / 2;
  const cells = new Map<number, Point[]>();
  for (const place of places) {
    const column = Math.min(columns - 1, Math.max(0, Math.floor((place.x - left) / step.across)));
    const row = Math.min(rows - 1, Math.max(0, Math.floor((place.y - top) / step.down)));
    const cell = row * columns + column;
    const there = cells.get(cell);
    if (there) there.push(place);
    else cells.set(cell, [place]);
  }
  return cells;
}

/** The sheets without those that show nothing of their own: all of it stands in the overlaps of others that stay. */
function withoutDoubled(touched: ReadonlyMap<number, readonly Point[]>, origin: Point, grid: Grid): number[] {
  const kept = new Set(touched.keys());
  const fewestFirst = [...touched].sort(([, a], [, b]) => a.length - b.length);
  for (const [cell, own] of fewestFirst) {
    kept.delete(cell);
    const others = [...kept].map((other) => windowOf(other, origin, grid));
    if (!own.every((place) => others.some((window) => shows(window, place)))) kept.add(cell);
  }
  return [...kept].sort((a, b) => a - b);
}

function windowOf(cell: number, origin: Point, { columns, step, window }: Grid): Box {
  const minX = origin.x + (cell % columns) * step.across;
  const minY = origin.y + Math.floor(cell / columns) * step.down;
  return { minX, minY, maxX: minX + window.width, maxY: minY + window.height };
}

function shows(window: Box, { x, y }: Point): boolean {
  return x >= window.minX + EDGE && x <= window.maxX - EDGE && y >= window.minY + EDGE && y <= window.maxY - EDGE;
}
