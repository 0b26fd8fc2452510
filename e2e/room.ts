import { readFile } from 'node:fs/promises';
import { expect, type Page } from '@playwright/test';
import { readProject } from '../app/storage/project-file';
import type { Garment } from '../core/garment/garment';

/** The rooms of an open garment, as the tape names them, in its order. */
export const ROOMS = [
  'Wearer',
  'Diagram',
  'Draft',
  'Reshape',
  'Seams',
  'Fit',
  'Mock-up',
  'Versions',
  'Compare',
  'Cloth',
  'Paper',
  'Before you cut',
] as const;

/** Goes to a room by its place on the tape. */
export async function goTo(page: Page, room: string): Promise<void> {
  await page.getByRole('navigation').getByRole('button', { name: room }).click();
}

/** Goes to each of some rooms, and finds it whole. */
export async function seeRooms(page: Page, rooms: readonly string[] = ROOMS): Promise<void> {
  for (const room of rooms) {
    await goTo(page, room);
    await expect(page.locator('main')).toBeVisible();
    await expect(page.getByText(/could not be shown/)).toBeHidden();
  }
}

/** Saves the first garment on the shelf to a file, as a person would, and reads the file. */
export async function savedGarment(page: Page): Promise<{ readonly garment: Garment; readonly path: string }> {
  await page.getByRole('banner').getByRole('button').first().click();
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page
      .getByRole('button', { name: /^Save .* to a file$/ })
      .first()
      .click(),
  ]);
  const path = await file.path();
  const reading = readProject(new Uint8Array(await readFile(path)));
  if (reading.kind !== 'project') throw new Error(`the saved file reads as ${reading.kind}`);
  return { garment: reading.project.garment, path };
}
