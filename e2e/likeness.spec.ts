import { expect, type Page, test } from '@playwright/test';
import { openDemo } from './demo';
import { goTo, ROOMS } from './room';

/**
 * How each room looks, by day and by night, on a laptop, a tablet and a phone, beside the picture kept of it. The pictures
 * are taken at half size: that shows what stands where and in which colour, and lets the edges of letters be. When a room
 * is meant to look otherwise: npm run e2e -- likeness --update-snapshots, and look at what has changed.
 */
test.use({ deviceScaleFactor: 0.5 });

const SIZES = {
  laptop: { width: 1440, height: 900 },
  tablet: { width: 1024, height: 768 },
  phone: { width: 390, height: 844 },
} as const;

for (const [size, viewport] of Object.entries(SIZES)) {
  test(`every room looks as it should on a ${size}`, async ({ page }) => {
    await page.setViewportSize(viewport);
    await page.clock.setFixedTime('2026-03-02T10:00:00');
    await openDemo(page);
    for (const room of ROOMS) {
      await goTo(page, room);
      await looksAsKept(page, `${size}-${room}`);
    }
    await page.getByRole('banner').getByRole('button').first().click();
    await looksAsKept(page, `${size}-Shelf`);
  });
}

async function looksAsKept(page: Page, name: string): Promise<void> {
  const kept = name.toLowerCase().replaceAll(' ', '-');
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    // Whatever is still being done says so, and ends in three dots; it may begin a moment after its room.
    const busy = page.getByText(/\w…$/).filter({ visible: true });
    await expect(async () => {
      for (let look = 0; look < 3; look++) {
        expect(await busy.count()).toBe(0);
        await page.waitForTimeout(150);
      }
    }).toPass({ timeout: 20_000 });
    // A picture comes onto the table a moment after its room.
    await expect(() =>
      expect(page).toHaveScreenshot(`${kept}-${colorScheme}.png`, {
        scale: 'device',
        maxDiffPixelRatio: 0.006,
        threshold: 0.25,
      }),
    ).toPass({ timeout: 20_000 });
  }
}
