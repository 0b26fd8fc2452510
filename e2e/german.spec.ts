/** The whole workbench in German, for a browser that asks for it: no English is left on a screen or on a page. */
import { execFileSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { german } from '../app/words/de/catalogue';
import { openToAll } from './open-to-all';

test.use({ locale: 'de-DE' });

const { rooms } = german.shell.shellWords;

/** The English sentences and labels of more than one word that German words otherwise. */
async function englishSayings(): Promise<string[]> {
  const said: string[] = [];
  const folder = new URL('../app/words/en/', import.meta.url);
  for (const name of readdirSync(folder, { recursive: true }).map(String)) {
    if (!name.endsWith('.ts')) continue;
    gather(await import(new URL(name, folder).pathname), said);
  }
  const inGerman: string[] = [];
  gather(german, inGerman);
  return said.filter((text) => text.length > 8 && text.includes(' ') && !inGerman.includes(text));
}

function gather(value: unknown, into: string[]): void {
  if (typeof value === 'string') into.push(value);
  else if (typeof value === 'object' && value !== null) for (const part of Object.values(value)) gather(part, into);
}

/** All that is shown, and all that is only heard. */
async function everythingSaid(page: Page): Promise<string> {
  const heard = await page
    .locator('[aria-label], [title], [placeholder]')
    .evaluateAll((all) =>
      all.map((one) => ['aria-label', 'title', 'placeholder'].map((name) => one.getAttribute(name) ?? '').join('\n')),
    );
  return `${(await page.locator('body').allInnerTexts()).join('\n')}\n${heard.join('\n')}`;
}

const found = (text: string, sayings: readonly string[]) => sayings.filter((saying) => text.includes(saying));

test('a German browser finds every room and every page in German', async ({ page }) => {
  test.setTimeout(180_000);
  const sayings = await englishSayings();
  expect(sayings.length).toBeGreaterThan(1000);
  await page.goto('/');
  await page.getByRole('button', { name: german.shelf.shelfWords.startDemo }).click();
  await expect(page.getByRole('navigation')).toBeVisible();
  expect(await page.locator('html').getAttribute('lang')).toBe('de');
  for (const room of Object.values(rooms).filter((name) => name !== rooms.shelf)) {
    await page.getByRole('navigation').getByRole('button', { name: room }).click();
    await page.waitForTimeout(600);
    expect.soft(found(await everythingSaid(page), sayings), room).toEqual([]);
    await openToAll(page, room);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect.soft(wide, `${room} is no wider than the screen`).toBeLessThanOrEqual(1440);
  }
  await page.getByRole('navigation').getByRole('button', { name: rooms.paper }).click();
  const make = page.getByRole('button', { name: german.paper.paperWords.makePages });
  await expect(make).toBeEnabled({ timeout: 30_000 });
  const [file] = await Promise.all([page.waitForEvent('download', { timeout: 60_000 }), make.click()]);
  const printed = execFileSync('pdftotext', ['-layout', await file.path(), '-']).toString();
  expect(found(printed, sayings)).toEqual([]);
  expect(printed).toContain('Bahn');
});

test('lengths have commas that can be typed back, and English is one press away and back', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: german.shelf.shelfWords.startDemo }).click();
  await page.getByRole('navigation').getByRole('button', { name: rooms.wearer }).click();
  await page.getByRole('radio', { name: german.wearer.wearerWords.centimetres }).check();
  const waist = page.getByLabel(german.measures.measureNames.waist, { exact: true });
  await waist.fill('72,5');
  await waist.press('Enter');
  await expect(waist).toHaveValue(/^72,5/);
  await page.getByRole('banner').getByRole('button').first().click();
  await page.getByRole('radio', { name: 'English' }).click();
  await expect(page.locator('html')).toHaveAttribute('lang', 'en');
  await page.getByRole('navigation').getByRole('button', { name: 'Wearer' }).click();
  await expect(page.getByLabel('Waist', { exact: true })).toHaveValue(/^72\.5/);
  await page.getByRole('banner').getByRole('button').first().click();
  await page.getByRole('radio', { name: 'Deutsch' }).click();
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
});
