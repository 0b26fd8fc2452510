import { readFile } from 'node:fs/promises';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { writeProject } from '../app/storage/project-file';
import type { Garment } from '../core/garment/garment';
import { openDemo } from './demo';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

const notebookOf = (page: Page) => page.getByRole('complementary', { name: 'Notebook' });
const nothingToUndo = (page: Page) => page.getByRole('button', { name: 'Nothing to undo' });

test('pictures that are none are refused in plain words, and a good one comes in afterwards', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  await goTo(page, 'Diagram');
  const notebook = notebookOf(page);
  const add = page.getByLabel('Add another diagram');
  const plate = await readFile('public/demo/linden-plate.jpg');
  const bad = [
    ['shopping.jpg', Buffer.from('two yards of calico, thread, pins'), /not a picture that can be read here/],
    ['nothing.png', Buffer.alloc(0), /is empty: it holds 0 bytes/],
    ['vast.png', pngClaiming(60_000, 60_000), /60,000 by 60,000 pixels, which is 3,600 megapixels; more than 100/],
    ['half.jpg', plate.subarray(0, Math.floor(plate.length / 2)), /stops before the picture does/],
    ['a-few-bytes.jpg', plate.subarray(0, 12), /stops before the picture does/],
    ['rubbish.png', pngClaiming(600, 800), /seems damaged/],
    ['leaflet.pdf', Buffer.from('%PDF-1.7\n%âãÏÓ\n'), /begins like a PDF but cannot be opened/],
  ] as const;
  for (const [name, buffer, sentence] of bad) {
    await test.step(name, async () => {
      await add.setInputFiles({ name, mimeType: 'image/jpeg', buffer });
      await expect(notebook.getByText(sentence)).toBeVisible();
      await expect(page.getByRole('status')).toContainText(sentence);
      // The diagram that was there stays the only one, and nothing has changed.
      await expect(page.getByLabel('Diagram on the table')).toBeHidden();
      await expect(notebook.getByText('Good enough to trace.')).toBeVisible();
      await expect(nothingToUndo(page)).toBeDisabled();
    });
  }
  await add.setInputFiles({ name: 'plate again.jpg', mimeType: 'image/jpeg', buffer: plate });
  await expect(page.getByLabel('Diagram on the table')).toBeVisible();
  await expect(notebook.getByText(/seems damaged|cannot be read here/)).toBeHidden();
  await page.getByRole('button', { name: 'Undo: bring in a diagram' }).click();
  await expect(nothingToUndo(page)).toBeDisabled();
  await goTo(page, 'Draft');
  await expect(notebook.getByRole('button', { name: 'Panel' })).toBeVisible();
  expect(trouble).toEqual([]);
});

test('corners and known lengths that cannot be are named, and all is as before once they are taken back', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  await goTo(page, 'Diagram');
  const notebook = notebookOf(page);
  await page.getByText('The corners as numbers').click();
  const before = await cornersOf(page);

  await test.step('four corners in one line', async () => {
    for (const corner of CORNERS) await type(page.getByLabel(`${corner}, pixels down`), '1000');
    await expect(notebook.getByText(/corners lie in one line/).first()).toBeVisible();
    await expect(notebook.getByText('Not good enough to trace yet.')).toBeVisible();
    await page.getByRole('radio', { name: 'Squared up' }).check();
    await page.getByRole('radio', { name: 'As photographed' }).check();
  });

  await test.step('two corners crossed', async () => {
    await undoAll(page);
    expect(await cornersOf(page)).toEqual(before);
    await type(page.getByLabel('Top left, pixels across'), '1500');
    await type(page.getByLabel('Top right, pixels across'), '300');
    await expect(notebook.getByText(/four corners cross over/).first()).toBeVisible();
    await undoAll(page);
    await expect(notebook.getByText(/four corners cross over/)).toBeHidden();
    expect(await cornersOf(page)).toEqual(before);
    await expect(notebook.getByText('Good enough to trace.')).toBeVisible();
  });

  await test.step('a corner that is no number', async () => {
    await type(page.getByLabel('Top left, pixels across'), 'here');
    await expect(page.getByRole('status')).toContainText('not a number');
    expect(await cornersOf(page)).toEqual(before);
  });

  const [share, length] = ['Known length 1', 'Known length 2'].map((hasText) =>
    notebook.getByRole('listitem').filter({ hasText }),
  ) as [Locator, Locator];

  await test.step('a known length of nothing', async () => {
    const field = length.getByLabel('At full size');
    for (const [typed, sentence] of [
      ['0', /must be at least/],
      ['-3', /must be at least|not a length/],
      ['1/0', /cannot have 0 under the line/],
      ['quite long', /not a length I can read/],
    ] as const) {
      await type(field, typed);
      await expect(length.getByText(sentence)).toBeVisible();
      await expect(field).toHaveAttribute('aria-invalid', 'true');
      await expect(nothingToUndo(page)).toBeDisabled();
    }
    await field.press('Escape');
    await expect(field).toHaveValue('28 in');
    await expect(length.getByText(/not a length I can read/)).toBeHidden();

    // A new one is not taken at all before it says how long it is.
    await notebook.getByRole('button', { name: 'Draw a known length' }).click();
    await notebook.getByRole('button', { name: 'Place it by numbers' }).click();
    const fresh = notebook.getByLabel('At full size').first();
    await type(fresh, '0');
    await expect(notebook.getByText(/must be at least/)).toBeVisible();
    await notebook.getByRole('button', { name: 'Leave it' }).click();
    await expect(notebook.getByRole('listitem').filter({ hasText: 'Known length' })).toHaveCount(2);
    await expect(nothingToUndo(page)).toBeDisabled();
  });

  await test.step('a line without a length', async () => {
    await length.getByText('Its ends as numbers').click();
    for (const end of ['First end', 'Other end']) {
      await type(length.getByLabel(`${end}, pixels across`), '600');
      await type(length.getByLabel(`${end}, pixels down`), '700');
    }
    await expect(length.getByText(/both its ends lie in one place/)).toBeVisible();
    await undoAll(page);
    await expect(length.getByText(/both its ends lie in one place/)).toBeHidden();
  });

  await test.step('a share of a measure that was not taken', async () => {
    await share.getByLabel('of the').selectOption({ label: 'bust' });
    await expect(share.getByText(/Her bust is not measured yet, so this line cannot be used/)).toBeVisible();
    // One press is enough, also when another entry was in hand and this one is half out of sight.
    await length.getByLabel('At full size').focus();
    const toWearer = share.getByRole('button', { name: 'Go to the Wearer room' });
    await toWearer.evaluate((button) => button.scrollIntoView({ block: 'start' }));
    await toWearer.click({ delay: 50 });
    await expect(page.getByLabel('Waist', { exact: true })).toBeVisible();
    await goTo(page, 'Before you cut');
    await expect(page.getByText(/share of the bust, which has not been measured/)).toBeVisible();
    await undoAll(page);
    await expect(page.getByText(/share of the bust/)).toBeHidden();
  });

  await goTo(page, 'Diagram');
  await expect(notebook.getByText('Good enough to trace.')).toBeVisible();
  await goTo(page, 'Draft');
  await expect(notebook.getByRole('button', { name: 'Panel' })).toBeVisible();
  expect(trouble).toEqual([]);
});

test('a hip smaller than the waist is asked about, not refused, and the curved waist still comes', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  await goTo(page, 'Wearer');
  const notebook = notebookOf(page);
  for (const [typed, sentence] of [
    ['twenty-eight', /not a length I can read/],
    ['0', /must be at least/],
  ] as const) {
    await type(page.getByLabel('Waist', { exact: true }), typed);
    await expect(notebook.getByText(sentence)).toBeVisible();
    await expect(nothingToUndo(page)).toBeDisabled();
  }
  await page.getByLabel('Waist', { exact: true }).press('Escape');
  const hip = page.getByLabel('Hip', { exact: true });
  await type(hip, '26 1/2');
  await expect(
    notebook.getByText(/waist, 28\sin, is larger than the hip, 26\s1\/2\sin.*if it is so here, go on/).first(),
  ).toBeVisible();
  await expect(hip).toHaveValue('26 1/2 in');
  await goTo(page, 'Fit');
  await expect(page.getByRole('region', { name: 'Hip', exact: true })).toContainText('26 1/2 in');
  await expect(page.getByRole('region', { name: 'Hip', exact: true })).toContainText('over');
  await page.getByRole('button', { name: 'Take the curved waist' }).click();
  await expect(notebook.getByText(/already the one the body needs/)).toBeVisible();
  await page.getByRole('button', { name: 'Undo: curved waist' }).click();
  await expect(page.getByRole('button', { name: 'Take the curved waist' })).toBeVisible();
  expect(trouble).toEqual([]);
});

test('a piece whose edges cross is named before it is cut, and no room breaks over it', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  const notebook = notebookOf(page);
  await notebook.getByRole('button', { name: 'Panel' }).click();
  await notebook.getByRole('heading', { name: /^Points and edges/ }).click();
  await notebook.getByRole('button', { name: 'Corner 3', exact: true }).click();
  const across = notebook.getByLabel('Across', { exact: true });
  await expect(across).toHaveValue('13 in');
  await type(across, '-6');
  await expect(across).toHaveValue('−6 in');
  await expect(notebook.getByText(/Panel: two edges cross/)).toBeVisible();

  await goTo(page, 'Before you cut');
  await expect(page.getByText(/Panel: two edges cross/)).toBeVisible();
  for (const room of ['Wearer', 'Diagram', 'Draft', 'Fit', 'Paper']) {
    await goTo(page, room);
    await expect(page.getByText(/could not be shown/)).toBeHidden();
    await expect(notebook).toBeVisible();
  }
  await expect(page.getByText(/must be settled before you cut/)).toBeVisible();
  await test.step('the pages are made or refused, but the page goes on', async () => {
    await page.getByRole('button', { name: 'Make the pages (PDF)' }).click();
    await expect(page.getByText(/^Made: |could not be made/)).toBeVisible({ timeout: 30_000 });
  });
  // Pages that were made are a step of their own.
  const undoPages = page.getByRole('button', { name: 'Undo: pages made' });
  if (await undoPages.isVisible()) await undoPages.click();
  await page.getByRole('button', { name: 'Undo: move a point' }).click();
  await expect(nothingToUndo(page)).toBeDisabled();
  await goTo(page, 'Before you cut');
  await expect(page.getByText(/two edges cross/)).toBeHidden();
  expect(trouble).toEqual([]);
});

test('files that hold no garment are refused in plain words, and the shelf stays as it is', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  const { garment, path } = await savedGarment(page);
  const whole = await readFile(path);
  const flipped = Buffer.from(whole);
  flipped.writeUInt8(flipped.readUInt8(40_000) ^ 1, 40_000);
  const file = (content: object) =>
    Buffer.from(writeProject({ garment: content as Garment, versions: [], photos: [] }));
  const bad = [
    ['letter.txt', Buffer.from('Dear aunt, here is the pattern.'), /not an Inchsquare garment/],
    ['empty.zip', Buffer.alloc(0), /not an Inchsquare garment/],
    ['half.inchsquare.zip', whole.subarray(0, Math.floor(whole.length / 2)), /damaged or was cut short/],
    ['one-bit.inchsquare.zip', flipped, /damaged or was cut short/],
    ['holes.inchsquare.zip', file({ ...garment, pieces: [{ name: 'no outline' }] }), /does not hold together/],
  ] as const;
  for (const [name, buffer, sentence] of bad) {
    await test.step(name, async () => {
      await page.getByLabel('Open a file').setInputFiles({ name, mimeType: 'application/zip', buffer });
      await expect(page.getByRole('main').getByText(sentence)).toBeVisible();
      const shelf = page.getByRole('listitem').filter({ hasText: 'Linden petticoat' });
      await expect(shelf).toHaveCount(1);
      await expect(shelf).toContainText('On the table now, 1 piece');
    });
  }
  await page.getByLabel('Open a file').setInputFiles(path);
  await expect(page.getByRole('radio', { name: 'Trace a piece' })).toBeVisible();
  await expect(notebookOf(page).getByRole('button', { name: 'Panel' })).toBeVisible();
  expect(trouble).toEqual([]);
});

const CORNERS = ['Top left', 'Top right', 'Bottom right', 'Bottom left'] as const;

async function cornersOf(page: Page): Promise<readonly string[]> {
  const fields = CORNERS.flatMap((corner) => ['across', 'down'].map((way) => `${corner}, pixels ${way}`));
  return Promise.all(fields.map((label) => page.getByLabel(label).inputValue()));
}

async function type(field: Locator, value: string): Promise<void> {
  await field.fill(value);
  await field.press('Enter');
}

/** Undoes everything that can be undone. */
async function undoAll(page: Page): Promise<void> {
  const undo = page.getByRole('button', { name: /^Undo: / });
  while ((await undo.count()) > 0) await undo.click();
  await expect(nothingToUndo(page)).toBeDisabled();
}

/** A PNG with a header and an end and nothing between: W3C Portable Network Graphics (third edition), sections 5 and 11.2. */
function pngClaiming(width: number, height: number): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  // Eight bits of grey, no other choice made.
  header.set([8, 0, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([signature, chunk('IHDR', header), chunk('IEND', Buffer.alloc(0))]);
}

function chunk(kind: string, data: Buffer): Buffer {
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const body = Buffer.concat([Buffer.from(kind, 'latin1'), data]);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}

function crc32(bytes: Buffer): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? 0xedb88320 ^ (sum >>> 1) : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
}
