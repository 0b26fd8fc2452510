import { chromium, expect, test } from '@playwright/test';
import config from '../playwright.config';
import { goTo, seeRooms } from './room';
import { staticHost } from './static-host';
import { listenForTrouble } from './trouble';
import { setWaist, waist } from './waist';

test('served from a folder of any host, it starts cold in every room when the host is gone, and breaks no policy', async ({
  context,
}) => {
  const host = await staticHost('/a/b/');
  const first = await context.newPage();
  await first.goto(host.address);
  await expect(first.getByRole('button', { name: /Try the demo garment/ })).toBeVisible();
  const manifest = await first.evaluate(async () => {
    await navigator.serviceWorker.ready;
    const link = document.querySelector<HTMLLinkElement>('link[rel=manifest]');
    return link ? (await fetch(link.href)).json() : undefined;
  });
  expect(manifest).toMatchObject({ display: 'standalone', start_url: '.' });
  for (const { src } of manifest.icons) expect((await first.request.get(host.address + src)).status()).toBe(200);
  const devtools = await context.newCDPSession(first);
  const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
  // A test's browser keeps nothing, and that alone may stand against installing it.
  expect(installabilityErrors.filter(({ errorId }) => errorId !== 'in-incognito')).toEqual([]);
  await first.close();
  await host.stop();

  const page = await context.newPage();
  const trouble = listenForTrouble(page);
  const outside: string[] = [];
  page.on('request', (request) => {
    if (!request.url().startsWith(host.address) && !/^(blob|data):/.test(request.url())) outside.push(request.url());
  });
  const violated: string[] = [];
  await page.exposeFunction('violated', (what: string) => violated.push(what));
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
      (window as unknown as { violated(what: string): void }).violated(`${violatedDirective} ${blockedURI}`),
    );
  });
  await page.goto(host.address);
  await page.getByRole('button', { name: /Try the demo garment/ }).click();
  await seeRooms(page);
  await goTo(page, 'Diagram');
  await page.getByLabel('Add another diagram').setInputFiles('e2e/formats/plate.heic');
  await expect(page.getByRole('status')).toContainText('360 by 480 pixels', { timeout: 20_000 });
  await goTo(page, 'Paper');
  const [pages] = await Promise.all([
    page.waitForEvent('download', { timeout: 60_000 }),
    page.getByRole('button', { name: 'Make the squares sheets (PDF)' }).click(),
  ]);
  expect(pages.suggestedFilename()).toMatch(/\.pdf$/);
  expect({ violated, outside, trouble }).toEqual({ violated: [], outside: [], trouble: [] });
});

test('served over plain http by another machine of the house it works and keeps, and says that it needs the network', async () => {
  const host = await staticHost('/');
  const { launchOptions } = config.use ?? {};
  const args = [...(launchOptions?.args ?? []), '--host-resolver-rules=MAP sewing-room.test 127.0.0.1'];
  const browser = await chromium.launch({ ...launchOptions, args });
  try {
    const page = await browser.newPage();
    const trouble = listenForTrouble(page);
    await page.goto(host.address.replace('127.0.0.1', 'sewing-room.test'));
    expect(await page.evaluate(() => isSecureContext)).toBe(false);
    await page.getByRole('button', { name: /Try the demo garment/ }).click();
    await seeRooms(page);
    await goTo(page, 'Wearer');
    await setWaist(page, '29 1/8');
    await expect(page.getByText('Kept on this device')).toBeVisible();
    await page.reload();
    await goTo(page, 'Wearer');
    await expect(waist(page)).toHaveValue('29 1/8 in');
    await page.getByRole('banner').getByRole('button').first().click();
    await expect(page.getByText(/needs the network each time it is opened/)).toBeVisible();
    expect(trouble).toEqual([]);
  } finally {
    await browser.close();
    await host.stop();
  }
});

test('without a network any question mark opens it, and an address it does not have is no white page', async ({
  context,
}) => {
  const host = await staticHost('/a/b/');
  const first = await context.newPage();
  await first.goto(host.address);
  await first.evaluate(() => navigator.serviceWorker.ready);
  await expect(first.getByRole('button', { name: /Try the demo garment/ })).toBeVisible();
  await first.close();
  await host.stop();
  const page = await context.newPage();
  for (const tail of ['?from=home', 'index.html?x=1#there', '#fit']) {
    await page.goto('about:blank');
    await page.goto(host.address + tail);
    await expect(page.getByRole('button', { name: /Try the demo garment/ }), tail).toBeVisible();
  }
  // The browser says that it has no network, as it would of any page that is not there.
  await expect(page.goto(`${host.address}fit/waist`)).rejects.toThrow(/ERR_/);
});
