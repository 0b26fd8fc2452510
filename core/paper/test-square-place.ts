import { type Box, boxContains, growBox } from '../geometry/bounds';
import type { Point, TablePoint } from '../geometry/point';
import type { Join } from './page-joins';
import type { Page, PagePlan } from './page-plan';
import { TEST_SQUARE } from './paper-findings';

/** Where the test square of a page has its top left corner, and whether it lies clear of every line of the drawing. */
export interface SquarePlace extends TablePoint {
  readonly isClear: boolean;
}

/** Places tried lie this far apart (mm). */
const TRY_EVERY = 4;

/** The square keeps this far from the ruler along a side, from the words beside a join, and from its crosses (mm). */
const FROM_RULER = 6;
const FROM_JOIN = { lapped: 4.5, butted: 9 } as const;
const FROM_CROSS = 9.5;

/** A line this near to the square counts against a place (mm): no two places of a line are further apart. */
const NEAR = 3;

/** A line through the inside counts little beside one along a side. */
const INSIDE_COUNTS = 0.15;

/**
 * Where the test square of a page lies: clear of the drawing, its joins and the rulers where it can be, and of places along
 * further lines.
 */
export function testSquarePlace(
  plan: PagePlan,
  page: Page,
  joins: readonly Join[],
  lines: readonly Point[],
): SquarePlace {
  const { minX, minY, maxX, maxY } = roomOn(plan, page, joins);
  const about = growBox({ minX, minY, maxX, maxY }, NEAR);
  const here = [...plan.ink, ...lines].filter((at) => boxContains(about, at));
  const crosses = joins
    .filter(({ over, under }) => over.label === page.label || under.label === page.label)
    .flatMap(({ marks }) => marks.map(({ at }) => at));
  const [right, bottom] = [maxX - TEST_SQUARE, maxY - TEST_SQUARE];
  let best = { x: right, y: bottom, cost: Number.POSITIVE_INFINITY };
  // From the lower right on, where the hand finds it again on page after page.
  for (let y = bottom; y >= minY; y -= TRY_EVERY) {
    for (let x = right; x >= minX; x -= TRY_EVERY) {
      if (crosses.some((at) => isNear(at, x, y, FROM_CROSS))) continue;
      const cost = costAt(here, x, y, best.cost);
      if (cost === 0) return { x, y, isClear: true };
      if (cost < best.cost) best = { x, y, cost };
    }
  }
  return { x: best.x, y: best.y, isClear: false };
}

/** The part of a page that is free of rulers and joins. */
function roomOn({ window, step, paper }: PagePlan, page: Page, joins: readonly Join[]): Box {
  const beside = (window.width - step.across) / 2 + FROM_JOIN[paper.joins ?? 'lapped'];
  const inset = (runs: Join['runs'], as: 'over' | 'under') =>
    joins.some((join) => join.runs === runs && join[as].label === page.label) ? beside : FROM_RULER;
  const { minX, minY, maxX, maxY } = page.window;
  return {
    minX: minX + inset('down', 'under'),
    minY: minY + inset('across', 'under'),
    maxX: maxX - inset('down', 'over'),
    maxY: maxY - inset('across', 'over'),
  };
}

function isNear({ x, y }: Point, left: number, top: number, near: number): boolean {
  const [across, down] = [x - left, y - top];
  return Math.min(across, down) > -near && Math.max(across, down) < TEST_SQUARE + near;
}

/** How much of the drawing a place crosses; no more than `most` is counted. */
function costAt(ink: readonly Point[], left: number, top: number, most: number): number {
  let cost = 0;
  for (const at of ink) {
    if (!isNear(at, left, top, NEAR)) continue;
    const [across, down] = [at.x - left, at.y - top];
    const fromSide = Math.min(across, down, TEST_SQUARE - across, TEST_SQUARE - down);
    cost += fromSide < NEAR ? 1 : INSIDE_COUNTS;
    if (cost >= most) return cost;
  }
  return cost;
}
