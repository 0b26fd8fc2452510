import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { hasReaders, pageTexts } from '../tests/paper/print-tools';
import { openDemo } from './demo';
import { openToAll } from './open-to-all';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

const notebookOf = (page: Page) => page.getByRole('complementary', { name: 'Notebook' });

async function openSquares(page: Page): Promise<void> {
  await openDemo(page);
  await goTo(page, 'Paper');
  await page.locator('summary').filter({ hasText: 'On brown paper' }).click();
}

test('a piece is drawn point by point from the screen, ticked off by keys and by presses, and found again after a break', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  await openSquares(page);
  await page.getByRole('button', { name: 'Panel point by point' }).click();
  const screen = page.getByRole('dialog', { name: 'Panel, point by point' });
  // 3-4-5: 12, 16 and 20 in; then the rectangle round the squares, 13 by 28 in.
  await expect(screen.getByRole('heading', { name: 'The right angle' })).toBeVisible();
  await expect(screen.getByText('20 in')).toBeVisible();
  await screen.getByRole('button', { name: 'It measures so, next' }).click();
  await expect(screen.getByText('30 7/8 in')).toBeVisible();
  await page.keyboard.press('Enter');
  await expect(screen.getByRole('heading', { name: 'A', exact: true })).toBeVisible();
  await page.keyboard.press('Space');
  await expect(screen.getByRole('heading', { name: 'B', exact: true })).toBeVisible();
  await expect(screen.getByText('7 in', { exact: true })).toBeVisible();
  await expect(screen.getByText('4 of 29 · 3 done')).toBeVisible();
  // Looking ahead draws nothing.
  await page.keyboard.press('ArrowRight');
  await expect(screen.getByText('5 of 29 · 3 done')).toBeVisible();
  await page.keyboard.press('ArrowLeft');
  await openToAll(page, 'a piece point by point');

  await page.reload();
  await goTo(page, 'Paper');
  await page.locator('summary').filter({ hasText: 'On brown paper' }).click();
  await page.getByRole('button', { name: 'Panel point by point' }).click();
  await expect(screen.getByText('4 of 29 · 3 done')).toBeVisible();
  await screen.getByRole('button', { name: 'All points' }).click();
  await screen.getByRole('button', { name: /^C across/ }).click();
  await expect(screen.getByText('13 in', { exact: true })).toBeVisible();
  await screen.getByRole('button', { name: 'Begin anew' }).click();
  await expect(screen.getByText('1 of 29 · 0 done')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(screen).toBeHidden();
  expect(trouble).toEqual([]);
});

test('the squares sheet tells points along a base line, is remembered, and found out of date when the piece changes', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  await openSquares(page);
  await page.getByLabel('One square at full size').selectOption({ label: '2 in' });
  await page.getByRole('radio', { name: 'along a base line and out from it' }).check();
  await page.getByRole('radio', { name: 'large, for the floor' }).check();
  await expect(page.getByLabel('Base line of Panel')).toContainText('A to D, the longest straight');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Make the squares sheets (PDF)' }).click(),
  ]);
  if (hasReaders) {
    const text = pageTexts(await readFile(await file.path())).join('\n');
    expect(text).toContain('mark A on it; it runs through D');
    expect(text).toMatch(/B\s+0\s+7\s/);
    expect(text).toMatch(/C\s+27\s+13\s/);
  }
  const notebook = notebookOf(page);
  await expect(notebook.getByText('Panel: squares sheet')).toBeVisible();
  await expect(
    notebook.getByText(
      'The newest pages of every piece are as the draft is now. Older ones, with another mark, are not to be used.',
    ),
  ).toBeVisible();
  await goTo(page, 'Draft');
  await page.getByRole('radio', { name: 'Adjust' }).check();
  await page.getByRole('application').focus();
  await page.keyboard.press('PageDown');
  await page.keyboard.press('PageDown');
  await page.keyboard.press('ArrowRight');
  await goTo(page, 'Paper');
  await expect(notebook.getByText(/The squares sheet of .* is out of date: the piece was changed since/)).toBeVisible();
  await goTo(page, 'Before you cut');
  await expect(page.getByText(/The squares sheet of .* is out of date/)).toBeVisible();
  const { garment } = await savedGarment(page);
  expect(garment.paper.squares).toMatchObject({ square: 50.8, from: 'base-line', print: 'large' });
  expect(trouble).toEqual([]);
});
