import type { Box } from '../geometry/bounds';
import { between, distance, type Point } from '../geometry/point';

/** The runs of a broken line that lie in a box, cut off at its sides. */
export function clippedLines(line: readonly Point[], box: Box): Point[][] {
  const runs: Point[][] = [];
  let run: Point[] | undefined;
  for (let i = 1; i < line.length; i++) {
    const [from, to] = [line[i - 1] as Point, line[i] as Point];
    const part = clippedPart(from, to, box);
    if (!part) {
      run = undefined;
      continue;
    }
    const [start, end] = [between(from, to, part.start), between(from, to, part.end)];
    if (run && part.start === 0) run.push(end);
    else {
      run = [start, end];
      runs.push(run);
    }
    if (part.end < 1) run = undefined;
  }
  return runs;
}

/** The shares of a straight line between which it lies in the box (Liang and Barsky's way of halving planes). */
function clippedPart(from: Point, to: Point, box: Box): { readonly start: number; readonly end: number } | undefined {
  let [start, end] = [0, 1];
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  for (const [speed, room] of [
    [-dx, from.x - box.minX],
    [dx, box.maxX - from.x],
    [-dy, from.y - box.minY],
    [dy, box.maxY - from.y],
  ] as const) {
    if (speed === 0) {
      if (room < 0) return undefined;
    } else if (speed < 0) start = Math.max(start, room / speed);
    else end = Math.min(end, room / speed);
  }
  return start <= end ? { start, end } : undefined;
}

/** Places along a broken line: its corners, and between them none further apart than `step`. */
export function placesAlong(line: readonly Point[], step: number): Point[] {
  return line.flatMap((to, index) => {
    const from = line[index - 1];
    if (!from) return [to];
    const parts = Math.max(1, Math.ceil(distance(from, to) / step));
    return Array.from({ length: parts }, (_, k) => between(from, to, (k + 1) / parts));
  });
}
