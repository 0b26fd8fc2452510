import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { readProject } from '../app/storage/project-file';
import { plainSkirtPieces } from '../core/blocks/plain-skirt';
import { edgeLength } from '../core/seams/edge-length';
import { inches } from '../core/units/inch';
import { readLength } from '../core/units/read-length';
import { drag } from './canvas';
import { openDemo } from './demo';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

const notebook = (page: Page) => page.getByRole('complementary', { name: 'Notebook' });
const figures = (page: Page) => notebook(page).getByRole('table');

/** What the table of figures says of something: both lengths and their difference. */
async function row(page: Page, name: string): Promise<string[]> {
  const found = figures(page)
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: new RegExp(`^${name}`) }) })
    .first();
  await expect(found).toBeVisible();
  const cells = await found.getByRole('cell').allInnerTexts();
  return cells.map((cell) => cell.replaceAll('\u00a0', ' '));
}

/** A number above the table of figures. */
const figure = (page: Page, words: string) =>
  notebook(page)
    .locator('dl div')
    .filter({ has: page.getByText(words, { exact: true }) })
    .locator('dd');

const pick = (page: Page, label: string, option: string) =>
  notebook(page).getByLabel(label, { exact: true }).selectOption({ label: option });

async function write(page: Page, label: string, value: string): Promise<void> {
  await notebook(page).getByLabel(label, { exact: true }).fill(value);
  await notebook(page).getByLabel(label, { exact: true }).press('Enter');
}

/** Copies the garment on the shelf, then makes the panel of the one on the table an inch and a half longer. */
async function keepACopyAndLengthen(page: Page, notebookFolded = false): Promise<void> {
  await page.getByRole('banner').getByRole('button').first().click();
  await page.getByRole('button', { name: 'Copy Linden petticoat', exact: true }).click();
  await expect(page.getByRole('button', { name: 'Copy Linden petticoat, copy' })).toBeVisible();
  await page.getByRole('listitem').filter({ hasText: 'On the table now' }).getByRole('button').first().click();
  await goTo(page, 'Reshape');
  const open = page.getByRole('button', { name: 'Open the notebook' });
  if (notebookFolded) await open.click();
  await notebook(page)
    .getByRole('button', { name: /^Lengthen or shorten/ })
    .click();
  await write(page, 'By', '1 1/2');
  await notebook(page).getByRole('button', { name: 'Take it' }).click();
  await goTo(page, 'Compare');
  await expect(page.getByRole('region', { name: 'What the lines are' })).toBeVisible();
  if (notebookFolded) await open.click();
}

const FROM_SHELF = 'Linden petticoat, copy, on the shelf';

test('a piece is held against a copy on the shelf: gap, edges, girths and area, and neither is changed', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  await keepACopyAndLengthen(page);
  await pick(page, 'With a piece of', FROM_SHELF);
  await expect(notebook(page).getByRole('radio', { name: 'where both lie' })).toBeChecked();

  await test.step('the copy ends an inch and a half above', async () => {
    await expect(figure(page, 'Largest gap')).toHaveText('1 1/2 in');
    await expect(figure(page, 'Furthest in')).toHaveText('1 1/2 in');
    expect(await row(page, 'centre fold')).toEqual(['29 1/2 in', '28 in', '−1 1/2 in']);
    expect(await row(page, 'waist')).toEqual(['7 in', '7 in', '0 in']);
    // The waist is where it was, and an inch and a half was let in below the hip.
    expect(await row(page, 'Hip')).toEqual(['40 in', '40 in', '0 in']);
    await expect(notebook(page).getByText(/^The largest gap is 1\s1\/2\sin, /)).toBeVisible();
    await expect(notebook(page).getByText(/Edges that differ: .*centre fold −1\s1\/2\sin/)).toBeVisible();
  });

  await test.step('beneath and on top change places, and what was in is out', async () => {
    await page.getByRole('button', { name: 'Let them change places' }).click();
    await expect(figure(page, 'Furthest out')).toHaveText('1 1/2 in');
    expect(await row(page, 'centre fold')).toEqual(['28 in', '29 1/2 in', '+1 1/2 in']);
    await page.getByRole('button', { name: 'Let them change places' }).click();
    await expect(figure(page, 'Furthest in')).toHaveText('1 1/2 in');
  });

  await test.step('hem on hem, the gap is at the waist', async () => {
    await notebook(page).getByRole('radio', { name: 'edge on edge' }).check();
    await pick(page, 'Edge of now', 'centre fold');
    await expect(figure(page, 'Largest gap')).toHaveText('1 1/2 in');
    await notebook(page).getByRole('radio', { name: 'corner on corner' }).check();
    await pick(page, 'Corner of now', 'hem and centre fold');
    await expect(figure(page, 'Furthest in')).toHaveText('1 1/2 in');
    await expect(notebook(page).getByText(/^The largest gap is 1\s1\/2\sin, .*waist/)).toBeVisible();
  });

  await test.step('nothing can be undone of it, and both garments are what they were', async () => {
    await expect(page.getByRole('button', { name: /^Undo: lengthen/ })).toBeVisible();
    const { garment } = await savedGarment(page);
    const longer = garment.pieces[0];
    expect(longer && edgeLength(longer, longer.edges[3]?.id ?? '')).toBeCloseTo(inches(29.5), 3);
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save Linden petticoat, copy to a file' }).click(),
    ]);
    const copy = readProject(new Uint8Array(await readFile(await file.path())));
    if (copy.kind !== 'project') throw new Error(`the copy reads as ${copy.kind}`);
    const shorter = copy.project.garment.pieces[0];
    expect(shorter && edgeLength(shorter, shorter.edges[3]?.id ?? '')).toBeCloseTo(inches(28), 3);
  });
  expect(trouble).toEqual([]);
});

test('the other piece is nudged by keys, by hand and by figures, and laid back', async ({ page }) => {
  await openDemo(page);
  await keepACopyAndLengthen(page);
  await pick(page, 'With a piece of', FROM_SHELF);
  await expect(figure(page, 'Furthest in')).toHaveText('1 1/2 in');
  const table = page.getByRole('application');
  await table.focus();
  // Half an inch at a time: two of them, and eight of a sixteenth.
  for (let i = 0; i < 2; i++) await page.keyboard.press('Shift+ArrowDown');
  for (let i = 0; i < 8; i++) await page.keyboard.press('ArrowDown');
  await expect(notebook(page).getByLabel('Down', { exact: true })).toHaveValue('1 1/2 in');
  await expect(page.getByRole('status')).toContainText('Largest gap 1 1/2 in.');
  // Hem lies on hem now; the copy begins an inch and a half lower.
  await expect(notebook(page).getByText(/^The largest gap is 1\s1\/2\sin, .*waist/)).toBeVisible();
  await page.keyboard.press('PageDown');
  await expect(notebook(page).getByLabel('Turned, degrees')).toHaveValue('0.25');
  await page.keyboard.press('Escape');
  await expect(notebook(page).getByLabel('Down', { exact: true })).toHaveValue('0 in');
  await expect(figure(page, 'Furthest in')).toHaveText('1 1/2 in');

  await write(page, 'To the right', '1/2');
  const fold = figures(page).getByRole('rowheader', { name: /^centre fold/ });
  await expect(fold).toHaveText('centre foldin 1/2 in');
  await notebook(page).getByRole('button', { name: 'Lay it back' }).click();
  await expect(fold).toHaveText('centre fold');

  const box = await table.boundingBox();
  if (!box) throw new Error('there is no table');
  const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await drag(page, from, { x: from.x + 60, y: from.y });
  await expect(notebook(page).getByLabel('To the right')).not.toHaveValue('0 in');
  await expect(fold).not.toHaveText('centre fold');
  // All that was looking: the only step is the one that lengthened the panel.
  await page.getByRole('button', { name: /^Undo: lengthen/ }).click();
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();
});

test('a piece is held against a draft for the wearer by best fit, and the draft is laid down as a guide', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  await goTo(page, 'Compare');
  await pick(page, 'With a piece of', 'a draft from the wearer’s measures');
  await expect(notebook(page).getByRole('radio', { name: 'best fit' })).toBeChecked();
  await expect(figure(page, 'Largest gap')).toHaveText(/in$/);
  // The demo's waist and hip with the ease that is asked for: 28 + 1/2 and 38 + 2 in, as the draft promises.
  expect((await row(page, 'Waist'))[1]).toBe('28 1/2 in');
  expect((await row(page, 'Hip')).slice(0, 2)).toEqual(['40 in', '40 in']);
  const skirt = { waist: inches(28.5), hip: inches(40), hipDepth: inches(8), length: inches(28) };
  const drafted = plainSkirtPieces(skirt, { newId: () => crypto.randomUUID(), nameOf: (name) => name });
  if ('kind' in drafted) throw new Error(drafted.why);
  const [front] = drafted;
  const side = front?.edges.find(({ name }) => name === 'side-seam');
  const read = readLength((await row(page, 'side seam'))[1] ?? '', { bare: 'in' });
  expect(read.kind === 'length' ? read.length : 0).toBeCloseTo(
    (front && side && edgeLength(front, side.id)) ?? 0,
    -0.3,
  );

  await write(page, 'Ease at the waist', '1');
  await expect.poll(async () => (await row(page, 'Waist'))[2]).toBe('+1 in');
  await notebook(page).getByRole('button', { name: 'Lay it here as a guide' }).click();
  await expect(page.getByRole('button', { name: 'Undo: laid a guide under the draft' })).toBeVisible();
  const { garment } = await savedGarment(page);
  expect(garment.pieces.map(({ use }) => use)).toEqual([undefined, 'guide']);
  expect(trouble).toEqual([]);
});

test('what on the shelf cannot be read is said so, and nothing else is lost', async ({ page }) => {
  await openDemo(page);
  await keepACopyAndLengthen(page);
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('inchsquare');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const rows = opening.result.transaction('snapshots', 'readwrite').objectStore('snapshots');
          rows.openCursor().onsuccess = ({ target }) => {
            const cursor = (target as IDBRequest<IDBCursorWithValue | null>).result;
            if (!cursor) {
              opening.result.close();
              resolve();
              return;
            }
            const { garment } = cursor.value;
            if (garment.name.endsWith('copy')) cursor.update({ ...cursor.value, garment: { ...garment, schema: 999 } });
            cursor.continue();
          };
        };
      }),
  );
  await pick(page, 'With a piece of', FROM_SHELF);
  await expect(notebook(page).getByText(/That garment was last changed with a newer Inchsquare/)).toBeVisible();
  await pick(page, 'With a piece of', 'a draft from the wearer’s measures');
  await expect(figure(page, 'Largest gap')).toHaveText(/in$/);
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

  test('the gap stands over the table, and the figures open below', async ({ page }) => {
    await openDemo(page);
    await keepACopyAndLengthen(page, true);
    await pick(page, 'With a piece of', FROM_SHELF);
    await page.getByRole('button', { name: 'Fold the notebook away' }).click();
    const key = page.getByRole('region', { name: 'What the lines are' });
    await expect(key.getByText('1 1/2 in')).toBeInViewport();
    await expect(page.getByRole('button', { name: 'Let them change places' })).toBeInViewport();
    await page.getByRole('button', { name: 'Open the notebook' }).click();
    await figures(page).scrollIntoViewIfNeeded();
    expect(await row(page, 'centre fold')).toEqual(['29 1/2 in', '28 in', '−1 1/2 in']);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(390);
    const { violations } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
      .analyze();
    expect(violations).toEqual([]);
  });
});
