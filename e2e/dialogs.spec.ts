import { expect, test } from '@playwright/test';
import { unfoldAll } from './cards';
import { openDemo } from './demo';
import { openToAll } from './open-to-all';
import { goTo } from './room';

for (const [width, height] of [
  [1440, 900],
  [1024, 768],
  [390, 844],
] as const) {
  test(`what lies over or beside the rooms is open to all at ${width} × ${height}`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await openDemo(page);
    await goTo(page, 'Paper');
    const folded = page.getByRole('button', { name: 'Open the notebook' });
    if (await folded.isVisible()) await folded.click();
    await unfoldAll(page);
    await page.getByRole('button', { name: 'Panel point by point' }).click();
    await openToAll(page, 'point by point');
    await page.getByRole('button', { name: 'Close', exact: true }).click();
    const screen = page.getByRole('dialog', { name: 'Full size' });
    await page.getByRole('button', { name: 'Full size on this screen' }).click();
    await openToAll(page, 'measuring the screen');
    for (const bar of ['The bar across measures', 'The bar down measures']) {
      await screen.getByLabel(bar).fill('7');
      await screen.getByLabel(bar).press('Enter');
    }
    await screen.getByRole('button', { name: 'That is how long they are' }).click();
    await screen.getByRole('button', { name: 'Lines, colours, measuring anew' }).click();
    await openToAll(page, 'full size, its choices open');
    await screen.getByRole('button', { name: 'The square measures…' }).click();
    await openToAll(page, 'the square measured');
    await screen.getByRole('button', { name: 'Leave it' }).click();
    await screen.getByRole('button', { name: 'Close', exact: true }).click();
    await page.getByRole('button', { name: 'How to do it' }).click();
    const book = page.getByRole('complementary', { name: 'How it is done' });
    await openToAll(page, 'a page of the book');
    await book.getByRole('button', { name: 'All pages' }).click();
    await openToAll(page, 'the list of pages');
    await book.getByRole('button', { name: /Words of the trade/ }).click();
    await openToAll(page, 'the words of the trade');
    await book.getByRole('button', { name: 'Close the book' }).click();
    await page.getByRole('banner').getByRole('button').first().click();
    await unfoldAll(page);
    await openToAll(page, 'the shelf, all of it unfolded');
    await expect(page.getByRole('button', { name: /^Take .* off the shelf$/ })).toBeVisible();
  });
}
