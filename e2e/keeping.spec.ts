import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { readProject } from '../app/storage/project-file';
import { openDemo } from './demo';
import { savedReport } from './fault-report';
import { goTo, savedGarment } from './room';
import { setWaist, waist } from './waist';

test('a change is kept the moment it is made, and can be undone after any closing', async ({ page, context }) => {
  await openDemo(page);
  await goTo(page, 'Wearer');
  await setWaist(page, '29 1/4');
  await kept(page);
  await page.close();

  const second = await test.step('the tab was closed at once', async () => {
    const opened = await openAgain(await context.newPage());
    await goTo(opened, 'Wearer');
    await expect(waist(opened)).toHaveValue('29 1/4 in');
    await kept(opened);
    await opened.getByRole('button', { name: 'Undo: waist' }).click();
    await expect(waist(opened)).toHaveValue('28 in');
    await expect(opened.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();
    return opened;
  });

  await test.step('what was undone can be done again after a reload', async () => {
    await kept(second);
    await second.reload();
    await goTo(second, 'Wearer');
    await expect(waist(second)).toHaveValue('28 in');
    await second.getByRole('button', { name: 'Do again: waist' }).click();
    await expect(waist(second)).toHaveValue('29 1/4 in');
    await kept(second);
    await second.reload();
    await goTo(second, 'Wearer');
    await expect(waist(second)).toHaveValue('29 1/4 in');
    await expect(second.getByRole('button', { name: 'Nothing to do again' })).toBeDisabled();
  });

  await test.step('three more changes, of which one is taken back, in their order after a reload', async () => {
    await setWaist(second, '30');
    await goTo(second, 'Fit');
    await second.getByRole('button', { name: 'Take the curved waist' }).click();
    await expect(second.getByText(/already the one the body needs/)).toBeVisible();
    await goTo(second, 'Paper');
    await second.getByRole('radio', { name: 'Letter', exact: true }).check();
    await second.getByRole('button', { name: /^Undo: paper/ }).click();
    await expect(second.getByRole('radio', { name: 'A4', exact: true })).toBeChecked();
    await kept(second);
    await second.reload();
    await goTo(second, 'Paper');
    await expect(second.getByRole('radio', { name: 'A4', exact: true })).toBeChecked();
    await second.getByRole('button', { name: /^Do again: paper/ }).click();
    await expect(second.getByRole('radio', { name: 'Letter', exact: true })).toBeChecked();
    await second.getByRole('button', { name: /^Undo: paper/ }).click();
    await second.getByRole('button', { name: 'Undo: curved waist' }).click();
    await second.getByRole('button', { name: 'Undo: waist' }).click();
    await second.getByRole('button', { name: 'Undo: waist' }).click();
    await expect(second.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();
    await goTo(second, 'Wearer');
    await expect(waist(second)).toHaveValue('28 in');
  });
});

test('a garment saved to a file comes back from it whole, with the very picture', async ({ page }) => {
  await openDemo(page);
  await goTo(page, 'Wearer');
  await page.getByLabel('Hip', { exact: true }).fill('39 3/8');
  await page.getByLabel('Hip', { exact: true }).press('Enter');
  const saved = await savedGarment(page);
  const before = await projectAt(saved.path);
  const picture = await readFile('public/demo/linden-plate.jpg');
  expect(before.photos).toHaveLength(1);
  expect(picture.equals(new Uint8Array(before.photos[0]?.bytes ?? new ArrayBuffer(0)))).toBe(true);

  await page.getByRole('button', { name: 'Take Linden petticoat off the shelf' }).click();
  await expect(page.getByText(/Without a saved file it cannot be brought back/)).toBeVisible();
  await page.getByRole('button', { name: 'Keep it' }).click();
  await expect(page.getByText('On the table now')).toBeVisible();
  await page.getByRole('button', { name: 'Take Linden petticoat off the shelf' }).click();
  await page.getByRole('button', { name: 'Take it off for good' }).click();
  await expect(page.getByRole('heading', { name: 'On the shelf' })).toBeHidden();
  await expect(page.getByRole('navigation')).toBeHidden();
  await page.reload();
  await expect(page.getByRole('button', { name: /Try the demo garment/ })).toBeVisible();
  await expect(page.getByRole('heading', { name: 'On the shelf' })).toBeHidden();

  await page.getByLabel('Open a file').setInputFiles(saved.path);
  await expect(page.getByRole('button', { name: /^Panel/ }).first()).toBeVisible();
  await goTo(page, 'Wearer');
  await expect(page.getByLabel('Hip', { exact: true })).toHaveValue('39 3/8 in');
  await goTo(page, 'Diagram');
  await expect(page.getByText('Good enough to trace.')).toBeVisible();
  await expect(page.getByText(/picture of this diagram is not on this device/)).toBeHidden();
  const again = await savedGarment(page);
  expect(again.garment).toEqual(saved.garment);
  expect((await readFile(again.path)).equals(await readFile(saved.path))).toBe(true);

  await test.step('opened once more, it comes in beside the one that is there', async () => {
    await page.getByLabel('Open a file').setInputFiles(saved.path);
    await expect(page.getByRole('radio', { name: 'Trace a piece' })).toBeVisible();
    await page.getByRole('banner').getByRole('button').first().click();
    await expect(page.getByRole('listitem').filter({ hasText: 'Linden petticoat' })).toHaveCount(2);
  });
});

test('of two windows on one garment only one changes it, and nothing is overwritten', async ({ page, context }) => {
  await openDemo(page);
  await goTo(page, 'Wearer');
  await setWaist(page, '29');
  await kept(page);

  const other = await openAgain(await context.newPage());
  await test.step('the second window says that it can only look', async () => {
    await expect(other.getByText(/open in another window/)).toBeVisible();
    await goTo(other, 'Wearer');
    await expect(waist(other)).toHaveValue('29 in');
    await setWaist(other, '33');
    await expect(waist(other)).toHaveValue('29 in');
    await goTo(other, 'Paper');
    await other.getByRole('radio', { name: 'Letter', exact: true }).click();
    await expect(other.getByRole('radio', { name: 'A4', exact: true })).toBeChecked();
  });

  await test.step('the first window goes on', async () => {
    await setWaist(page, '30 1/2');
    await expect(waist(page)).toHaveValue('30 1/2 in');
    await kept(page);
    await expect(page.getByText(/another window/)).toBeHidden();
    await page.reload();
    await goTo(page, 'Wearer');
    await expect(waist(page)).toHaveValue('30 1/2 in');
    await expect(page.getByText(/another window/)).toBeHidden();
  });

  await test.step('the second takes over, with all that was done, and the first only looks', async () => {
    await other.getByRole('button', { name: 'Go on here instead' }).click();
    await expect(other.getByText(/open in another window/)).toBeHidden();
    await goTo(other, 'Wearer');
    await expect(waist(other)).toHaveValue('30 1/2 in');
    await setWaist(other, '31');
    await kept(other);
    await expect(page.getByText(/open in another window/)).toBeVisible();
    await setWaist(page, '35');
    await expect(waist(page)).toHaveValue('30 1/2 in');
    await expect(page.getByRole('button', { name: 'Go on here instead' })).toBeVisible();
  });

  await test.step('the first takes it back', async () => {
    await page.getByRole('button', { name: 'Go on here instead' }).click();
    await expect(waist(page)).toHaveValue('31 in');
    await expect(other.getByText(/open in another window/)).toBeVisible();
    await setWaist(page, '31 3/4');
    await kept(page);
  });

  await test.step('when the first is closed, the second opens it as it was left', async () => {
    await page.close();
    await openAgain(other);
    await expect(other.getByText(/another window/)).toBeHidden();
    await goTo(other, 'Wearer');
    await expect(waist(other)).toHaveValue('31 3/4 in');
    for (const before of ['31 in', '30 1/2 in', '29 in', '28 in']) {
      await other.getByRole('button', { name: 'Undo: waist' }).click();
      await expect(waist(other)).toHaveValue(before);
    }
    await expect(other.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();
  });
});

test('when the browser clears its store amid the work, that is said, and the garment is kept anew', async ({
  page,
}) => {
  await openDemo(page);
  await goTo(page, 'Wearer');
  await setWaist(page, '29 1/8');
  await kept(page);
  await page.evaluate(
    () =>
      new Promise((done) => {
        indexedDB.deleteDatabase('inchsquare').onsuccess = done;
      }),
  );
  await setWaist(page, '30 1/8');
  await expect(page.getByText(/was cleared away while you worked/)).toBeVisible();
  await expect(waist(page)).toHaveValue('30 1/8 in');
  await page.reload();
  await goTo(page, 'Wearer');
  await expect(waist(page)).toHaveValue('30 1/8 in');
  await page.getByRole('button', { name: 'Undo: waist' }).click();
  await expect(waist(page)).toHaveValue('29 1/8 in');
});

test('a room that cannot be shown says so, offers the file and a report, and the other rooms work', async ({
  browser,
}) => {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  await openDemo(page);
  await page.route(/fit-room/, (route) => route.abort());
  await goTo(page, 'Fit');
  await expect(page.getByText(/Something in Fit could not be shown/)).toBeVisible();
  await expect(page.getByText(/On the table: Linden petticoat/)).toBeVisible();
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save to a file now' }).click(),
  ]);
  expect((await projectAt(await file.path())).garment.name).toBe('Linden petticoat');
  const text = await savedReport(page);
  expect(text).toContain('a fault in Fit');
  expect(text).not.toMatch(/Linden/);
  await goTo(page, 'Wearer');
  await expect(waist(page)).toHaveValue('28 in');

  await test.step('what did not come is asked for again', async () => {
    await goTo(page, 'Fit');
    await expect(page.getByText(/Something in Fit could not be shown/)).toBeVisible();
    await page.unroute(/fit-room/);
    await page.getByRole('button', { name: 'Try again' }).click();
    await expect(page.getByRole('button', { name: 'Take the curved waist' })).toBeVisible();
  });
  await context.close();
});

/** A change is on the device within a second of being made, and the page says so. */
async function kept(page: Page): Promise<void> {
  await expect(page.getByText('Kept on this device')).toBeVisible({ timeout: 1000 });
}

/** Opens the workbench in a fresh page or anew; the garment that was on the table is there again. */
async function openAgain(page: Page): Promise<Page> {
  await page.goto('/');
  await expect(page.getByRole('navigation')).toBeVisible();
  return page;
}

async function projectAt(path: string) {
  const reading = readProject(new Uint8Array(await readFile(path)));
  if (reading.kind !== 'project') throw new Error(`the saved file reads as ${reading.kind}`);
  return reading.project;
}
