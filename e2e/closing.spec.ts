import { expect, type Page, test } from '@playwright/test';
import { inches } from '../core/units/inch';
import { drag, fittedCanvas, wholePixel } from './canvas';
import { demoFit, openDemo } from './demo';
import { goTo } from './room';
import { waist } from './waist';

const leave: Readonly<Record<string, (page: Page) => Promise<Page>>> = {
  'the tab is closed': async (page) => {
    const context = page.context();
    await page.close();
    const next = await context.newPage();
    await next.goto('/');
    return next;
  },
  'the page is loaded anew': async (page) => {
    await page.reload();
    return page;
  },
  'another page is gone to': async (page) => {
    await page.goto('/icon.svg');
    await page.goto('/');
    return page;
  },
};
for (const [how, left] of Object.entries(leave)) {
  test(`a figure that stands typed and not yet taken is there when ${how}`, async ({ page }) => {
    await openDemo(page);
    await goTo(page, 'Wearer');
    await waist(page).fill('33 3/8');
    const next = await left(page);
    await goTo(next, 'Wearer');
    await expect(waist(next)).toHaveValue('33 3/8 in');
    await next.getByRole('button', { name: 'Undo: waist' }).click();
    await expect(waist(next)).toHaveValue('28 in');
  });
}

test('a point that was dragged is there when the tab is closed at the end of the drag', async ({ page, context }) => {
  await openDemo(page);
  await cornerTwo(page);
  const seen = await fittedCanvas(page, demoFit());
  const from = wholePixel(seen({ x: inches(7), y: 0 }));
  await drag(page, from, { x: from.x + 60, y: from.y + 25 });
  await page.close();
  const next = await context.newPage();
  await next.goto('/');
  const across = await cornerTwo(next);
  await expect(across).toHaveValue(/in$/);
  await expect(across).not.toHaveValue('7 in');
});

/** How far across the side corner of the waist lies, as the notebook says. */
async function cornerTwo(page: Page) {
  const notebook = page.getByRole('complementary', { name: 'Notebook' });
  await notebook.getByRole('button', { name: 'Panel' }).click();
  await notebook.getByRole('heading', { name: /^Points and edges/ }).click();
  return notebook.getByLabel('Corner 2, across');
}
