import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { readProject } from '../app/storage/project-file';

/** The field of the waist, in the Wearer room. */
export function waist(page: Page) {
  return page.getByLabel('Waist', { exact: true });
}

/** Types another waist, and Enter. */
export async function setWaist(page: Page, value: string): Promise<void> {
  await waist(page).fill(value);
  await waist(page).press('Enter');
}

/** The waist in mm in the file that the strip offers. */
export async function savedWaist(page: Page): Promise<number | undefined> {
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save to a file now' }).click(),
  ]);
  const reading = readProject(new Uint8Array(await readFile(await file.path())));
  if (reading.kind !== 'project') throw new Error(reading.kind);
  const { sets, currentSetId } = reading.project.garment.wearer;
  return sets.find(({ id }) => id === currentSetId)?.measures.waist?.length;
}
