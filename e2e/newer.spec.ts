import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { goTo } from './room';
import { staticHost } from './static-host';

test('a newer program that appears amid the work waits until it is taken, and nothing of the work is lost', async ({
  context,
}) => {
  const folder = await mkdtemp(join(tmpdir(), 'inchsquare-newer-'));
  await cp('dist', folder, { recursive: true });
  const host = await staticHost('/bench/', folder);
  try {
    const page = await context.newPage();
    await page.goto(host.address);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.getByRole('button', { name: /Try the demo garment/ }).click();
    await goTo(page, 'Wearer');
    const waist = page.getByLabel('Waist', { exact: true });
    await waist.fill('29 3/8');
    await waist.press('Enter');

    const html = await readFile(join(folder, 'index.html'), 'utf8');
    await writeFile(join(folder, 'index.html'), html.replace('<title>Inchsquare', '<title>Newer Inchsquare'));
    const sw = await readFile(join(folder, 'sw.js'), 'utf8');
    const newer = sw.replace(
      /(url:"index\.html",revision:")\w+|("revision":")\w+(?=","url":"index\.html")/,
      '$1$2newer',
    );
    expect(newer).not.toBe(sw);
    await writeFile(join(folder, 'sw.js'), newer);
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    const offer = page.getByText(/A newer Inchsquare is ready/);
    await expect(offer).toBeVisible();

    await test.step('the work goes on with the program that is open, also in rooms not entered before', async () => {
      await waist.fill('30 1/8');
      await waist.press('Enter');
      for (const room of ['Seams', 'Compare', 'Paper']) {
        await goTo(page, room);
        await expect(page.locator('main')).toBeVisible();
        await expect(page.getByText(/could not be shown/)).toBeHidden();
      }
      await expect(page).toHaveTitle('Inchsquare');
    });

    await test.step('loaded anew without taking it, it is the whole old program still, and the offer stands', async () => {
      await page.reload();
      await expect(page).toHaveTitle('Inchsquare');
      await expect(offer).toBeVisible();
    });

    await test.step('taken, it is the newer one, with the garment as it was left', async () => {
      await page.getByRole('button', { name: 'Change to it now' }).click();
      await expect(page).toHaveTitle('Newer Inchsquare');
      await goTo(page, 'Wearer');
      await expect(waist).toHaveValue('30 1/8 in');
      await expect(offer).toBeHidden();
    });
  } finally {
    await host.stop();
    await rm(folder, { recursive: true, force: true });
  }
});
