import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { openDemo } from './demo';
import { chunk } from './drawn-picture';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

/** A plate of our own, upright 3 to 4, with a violet square at its upper right: by the file, and its size when upright. */
const FILES = [
  ['cmyk.jpg', 180, 240],
  ['turned.jpg', 360, 480],
  ['sixteen-bit.png', 180, 240],
  ['plate.webp', 360, 480],
  ['plate.avif', 360, 480],
  ['plate.gif', 360, 480],
  ['plate.bmp', 180, 240],
  ['lzw-300-dpi.tif', 360, 480],
  ['cmyk.tif', 180, 240],
  ['turned.tif', 180, 240],
  ['plate.heic', 360, 480],
] as const;

const add = (page: Page) => page.getByLabel('Add another diagram');
const status = (page: Page) => page.getByRole('status');

test('every kind of picture comes in upright and in its colours', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  await goTo(page, 'Diagram');
  for (const [name, across, down] of FILES) {
    await test.step(name, async () => {
      await add(page).setInputFiles(`e2e/formats/${name}`);
      await expect(status(page)).toContainText(`${across} by ${down} pixels`, { timeout: 20_000 });
      await page.getByRole('button', { name: 'Show everything' }).click();
      // The violet square stands right of and above the middle of the page.
      await expect.poll(() => violetOf(page)).toEqual({ right: true, above: true });
      await page.getByRole('button', { name: 'Undo: bring in a diagram' }).click();
    });
  }
  // The test itself reads the canvas over and over, which the browser remarks on.
  expect(trouble.filter((line) => !line.includes('willReadFrequently'))).toEqual([]);
});

/** An EXIF entry that asks for a quarter turn clockwise: tag 0x0112 of TIFF 6.0 with the value 6. */
const QUARTER_TURN = Buffer.from('4d4d002a00000008000101120003000000010006000000000000', 'hex');

test('a WebP and a PNG are turned as their EXIF entry asks', async ({ page }) => {
  await openDemo(page);
  await goTo(page, 'Diagram');
  const webp = await readFile('e2e/formats/plate.webp');
  const png = await readFile('e2e/formats/sixteen-bit.png');
  const part = (name: string, body: Buffer) => {
    const head = Buffer.alloc(8);
    head.write(name, 'latin1');
    head.writeUInt32LE(body.length, 4);
    return Buffer.concat([head, body]);
  };
  // 360 by 480, less one each, in three bytes; the flag says that an EXIF part follows.
  const size = part('VP8X', Buffer.from([8, 0, 0, 0, 0x67, 1, 0, 0xdf, 1, 0]));
  const body = Buffer.concat([Buffer.from('WEBP'), size, webp.subarray(12), part('EXIF', QUARTER_TURN)]);
  const files = [
    { name: 'turned.webp', mimeType: 'image/webp', buffer: part('RIFF', body), size: '480 by 360' },
    {
      name: 'turned.png',
      mimeType: 'image/png',
      buffer: Buffer.concat([png.subarray(0, 33), chunk('eXIf', QUARTER_TURN), png.subarray(33)]),
      size: '240 by 180',
    },
  ];
  for (const { size, ...file } of files) {
    await add(page).setInputFiles(file);
    await expect(status(page)).toContainText(`${size} pixels`, { timeout: 20_000 });
    await page.getByRole('button', { name: 'Show everything' }).click();
    // What stood at the upper right stands at the lower right.
    await expect.poll(() => violetOf(page), file.name).toEqual({ right: true, above: false });
    await page.getByRole('button', { name: 'Undo: bring in a diagram' }).click();
  }
});

test('a scan of two colours brings its scale along as a known length', async ({ page }) => {
  await openDemo(page);
  await goTo(page, 'Diagram');
  await add(page).setInputFiles('e2e/formats/group4-200-dpi.tif');
  await expect(status(page)).toContainText('360 by 480 pixels');
  const notebook = page.getByRole('complementary', { name: 'Notebook' });
  // 360 and 480 dots at 200 to the inch.
  await expect(notebook.getByText(/1\s13\/16\sin across and 2\s3\/8\sin down/)).toBeVisible();
  await notebook.getByLabel('Full size is so many times the print').fill('8');
  await notebook.getByLabel('Full size is so many times the print').press('Enter');
  await notebook.getByRole('button', { name: 'Take the width of the paper as a known length' }).click();
  const { garment } = await savedGarment(page);
  const diagram = garment.diagrams.at(-1);
  expect(diagram?.squareUp).toEqual({ kind: 'flat' });
  const [known] = diagram?.knownLengths ?? [];
  expect(known?.from.x).toBe(0);
  expect(known?.to.x).toBe(360);
  // 360 / 200 in, eight times: 14.4 in.
  expect(known?.says.kind === 'length' && known.says.length / 25.4).toBeCloseTo(14.4, 6);
});

test('a page of a PDF is chosen, with its size on paper', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  await goTo(page, 'Diagram');
  await add(page).setInputFiles('e2e/formats/book.pdf');
  await expect(page.getByText('book has 2 pages.')).toBeVisible();
  await expect(page.getByText('On paper it is 4 in across and 6 in down.')).toBeVisible();
  await page.getByRole('button', { name: 'Page after' }).click();
  await expect(page.getByText('5 in across and 6 11/16 in down')).toBeVisible();
  await page.getByRole('button', { name: 'Bring in this page' }).click();
  await expect(page.getByLabel('Name of this diagram')).toHaveValue('book, page 2');
  await page.getByRole('button', { name: 'Show everything' }).click();
  await expect.poll(() => violetOf(page)).toEqual({ right: true, above: true });
  const { garment } = await savedGarment(page);
  const diagram = garment.diagrams.at(-1);
  expect(diagram?.onPaper?.across).toBeCloseTo(127, 3);
  // At 600 dots to the inch.
  expect(diagram?.widthPx).toBe(3000);
  expect(trouble).toEqual([]);
});

test('a locked PDF, and pictures of each kind that are cut short or wrongly named, are refused in a sentence', async ({
  page,
}) => {
  await openDemo(page);
  await goTo(page, 'Diagram');
  await add(page).setInputFiles('e2e/formats/locked.pdf');
  await expect(page.getByText(/locked with a password/).first()).toBeVisible();
  for (const [name] of FILES) {
    const whole = await readFile(`e2e/formats/${name}`);
    await add(page).setInputFiles({
      name,
      mimeType: 'image/png',
      buffer: whole.subarray(0, Math.floor(whole.length * 0.6)),
    });
    await expect(status(page), name).toContainText(/stops before the picture does/);
  }
  const vast = Buffer.from(await readFile('e2e/formats/plate.gif'));
  vast.writeUInt16LE(60_000, 6);
  vast.writeUInt16LE(60_000, 8);
  await add(page).setInputFiles({ name: 'plate.jpg', mimeType: 'image/jpeg', buffer: vast });
  await expect(status(page)).toContainText('60,000 by 60,000 pixels');
  const misnamed = await readFile('e2e/formats/plate.heic');
  await add(page).setInputFiles({ name: 'plate.png', mimeType: 'image/png', buffer: misnamed });
  await expect(status(page)).toContainText('360 by 480 pixels', { timeout: 20_000 });
});

/** What comes of a picture with its middle overwritten: some ways of packing leave nothing that could tell. */
const SPOILT = {
  damaged: ['cmyk.jpg', 'turned.jpg', 'sixteen-bit.png', 'plate.avif', 'plate.gif'],
  asItIs: ['plate.bmp', 'cmyk.tif', 'lzw-300-dpi.tif', 'plate.webp', 'plate.heic'],
} as const;

test('spoilt pictures get a sentence, and one under another name and kind comes in as what it is', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  await goTo(page, 'Diagram');
  const undo = page.getByRole('button', { name: 'Undo: bring in a diagram' });
  await test.step('spoilt in the middle', async () => {
    for (const name of [...SPOILT.damaged, ...SPOILT.asItIs]) {
      const buffer = Buffer.from(await readFile(`e2e/formats/${name}`));
      for (let at = Math.floor(buffer.length * 0.4); at < buffer.length * 0.6; at++) buffer[at] = (at * 37 + 11) & 0xff;
      // Named after itself, so that a sentence of the one before is not taken for its own.
      await add(page).setInputFiles({ name: `spoilt ${name}`, mimeType: 'image/png', buffer });
      if (SPOILT.asItIs.some((each) => each === name)) {
        await expect(status(page), name).toContainText(`spoilt ${name.split('.')[0]} is in`, { timeout: 20_000 });
        await undo.click();
      } else {
        await expect(page.getByText(/seems damaged/).first(), name).toBeVisible();
        await expect(undo).toBeHidden();
        // A good one takes the sentence away.
        await add(page).setInputFiles('e2e/formats/plate.webp');
        await expect(status(page)).toContainText('360 by 480 pixels', { timeout: 20_000 });
        await undo.click();
      }
    }
  });
  await test.step('a PDF cut short, and one of whose words the middle is gone', async () => {
    const whole = await readFile('e2e/formats/book.pdf');
    await add(page).setInputFiles({ name: 'cut.pdf', mimeType: 'application/pdf', buffer: whole.subarray(0, 400) });
    await expect(page.getByText(/begins like a PDF but cannot be opened/).first()).toBeVisible();
  });
  await test.step('misnamed', async () => {
    for (const [name, across, down] of FILES) {
      const buffer = await readFile(`e2e/formats/${name}`);
      const other = name.endsWith('.jpg')
        ? { name: 'page.tif', mimeType: 'image/tiff' }
        : { name: 'page.jpg', mimeType: 'image/jpeg' };
      await add(page).setInputFiles({ ...other, buffer });
      await expect(status(page), name).toContainText(`${across} by ${down} pixels`, { timeout: 20_000 });
      await undo.click();
    }
  });
  expect(trouble).toEqual([]);
});

/** Where the violet square is seen, against the middle of the cream page round it. */
async function violetOf(page: Page) {
  return page.evaluate(() => {
    const sums = { violet: { x: 0, y: 0, count: 0 }, cream: { x: 0, y: 0, count: 0 } };
    for (const canvas of document.querySelectorAll('canvas')) {
      const pixels = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height);
      if (!pixels) continue;
      for (let i = 0; i < pixels.data.length; i += 4) {
        const [r = 0, g = 0, b = 0, a = 0] = pixels.data.subarray(i, i + 4);
        const at =
          a < 200 ? undefined : b - g > 60 && r - g > 30 ? 'violet' : r > 225 && r - b > 12 ? 'cream' : undefined;
        if (!at) continue;
        sums[at].count += 1;
        sums[at].x += (i / 4) % canvas.width;
        sums[at].y += Math.floor(i / 4 / canvas.width);
      }
    }
    const mean = ({ x, y, count }: { x: number; y: number; count: number }) => ({ x: x / count, y: y / count });
    const [violet, cream] = [mean(sums.violet), mean(sums.cream)];
    return { right: violet.x > cream.x, above: violet.y < cream.y };
  });
}
