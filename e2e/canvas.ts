import type { Locator, Page } from '@playwright/test';
import { fittedView, toScreen } from '../app/table/view';
import type { Box } from '../core/geometry/bounds';
import type { Point } from '../core/geometry/point';

/** The canvas as a person sees it after "show everything": where on the screen a place of its world is. */
export async function fittedCanvas(page: Page, fit: Box): Promise<(place: Point) => Point> {
  const canvas: Locator = page.locator('main canvas').first();
  await page.getByRole('button', { name: 'Show everything' }).click();
  const box = await canvas.boundingBox();
  if (!box) throw new Error('there is no canvas to see');
  const view = fittedView(fit, box, { min: 0.001, max: 1000 });
  return (place) => {
    const { x, y } = toScreen(view, place);
    return { x: box.x + x, y: box.y + y };
  };
}

/** A whole pixel: no hand and no mouse is finer than that. */
export function wholePixel({ x, y }: Point): Point {
  return { x: Math.round(x), y: Math.round(y) };
}

/** Drags with the mouse from one place of the screen to another, in a few steps. */
export async function drag(page: Page, from: Point, to: Point): Promise<void> {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2, { steps: 3 });
  await page.mouse.move(to.x, to.y, { steps: 3 });
  await page.mouse.up();
}
