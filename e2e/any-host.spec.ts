import { expect, test } from '@playwright/test';
import { goTo } from './room';
import { staticHost } from './static-host';
import { listenForTrouble } from './trouble';

const ROOMS = [
  'Wearer',
  'Diagram',
  'Draft',
  'Reshape',
  'Seams',
  'Fit',
  'Mock-up',
  'Versions',
  'Compare',
  'Cloth',
  'Paper',
  'Before you cut',
];

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
  for (const room of ROOMS) {
    await goTo(page, room);
    await expect(page.locator('main')).toBeVisible();
    await expect(page.getByText(/could not be shown/)).toBeHidden();
  }
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
