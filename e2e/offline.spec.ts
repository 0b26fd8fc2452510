import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import { goTo } from './room';
import { listenForTrouble } from './trouble';

/** What stands in every room, so that one knows it is open. */
const ROOMS = [
  ['Wearer', 'The measures to start with'],
  ['Diagram', /Square up/],
  ['Draft', 'Pieces'],
  ['Fit', 'Level by level'],
  ['Mock-up', 'Mock-ups'],
  ['Paper', 'What to print'],
  ['Before you cut', 'Before you cut'],
] as const;

test('once opened, everything works without a network, and nothing is asked of anyone else', async ({
  page,
  context,
  baseURL,
}) => {
  const asked: string[] = [];
  context.on('request', (request) => asked.push(request.url()));

  await test.step('the first visit, with a network', async () => {
    await page.goto('/');
    await expect(page.getByRole('button', { name: /Try the demo garment/ })).toBeVisible();
    await page.evaluate(async () => {
      const { active } = await navigator.serviceWorker.ready;
      if (active && active.state !== 'activated')
        await new Promise((done) => active.addEventListener('statechange', done, { once: true }));
    });
  });

  await test.step('the network goes', async () => {
    await context.setOffline(true);
    await context.route('**', (route) => route.abort('internetdisconnected'));
    const out = await page.evaluate(() =>
      fetch('./nothing-of-ours.txt', { cache: 'no-store' }).then(String, () => 'no network'),
    );
    expect(out).toBe('no network');
  });

  const trouble = listenForTrouble(page);
  await test.step('a fresh start, the demo garment and every room', async () => {
    await page.reload();
    await page.getByRole('button', { name: /Try the demo garment/ }).click();
    for (const [room, heading] of ROOMS) {
      await goTo(page, room);
      await expect(page.getByRole('heading', { name: heading }).first()).toBeVisible();
    }
    await goTo(page, 'Diagram');
    await expect(page.getByText('Good enough to trace.')).toBeVisible();
    await page.getByRole('radio', { name: 'Squared up' }).check();
    await expect(page.getByText('Squaring up…')).toBeHidden();
    await expect(page.getByText(/picture of this diagram is not on this device/)).toBeHidden();
  });

  await test.step('a picture comes in', async () => {
    await page.getByLabel('Add another diagram').setInputFiles('public/demo/linden-plate.jpg');
    await expect(page.getByLabel('Diagram on the table')).toBeVisible();
    await page.getByRole('button', { name: 'Undo: bring in a diagram' }).click();
  });

  await test.step('pictures that need a decoder of their own come in, and a page of a PDF', async () => {
    for (const name of ['plate.heic', 'group4-200-dpi.tif']) {
      await page.getByLabel('Add another diagram').setInputFiles(`e2e/formats/${name}`);
      await expect(page.getByRole('status')).toContainText('360 by 480 pixels', { timeout: 20_000 });
      await page.getByRole('button', { name: 'Undo: bring in a diagram' }).click();
    }
    await page.getByLabel('Add another diagram').setInputFiles('e2e/formats/book.pdf');
    await expect(page.getByText('On paper it is 4 in across and 6 in down.')).toBeVisible();
    await page.getByRole('button', { name: 'Leave it' }).click();
  });

  await test.step('the pages are made', async () => {
    await goTo(page, 'Paper');
    for (const [name, least] of [
      ['Make the pages (PDF)', 6],
      ['Make the squares sheets (PDF)', 1],
    ] as const) {
      const [file] = await Promise.all([
        page.waitForEvent('download', { timeout: 60_000 }),
        page.getByRole('button', { name }).click(),
      ]);
      const bytes = await readFile(await file.path());
      expect(bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
      expect(bytes.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0).toBeGreaterThanOrEqual(least);
      await expect(page.getByText(/^Made: /)).toBeVisible();
    }
  });

  await test.step('the garment is there after another reload', async () => {
    await page.reload();
    await expect(page.getByRole('navigation')).toBeVisible();
    await expect(page.getByRole('button', { name: /^Panel/ }).first()).toBeVisible();
  });

  const elsewhere = asked.filter((url) => !/^(blob|data):/.test(url) && new URL(url).origin !== baseURL);
  expect(elsewhere, 'requests to another origin').toEqual([]);
  expect(asked.length).toBeGreaterThan(10);
  expect(trouble, 'nothing on the console').toEqual([]);
});
