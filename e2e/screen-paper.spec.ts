import { expect, type Locator, type Page, test } from '@playwright/test';
import { openDemo } from './demo';
import { openToAll } from './open-to-all';
import { goTo } from './room';
import { listenForTrouble } from './trouble';

/** As a ruler would find it, were the screen 120 CSS pixels to the inch: bars end 24 px from the edges. */
const PX_PER_INCH = 120;

async function openCard(page: Page): Promise<Locator> {
  await openDemo(page);
  await goTo(page, 'Paper');
  await page.locator('summary').filter({ hasText: 'On a screen or by a beam' }).click();
  return page.getByRole('dialog', { name: 'Full size' });
}

async function type(field: Locator, inches: number): Promise<void> {
  await field.fill(inches.toFixed(4));
  await field.press('Enter');
}

/** What is painted, as brightness 0 to 255, row by row. */
async function painted(page: Page): Promise<(x: number, y: number) => number> {
  const [width, bright] = await page.evaluate(() => {
    const canvas = document.querySelector<HTMLCanvasElement>('[role=dialog] canvas');
    const ink = canvas?.getContext('2d');
    if (!canvas || !ink) throw new Error('nothing is painted');
    const { data } = ink.getImageData(0, 0, canvas.width, canvas.height);
    return [canvas.width, Array.from(data.filter((_, i) => i % 4 === 0))] as const;
  });
  return (x, y) => bright[y * width + x] ?? 0;
}

const upTo = (count: number, from = 0) => Array.from({ length: count - from }, (_, i) => from + i);

test('a measured screen shows the piece at full size, is known again, and is measured anew when it changes', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  const screen = await openCard(page);
  await page.getByRole('button', { name: 'Full size on this screen' }).click();
  await openToAll(page, 'measuring the screen');
  const { width, height } = page.viewportSize() ?? { width: 0, height: 0 };
  await screen.getByLabel('The bar across measures').fill('0');
  await screen.getByLabel('The bar across measures').press('Enter');
  await expect(screen.getByText(/must be at least/)).toBeVisible();
  await type(screen.getByLabel('The bar across measures'), (width - 48) / PX_PER_INCH);
  await type(screen.getByLabel('The bar down measures'), (height - 48) / PX_PER_INCH);
  await screen.getByRole('button', { name: 'That is how long they are' }).click();
  await expect(screen.getByText('Measure the square before you cut.')).toBeVisible();
  await openToAll(page, 'full size');

  await test.step('the waist of 7 in is as long as a ruler says', async () => {
    // Without the numbered squares and the test square the first lines from above are the cut line and, 1/2 in further in, the stitch line.
    await screen.getByRole('button', { name: 'Lines, colours, measuring anew' }).click();
    await screen.getByLabel('Numbered squares').uncheck();
    await screen.getByLabel('Test square').uncheck();
    await screen.getByRole('radio', { name: 'thin' }).check();
    await screen.getByRole('button', { name: 'Lines, colours, measuring anew' }).click();
    const bright = await painted(page);
    // As wide as two dashes of the stitch line and the gap between.
    const rows = upTo(300).filter((y) => upTo(360, 300).some((x) => bright(x, y) > 90));
    // From the cut line down to the stitch line: the allowance of the waist, 1/2 in.
    expect(((rows.at(-1) ?? 0) - (rows[0] ?? 0)) / PX_PER_INCH).toBeCloseTo(0.5, 1);
    // Along the cut line of the waist from the fold to the side: 7 in and the side's allowance on a slant.
    const row = (rows[0] ?? 0) + 1;
    const xs = upTo(1070).filter((x) => bright(x, row) > 200);
    const waist = ((xs.at(-1) ?? 0) - (xs[0] ?? 0)) / PX_PER_INCH;
    expect(waist).toBeGreaterThan(7.4);
    expect(waist).toBeLessThan(8);
  });

  await test.step('it moves on by whole squares, by buttons and by keys', async () => {
    const said = screen.getByText(/^In sight|In sight:/);
    const before = await said.textContent();
    await screen.getByRole('button', { name: 'Step on downwards' }).click();
    await expect(said).not.toHaveText(before ?? '');
    await page.getByRole('application', { name: /Panel at full size/ }).focus();
    await page.keyboard.press('ArrowUp');
    await expect(said).toHaveText(before ?? '');
  });

  await test.step('locked, it answers nothing but two presses', async () => {
    await screen.getByRole('button', { name: 'Lock', exact: true }).click();
    await page.getByRole('application', { name: /Panel at full size/ }).focus();
    await page.keyboard.press('ArrowDown');
    await page.mouse.click(600, 300);
    await expect(screen.getByRole('button')).toHaveCount(1);
    await screen.getByRole('button', { name: 'Locked. Press to unlock' }).click();
    await screen.getByRole('button', { name: 'Press here as well' }).click();
    await expect(screen.getByText('Measure the square before you cut.')).toBeVisible();
  });

  await test.step('the square mends it', async () => {
    await screen.getByRole('button', { name: 'The square measures…' }).click();
    await type(screen.getByLabel('It measures across'), 2.02);
    await screen.getByRole('button', { name: 'Mend it so' }).click();
    const kept = await page.evaluate(() => JSON.parse(localStorage.getItem('inchsquare screens') ?? '[]'));
    expect(kept[0].calibration.across / 25.4).toBeCloseTo(((width - 48) / PX_PER_INCH) * 1.01, 2);
  });

  await test.step('it is known the next time', async () => {
    await screen.getByRole('button', { name: 'Close' }).click();
    await page.getByRole('button', { name: 'Full size on this screen' }).click();
    await expect(screen.getByText('Measure the square before you cut.')).toBeVisible();
  });

  await test.step('another zoom is noticed', async () => {
    const devtools = await page.context().newCDPSession(page);
    await screen.getByRole('button', { name: 'The square measures…' }).click();
    await screen.getByRole('button', { name: 'Mend it so' }).click();
    const [screenWidth, screenHeight] = await page.evaluate(() => [window.screen.width, window.screen.height]);
    const at = (deviceScaleFactor: number) =>
      devtools.send('Emulation.setDeviceMetricsOverride', {
        ...{ width, height, screenWidth, screenHeight, deviceScaleFactor },
        mobile: false,
      });
    await at(1.5);
    await expect(screen.getByText(/is not what was measured/)).toBeVisible();
    await expect(screen.getByLabel('The bar across measures')).toBeVisible();
    await at(1);
    await expect(screen.getByText('Measure the square before you cut.')).toBeVisible();
  });
  expect(trouble).toEqual([]);
});

test('a beam is set by four corners, dragged or by keys, and crossed ones are named', async ({ page }) => {
  const trouble = listenForTrouble(page);
  const screen = await openCard(page);
  await page.getByRole('button', { name: 'Thrown on the table by a beam' }).click();
  await openToAll(page, 'setting a beam');
  const use = screen.getByRole('button', { name: 'That is how long they are' });
  await type(screen.getByLabel('Its upper side measures'), 24);
  await type(screen.getByLabel('Its left side measures'), 16);
  await expect(use).toBeEnabled();
  const corner = screen.getByRole('button', { name: /^Top left corner/ });
  await corner.focus();
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('ArrowDown');
  await expect(corner).toHaveAccessibleName('Top left corner, 183 across, 109 down');
  const box = (await corner.boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(1300, 820, { steps: 5 });
  await page.mouse.up();
  await expect(screen.getByText(/corners cross over or lie in one line/)).toBeVisible();
  await expect(use).toBeDisabled();
  await corner.focus();
  const back = (await corner.boundingBox()) ?? box;
  await page.mouse.move(back.x + back.width / 2, back.y + back.height / 2);
  await page.mouse.down();
  await page.mouse.move(250, 90, { steps: 5 });
  await page.mouse.up();
  await use.click();
  await expect(screen.getByText('Measure the square before you cut.')).toBeVisible();
  // The window of a beam is part of what was set.
  await page.setViewportSize({ width: 1200, height: 900 });
  await expect(screen.getByText(/is not what was measured/)).toBeVisible();
  expect(trouble).toEqual([]);
});
