import { expect, type Page, test } from '@playwright/test';
import { openDemo } from './demo';
import { goTo } from './room';

const ROOMS = ['Wearer', 'Diagram', 'Draft', 'Reshape', 'Seams', 'Fit', 'Mock-up', 'Versions', 'Compare'] as const;

/** A length in the unit that is not shown: in what is read on the page and in its fields. */
const LENGTH = { in: /\d ?in\b(?! square)/, cm: /\d ?(cm|mm)\b/ };

test('inches and centimetres change places in every room, and back', async ({ page }) => {
  await openDemo(page);
  await page
    .getByRole('complementary')
    .getByRole('button', { name: /^Panel/ })
    .click();
  for (const [unit, gone, shown] of [
    ['centimetres', LENGTH.in, LENGTH.cm],
    ['inches', LENGTH.cm, LENGTH.in],
  ] as const) {
    await goTo(page, 'Wearer');
    await page.getByRole('radio', { name: unit, exact: true }).check();
    let said = '';
    for (const room of ROOMS) {
      await goTo(page, room);
      await expect(page.getByRole('complementary', { name: 'Notebook' })).toBeVisible();
      await expect.soft(page.getByText(gone).filter({ visible: true }), `${room}, in ${unit}`).toHaveCount(0);
      const fields = await fieldsOf(page);
      expect
        .soft(
          fields.filter((value) => gone.test(value)),
          `${room}, fields in ${unit}`,
        )
        .toEqual([]);
      said += `${await page.locator('#app').textContent()} ${fields.join(' ')}`;
    }
    expect(said).toMatch(shown);
  }
  await goTo(page, 'Wearer');
  await expect(page.getByLabel('Waist', { exact: true })).toHaveValue('28 in');
});

function fieldsOf(page: Page): Promise<string[]> {
  return page.locator('input:visible').evaluateAll((all) => all.map((field) => (field as HTMLInputElement).value));
}
