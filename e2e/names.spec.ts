import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { greyPages, hasReaders, pageTexts, unpacked } from '../tests/paper/print-tools';
import { openDemo } from './demo';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

/** Accents, Cyrillic and Japanese: the last is in no font that goes with the program. */
const NAME = 'Jupe éÅ Юбка 袴プリーツ';

async function saved(page: Page, button: string): Promise<{ readonly name: string; readonly bytes: Buffer }> {
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: button }).click()]);
  return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
}

test('a name of several scripts comes out of every file as it went in', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  const notebook = page.getByRole('complementary', { name: 'Notebook' });
  await notebook.getByRole('button', { name: 'Panel' }).click();
  await notebook.getByLabel('Name', { exact: true }).fill(NAME);
  await notebook.getByLabel('Name', { exact: true }).press('Enter');
  await goTo(page, 'Paper');
  for (const card of ['Drawing files', 'For the envelope']) {
    await page.locator('summary').filter({ hasText: card }).click();
  }
  const svg = await saved(page, 'Save as SVG');
  expect(svg.bytes.toString('utf8')).toContain(NAME);
  const dxf = await saved(page, 'Save as DXF');
  const label = await saved(page, 'Make the label (PDF)');
  expect(label.name).toBe('linden-petticoat-label.pdf');
  if (hasReaders) {
    expect(pageTexts(label.bytes).join('').normalize('NFC')).toContain(NAME);
    // The letters of the name are drawn by the browser, as a stencil in the page.
    expect(unpacked(label.bytes)).toContain('/ImageMask true');
    expect(greyPages(label.bytes, 50)).toHaveLength(1);
  }
  for (const file of [svg, dxf]) {
    await goTo(page, 'Draft');
    await page
      .getByLabel('Bring in outlines (SVG, DXF)')
      .setInputFiles({ name: file.name, mimeType: 'application/octet-stream', buffer: file.bytes });
    await expect(page.getByRole('status')).toContainText('1 piece is in.');
  }
  const { garment } = await savedGarment(page);
  expect(garment.pieces.map(({ name }) => name)).toEqual([NAME, NAME, NAME]);
  expect(trouble).toEqual([]);
});
