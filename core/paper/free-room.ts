import type { Placed } from '../drawing/drawing';
import { type Box, boxContains } from '../geometry/bounds';
import { between, distance, type Point, type TablePoint } from '../geometry/point';
import { crowdOf } from './crowd';
import type { Join } from './page-joins';
import type { PagePlan } from './page-plan';
import { TEST_SQUARE } from './paper-findings';

/** What is written keeps so far from the strips that pages share, and from the side of a page where none is shared (mm). */
const FROM_JOIN = 3;
const FROM_RULER = 7;

/** The mark of a cross stands so far to either side of it (mm). */
const BESIDE_CROSS = 6.4;

/** Of lines a place is known every few mm, so they are seen from a little further than they may come (mm). */
const BETWEEN_PLACES = 1.2;

/** The room that is left on taped pages beside lines, words, joins and test squares. */
export interface FreeRoom {
  /** Whether words as wide as that, or a mark, stand on one page and touch nothing. */
  readonly isFree: (placed: Placed, width: number) => boolean;
  /** What was put there is in the way of what follows. */
  readonly take: (placed: Placed, width: number) => void;
}

/** The room on the pages of a plan. `lines` are places of further lines on it, a few mm apart. */
export function freeRoom(
  plan: PagePlan,
  joins: readonly Join[],
  squares: readonly TablePoint[],
  lines: readonly Point[],
): FreeRoom {
  const crosses = joins.flatMap(({ runs, marks }) =>
    marks.flatMap(({ at: { x, y } }) =>
      [-BESIDE_CROSS, 0, BESIDE_CROSS].map((by) => (runs === 'down' ? { x: x + by, y } : { x, y: y + by })),
    ),
  );
  const crowd = crowdOf([...plan.ink, ...lines, ...crosses]);
  const pages = plan.pages.map((page) => clearOn(plan, page.window));
  const taken: { readonly at: Point; readonly size: number }[] = [];
  return {
    isFree(placed, width) {
      const { size } = placed;
      const run = runOf(placed, width);
      const [start, end] = [run[0] as Point, run.at(-1) as Point];
      if (!pages.some((page) => isWithin(page, start, size / 2) && isWithin(page, end, size / 2))) return false;
      return run.every(
        (at) =>
          crowd(at, 0.55 * size + BETWEEN_PLACES) === 0 &&
          !taken.some((other) => distance(other.at, at) < (size + other.size) / 2) &&
          !squares.some(({ x, y }) =>
            boxContains({ minX: x, minY: y, maxX: x + TEST_SQUARE, maxY: y + TEST_SQUARE }, at),
          ),
      );
    },
    take(placed, width) {
      taken.push(...runOf(placed, width).map((at) => ({ at, size: placed.size })));
    },
  };
}

/** Places along words, half their height apart. */
function runOf({ at, angle, size }: Placed, width: number): Point[] {
  const [dx, dy] = [(Math.cos(angle) * width) / 2, (Math.sin(angle) * width) / 2];
  const [from, to] = [
    { x: at.x - dx, y: at.y - dy },
    { x: at.x + dx, y: at.y + dy },
  ];
  const parts = Math.max(1, Math.ceil(width / (size / 2)));
  return Array.from({ length: parts + 1 }, (_, k) => between(from, to, k / parts));
}

/** The part of a page that no neighbour shows too and no ruler stands in. */
function clearOn({ pages, step, paper }: PagePlan, { minX, minY, maxX, maxY }: Box): Box {
  const has = (dx: number, dy: number) =>
    pages.some(({ window }) => Math.abs(window.minX - minX - dx) < 1 && Math.abs(window.minY - minY - dy) < 1);
  const inset = (isJoined: boolean) => (isJoined ? Math.max(FROM_RULER, paper.overlap + FROM_JOIN) : FROM_RULER);
  return {
    minX: minX + inset(has(-step.across, 0)),
    minY: minY + inset(has(0, -step.down)),
    maxX: maxX - inset(has(step.across, 0)),
    maxY: maxY - inset(has(0, step.down)),
  };
}

function isWithin({ minX, minY, maxX, maxY }: Box, { x, y }: Point, by: number): boolean {
  return x - by >= minX && x + by <= maxX && y - by >= minY && y + by <= maxY;
}
