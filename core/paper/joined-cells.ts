/**
 * The cells with as few more as join them all up edge to edge: sheets that touch only at a corner, or not at all, cannot
 * be taped to one another. Cells are row times `columns` plus column; the answer rises.
 */
export function joinedCells(
  cells: readonly number[],
  grid: { readonly columns: number; readonly rows: number },
): number[] {
  const kept = new Set(cells);
  const [first] = cells;
  if (first === undefined) return [];
  for (;;) {
    const bridge = wayOut(connected(first, kept, grid), kept, grid);
    if (!bridge) return [...kept].sort((a, b) => a - b);
    for (const cell of bridge) kept.add(cell);
  }
}

interface Cells {
  readonly columns: number;
  readonly rows: number;
}

function neighbours(cell: number, { columns, rows }: Cells): number[] {
  const [row, column] = [Math.floor(cell / columns), cell % columns];
  return [
    ...(column > 0 ? [cell - 1] : []),
    ...(column < columns - 1 ? [cell + 1] : []),
    ...(row > 0 ? [cell - columns] : []),
    ...(row < rows - 1 ? [cell + columns] : []),
  ];
}

/** All cells that hang together with one. */
function connected(from: number, kept: ReadonlySet<number>, grid: Cells): Set<number> {
  const found = new Set([from]);
  const waiting = [from];
  for (let cell = waiting.pop(); cell !== undefined; cell = waiting.pop()) {
    for (const next of neighbours(cell, grid)) {
      if (!kept.has(next) || found.has(next)) continue;
      found.add(next);
      waiting.push(next);
    }
  }
  return found;
}

/** The cells between a group and the nearest cell outside it that is kept; none when there is no such cell. */
function wayOut(group: ReadonlySet<number>, kept: ReadonlySet<number>, grid: Cells): number[] | undefined {
  const cameFrom = new Map<number, number | undefined>([...group].map((cell) => [cell, undefined]));
  const waiting = [...group];
  for (let i = 0; i < waiting.length; i++) {
    const cell = waiting[i] as number;
    if (kept.has(cell) && !group.has(cell)) {
      const way: number[] = [];
      for (let at = cameFrom.get(cell); at !== undefined && !group.has(at); at = cameFrom.get(at)) way.push(at);
      return way;
    }
    for (const next of neighbours(cell, grid)) {
      if (cameFrom.has(next)) continue;
      cameFrom.set(next, cell);
      waiting.push(next);
    }
  }
  return undefined;
}
