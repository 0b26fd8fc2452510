import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';

/** Unfolds the report of a fault and saves it to a file, as a person would, and reads the file. */
export async function savedReport(page: Page): Promise<string> {
  await page.getByText('What went wrong, for those who mend it').click();
  const [report] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save this report' }).click(),
  ]);
  return readFile(await report.path(), 'utf8');
}
