import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { readProject, writeProject } from '../app/storage/project-file';
import { readShelf, writeShelf } from '../app/storage/whole-shelf';
import { openDemo } from './demo';
import { goTo } from './room';

const NAME = 'Linden petticoat';

test('the shelf is searched, sorted, and a garment is put away and brought out again', async ({ page }) => {
  await openDemo(page);
  await toShelf(page);
  await unfold(page);
  await write(page, 'Cloth used', 'striped ticking');
  await page.getByRole('button', { name: `Copy ${NAME}` }).click();
  await expect(rows(page)).toHaveText([/Linden petticoat, copy/, /Linden petticoat/]);
  await page.getByLabel('In the order of').selectOption({ label: 'name' });
  await expect(rows(page)).toHaveText([/Linden petticoatOn the table/, /Linden petticoat, copy/]);

  await write(page, 'Cloth used', 'brown holland');
  await page.getByLabel('Look for').fill('HOLLAND');
  await expect(rows(page)).toHaveText([/On the table now/]);
  await page.getByLabel('Look for').fill('ticking');
  await expect(rows(page)).toHaveText([/copy/]);
  await page.getByLabel('Look for').fill('velvet');
  await expect(page.getByText('Nothing on the shelf or put away speaks of “velvet”.')).toBeVisible();
  await page.getByLabel('Look for').fill('');

  await page.getByRole('button', { name: `Put ${NAME}, copy away` }).click();
  await expect(page.locator('summary', { hasText: 'Put away (1)' })).toBeVisible();
  await expect(page.getByRole('button', { name: `Copy ${NAME}, copy` })).toBeHidden();
  await reload(page);
  await toShelf(page);
  await page.locator('summary', { hasText: 'Put away (1)' }).click();
  await page.getByRole('button', { name: `Bring ${NAME}, copy out again` }).click();
  await expect(page.locator('summary', { hasText: 'Put away' })).toHaveCount(0);
  await expect(rows(page)).toHaveCount(2);
});

test('a garment taken up for a larger wearer says level by level what no longer fits', async ({ page }) => {
  await openDemo(page);
  await toShelf(page);
  await page.getByRole('button', { name: `Copy ${NAME}` }).click();
  await page
    .getByRole('listitem')
    .filter({ hasText: `${NAME}, copy` })
    .getByRole('button')
    .first()
    .click();
  await expect(page.getByRole('banner').getByRole('button').first()).toContainText(`${NAME}, copy`);
  await expect(page.getByRole('radio', { name: 'Trace a piece' })).toBeVisible();
  await goTo(page, 'Wearer');
  for (const [field, inches] of [
    ['Waist', '31'],
    ['Hip', '52'],
  ] as const) {
    await page.getByLabel(field, { exact: true }).fill(inches);
    await page.getByLabel(field, { exact: true }).press('Enter');
  }
  await toShelf(page);
  await page.getByRole('button', { name: `Take ${NAME} up for another wearer` }).click();
  const form = page.getByRole('region', { name: `${NAME}, for another wearer` });
  await form.getByLabel('Her name').fill('Ada');
  await form.getByLabel('Her measures').selectOption({ label: `As in ${NAME}, copy` });
  const table = form.getByRole('table', { name: 'Level by level, on her' });
  const waist = table.getByRole('row', { name: /^Waist/ });
  await expect(waist).toContainText('31 in');
  await expect(waist).toContainText('3 1/2 in short');
  await expect(waist).toContainText('1/2 in short on the first');
  await expect(waist).toContainText('new with her');
  await expect(form.getByText('This is new with her measures.').first()).toBeVisible();
  // The same measures as before: nothing is new.
  await form.getByLabel('Her measures').selectOption({ label: `As in ${NAME}` });
  await expect(waist).toContainText('28 in');
  await expect(table.getByText('new with her')).toHaveCount(0);

  await form.getByLabel('Her measures').selectOption({ label: `As in ${NAME}, copy` });
  await form.getByRole('button', { name: 'Take it up, and on to the fit' }).click();
  await expect(page.getByRole('region', { name: 'Waist', exact: true })).toContainText('31 in');
  await toShelf(page);
  await expect(rows(page).first()).toContainText(`${NAME}, for Ada`);
  await expect(rows(page)).toHaveCount(3);
});

test('a garment has its pieces for a picture, or one that is chosen, and gets it back when it is lost', async ({
  page,
}) => {
  await openDemo(page);
  await toShelf(page);
  const cover = rows(page).first().locator('img');
  await expect(cover).toBeVisible();
  const drawn = await bytesOf(page);
  expect(drawn.length).toBeGreaterThan(500);

  await unfold(page);
  await page.getByLabel('Its picture on the shelf').selectOption({ index: 1 });
  await expect.poll(async () => (await bytesOf(page)).equals(drawn)).toBe(false);
  await page.getByLabel('Another picture, from a file or the camera').setInputFiles('public/demo/linden-plate.jpg');
  await expect(page.getByLabel('Its picture on the shelf').locator('option:checked')).toHaveText(
    'A picture of its own',
  );
  const chosen = await bytesOf(page);
  // Small, whatever the photo was.
  expect(chosen.length).toBeLessThanOrEqual(40_000);
  await page.getByLabel('Another picture, from a file or the camera').setInputFiles('package.json');
  await expect(page.getByText('That file could not be opened as a picture.')).toBeVisible();

  await page.evaluate(emptyCovers);
  await reload(page);
  await toShelf(page);
  await expect(cover).toBeVisible();
  expect((await bytesOf(page)).equals(chosen)).toBe(true);
  await unfold(page);
  await page.getByRole('button', { name: 'Undo: picture on the shelf' }).click();
  await page.getByRole('button', { name: 'Undo: picture on the shelf' }).click();
  await expect(page.getByLabel('Its picture on the shelf')).toHaveValue('pieces');
});

test('notes that are being typed are there after a reload, and are one step', async ({ page }) => {
  await openDemo(page);
  await toShelf(page);
  await unfold(page);
  const notes = page.getByLabel('Notes', { exact: true });
  await notes.pressSequentially('The hem wants ');
  // She thinks, and what stands there is kept meanwhile; the field is never left.
  await expect(page.getByRole('button', { name: 'Undo: notes on the garment' })).toBeEnabled();
  await page.waitForTimeout(1500);
  await notes.pressSequentially('a facing.');
  await page.waitForTimeout(700);
  await reload(page);
  await toShelf(page);
  await unfold(page);
  await expect(notes).toHaveValue('The hem wants a facing.');
  await page.getByRole('button', { name: 'Undo: notes on the garment' }).click();
  await expect(notes).toHaveValue('');
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();
});

test('the whole shelf goes to one file and comes back on a device that has none of it', async ({ page, browser }) => {
  await openDemo(page);
  await toShelf(page);
  await page.getByRole('button', { name: `Copy ${NAME}` }).click();
  await page.getByRole('button', { name: `Put ${NAME}, copy away` }).click();
  await expect(page.locator('summary', { hasText: 'Put away (1)' })).toBeVisible();
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the whole shelf to one file' }).click(),
  ]);
  expect(file.suggestedFilename()).toBe('shelf.inchsquare-shelf.zip');
  const bytes = await readFile(await file.path());
  const shelf = readShelf(new Uint8Array(bytes));
  if (shelf.kind !== 'shelf') throw new Error(shelf.kind);
  const names = shelf.garments.map(({ file: one }) => {
    const reading = readProject(one);
    return reading.kind === 'project' && [reading.project.garment.name, reading.project.photos.length];
  });
  expect(names).toEqual(
    expect.arrayContaining([
      [NAME, 1],
      [`${NAME}, copy`, 1],
    ]),
  );

  const other = await (await browser.newContext()).newPage();
  await other.goto('/');
  await other.getByLabel('Open a file').setInputFiles([
    { name: 'shelf.zip', mimeType: 'application/zip', buffer: bytes },
    { name: 'holiday.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('sea') },
  ]);
  await expect(other.getByText('2 are in.')).toBeVisible();
  await expect(other.getByText('1 could not be brought in:')).toBeVisible();
  await expect(other.getByText(/^holiday\.jpg: That file is not an Inchsquare garment/)).toBeVisible();
  await expect(other.locator('summary', { hasText: 'Put away (1)' })).toBeVisible();

  await other.getByLabel('Open a file').setInputFiles({ name: 's.zip', mimeType: 'application/zip', buffer: bytes });
  await expect(other.getByText('2 are here already just as they are in the file.')).toBeVisible();
  await rows(other).first().click();
  await expect(other.getByRole('radio', { name: 'Trace a piece' })).toBeVisible();
  await other.context().close();
});

test('a page closed amid the bringing in of a shelf has whole garments, and the rest come when it is brought in again', async ({
  page,
  browser,
}) => {
  const COUNT = 24;
  await openDemo(page);
  await toShelf(page);
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the whole shelf to one file' }).click(),
  ]);
  const shelf = readShelf(new Uint8Array(await readFile(await saved.path())));
  if (shelf.kind !== 'shelf' || !shelf.garments[0]) throw new Error('there is a garment in it');
  const reading = readProject(shelf.garments[0].file);
  if (reading.kind !== 'project') throw new Error(reading.kind);
  const { project } = reading;
  const many = Array.from({ length: COUNT }, (_, i) => {
    const garment = { ...project.garment, id: `garment-${i}`, name: `Linden ${i}` };
    return { name: garment.name, file: writeProject({ ...project, garment, versions: [] }), isPutAway: false };
  });
  const file = { name: 'shelf.zip', mimeType: 'application/zip', buffer: Buffer.from(writeShelf(many)) };

  const context = await browser.newContext();
  const first = await context.newPage();
  await first.goto('/');
  await first.getByLabel('Open a file').setInputFiles(file);
  await first.getByText(/^Bringing in ([3-9]|1\d) of 24/).waitFor();
  await first.close();

  const then = await context.newPage();
  await then.goto('/');
  await expect(then.getByRole('radio', { name: 'Trace a piece' })).toBeVisible();
  await toShelf(then);
  const came = await rows(then).count();
  expect(came).toBeGreaterThan(1);
  expect(came).toBeLessThan(COUNT);
  for (let index = 0; index < came; index += 1) {
    await rows(then).nth(index).click();
    await expect(then.getByRole('button', { name: /^Panel/ }).first()).toBeVisible();
    await toShelf(then);
  }
  await then.getByLabel('Open a file').setInputFiles(file);
  await expect(then.getByText(new RegExp(`${COUNT - came} are in\\.`))).toBeVisible({ timeout: 20_000 });
  await expect(rows(then)).toHaveCount(COUNT);
  await context.close();
});

/** The garment she had on the table lies there again after a moment. */
async function reload(page: Page): Promise<void> {
  await page.reload();
  await expect(page.getByRole('radio', { name: 'Trace a piece' })).toBeVisible();
}

async function toShelf(page: Page): Promise<void> {
  await page.getByRole('banner').getByRole('button').first().click();
  await expect(page.getByRole('heading', { name: 'On the shelf' })).toBeVisible();
}

/** What opens a garment, in the order in which they stand; those put away are folded up. */
function rows(page: Page) {
  return page.locator('main li > button:first-child').filter({ visible: true });
}

/** Unfolds what is written of the garment on the table. */
async function unfold(page: Page): Promise<void> {
  await page.locator('summary', { hasText: 'Notes, cloth, notions, and its picture' }).click();
}

async function write(page: Page, label: string, text: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).fill(text);
  await page.getByLabel(label, { exact: true }).blur();
}

/** The picture of the first row, byte for byte, once it stands there. */
async function bytesOf(page: Page): Promise<Buffer> {
  const picture = rows(page).first().locator('img');
  let bytes: readonly number[] = [];
  await expect(async () => {
    const address = (await picture.getAttribute('src')) ?? '';
    bytes = await page.evaluate(async (from) => [...new Uint8Array(await (await fetch(from)).arrayBuffer())], address);
  }).toPass({ timeout: 5000 });
  return Buffer.from(bytes);
}

/** As a browser does that clears what it holds to be of no use. */
async function emptyCovers(): Promise<void> {
  await new Promise<void>((done, failed) => {
    const opening = indexedDB.open('inchsquare');
    opening.onerror = () => failed(opening.error);
    opening.onsuccess = () => {
      const clearing = opening.result.transaction('covers', 'readwrite');
      clearing.objectStore('covers').clear();
      clearing.oncomplete = () => {
        opening.result.close();
        done();
      };
    };
  });
}
