import { expect, test } from '@playwright/test';
import { openDemo } from './demo';
import { openToAll } from './open-to-all';
import { goTo } from './room';

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
] as const;

test('every card of every room says beside its title what it is about', async ({ page }) => {
  await openDemo(page);
  const notebook = page.getByRole('complementary', { name: 'Notebook' });
  await notebook.getByRole('button', { name: 'Panel' }).click();
  for (const room of ROOMS) {
    await test.step(room, async () => {
      await goTo(page, room);
      const marks = notebook.getByRole('button', { name: /^About / });
      await expect(marks.first()).toBeVisible();
      await expect(notebook.locator('h2')).toHaveCount(await marks.count());
      for (const mark of await marks.all()) {
        await mark.click();
        const note = page.locator(`[id="${await mark.getAttribute('aria-controls')}"]`);
        await expect(note).toContainText(/\w{3,}.*\./);
        await expect(note).toBeInViewport();
      }
      await openToAll(page, `${room}, every note open`);
    });
  }
});

test('help opens by key and by touch, closes on Escape, and leads to the page of the book', async ({ page }) => {
  await openDemo(page);
  await goTo(page, 'Fit');
  const mark = page.getByRole('button', { name: 'About The waist the body needs' });
  await expect(mark).toHaveAttribute('aria-expanded', 'false');
  await mark.press('Enter');
  const note = page.getByText(/upper edge of a cone laid flat is a curve/);
  await expect(note).toBeVisible();
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'More: The curved waist' })).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(note).toBeHidden();
  await expect(mark).toBeFocused();
  await mark.press('Enter');
  await page.getByRole('button', { name: 'More: The curved waist' }).click();
  await expect(page.getByRole('heading', { name: 'The curved waist' })).toBeFocused();
});

test('a card that is folded unfolds with its help', async ({ page }) => {
  await openDemo(page);
  await goTo(page, 'Paper');
  await page.getByRole('button', { name: 'About Drawing files' }).click();
  await expect(page.getByText(/SVG at full size/)).toBeInViewport();
  await expect(page.getByRole('heading', { name: 'Drawing files' }).locator('xpath=ancestor::details')).toHaveAttribute(
    'open',
  );
});
