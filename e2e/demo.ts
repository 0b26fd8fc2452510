import { expect, type Page } from '@playwright/test';
import { lindenFrame } from '../app/demo/linden-panel';

/** Begins with the demo garment, as a newcomer would. */
export async function openDemo(page: Page): Promise<void> {
  await page.goto('/');
  await page.getByRole('button', { name: /Try the demo garment/ }).click();
  await expect(page.getByRole('navigation')).toBeVisible();
  await expect(page.getByRole('radio', { name: 'Trace a piece' })).toBeVisible();
}

/** What the draft table shows at first: the printed frame of the demo's picture and the piece in it. */
export function demoFit() {
  return {
    minX: Math.min(...lindenFrame.map(({ x }) => x)),
    minY: Math.min(...lindenFrame.map(({ y }) => y)),
    maxX: Math.max(...lindenFrame.map(({ x }) => x)),
    maxY: Math.max(...lindenFrame.map(({ y }) => y)),
  };
}
