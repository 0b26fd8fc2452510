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
        .locator('summary, p')
        .filter({ hasText: `${name} ${version}, ` })
        .first(),
    ).toBeVisible();
  }
  await page.locator('summary', { hasText: 'libheif-js' }).click();
  await expect(page.getByText('GNU LESSER GENERAL PUBLIC LICENSE').first()).toBeVisible();
});
