import { boxOfPoints } from '../geometry/bounds';
import type { Point } from '../geometry/point';

/** The side of the cells by which it is told where pieces lie (mm). */
export const CELL = 5;

/** Cells of a plane that a piece covers, by rows: the lines it is drawn with and all that they go round. */
export interface Covered {
  /** The first cell's column and row: cell 0 of the plane begins at its zero. */
  readonly left: number;
  readonly top: number;
  readonly wide: number;
  readonly high: number;
  /** 0 outside, 1 inside, 2 where a line runs; row by row. */
  readonly cells: Uint8Array;
}

/** What lines through places close together go round. The places leave no gap wider than a cell. */
export function coveredBy(places: readonly Point[]): Covered {
  const box = boxOfPoints(places) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  // A cell more on every side, so that the outside hangs together.
  const [left, top] = [Math.floor(box.minX / CELL) - 1, Math.floor(box.minY / CELL) - 1];
  const [wide, high] = [Math.floor(box.maxX / CELL) + 2 - left, Math.floor(box.maxY / CELL) + 2 - top];
  const cells = new Uint8Array(wide * high).fill(1);
  for (const { x, y } of places) {
    cells[(Math.floor(y / CELL) - top) * wide + Math.floor(x / CELL) - left] = 2;
  }
  const waiting = [0];
  cells[0] = 0;
  const flow = (cell: number) => {
    if (cells[cell] !== 1) return;
    cells[cell] = 0;
    waiting.push(cell);
  };
  for (let cell = waiting.pop(); cell !== undefined; cell = waiting.pop()) {
    const column = cell % wide;
    flow(cell - wide);
    flow(cell + wide);
    if (column > 0) flow(cell - 1);
    if (column < wide - 1) flow(cell + 1);
  }
  return { left, top, wide, high, cells };
}

/** How much lines through places go round, at least (mm²). */
export function coveredArea(places: readonly Point[]): number {
  const { cells } = coveredBy(places);
  return cells.reduce((sum, what) => sum + (what === 1 ? 1 : what === 2 ? 0.5 : 0), 0) * CELL * CELL;
}

/** A run of covered cells in one row, from `from` up to and without `to`. */
export interface Run {
  readonly row: number;
  readonly from: number;
  readonly to: number;
}

/** The covered cells as runs, counted from the first column and row of the plane. */
export function runsOf({ left, top, wide, high, cells }: Covered): Run[] {
  const runs: Run[] = [];
  for (let row = 0; row < high; row++) {
    let from = -1;
    for (let column = 0; column <= wide; column++) {
      const isCovered = column < wide && cells[row * wide + column] !== 0;
      if (isCovered && from < 0) from = column;
      if (!isCovered && from >= 0) {
        runs.push({ row: row + top, from: from + left, to: column + left });
        from = -1;
      }
    }
  }
  return runs;
}

/** Runs in such an order that one that is not free is come upon early. */
export function longestFirst(runs: readonly Run[]): Run[] {
  return runs.toSorted((a, b) => b.to - b.from - (a.to - a.from));
}

/** Places where lines run, one a cell. */
export function lineCells({ left, top, wide, cells }: Covered): Point[] {
  const found: Point[] = [];
  cells.forEach((what, index) => {
    if (what === 2) found.push({ x: (index % wide) + left, y: Math.floor(index / wide) + top });
  });
  return found;
}

/** Ground on which pieces lie, asked whether a run of cells is free. */
export class Ground {
  private readonly sums: Int32Array;
  private readonly left: number;
  private readonly top: number;
  private readonly wide: number;
  private readonly high: number;

  /** `apart` cells about every piece are taken too. */
  constructor(taken: readonly Run[], apart: number) {
    const rows = taken.map(({ row }) => row);
    this.left = Math.min(...taken.map(({ from }) => from)) - apart;
    this.top = Math.min(...rows) - apart;
    this.wide = Math.max(...taken.map(({ to }) => to)) + apart - this.left;
    this.high = Math.max(...rows) + apart + 1 - this.top;
    // Where runs begin and end, summed once to what is taken and once more to how many before each cell.
    const steps = new Int32Array((this.wide + 1) * this.high);
    for (const { row, from, to } of taken) {
      for (let down = -apart; down <= apart; down++) {
        const start = (row + down - this.top) * (this.wide + 1) - this.left;
        steps[start + from - apart] = (steps[start + from - apart] ?? 0) + 1;
        steps[start + to + apart] = (steps[start + to + apart] ?? 0) - 1;
      }
    }
    this.sums = new Int32Array((this.wide + 1) * this.high);
    for (let row = 0; row < this.high; row++) {
      let [depth, count] = [0, 0];
      for (let column = 0; column < this.wide; column++) {
        const at = row * (this.wide + 1) + column;
        depth += steps[at] ?? 0;
        if (depth > 0) count += 1;
        this.sums[at + 1] = count;
      }
    }
  }

  isFree(run: Run, right: number, down: number): boolean {
    const row = run.row + down - this.top;
    if (row < 0 || row >= this.high) return true;
    const from = Math.max(0, run.from + right - this.left);
    const to = Math.min(this.wide, run.to + right - this.left);
    if (from >= to) return true;
    const start = row * (this.wide + 1);
    return this.sums[start + to] === this.sums[start + from];
  }
}
