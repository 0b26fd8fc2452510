import { expect, type Page, test } from '@playwright/test';
import { openDemo } from './demo';

test('edges without an allowance are given one together: in a piece, and in every piece', async ({ page }) => {
  await openDemo(page);
  const notebook = page.getByRole('complementary', { name: 'Notebook' });
  const saidOf = async (edge: string) => {
    await notebook.getByRole('button', { name: edge, exact: true }).first().click();
    return notebook.getByLabel('Allowance', { exact: true });
  };
  for (const [width, height] of [
    ['31', '3'],
    ['17', '5'],
  ] as const) {
    await notebook.getByRole('heading', { name: 'Pieces' }).scrollIntoViewIfNeeded();
    await write(page, 'Width', width);
    await write(page, 'Height', height);
    await notebook.getByRole('button', { name: 'Add it' }).click();
  }

  await test.step('the same on the rest of the piece, and in the other pieces', async () => {
    await notebook.getByRole('heading', { name: /^Points and edges/ }).click();
    await saidOf('edge 2');
    await write(page, 'Allowance', '5/8');
    await expect(
      notebook.getByRole('button', { name: '5/8 in on all 7 edges without one, in every piece' }),
    ).toBeVisible();
    await notebook.getByRole('button', { name: '5/8 in on the other 3 edges without one' }).click();
    await expect(await saidOf('edge 4')).toHaveValue('5/8 in');
    await expect(
      notebook.getByRole('button', { name: '5/8 in on all 4 edges without one, in every piece' }),
    ).toBeVisible();
    await page.getByRole('button', { name: 'Undo: allowance' }).click();
    await expect(await saidOf('edge 4')).toHaveValue('');
    await page.getByRole('button', { name: 'Do again: allowance' }).click();
  });

  await test.step('or one field of the piece', async () => {
    await notebook.getByRole('button', { name: 'Rectangle 2', exact: true }).click();
    await write(page, 'Allowance of the 4 edges without one', '1/2');
    await expect(notebook.getByLabel(/edges without one/)).toHaveCount(0);
    await expect(await saidOf('edge 1')).toHaveValue('1/2 in');
  });
});

async function write(page: Page, label: string, value: string): Promise<void> {
  const field = page.getByRole('complementary', { name: 'Notebook' }).getByLabel(label, { exact: true });
  await field.fill(value);
  await field.press('Enter');
}
