import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { inches } from '../core/units/inch';
import { byMouse } from './by-hand';
import { byNumbers } from './by-numbers';
import { goTo } from './room';
import { staticHost } from './static-host';
import { listenForTrouble } from './trouble';
import { wholeJob } from './whole-job';

test.describe.configure({ timeout: 300_000 });

/** One of every kind of picture that the program reads. */
const PICTURES = [
  'turned.jpg',
  'sixteen-bit.png',
  'plate.webp',
  'plate.avif',
  'plate.gif',
  'plate.bmp',
  'lzw-300-dpi.tif',
  'plate.heic',
];

/**
 * Browsers ask for sw.js of their own accord when a page or a worker starts (Service Workers, "soft update" at the end of
 * "handle fetch"), and a page cannot keep them from it. Nothing else may go out.
 */
test('a whole session asks for nothing once the program is there, but by the browser for a newer one, and breaks no policy', async ({
  browser,
}) => {
  const page = await readFile('dist/index.html', 'utf8');
  const policy = /http-equiv="Content-Security-Policy"\s+content="([^"]+)"/.exec(page)?.[1];
  const host = await staticHost('/', 'dist', policy);
  const context = await browser.newContext({ baseURL: host.address });
  try {
    await session(await context.newPage(), host);
  } finally {
    await context.close();
    await host.stop();
  }
});

async function session(page: Page, host: Awaited<ReturnType<typeof staticHost>>): Promise<void> {
  const elsewhere: string[] = [];
  page.context().on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(host.address) && !/^(blob|data):/.test(url)) elsewhere.push(url);
  });
  await test.step('the program comes', async () => {
    await page.goto('/');
    await page.evaluate(async () => {
      const { active } = await navigator.serviceWorker.ready;
      if (active && active.state !== 'activated')
        await new Promise((done) => active.addEventListener('statechange', done, { once: true }));
    });
    expect(host.asked.length).toBeGreaterThan(20);
  });

  const trouble = listenForTrouble(page);
  const hand = byMouse();
  // From here on everything is on the device, the page itself too.
  const before = host.asked.length;
  let started = 0;
  const count = () => {
    started += 1;
  };
  page.on('load', count).on('worker', count);
  await page.goto('/');
  await page.waitForLoadState('networkidle');
  const off = await wholeJob(page, hand, byNumbers(page, hand));
  expect(off).toBeLessThan(inches(1 / 16));

  await test.step('every kind of picture, and a page of a PDF', async () => {
    await page
      .getByRole('button', { name: /^New garment/ })
      .first()
      .click();
    await goTo(page, 'Diagram');
    for (const name of PICTURES) {
      await page.getByLabel('Add another diagram').setInputFiles(`e2e/formats/${name}`);
      await expect(page.getByRole('status'), name).toContainText(/\d+ by \d+ pixels/, { timeout: 20_000 });
      await page.getByRole('button', { name: 'Undo: bring in a diagram' }).click();
    }
    await page.getByLabel('Add another diagram').setInputFiles('e2e/formats/book.pdf');
    await page.getByRole('button', { name: 'Bring in this page' }).click();
    await expect(page.getByLabel('Name of this diagram')).toHaveValue('book, page 1');
  });

  await test.step('versions, files and the screen as paper', async () => {
    await goTo(page, 'Versions');
    await expect(page.getByRole('main')).toBeVisible();
    await goTo(page, 'Paper');
    await page.locator('summary').filter({ hasText: 'Drawing files' }).click();
    for (const name of ['Save as SVG', 'Save as DXF', 'Save a picture (PNG)']) {
      await Promise.all([
        page.waitForEvent('download', { timeout: 60_000 }),
        page.getByRole('button', { name }).click(),
      ]);
    }
    await page.locator('summary').filter({ hasText: 'On a screen or by a beam' }).click();
    await page.getByRole('button', { name: 'Full size on this screen' }).click();
    await expect(page.getByRole('dialog', { name: 'Full size' })).toBeVisible();
  });

  const asked = host.asked.slice(before);
  expect(
    asked.filter((path) => !/^\/(sw|workbox-\w+)\.js$/.test(path)),
    'asked of the host',
  ).toEqual([]);
  const checks = asked.filter((path) => path === '/sw.js').length;
  console.log(`asked for sw.js: ${checks}; pages and workers started: ${started}`);
  expect(checks, 'asked for a newer program').toBeLessThanOrEqual(started);
  expect(elsewhere, 'asked of others').toEqual([]);
  expect(host.reported, 'against the policy').toEqual([]);
  expect(trouble, 'on the console').toEqual([]);
}
