import { expect, type Page, test } from '@playwright/test';
import { openDemo } from './demo';

const DAY = { least: 0.8, most: 1 };
const EVENING = { least: 0, most: 0.2 };

test('the page and the canvas follow the device, and a choice made here is remembered', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await openDemo(page);
  await page.getByLabel('Picture', { exact: true }).uncheck();
  await inLight(page, EVENING);
  await page.emulateMedia({ colorScheme: 'light' });
  await inLight(page, DAY);

  await test.step('chosen on the shelf', async () => {
    await page.getByRole('banner').getByRole('button').first().click();
    await page.getByRole('radio', { name: 'dark', exact: true }).check();
    await page.getByRole('navigation').getByRole('button', { name: 'Draft' }).click();
    await inLight(page, EVENING);
    await page.reload();
    await page.getByLabel('Picture', { exact: true }).uncheck();
    await inLight(page, EVENING);
    await expect(page.locator('meta[name="theme-color"]')).toHaveAttribute('content', '#241e17');
  });

  await test.step('and given back to the device', async () => {
    await page.getByRole('banner').getByRole('button').first().click();
    await page.getByRole('radio', { name: 'as the device' }).check();
    await page.getByRole('navigation').getByRole('button', { name: 'Draft' }).click();
    await inLight(page, DAY);
  });
});

/** How light the notebook and the strip of numbers on the canvas are, from 0 for black to 1 for white. */
async function inLight(page: Page, { least, most }: { readonly least: number; readonly most: number }): Promise<void> {
  const measured = () =>
    page.evaluate(() => {
      const luma = (r = 0, g = 0, b = 0) => (0.2126 * r + 0.7152 * g + 0.0722 * b) / 255;
      const notebook = document.querySelector('aside');
      const layers = document.querySelectorAll<HTMLCanvasElement>('main canvas');
      const numbers = layers[layers.length - 1]?.getContext('2d')?.getImageData(6, 6, 1, 1).data;
      if (!notebook || !numbers) return [];
      const ground = getComputedStyle(notebook).backgroundColor.match(/\d+/g)?.map(Number) ?? [];
      return [luma(...(ground as [number, number, number])), luma(numbers[0], numbers[1], numbers[2])];
    });
  await expect(async () => {
    const found = await measured();
    expect(found).toHaveLength(2);
    for (const light of found) {
      expect(light).toBeGreaterThanOrEqual(least);
      expect(light).toBeLessThanOrEqual(most);
    }
  }).toPass({ timeout: 8000 });
}

for (const [how, width, letters] of [
  ['at 320 pixels, as a page of 1,280 zoomed to 400 %', 320, '100%'],
  ['with letters twice as large', 1280, '200%'],
] as const) {
  test(`every room stays whole ${how}`, async ({ page }) => {
    await page.setViewportSize({ width, height: 720 });
    await openDemo(page);
    await page.evaluate((size) => {
      document.documentElement.style.fontSize = size;
    }, letters);
    const rooms = page.getByRole('navigation').getByRole('button');
    for (let room = 0; room < (await rooms.count()); room++) {
      await rooms.nth(room).click();
      await expect(page.getByText('One moment…')).toBeHidden();
      const name = (await rooms.nth(room).textContent()) ?? '';
      const out = await page.evaluate(() => {
        const sideways = document.documentElement.scrollWidth - document.documentElement.clientWidth;
        const cut = [...document.querySelectorAll('main button, main select, aside button, aside select, aside input')]
          .map((control) => ({ box: control.getBoundingClientRect(), name: control.textContent }))
          .filter(({ box }) => box.width > 1 && (box.left < -1 || box.right > window.innerWidth + 1));
        return { sideways, cut: cut.map(({ name }) => name) };
      });
      expect.soft(out, name).toEqual({ sideways: 0, cut: [] });
    }
  });
}

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
] as const;

test('in the colours of the system what is chosen still differs from what is not', async ({ page }) => {
  await page.emulateMedia({ forcedColors: 'active', colorScheme: 'dark' });
  await openDemo(page);
  for (const room of ROOMS) {
    await page.getByRole('navigation').getByRole('button', { name: room }).click();
    await expect(page.getByRole('navigation').getByRole('button', { name: room })).toHaveAttribute('aria-current');
    const grounds = await page.evaluate(() => {
      // A choice is coloured on its label or on the words in it.
      const ground = (element: Element | null | undefined) =>
        element &&
        [element, ...element.querySelectorAll('span')].map((part) => getComputedStyle(part).backgroundColor).join(' ');
      const on = document.querySelector('input[type=radio]:checked');
      const off = on?.closest('fieldset')?.querySelector('input[type=radio]:not(:checked)');
      return {
        here: ground(document.querySelector('nav [aria-current]')),
        elsewhere: ground(document.querySelector('nav button:not([aria-current])')),
        on: ground(on?.closest('label')),
        off: ground(off?.closest('label')),
      };
    });
    expect.soft(grounds.here, `${room}: the room one is in`).not.toBe(grounds.elsewhere);
    if (grounds.off) expect.soft(grounds.on, `${room}: what is chosen`).not.toBe(grounds.off);
  }
});

test('nothing moves by itself where less movement is asked for', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await openDemo(page);
  for (const room of ROOMS) {
    await page.getByRole('navigation').getByRole('button', { name: room }).click();
    await expect(page.getByRole('navigation').getByRole('button', { name: room })).toHaveAttribute('aria-current');
    expect(await page.evaluate(() => document.getAnimations().length), room).toBe(0);
  }
});
