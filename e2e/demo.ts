import { expect, type Page } from '@playwright/test';

/** Begins with the demo garment, as a newcomer would. */
export async function openDemo(page: Page): Promise<void> {
  await page.goto('/');
  await page.getByRole('button', { name: /Try the demo garment/ }).click();
  await expect(page.getByRole('navigation')).toBeVisible();
  await expect(page.getByRole('radio', { name: 'Trace a piece' })).toBeVisible();
}
