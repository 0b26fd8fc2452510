import { pathEnd, pathStart, reversePath } from '../geometry/path';
import { distance, type Point } from '../geometry/point';
import { cubic, line, type Path } from '../geometry/segment';

/** Ends nearer than this were meant to meet, in mm: more than files round, less than a pencil line. */
export const MEETING = 0.05;

/** Closed paths, and what stays open. */
export interface JoinedRings {
  readonly closed: readonly Path[];
  readonly open: readonly Path[];
}

/**
 * Open paths put end to end, either way round, wherever ends meet within {@link MEETING}; where more than two meet the first
 * is taken. Time grows with the number of paths.
 */
export function joinedRings(paths: readonly Path[]): JoinedRings {
  const ends = new EndGrid(paths);
  const closed: Path[] = [];
  const open: Path[] = [];
  paths.forEach((path, index) => {
    if (!ends.take(index)) return;
    const forwards = follow(path, ends);
    const ring = closedPath(forwards);
    if (ring) closed.push(ring);
    else {
      const whole = reversePath(follow(reversePath(forwards), ends));
      const late = closedPath(whole);
      if (late) closed.push(late);
      else open.push(whole);
    }
  });
  return { closed, open };
}

/** The path with its end brought exactly to its start; `undefined` when they are apart. */
export function closedPath(path: Path): Path | undefined {
  const [start, last] = [pathStart(path), path[path.length - 1] as Path[number]];
  if (distance(start, pathEnd(path)) > MEETING) return undefined;
  const end = last.kind === 'line' ? line(last.p0, start) : cubic(last.p0, last.p1, last.p2, start);
  return [...path.slice(0, -1), end];
}

function follow(path: Path, ends: EndGrid): Path {
  const run = [...path];
  const start = pathStart(path);
  for (;;) {
    const end = pathEnd(run);
    if (distance(start, end) <= MEETING) return run;
    const next = ends.takeAt(end);
    if (!next) return run;
    const [first, ...rest] = next as [Path[number], ...Path];
    run.push(first.kind === 'line' ? line(end, first.p1) : cubic(end, first.p1, first.p2, first.p3), ...rest);
  }
}

/** Which paths begin or end in which cell of a grid. */
class EndGrid {
  private readonly cells = new Map<string, number[]>();
  private readonly left = new Set<number>();
  private readonly paths: readonly Path[];

  constructor(paths: readonly Path[]) {
    this.paths = paths;
    paths.forEach((path, index) => {
      this.left.add(index);
      for (const { x, y } of [pathStart(path), pathEnd(path)]) {
        const key = `${Math.floor(x / MEETING)} ${Math.floor(y / MEETING)}`;
        const cell = this.cells.get(key);
        if (cell) cell.push(index);
        else this.cells.set(key, [index]);
      }
    });
  }

  take(index: number): boolean {
    return this.left.delete(index);
  }

  /** A path not yet taken that begins at a place, turned round where it ends there. */
  takeAt(place: Point): Path | undefined {
    for (const dx of [0, -1, 1]) {
      for (const dy of [0, -1, 1]) {
        const cell = this.cells.get(`${Math.floor(place.x / MEETING) + dx} ${Math.floor(place.y / MEETING) + dy}`);
        while (cell && cell.length > 0) {
          const index = cell[cell.length - 1] as number;
          if (!this.left.has(index)) cell.pop();
          else {
            const path = this.paths[index] as Path;
            const [toStart, toEnd] = [distance(pathStart(path), place), distance(pathEnd(path), place)];
            if (Math.min(toStart, toEnd) > MEETING) break;
            this.left.delete(index);
            return toStart <= toEnd ? path : reversePath(path);
          }
        }
      }
    }
    return undefined;
  }
}
