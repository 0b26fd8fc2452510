import { type Box, boxContains, growBox } from '../geometry/bounds';
import { boxCounts } from '../geometry/box-counts';
import type { Point, TablePoint } from '../geometry/point';
import { type SortedPlaces, sortedPlaces } from '../geometry/sorted-places';
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

/** Lines are sorted into squares of this side (mm), and counted in cells of that one. */
const SORTED = 50;
const CELL = 1;

/**
 * Where the test square of each page lies: clear of the drawing, its joins and the rulers where it can be, and of places
 * along further lines.
 */
export function testSquarePlaces(plan: PagePlan, joins: readonly Join[], lines: readonly Point[]): SquarePlace[] {
  const ink = sortedPlaces([...plan.ink, ...lines], SORTED);
  return plan.pages.map((page) => placeOn(plan, page, joins, ink));
}

function placeOn(plan: PagePlan, page: Page, joins: readonly Join[], ink: SortedPlaces): SquarePlace {
  const { minX, minY, maxX, maxY } = roomOn(plan, page, joins);
  const costAt = costs(ink, growBox({ minX, minY, maxX, maxY }, NEAR));
  const crosses = joins
    .filter(({ over, under }) => over.label === page.label || under.label === page.label)
    .flatMap(({ marks }) => marks.map(({ at }) => at));
  const [right, bottom] = [maxX - TEST_SQUARE, maxY - TEST_SQUARE];
  let best = { x: right, y: bottom, cost: Number.POSITIVE_INFINITY };
  // From the lower right on, where the hand finds it again on page after page.
  for (let y = bottom; y >= minY; y -= TRY_EVERY) {
    for (let x = right; x >= minX; x -= TRY_EVERY) {
      if (crosses.some((at) => boxContains(growBox(squareAt(x, y), FROM_CROSS), at))) continue;
      const cost = costAt(x, y);
      if (cost === 0) return { x, y, isClear: true };
      if (cost < best.cost) best = { x, y, cost };
    }
  }
  return { x: best.x, y: best.y, isClear: false };
}

function squareAt(x: number, y: number): Box {
  return { minX: x, minY: y, maxX: x + TEST_SQUARE, maxY: y + TEST_SQUARE };
}

/** How much of the drawing a place crosses. */
function costs(ink: SortedPlaces, about: Box): (x: number, y: number) => number {
  const here: Point[] = [];
  ink.eachIn(about, (at) => here.push(at));
  const countIn = boxCounts(here, about, CELL);
  return (x, y) => {
    const near = countIn(growBox(squareAt(x, y), NEAR));
    const inside = countIn(growBox(squareAt(x, y), -NEAR));
    return near - inside + INSIDE_COUNTS * inside;
  };
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
