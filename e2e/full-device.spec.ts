import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, expect, type Page, test } from '@playwright/test';
import config from '../playwright.config';
import { goTo } from './room';
import { savedWaist, setWaist, waist } from './waist';

const MB = 1024 * 1024;
const { launchOptions, baseURL = '' } = config.use ?? {};

/**
 * Opens the browser with so many bytes left to the page, of the demo garment and all, and closes it again. Begun anew each
 * time, for Chromium remembers for half a minute what a store may take; and told to say what it allows, for it tells pages
 * of 10 GB whatever there is.
 */
async function withRoom(profile: string, left: number, work: (page: Page) => Promise<void>): Promise<void> {
  const context = await chromium.launchPersistentContext(profile, {
    ...launchOptions,
    baseURL,
    args: [...(launchOptions?.args ?? []), '--disable-features=PredictableReportedQuota,StaticStorageQuota'],
  });
  try {
    const [page = await context.newPage()] = context.pages();
    await page.goto('/icon.svg');
    const used = await page.evaluate(async () => (await navigator.storage.estimate()).usage ?? 0);
    const browser = await context.newCDPSession(page);
    await browser.send('Storage.overrideQuotaForOrigin', { origin: baseURL, quotaSize: Math.max(1, used + left) });
    await page.goto('/');
    await work(page);
  } finally {
    await context.close();
  }
}

test('a device that is full is met before it hurts, and when it is full nothing of the work is lost', {
  tag: '@alone',
}, async () => {
  const profile = await mkdtemp(join(tmpdir(), 'inchsquare-full-'));
  try {
    await withRoom(profile, 500 * MB, async (page) => {
      await page.getByRole('button', { name: /Try the demo garment/ }).click();
      await page.evaluate(() => navigator.serviceWorker.ready);
      await expect.poll(() => hasReserve(page), { timeout: 20_000 }).toBe(true);
      await expect(page.getByText(/Little room is left|This device is full/)).toBeHidden();
    });

    await test.step('with 40 MB left it is said, and can be put by', () =>
      withRoom(profile, 40 * MB, async (page) => {
        await goTo(page, 'Wearer');
        await setWaist(page, '29 1/8');
        await expect(page.getByText(/Little room is left on this device: (39|40) MB/)).toBeVisible();
        await page.getByRole('button', { name: 'Not now' }).click();
        await expect(page.getByText(/Little room is left/)).toBeHidden();
        await expect(page.getByText('Kept on this device')).toBeVisible();
        await page.getByRole('banner').getByRole('button').first().click();
        await expect(page.getByText(/^\d+ MB used in this browser\. It allows up to (39|40) MB more/)).toBeVisible();
      }));

    await test.step('with no room left the change is kept in the reserve, and that is said', () =>
      withRoom(profile, 0, async (page) => {
        await goTo(page, 'Wearer');
        await setWaist(page, '30 3/8');
        await expect(page.getByText(/This device is full, or nearly so/)).toBeVisible();
        await expect(page.getByText('Kept on this device')).toBeVisible();
        expect(await hasReserve(page)).toBe(false);
        await page.reload();
        await goTo(page, 'Wearer');
        await expect(waist(page)).toHaveValue('30 3/8 in');
      }));

    await test.step('with that gone too the change is in hand, and goes to a file', () =>
      withRoom(profile, -10 * MB, async (page) => {
        await goTo(page, 'Wearer');
        await setWaist(page, '31 5/8');
        await expect(page.getByText(/not yet kept: this device has no room left/)).toBeVisible();
        await expect(waist(page)).toHaveValue('31 5/8 in');
        expect(await savedWaist(page)).toBeCloseTo(31.625 * 25.4, 9);
        const browser = await page.context().newCDPSession(page);
        await browser.send('Storage.overrideQuotaForOrigin', { origin: baseURL });
        // Once there is room again it is kept without being asked, and a reserve is laid anew.
        await expect(page.getByText(/not yet kept/)).toBeHidden({ timeout: 45_000 });
        await expect.poll(() => hasReserve(page), { timeout: 20_000 }).toBe(true);
        await page.reload();
        await goTo(page, 'Wearer');
        await expect(waist(page)).toHaveValue('31 5/8 in');
      }));
  } finally {
    await rm(profile, { recursive: true, force: true });
  }
});

function hasReserve(page: Page): Promise<boolean> {
  return page.evaluate(async () => (await caches.match('./reserve')) !== undefined);
}
