import type { Point, TablePoint } from '../geometry/point';
import type { Page, PagePlan } from './page-plan';
import { TEST_SQUARE } from './paper-findings';

/** Kept from the joins and the rulers, and between places tried (mm). */
const CLEAR = 11;
const TRY_EVERY = 6;

/** A line this near to a side of the square, or words in its two written corners, count against a place (mm). */
const NEAR = 3;
const WRITTEN = { width: 50, height: 9 };

/** Lines through the inside of the square count a little: it is best where there is nothing at all. */
const INSIDE_COUNTS = 0.15;

/** Where the test square of a page has its top left corner: where it crosses least of the drawing. */
export function testSquarePlace(plan: PagePlan, page: Page): TablePoint {
  const { window } = page;
  const inset = (plan.window.width - plan.step.across) / 2 + CLEAR;
  const right = window.maxX - inset - TEST_SQUARE;
  const bottom = window.maxY - inset - TEST_SQUARE;
  const here = plan.ink.filter(
    ({ x, y }) => x >= window.minX && x <= window.maxX && y >= window.minY && y <= window.maxY,
  );
  let best = { x: right, y: bottom, cost: Number.POSITIVE_INFINITY };
  // From the lower right on, where the hand finds it again on page after page.
  for (let y = bottom; y >= window.minY + inset; y -= TRY_EVERY) {
    for (let x = right; x >= window.minX + inset; x -= TRY_EVERY) {
      const cost = costAt(here, x, y);
      if (cost < best.cost) best = { x, y, cost };
      if (cost === 0) return { x, y };
    }
  }
  return { x: best.x, y: best.y };
}

function costAt(ink: readonly Point[], left: number, top: number): number {
  let cost = 0;
  for (const { x, y } of ink) {
    const [across, down] = [x - left, y - top];
    if (Math.min(across, down) < -NEAR || Math.max(across, down) > TEST_SQUARE + NEAR) continue;
    const fromSide = Math.min(across, down, TEST_SQUARE - across, TEST_SQUARE - down);
    const isWritten = across < WRITTEN.width && (down < WRITTEN.height || down > TEST_SQUARE - WRITTEN.height);
    cost += fromSide < NEAR || isWritten ? 1 : INSIDE_COUNTS;
  }
  return cost;
}
