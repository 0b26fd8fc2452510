import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { openDemo } from './demo';
import { goTo, savedGarment } from './room';
import { setWaist, waist } from './waist';

test('a file from a newer program is shown as far as it is known, changed by nothing, and saved on as it came', async ({
  page,
  browser,
}) => {
  await openDemo(page);
  const { path } = await savedGarment(page);
  const entries = unzipSync(new Uint8Array(await readFile(path)));
  const garment = JSON.parse(strFromU8(entries['garment.json'] ?? new Uint8Array()));
  // Invented: what a newer program might have added.
  Object.assign(garment, { schema: garment.schema + 1, dye: { recipe: 'walnut', days: 3 } });
  garment.pieces[0].edges[0].pressed = 'open';
  garment.pieces.push({ ...garment.pieces[0], id: 'unheard-of', cut: { how: 'knitted', count: 1 } });
  const newer = Buffer.from(zipSync({ ...entries, 'garment.json': strToU8(JSON.stringify(garment)) }));

  const other = await (await browser.newContext()).newPage();
  await other.goto('/');
  await other
    .getByLabel('Open a file')
    .setInputFiles({ name: 'hers.inchsquare.zip', mimeType: 'application/zip', buffer: newer });
  await expect(other.getByText(/made with a newer Inchsquare. What this one knows of it is shown/)).toBeVisible();
  await expect(other.getByText('Only to look at', { exact: true })).toBeVisible();
  await expect(other.getByRole('button', { name: /^Panel/ })).toHaveCount(1);
  await goTo(other, 'Diagram');
  await expect(other.getByText('Good enough to trace.')).toBeVisible();
  await expect(other.getByText(/picture of this diagram is not on this device/)).toBeHidden();
  await goTo(other, 'Wearer');
  await setWaist(other, '35');
  await expect(waist(other)).toHaveValue('28 in');
  await goTo(other, 'Versions');
  await expect(other.getByText(/could not be shown/)).toBeHidden();

  const [file] = await Promise.all([
    other.waitForEvent('download'),
    other.getByRole('button', { name: 'Save the file as it came' }).click(),
  ]);
  expect(file.suggestedFilename()).toBe('hers.inchsquare.zip');
  expect((await readFile(await file.path())).equals(newer)).toBe(true);

  await other.reload();
  await expect(other.getByRole('button', { name: /Try the demo garment/ })).toBeVisible();
  await expect(other.getByRole('heading', { name: 'On the shelf' })).toBeHidden();
  await other.context().close();
});
