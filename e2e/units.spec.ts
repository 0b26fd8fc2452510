import { isDeepStrictEqual } from 'node:util';
import { expect, type Page, test } from '@playwright/test';
import { unfoldAll } from './cards';
import { layAll } from './cloth-room';
import { openDemo } from './demo';
import { goTo, ROOMS } from './room';

/** A length in this unit, as it is read on the page and in its fields. */
const LENGTH = { in: /\d ?in\b(?! square| 100)/, cm: /\d ?(cm|mm)\b/ };

/** What is the same in both units: how large the fine squares over the pages are to be. */
const FIXED = ['1 in', '1 cm'];

test('inches and centimetres change places in every room where one stands, and back', async ({ page }) => {
  await openDemo(page);
  await page
    .getByRole('complementary')
    .getByRole('button', { name: /^Panel/ })
    .click();
  let said = { in: '', cm: '' };
  for (const room of ROOMS) {
    await test.step(room, async () => {
      await goTo(page, room);
      await expect(page.getByText('One moment…')).toBeHidden();
      if (room === 'Cloth') await layAll(page);
      await unfoldAll(page);
      const drawn = await atRest(page);
      for (const [unit, other, word] of [
        ['cm', 'in', 'centimetres'],
        ['in', 'cm', 'inches'],
      ] as const) {
        await page
          .getByRole('banner')
          .getByRole('button', { name: `Write lengths in ${word}` })
          .click();
        await expect(async () => {
          const read = [...(await sentences(page)), ...(await fieldsOf(page))];
          expect(read.filter((text) => LENGTH[other].test(text) && !LENGTH[unit].test(text))).toEqual([]);
          said = { ...said, [unit]: `${said[unit]} ${read.join(' ')}` };
        }, `${room}, in ${word}`).toPass({ timeout: 10_000 });
        if (room === 'Wearer') await expect(page.getByRole('radio', { name: word, exact: true })).toBeChecked();
        // The squares and their numbers are of that unit as well; the picture as it was taken has none.
        if (drawn.length > 0 && room !== 'Diagram')
          await expect(async () => {
            expect(isDeepStrictEqual(await canvases(page), drawn)).toBe(unit === 'in');
          }).toPass({ timeout: 5000 });
      }
    });
  }
  expect(said.in).toMatch(LENGTH.in);
  expect(said.cm).toMatch(LENGTH.cm);
  await goTo(page, 'Wearer');
  await expect(page.getByLabel('Waist', { exact: true })).toHaveValue('28 in');
  await page.getByRole('radio', { name: 'centimetres', exact: true }).check();
  await expect(page.getByLabel('Waist', { exact: true })).toHaveValue('71.1 cm');
  await expect(page.getByRole('button', { name: 'Write lengths in inches' })).toBeVisible();
});

test('the book, the help beside a card and the walk speak in the unit of the garment', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: /Be shown the whole job/ }).click();
  const walk = page.getByRole('region', { name: 'The job, one thing at a time' });
  await expect(walk).toContainText('try 29 for the waist');
  await page.getByRole('button', { name: 'Write lengths in centimetres' }).click();
  await expect(walk).toContainText('try 74 for the waist');
  await page.getByRole('button', { name: 'About The measures to start with' }).click();
  await expect(page.getByText('Write 71, 87.5 or 34 1/2 in')).toBeVisible();
  await page.getByRole('button', { name: 'How to do it' }).click();
  const book = page.getByRole('complementary', { name: 'How it is done' });
  await expect(book).toContainText('differ by more than 0.5 cm');
  await page.getByRole('button', { name: 'Write lengths in inches' }).click();
  await expect(book).toContainText('differ by more than 1/4 in');
});

/** What is read on the page, each in the words of its own element; what is the same in both units left out. */
function sentences(page: Page): Promise<readonly string[]> {
  return page.locator('#app').evaluate((app, fixed) => {
    const read: string[] = [];
    for (const element of app.querySelectorAll<HTMLElement>('*')) {
      const hasWords = [...element.childNodes].some(
        ({ nodeType, data }: Node & { data?: string }) => nodeType === 3 && data?.trim(),
      );
      const text = element.textContent ?? '';
      if (hasWords && element.checkVisibility() && !fixed.includes(text)) read.push(text);
    }
    return read;
  }, FIXED);
}

function fieldsOf(page: Page): Promise<readonly string[]> {
  return page.locator('input:visible').evaluateAll((all) => all.map((field) => (field as HTMLInputElement).value));
}

/** What each canvas shows once nothing is added to it any more. */
async function atRest(page: Page): Promise<readonly string[]> {
  let drawn = await canvases(page);
  await expect(async () => {
    await page.waitForTimeout(150);
    const before = drawn;
    drawn = await canvases(page);
    expect(isDeepStrictEqual(drawn, before)).toBe(true);
  }).toPass({ timeout: 8000 });
  return drawn;
}

/** What each canvas shows. */
function canvases(page: Page): Promise<readonly string[]> {
  return page
    .locator('main canvas')
    .evaluateAll((all) => all.map((canvas) => (canvas as HTMLCanvasElement).toDataURL()));
}
