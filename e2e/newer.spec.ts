import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { goTo, seeRooms } from './room';
import { staticHost } from './static-host';

test('a newer program that appears amid the work waits until it is taken, and nothing of the work is lost', async ({
  context,
}) => {
  await onAHost(context, async ({ page, folder }) => {
    await page.getByRole('button', { name: /Try the demo garment/ }).click();
    await goTo(page, 'Wearer');
    const waist = page.getByLabel('Waist', { exact: true });
    await waist.fill('29 3/8');
    await waist.press('Enter');

    await newerAppears(folder);
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    const offer = page.getByText(/A newer Inchsquare is ready/);
    await expect(offer).toBeVisible();

    await test.step('the work goes on with the program that is open, also in rooms not entered before', async () => {
      await waist.fill('30 1/8');
      await waist.press('Enter');
      await seeRooms(page, ['Seams', 'Compare', 'Paper']);
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
  });
});

test('of two windows neither is changed or loaded anew amid its work, and one alone changes at once', async ({
  context,
}) => {
  await onAHost(context, async ({ page, folder, address }) => {
    await page.getByRole('button', { name: /Try the demo garment/ }).click();
    await expect(page.getByText('Kept on this device')).toBeVisible();
    const other = await context.newPage();
    await other.goto(address);
    await goTo(other, 'Wearer');
    await newerAppears(folder);
    await other.evaluate(async () => (await navigator.serviceWorker.ready).update());
    await expect(other.getByText(/A newer Inchsquare is ready/)).toBeVisible();
    await goTo(page, 'Wearer');
    const waist = page.getByLabel('Waist', { exact: true });
    await waist.fill('29 3/8');

    await test.step('taken in one, it waits for the other, where a figure half typed stays', async () => {
      await other.getByRole('button', { name: 'Change to it now' }).click();
      await expect(other.getByText(/open in another window of this browser as well/)).toBeVisible();
      await expect(waist).toHaveValue('29 3/8');
      await waist.press('Enter');
      await expect(page.getByText('Kept on this device')).toBeVisible();
      await expect(other).toHaveTitle('Inchsquare');
    });

    await test.step('a worker that is changed all the same, past that, loads no window anew that did not ask', async () => {
      await waist.fill('30 1/4');
      await other.evaluate(async () => {
        (await navigator.serviceWorker.ready).waiting?.postMessage({ type: 'SKIP_WAITING' });
      });
      await expect(page.getByText(/A newer Inchsquare was taken in another window/)).toBeVisible();
      await expect(waist).toHaveValue('30 1/4');
      await waist.press('Enter');
      await page.getByRole('button', { name: 'Load it anew' }).click();
      await expect(page).toHaveTitle('Newer Inchsquare');
      await goTo(page, 'Wearer');
      await expect(waist).toHaveValue('30 1/4 in');
    });
  });
});

test('a window that is in use since the very first visit changes to a newer program too', async ({ context }) => {
  await onAHost(context, async ({ page, folder }) => {
    await newerAppears(folder);
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    await page.getByRole('button', { name: 'Change to it now' }).click();
    await expect(page).toHaveTitle('Newer Inchsquare');
  });
});

interface OnAHost {
  readonly page: Page;
  /** What the host serves, to be changed under the page. */
  readonly folder: string;
  readonly address: string;
}

/** The program on a host of its own, opened and kept for use without a network. */
async function onAHost(context: BrowserContext, use: (there: OnAHost) => Promise<void>): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'inchsquare-newer-'));
  await cp('dist', folder, { recursive: true });
  const host = await staticHost('/bench/', folder);
  try {
    const page = await context.newPage();
    await page.goto(host.address);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await use({ page, folder, address: host.address });
  } finally {
    await host.stop();
    await rm(folder, { recursive: true, force: true });
  }
}

/** On the host a program of another title takes the place of the one there. */
async function newerAppears(folder: string): Promise<void> {
  const html = await readFile(join(folder, 'index.html'), 'utf8');
  await writeFile(join(folder, 'index.html'), html.replace('<title>Inchsquare', '<title>Newer Inchsquare'));
  const sw = await readFile(join(folder, 'sw.js'), 'utf8');
  const newer = sw.replace(/(url:"index\.html",revision:")\w+|("revision":")\w+(?=","url":"index\.html")/, '$1$2newer');
  expect(newer).not.toBe(sw);
  await writeFile(join(folder, 'sw.js'), newer);
}
