import { expect, type Page, test } from '@playwright/test';
import { lindenCornersInPhoto, lindenPhotoSize } from '../app/demo/linden-panel';
import { fittedCanvas, wholePixel } from './canvas';
import { unfoldAll } from './cards';
import { openDemo } from './demo';
import { fingersOn } from './fingers';
import { goTo, ROOMS } from './room';

test.skip(({ hasTouch }) => !hasTouch, 'for screens that are touched');
test.describe.configure({ timeout: 240_000 });

const SIZES = { tablet: { width: 1024, height: 768 }, phone: { width: 390, height: 844 } } as const;

for (const [size, viewport] of Object.entries(SIZES)) {
  test(`on a ${size} everything that is pressed is as large as a finger, in every room, card and dialog`, async ({
    page,
  }) => {
    await page.setViewportSize(viewport);
    await page.goto('/');
    await expect(page.getByRole('button', { name: /Try the demo garment/ })).toBeVisible();
    await largeEnough(page, 'the empty shelf');
    await openDemo(page);
    for (const room of ROOMS) {
      await goTo(page, room);
      await expect(page.getByText('One moment…')).toBeHidden();
      const folded = page.getByRole('button', { name: 'Open the notebook' });
      if (await folded.isVisible()) await folded.tap();
      if (room === 'Draft')
        await page
          .getByRole('complementary')
          .getByRole('button', { name: /^Panel/ })
          .tap();
      await unfoldAll(page);
      for (const mark of await page.getByRole('button', { name: /^About / }).all()) {
        // A browser swallows a tap that comes while it still takes the last touch for a fling.
        await expect(
          async () => {
            if ((await mark.getAttribute('aria-expanded')) === 'false') await mark.tap();
            const note = page.locator(`[id="${await mark.getAttribute('aria-controls')}"]`);
            await expect(note).toBeInViewport({ timeout: 500 });
          },
          `${room}, ${await mark.getAttribute('aria-label')}`,
        ).toPass({ timeout: 8000 });
      }
      await largeEnough(page, room);
    }
    await goTo(page, 'Paper');
    const notebook = page.getByRole('button', { name: 'Open the notebook' });
    if (await notebook.isVisible()) await notebook.tap();
    await unfoldAll(page);
    await page.getByRole('button', { name: 'Full size on this screen' }).tap();
    await largeEnough(page, 'measuring the screen');
    for (const bar of ['The bar across measures', 'The bar down measures']) {
      await page.getByLabel(bar).fill('7');
      await page.getByLabel(bar).press('Enter');
    }
    await page.getByRole('button', { name: 'That is how long they are' }).tap();
    await largeEnough(page, 'full size on the screen');
    await page.getByRole('button', { name: 'Close' }).tap();
    await page.getByRole('button', { name: 'Panel point by point' }).tap();
    await largeEnough(page, 'point by point');
    await page.getByRole('button', { name: 'Close', exact: true }).tap();
    await page.getByRole('button', { name: 'How to do it' }).tap();
    await largeEnough(page, 'a page of the book');
    await page.getByRole('button', { name: 'All pages' }).tap();
    await page.getByRole('button', { name: /Words of the trade/ }).tap();
    await largeEnough(page, 'the words of the trade');
    await page.getByRole('button', { name: 'Close the book' }).tap();
    await page.getByRole('banner').getByRole('button').first().tap();
    await unfoldAll(page);
    await largeEnough(page, 'the shelf');
  });
}

test('two fingers move the table under them, and nothing on it', async ({ page }) => {
  await openDemo(page);
  await page.getByRole('radio', { name: 'Trace a piece' }).check();
  await page.getByLabel('Snap to the squares').uncheck();
  const notebook = page.getByRole('complementary', { name: 'Notebook' });
  const corners = notebook.getByRole('listitem').filter({ hasText: 'Corner' });
  const fingers = await fingersOn(page);
  const box = await page.getByRole('application').boundingBox();
  if (!box) throw new Error('there is no table');
  const at = wholePixel({ x: box.x + box.width * 0.7, y: box.y + box.height * 0.4 });
  await fingers.down([at]);
  await fingers.up();
  await expect(corners).toHaveCount(1);
  const first = await corners.first().textContent();
  await page.getByRole('button', { name: 'Take back a point' }).tap();
  const both = (by: number) => [
    { x: at.x - 60 - by, y: at.y + by },
    { x: at.x + 60 - by, y: at.y + by },
  ];
  await fingers.down(both(0));
  await fingers.glide(both(0), both(50));
  await fingers.up();
  await expect(corners).toHaveCount(0);
  await fingers.down([{ x: at.x - 50, y: at.y + 50 }]);
  await fingers.up();
  await expect(corners).toHaveText([first ?? '']);
});

test('on a phone a line just drawn asks its length in a notebook that opens for it', async ({ page }) => {
  await page.setViewportSize(SIZES.phone);
  await openDemo(page);
  await goTo(page, 'Diagram');
  const open = page.getByRole('button', { name: 'Open the notebook' });
  await open.tap();
  await page.getByRole('button', { name: 'Draw a known length' }).tap();
  await page.getByRole('button', { name: 'Fold the notebook away' }).tap();
  const fingers = await fingersOn(page);
  const { widthPx: maxX, heightPx: maxY } = lindenPhotoSize;
  const seen = await fittedCanvas(page, { minX: 0, minY: 0, maxX, maxY });
  const [from, to] = [0, 3].map((corner) => wholePixel(seen(lindenCornersInPhoto[corner] ?? { x: 0, y: 0 })));
  if (!from || !to) throw new Error('the panel has four corners');
  const press = async (at: { readonly x: number; readonly y: number }) => {
    await fingers.down([at]);
    await fingers.up();
  };
  await press(from);
  await expect(page.getByText('Now press on the other end.').first()).toBeVisible();
  await press({ x: from.x + 6, y: from.y + 3 });
  await expect(page.getByRole('status')).toContainText('Too near to the first end');
  await expect(open).toBeVisible();
  await press(to);
  const asked = page.getByLabel('At full size').first();
  await expect(asked).toBeInViewport();
});

/** Every button, field and choice in the page, as far as it is shown at all, is 44 CSS pixels high and wide or more. */
async function largeEnough(page: Page, where: string): Promise<void> {
  const small = await page.evaluate(() => {
    const pressed = 'button, select, summary, a[href], input:not([type=hidden]), textarea, [role=button]';
    return [...document.querySelectorAll<HTMLElement>(pressed)]
      .filter((each) => each.checkVisibility({ visibilityProperty: true }))
      .flatMap((each) => {
        const isTick = each.matches('input[type=radio], input[type=checkbox], input[type=file], input[type=range]');
        const target = (isTick && each.closest('label')) || each;
        const { width, height } = target.getBoundingClientRect();
        const name = each.getAttribute('aria-label') ?? target.textContent ?? each.id;
        return width > 0 && Math.min(width, height) < 43.5
          ? `${each.tagName.toLowerCase()} “${name.trim().slice(0, 40)}”: ${Math.round(width)} × ${Math.round(height)}`
          : [];
      });
  });
  expect.soft([...new Set(small)], where).toEqual([]);
}
