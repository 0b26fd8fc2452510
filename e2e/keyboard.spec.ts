import { expect, type Page, test } from '@playwright/test';
import { openDemo } from './demo';

test('a piece is chosen, walked round and mended by keys alone', async ({ page }) => {
  await openDemo(page);
  const said = page.getByRole('status');
  const notebook = page.getByRole('complementary', { name: 'Notebook' });
  const undone = page.getByRole('button', { name: 'Nothing to undo' });

  await test.step('walk the points on the table', async () => {
    await tabTo(page, 'application');
    await page.keyboard.press('PageDown');
    await expect(said).toContainText('Corner 1, 0 across, 0 down');
    await page.keyboard.press('PageDown');
    await expect(said).toContainText('Corner 2, 7 across, 0 down');
    await expect(notebook.getByRole('heading', { name: /^Corner 2/ })).toBeVisible();
    await page.keyboard.press('PageDown');
    await expect(said).toContainText('Curve point on side seam, 8 3/4 across, 4 down');
    await page.keyboard.press('PageDown');
    await expect(said).toContainText('Curve point on side seam, 10 across, 8 down');
    await page.keyboard.press('PageUp');
    await page.keyboard.press('PageUp');
    await expect(said).toContainText('Corner 2, 7 across, 0 down');
    await page.keyboard.press('PageUp');
    await page.keyboard.press('PageUp');
    // Going round backwards, from the first corner to the last point of the outline.
    await expect(said).toContainText('Corner 4, 0 across, 28 down');
    await page.keyboard.press('PageDown');
    await page.keyboard.press('PageDown');
  });

  await test.step('nudge by the snap step, and take it back', async () => {
    const across = notebook.getByLabel('Across', { exact: true });
    const down = notebook.getByLabel('Down', { exact: true });
    await expect(undone).toBeDisabled();
    await page.keyboard.press('ArrowRight');
    await expect(said).toContainText('Now at 7 1/8 across, 0 down');
    await expect(across).toHaveValue('7 1/8 in');
    await page.keyboard.press('Control+z');
    await expect(across).toHaveValue('7 in');
    await expect(undone).toBeDisabled();
    await page.keyboard.press('Control+Shift+z');
    await expect(across).toHaveValue('7 1/8 in');
    await page.keyboard.press('Control+z');

    // Another step of the squares, chosen by keys as well, holds for the next nudge.
    // Past the choice of how the picture is cleaned up.
    await tabTo(page, 'combobox', -1);
    await tabTo(page, 'combobox', -1);
    await expect(page.getByLabel('Snap to every')).toBeFocused();
    await page.keyboard.press('ArrowDown');
    await expect(page.getByLabel('Snap to every')).toHaveValue(String(25.4 / 4));
    await tabTo(page, 'application');
    await page.keyboard.press('ArrowDown');
    await expect(down).toHaveValue('1/4 in');
    await expect(across).toHaveValue('7 in');
    await page.keyboard.press('Control+z');
    await expect(down).toHaveValue('0 in');
    await expect(undone).toBeDisabled();
  });

  await test.step('take a point away, and bring it back', async () => {
    await page.keyboard.press('PageDown');
    await expect(said).toContainText('Curve point on side seam, 8 3/4 across');
    await page.keyboard.press('Delete');
    await expect(page.getByRole('button', { name: 'Undo: remove a point' })).toBeEnabled();
    await page.keyboard.press('Control+z');
    await expect(undone).toBeDisabled();
    await page.keyboard.press('Escape');
    await expect(notebook.getByRole('heading', { name: 'Pieces' })).toBeVisible();
  });

  await test.step('choose from the notebook', async () => {
    await notebook.getByRole('button', { name: 'Panel' }).focus();
    await page.keyboard.press('Enter');
    const outline = notebook.locator('summary').filter({ hasText: 'Points and edges' });
    await outline.focus();
    await page.keyboard.press('Enter');
    await notebook.getByRole('button', { name: 'hem', exact: true }).focus();
    await page.keyboard.press('Enter');
    await expect(notebook.getByRole('heading', { name: /^Edge: hem/ })).toBeVisible();
    // The focus goes to the card of what was chosen, not back to the top of the page.
    await page.keyboard.press('Tab');
    await expect(notebook.getByRole('button', { name: /^About/ }).first()).toBeFocused();
    await page.keyboard.press('Tab');
    await expect(notebook.getByLabel('Name of the edge')).toBeFocused();
  });
});

test('a piece is traced by typed numbers, and the keys of fields belong to the fields', async ({ page }) => {
  await openDemo(page);
  const notebook = page.getByRole('complementary', { name: 'Notebook' });
  await page.getByRole('radio', { name: 'Adjust' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('radio', { name: 'Trace a piece' })).toBeChecked();
  for (const [across, down] of [
    ['30', '2 1/2'],
    ['41 3/4', '3'],
    ['36', '19'],
  ] as const) {
    await notebook.getByLabel('Across', { exact: true }).focus();
    await page.keyboard.type(across);
    await page.keyboard.press('Tab');
    await page.keyboard.type(down);
    await page.keyboard.press('Tab');
    await expect(notebook.getByRole('button', { name: 'Put it down' })).toBeFocused();
    await page.keyboard.press('Enter');
  }
  await expect(notebook.getByText('3 points')).toBeVisible();
  await tabTo(page, 'application');
  await page.keyboard.press('Backspace');
  await expect(notebook.getByText('2 points')).toBeVisible();
  // While a piece is in the making, undo takes back its points, by the keys and by the button, and a reload keeps it.
  await page.keyboard.press('Control+z');
  await expect(notebook.getByText('1 point', { exact: true })).toBeVisible();
  await page.getByRole('button', { name: 'Undo: add a point' }).click();
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();
  for (const [across, down] of [
    ['30', '2 1/2'],
    ['41 3/4', '3'],
  ] as const) {
    await notebook.getByLabel('Across', { exact: true }).fill(across);
    await notebook.getByLabel('Down', { exact: true }).fill(down);
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
  }
  await page.reload();
  await expect(notebook.getByText('2 points')).toBeVisible();
  await notebook.getByLabel('Across', { exact: true }).focus();
  await page.keyboard.type('37');
  await page.keyboard.press('Control+z');
  // Undo in a field is the field's own: neither the trace nor the garment changes.
  await expect(notebook.getByText('2 points')).toBeVisible();
  await page.keyboard.press('Control+a');
  await page.keyboard.type('37');
  await page.keyboard.press('Tab');
  await page.keyboard.type('20');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await tabTo(page, 'application');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: /^Undo: trace / })).toBeEnabled();
  await expect(page.getByRole('radio', { name: 'Adjust' })).toBeChecked();
  await page.keyboard.press('PageDown');
  await expect(page.getByRole('status')).toContainText('Corner 1, 30 across, 2 1/2 down');
  await page.keyboard.press('PageUp');
  await expect(page.getByRole('status')).toContainText('Corner 3, 37 across, 20 down');
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();

  await notebook.getByLabel('Width', { exact: true }).focus();
  await page.keyboard.type('14 3/4');
  await page.keyboard.press('Tab');
  await page.keyboard.type('2 1/2');
  await page.keyboard.press('Tab');
  await expect(notebook.getByRole('button', { name: 'Add it' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Undo: add a rectangle' })).toBeEnabled();
});

/** Presses Tab, forwards or backwards, until something of this role has the focus. */
async function tabTo(page: Page, role: 'application' | 'combobox', way: 1 | -1 = 1): Promise<void> {
  const focused = role === 'combobox' ? 'select:focus' : `[role=${role}]:focus`;
  for (let presses = 0; presses < 60; presses++) {
    await page.keyboard.press(way === 1 ? 'Tab' : 'Shift+Tab');
    if ((await page.locator(focused).count()) > 0) return;
  }
  throw new Error(`no ${role} is reached by Tab`);
}
