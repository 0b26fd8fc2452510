import { expect, type Page } from '@playwright/test';
import { openDemo } from './demo';
import { goTo } from './room';

export const notebook = (page: Page) => page.getByRole('complementary', { name: 'Notebook' });
export const strip = (page: Page) => page.getByRole('region', { name: 'The lay' });

/** Writes into a field of the notebook. */
export async function write(page: Page, label: string, value: string): Promise<void> {
  const field = notebook(page).getByLabel(label, { exact: true }).first();
  await field.fill(value);
  await field.press('Enter');
}

/** The demo garment on cloth as wide as said; two yards and a half of it are at hand. */
export async function withCloth(page: Page, width: string): Promise<void> {
  await openDemo(page);
  await goTo(page, 'Cloth');
  await write(page, 'Width, selvedges counted', `${width} in`);
}

/** Lays until the time is up, or no lay can be shorter. */
export async function layAll(page: Page): Promise<void> {
  await strip(page).getByRole('button', { name: /^Lay/ }).click();
  await expect(strip(page).getByRole('button', { name: /^Lay (again|the rest)/ })).toBeVisible({ timeout: 40_000 });
}
