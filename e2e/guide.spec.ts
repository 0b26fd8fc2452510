import { expect, test } from '@playwright/test';
import { openToAll } from './open-to-all';

/** What one who has never seen the workbench does: lets herself be led, doing only what each sentence says. */
test('the walk leads from a first visit to a checked piece, and can be left', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: /Be shown the whole job/ }).click();
  const walk = page.getByRole('region', { name: 'The job, one thing at a time' });
  const goOn = () => walk.getByRole('button', { name: 'Go on' }).click();
  await expect(walk).toContainText('1 of 10');

  await goOn();
  await expect(walk).toContainText('The picture, squared up');
  await goOn();
  await expect(walk).toContainText('The piece, traced');
  await goOn();

  await test.step('the curved waist', async () => {
    await expect(walk).not.toContainText('Done');
    await page.getByRole('button', { name: 'Take the curved waist' }).click();
    await expect(walk).toContainText('Done');
  });
  await goOn();

  await test.step('an opening', async () => {
    await expect(walk).not.toContainText('Done');
    await page.getByRole('button', { name: 'Leave it open' }).click();
    await expect(walk).toContainText('Done');
  });
  await goOn();

  await test.step('the side seam paired', async () => {
    await page
      .getByRole('button', { name: /^Pair / })
      .first()
      .click();
    await expect(walk).toContainText('Done');
  });
  await page.reload();
  await expect(walk).toContainText('6 of 10');
  await goOn();

  await test.step('the lay', async () => {
    await expect(walk).not.toContainText('Done');
    await page.getByRole('button', { name: 'Lay the pieces' }).click();
    // It is kept once it has been tried for its ten seconds, or sooner.
    await expect(walk).toContainText('Done', { timeout: 30_000 });
  });
  await goOn();

  await test.step('the pages', async () => {
    const make = page.getByRole('button', { name: 'Make the pages (PDF)' });
    await expect(make).toBeEnabled({ timeout: 30_000 });
    await Promise.all([page.waitForEvent('download', { timeout: 60_000 }), make.click()]);
    await expect(walk).toContainText('Done');
  });
  await goOn();

  await test.step('elsewhere, the way back is offered', async () => {
    await page.getByRole('navigation').getByRole('button', { name: 'Draft' }).click();
    await walk.getByRole('button', { name: 'Go to Paper' }).click();
    await expect(page.getByRole('heading', { name: 'Proof of scale' })).toBeVisible();
  });
  await walk.getByRole('button', { name: 'Leave' }).click();
  await expect(walk).toBeHidden();
});

test('the book opens at the page of the room, is read by keys, and gives the focus back', async ({ page }) => {
  await page.goto('/#demo');
  await page.getByRole('navigation').getByRole('button', { name: 'Paper' }).click();
  const opener = page.getByRole('button', { name: 'How to do it' });
  await opener.focus();
  await page.keyboard.press('Enter');
  const book = page.getByRole('complementary', { name: 'How it is done' });
  await expect(book.getByRole('heading', { name: 'Printing at full size' })).toBeFocused();
  await openToAll(page, 'the book');

  await book.getByRole('button', { name: 'All pages' }).click();
  await book.getByRole('button', { name: /Words of the trade/ }).click();
  await book.getByLabel('Find a word').fill('selvedge');
  await expect(book.locator('dt')).toContainText(['Cross grain', 'Grain', 'Selvedge']);
  await book.getByLabel('Find a word').fill('crocodile');
  await expect(book).toContainText('No word here has “crocodile”');
  await page.keyboard.press('Escape');
  await expect(book).toBeHidden();
  await expect(opener).toBeFocused();
});
