/** Parts of a cut line put one after another, and the look for crossings that follows. */
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { flattenPath } from '../geometry/flatten';
import { pathEnd, pathStart } from '../geometry/path';
import { distance, type Point } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { allowanceOf, startingAt } from './allowance-strips';
import { lineCrossings, type Run } from './line-crossings';

/** A stretch of cut line and the edge it belongs to. */
export interface CutPart {
  readonly edgeIndex: number;
  readonly path: Path;
}

/** Parts whose ends are further apart than this do not belong together, in mm. */
const LOOSE = 0.02;

/** Lines are flattened no more coarsely than this share of the narrowest allowance. */
const LOOK_SHARE = 0.1;

/** How far a line must come beyond another to cross it, in mm: more than the grid of areas, less than anything seen. */
const TOUCH = 5e-4;

/** Seeming crossings looked at before a line is given up. */
const MOST_LOOKED_AT = 16;

/** The parts as one closed line, each beginning exactly where the one before ends; `undefined` where ends are apart. */
export function chained(parts: readonly CutPart[]): readonly CutPart[] | undefined {
  const used = parts.filter(({ path }) => path.length > 0);
  const last = used[used.length - 1];
  if (!last) return undefined;
  const fitted: CutPart[] = [];
  let end = pathEnd(last.path);
  for (const { edgeIndex, path } of used) {
    if (distance(pathStart(path), end) > LOOSE) return undefined;
    const part = { edgeIndex, path: startingAt(path, end) };
    end = pathEnd(part.path);
    fitted.push(part);
  }
  return fitted;
}

/** Where the stitch line crosses itself, as far as lines flattened within `flatness` tell. */
export function stitchCrossing(piece: Piece, flatness: number): Point | undefined {
  return lineCrossings(stitchRuns(piece, flatness), { counts: () => true, touch: TOUCH, most: 1 })[0]?.at;
}

/**
 * Whether neither the stitch line nor a closed line of parts crosses itself or the other, as far as lines flattened
 * within `flatness` tell.
 */
export function isClear(piece: Piece, parts: readonly CutPart[], flatness: number): boolean {
  const widths = piece.edges.map((edge) => allowanceOf(edge) ?? 0);
  const narrowest = Math.min(...widths.filter((width) => width > 0));
  // Two lines each flattened within half of what counts as crossing cannot seem to cross: finer is never needed.
  const near = Math.max(TOUCH / 2, Math.min(flatness, LOOK_SHARE * narrowest));
  const count = widths.length;
  const runs = stitchRuns(piece, near);
  for (const { edgeIndex, path } of parts) runs.push({ points: flattenPath(path, near), owner: count + edgeIndex });
  // A cut line that runs along its own stitch line does not cross it.
  const counts = (one: number, other: number) => Math.abs(one - other) !== count || widths[one % count] !== 0;
  return lineCrossings(runs, { counts, touch: TOUCH, most: MOST_LOOKED_AT }).every(({ one, other, at }) => {
    // A cut line that ends on a stitch line without allowance may seem to cross it, for that is flattened too.
    const stitch = Math.min(one, other);
    return stitch < count && widths[stitch] === 0 && parts.some(({ path }) => distance(pathStart(path), at) < 4 * near);
  });
}

function stitchRuns(piece: Piece, flatness: number): Run[] {
  return outlineOf(piece).edges.map((path, owner) => ({ points: flattenedStitch(path, flatness), owner }));
}

const remembered = new WeakMap<Path, { readonly flatness: number; readonly points: readonly Point[] }>();

/** A stitch line flattened, remembered with it: while a point is dragged most edges keep their very lines. */
function flattenedStitch(path: Path, flatness: number): readonly Point[] {
  const known = remembered.get(path);
  if (known?.flatness === flatness) return known.points;
  const points = flattenPath(path, flatness);
  remembered.set(path, { flatness, points });
  return points;
}
