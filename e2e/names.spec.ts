import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { checked, fontsNotEmbedded, greyPages, hasReaders, pageTexts, unpacked } from '../tests/paper/print-tools';
import { openDemo } from './demo';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

/** Accents, Cyrillic and Japanese: the last is in no font that goes with the program. */
const NAME = 'Jupe éÅ Юбка 袴プリーツ';
/** Greek, Hebrew and an accent; as a file is called, in small letters with hyphens. */
const GARMENT = 'Φούστα חצאית à godets';
const IN_FILE = 'φούστα-חצאית-à-godets';

async function saved(page: Page, button: string): Promise<{ readonly name: string; readonly bytes: Buffer }> {
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: button }).click()]);
  return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
}

test('a name of several scripts comes out of every file as it went in', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  await page.getByRole('banner').getByRole('button').first().click();
  const field = page.getByLabel('Name of the garment on the table');
  await field.fill(GARMENT);
  await field.press('Enter');
  await goTo(page, 'Draft');
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
  const png = await saved(page, 'Save a picture (PNG)');
  const pages = await saved(page, 'Make the pages (PDF)');
  const squares = await saved(page, 'Make the squares sheets (PDF)');
  for (const { name } of [svg, dxf, label, png, pages, squares]) {
    expect(name.normalize('NFC').startsWith(IN_FILE)).toBe(true);
  }
  if (hasReaders) {
    expect(pageTexts(label.bytes).join('').normalize('NFC')).toContain(NAME);
    // The letters of the name are drawn by the browser, as a stencil in the page.
    expect(unpacked(label.bytes)).toContain('/ImageMask true');
    expect(greyPages(label.bytes, 50)).toHaveLength(1);
    for (const { bytes } of [pages, squares]) {
      expect(pageTexts(bytes).join('').normalize('NFC')).toContain('袴プリーツ');
      expect(pageTexts(bytes).join('').normalize('NFC')).toContain('Юбка');
      expect(fontsNotEmbedded(bytes)).toBe(0);
      expect(checked(bytes)).toBe(0);
    }
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
