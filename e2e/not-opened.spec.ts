import { expect, test } from '@playwright/test';

for (const [language, sentence, again] of [
  ['en', /did not come whole.*is safe/, 'Load the page anew'],
  ['de', /nicht vollständig geladen.*ist sicher/, 'Seite neu laden'],
] as const) {
  test(`a program of which a part does not come says so, in ${language}, and opens once it is there`, async ({
    browser,
  }) => {
    const context = await browser.newContext({ serviceWorkers: 'block' });
    const page = await context.newPage();
    await page.addInitScript((chosen) => localStorage.setItem('language', chosen), language);
    await page.route(/\/opened-[^/]+\.js$/, (route) => route.abort());
    await page.goto('/');
    await expect(page.getByRole('alert')).toContainText(sentence);
    await page.unroute(/\/opened-[^/]+\.js$/);
    await page.getByRole('button', { name: again }).click();
    await expect(page.getByRole('button', { name: /demo|Beispiel/i }).first()).toBeVisible();
    await context.close();
  });
}
