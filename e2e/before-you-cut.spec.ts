import { expect, test } from '@playwright/test';
import { openDemo } from './demo';
import { goTo } from './room';

test('the scale is proved, a printer that is off is corrected, and the list is printed', async ({ page }) => {
  await openDemo(page);
  await goTo(page, 'Paper');
  await page.getByRole('radio', { name: 'The test square' }).check();
  const across = page.getByLabel('The square measures across');
  const down = page.getByLabel('The square measures down');
  await across.fill('3.95 in');
  await across.press('Enter');
  await down.fill('4.05 in');
  await down.press('Enter');
  await expect(page.getByText('Your printer prints 98.8 % across and 101.3 % down.')).toBeVisible();
  await page.getByRole('button', { name: 'Correct the pages for this printer' }).click();
  await expect(page.getByText(/proved before the pages were corrected/)).toBeVisible();
  await across.fill('4 in');
  await across.press('Enter');
  await down.fill('4 in');
  await down.press('Enter');
  await expect(page.getByText(/your printer is true/)).toBeVisible();
  await goTo(page, 'Before you cut');
  await expect(page.getByText(/not laid yet, so whether it is enough is not known/)).toBeVisible();
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Print this list (PDF)' }).click(),
  ]);
  expect(file.suggestedFilename()).toMatch(/before-you-cut\.pdf$/);
});

test('a finding is left knowingly with a reason, and taken up again', async ({ page }) => {
  await openDemo(page);
  await goTo(page, 'Before you cut');
  const leave = page.getByRole('button', { name: 'Leave it as it is' });
  await expect(leave.first()).toBeVisible();
  const before = await leave.count();
  await leave.first().click();
  await page.getByRole('button', { name: 'Leave it so' }).click();
  await expect(page.getByText('Write a reason first')).toBeVisible();
  await page.getByLabel('Why it is left so').fill('as the plate has it');
  await page.getByRole('button', { name: 'Leave it so' }).click();
  await expect(page.getByText(/Left as it is on .*: as the plate has it/)).toBeVisible();
  await expect(leave).toHaveCount(before - 1);
  await expect(page.getByRole('navigation').getByText('1 left', { exact: false }).first()).toBeVisible();
  await page.getByRole('button', { name: 'Take it up again' }).click();
  await expect(leave).toHaveCount(before);
});
