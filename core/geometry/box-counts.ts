import type { Box } from './bounds';
import type { Point } from './point';

/**
 * How many of some places lie in a box, for as many boxes within `bounds` as are asked after: counted once in cells of so
 * many mm, and added up so that a box takes four looks (a summed-area table; Crow, Summed-Area Tables for Texture Mapping,
 * 1984). A cell that a box only touches counts as in it.
 */
export function boxCounts(places: Iterable<Point>, bounds: Box, cell: number): (box: Box) => number {
  const columnOf = (x: number) => Math.floor((x - bounds.minX) / cell);
  const rowOf = (y: number) => Math.floor((y - bounds.minY) / cell);
  const [wide, high] = [columnOf(bounds.maxX) + 1, rowOf(bounds.maxY) + 1];
  // One more each way: before the first row and column there is nothing.
  const sums = new Uint32Array((wide + 1) * (high + 1));
  const sumAt = (column: number, row: number) => sums[row * (wide + 1) + column] ?? 0;
  for (const { x, y } of places) {
    const [column, row] = [columnOf(x), rowOf(y)];
    if (column < 0 || row < 0 || column >= wide || row >= high) continue;
    sums[(row + 1) * (wide + 1) + column + 1] = sumAt(column + 1, row + 1) + 1;
  }
  for (let row = 1; row <= high; row++) {
    let here = 0;
    for (let column = 1; column <= wide; column++) {
      here += sumAt(column, row);
      sums[row * (wide + 1) + column] = here + sumAt(column, row - 1);
    }
  }
  const within = (cells: number, most: number) => Math.min(most, Math.max(0, cells));
  return ({ minX, minY, maxX, maxY }) => {
    const [left, right] = [within(columnOf(minX), wide), within(columnOf(maxX) + 1, wide)];
    const [top, bottom] = [within(rowOf(minY), high), within(rowOf(maxY) + 1, high)];
    return sumAt(right, bottom) - sumAt(left, bottom) - sumAt(right, top) + sumAt(left, top);
  };
}
