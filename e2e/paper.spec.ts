/** From the Paper room to the cutting table: pages, their joins and sizes, one page again, and the printer proved. */
import { execFileSync } from 'node:child_process';
import { expect, type Page, test } from '@playwright/test';
import { openDemo } from './demo';
import { readPages } from './read-pages';
import { goTo, savedGarment } from './room';

const notebookOf = (page: Page) => page.getByRole('complementary');

async function made(page: Page, name: string | RegExp): Promise<string> {
  const button = page.getByRole('button', { name });
  await expect(button).toBeEnabled({ timeout: 20_000 });
  const [file] = await Promise.all([page.waitForEvent('download', { timeout: 60_000 }), button.click()]);
  return file.path();
}

/** What poppler reads: the size of each page in mm, and the text. */
function read(path: string): { readonly sizes: readonly (readonly [number, number])[]; readonly text: string } {
  const info = execFileSync('pdfinfo', ['-f', '1', '-l', '999', path]).toString();
  const sizes = [...info.matchAll(/size:\s+([\d.]+) x ([\d.]+) pts/g)].map(([, wide, high]) => {
    return [(Number(wide) * 25.4) / 72, (Number(high) * 25.4) / 72] as const;
  });
  return { sizes, text: execFileSync('pdftotext', ['-layout', path, '-']).toString() };
}

test.beforeEach(async ({ page }) => {
  await openDemo(page);
  await goTo(page, 'Paper');
  await expect(page.getByText(/Fewer than \d+ pages cannot be|Fewer pages cannot be/)).toBeVisible({ timeout: 20_000 });
});

test('pages are joined edge to edge with fine squares, and every square is true', async ({ page }) => {
  await page.getByText('More about the pages').click();
  await page.getByRole('radio', { name: 'Edge to edge' }).check();
  await page.getByRole('radio', { name: '1 in', exact: true }).check();
  const path = await made(page, 'Make the pages (PDF)');
  const pages = readPages(path);
  if (pages === 'no-readers') return;
  for (const { across, down } of pages.squares.slice(1)) {
    expect(Math.abs(across - 4)).toBeLessThan(0.01);
    expect(Math.abs(down - 4)).toBeLessThan(0.01);
  }
  const { text } = read(path);
  expect(text).toContain('cut off here and set edge to edge with');
  expect(text).toContain('Cut both pages off along their dotted lines');
  expect(text).toMatch(/all taped up: .* across, .* down, grain line/);
});

test('a roll of her width takes one page, A0 another, and first pages fit A4 and Letter', async ({ page }) => {
  await page.getByRole('radio', { name: 'Roll', exact: true }).check();
  await expect(page.getByText(/Of the roll .*in are needed\./)).toBeVisible({ timeout: 20_000 });
  const width = page.getByLabel('The roll is wide');
  await width.fill('24 in');
  await width.press('Enter');
  await expect(page.getByText('Panel on 1 page')).toBeVisible();
  const roll = read(await made(page, 'Make the pages (PDF)')).sizes;
  expect(roll).toHaveLength(2);
  expect(roll[0]?.map(Math.round)).toEqual([210, 279]);
  expect(roll[1]?.[0]).toBeCloseTo(609.6, 1);
  await page.getByRole('radio', { name: 'A0', exact: true }).check();
  await expect(page.getByText(/Fewer pages cannot be/)).toBeVisible({ timeout: 20_000 });
  const a0 = read(await made(page, 'Make the pages (PDF)')).sizes;
  expect(a0[1]?.map(Math.round)).toEqual([841, 1189]);
});

test('only some pages are made, and a spoilt one is made once more though the paper is another now', async ({
  page,
}) => {
  await page.getByText('Only some of these pages').click();
  await page.getByRole('button', { name: 'B2 of Panel' }).click();
  await page.getByRole('button', { name: 'C1 of Panel' }).click();
  const some = read(await made(page, 'Make the 2 chosen pages (PDF)'));
  expect(some.sizes).toHaveLength(2);
  expect(some.text).toContain('row B, column 2');
  const notebook = notebookOf(page);
  await expect(notebook.getByText('Panel: pages B2, C1', { exact: true })).toBeVisible();
  // The others are told to be missing, and made with the same names.
  await expect(notebook.getByText(/of Panel (is|are) out of date|A1, A2/).first()).toBeVisible();
  await page.getByRole('button', { name: 'All pages after all' }).click();
  await made(page, 'Make the pages (PDF)');
  await expect(
    notebook.getByText(
      'The newest pages of every piece are as the draft is now. Older ones, with another mark, are not to be used.',
    ),
  ).toBeVisible();
  await page.getByRole('radio', { name: 'Letter', exact: true }).check();
  await page.getByLabel('A page once more').selectOption({ label: 'B2 of Panel' });
  const again = read(await made(page, 'Make page B2 again (PDF)'));
  expect(again.sizes.map((size) => size.map(Math.round))).toEqual([[210, 297]]);
  expect(again.text).toContain('row B, column 2');
  await expect(notebook.getByText('Panel: only page B2', { exact: true })).toBeVisible();
});

test('the check sheet proves a printer, says when a viewer fitted it, and how much the printer loses', async ({
  page,
}) => {
  const path = await made(page, 'Make the check sheet (PDF)');
  const { sizes, text } = read(path);
  expect(sizes).toHaveLength(1);
  expect(text).toContain('Is your printer true?');
  expect(text).toMatch(/94\.1 %\): A4 pages were fitted to Letter/);
  const type = async (label: string, length: string) => {
    const field = page.getByLabel(label);
    await field.fill(length);
    await field.press('Enter');
  };
  // The demo is in A4: 7 in across and 10 down.
  await type('The 7 in across measure', '6.585 in');
  await type('The 10 in down measure', '9.407 in');
  await expect(page.getByText(/A4 pages were fitted to Letter \(94\.1 %\)/).first()).toBeVisible();
  await type('The 7 in across measure', '6.95 in');
  await type('The 10 in down measure', '10.06 in');
  await expect(page.getByText('Your printer prints 99.3 % across and 100.6 % down.', { exact: false })).toBeVisible();
  await page.getByRole('button', { name: 'Correct the pages for this printer' }).click();
  const corrected = read(await made(page, 'Make the check sheet (PDF)'));
  expect(corrected.text.replace(/\s+/g, ' ')).toContain('corrected for a printer that prints 99.3 % across');
  await type('The 7 in across measure', '7 in');
  await type('The 10 in down measure', '10 in');
  await expect(page.getByText(/your printer is true/)).toBeVisible();
  await page.getByText('More about the pages').click();
  await type('My printer loses', '1/4 in');
  await expect(page.getByLabel('Clear margin')).toHaveValue('1/4 in');
  await type('Clear margin', '1/8 in');
  await expect(page.getByText('All ink keeps 1/4 in from the edge, which is what your printer loses.')).toBeVisible();

  await page.getByLabel('Each side by itself').check();
  await expect(page.getByLabel('Clear margin')).toBeHidden();
  for (const [side, loses] of [
    ['At the top', '1/8 in'],
    ['At the bottom', '1/2 in'],
  ] as const) {
    await expect(page.getByLabel(side)).toHaveValue('1/4 in');
    await type(side, loses);
    await expect(page.getByLabel(side)).toHaveValue(loses);
  }
  const { garment } = await savedGarment(page);
  expect(garment.paper).toMatchObject({ loses: 12.7, margin: 12.7, losesAt: { top: 3.175, bottom: 12.7, left: 6.35 } });
});
