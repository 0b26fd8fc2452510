import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';

test('every package that is served is listed with its licence, without a network too', async ({ page, context }) => {
  await page.goto('/');
  await page.evaluate(() => navigator.serviceWorker.ready);
  await context.setOffline(true);
  await page.getByText('What Inchsquare is made of').click();
  const { dependencies } = JSON.parse(await readFile('package.json', 'utf8'));
  for (const [name, version] of Object.entries(dependencies)) {
    await expect(
      page
        .locator('summary')
        .filter({ hasText: `${name} ${version}, ` })
        .first(),
    ).toBeVisible();
  }
  // The text of every licence stands there, of those too whose package brings none.
  const list = await page.evaluate(async () => (await fetch('./licences.json')).json());
  expect(list.filter(({ text }: { text: string }) => text.length < 600)).toEqual([]);
  await page.locator('summary', { hasText: 'libheif-js' }).click();
  await expect(page.getByText(/GNU GENERAL PUBLIC LICENSE\s+Version 3/).first()).toBeVisible();
  await expect(page.getByText('GNU LESSER GENERAL PUBLIC LICENSE').first()).toBeVisible();
});
