import { expect, type Page, test } from '@playwright/test';
import { canAbortWrites } from './aborted-writes';
import { openDemo } from './demo';
import { goTo } from './room';
import { setWaist, waist } from './waist';

test('what one window could not keep before the other took its garment over is laid beside it, and both are there', async ({
  page,
  context,
}) => {
  await canAbortWrites(page);
  await openDemo(page);
  await goTo(page, 'Wearer');
  await setWaist(page, '30 1/8');
  await expect(page.getByText('Kept on this device')).toBeVisible();
  await page.evaluate(() => Object.assign(window, { aborts: true }));
  await setWaist(page, '31 1/8');
  await expect(page.getByText(/not yet kept/)).toBeVisible();

  const other = await context.newPage();
  await other.goto('/');
  await goTo(other, 'Wearer');
  await goOnHere(other);
  await expect(waist(other)).toHaveValue('30 1/8 in');
  await setWaist(other, '27 1/8');
  await expect(other.getByText('Kept on this device')).toBeVisible();

  await page.evaluate(() => Reflect.deleteProperty(window, 'aborts'));
  await expect(page.getByText(/kept beside it, as “Linden petticoat, kept beside”/)).toBeVisible();
  await expect(waist(page)).toHaveValue('31 1/8 in');
  await expect(page.getByText('Kept on this device')).toBeVisible();
  await page.reload();
  await goTo(page, 'Wearer');
  await expect(waist(page)).toHaveValue('31 1/8 in');
  await expect(waist(other)).toHaveValue('27 1/8 in');
  for (const what of ['kept beside', 'waist', 'waist']) {
    await page.getByRole('button', { name: `Undo: ${what}` }).click();
  }
  await expect(waist(page)).toHaveValue('28 in');
});

test('taken over twenty times, to and fro, right after each change, nothing is lost', async ({ page, context }) => {
  await openDemo(page);
  await goTo(page, 'Wearer');
  const other = await context.newPage();
  await other.goto('/');
  await goTo(other, 'Wearer');
  let [on, off] = [page, other];
  for (let turn = 0; turn < 20; turn++) {
    const value = `${26 + (turn % 7)} ${1 + 2 * (turn % 4)}/8`;
    await setWaist(on, value);
    await goOnHere(off);
    await expect(waist(off)).toHaveValue(`${value} in`);
    await expect(on.getByText('Only to look at', { exact: true })).toBeVisible();
    [on, off] = [off, on];
  }
  await expect(on.getByText('Kept on this device')).toBeVisible();
  for (let turn = 0; turn < 20; turn++) await on.getByRole('button', { name: 'Undo: waist' }).click();
  await expect(waist(on)).toHaveValue('28 in');
});

test('a garment that cannot be opened leaves the one on the table to this window alone', async ({ page, context }) => {
  await openDemo(page);
  await toShelf(page);
  await page.getByRole('button', { name: 'Copy Linden petticoat' }).click();
  const copy = page.getByRole('listitem').filter({ hasText: 'Linden petticoat, copy' });
  await expect(copy).toBeVisible();
  await page.evaluate(spoilTheCopy);
  await copy.getByRole('button').first().click();
  await expect(page.getByText(/is damaged and could not be opened/).first()).toBeVisible();
  const other = await context.newPage();
  await other.goto('/');
  await other
    .getByRole('listitem')
    .filter({ hasText: /^Linden petticoat(?!, copy)/ })
    .getByRole('button')
    .first()
    .click();
  await expect(other.getByText(/open in another window, and only one/)).toBeVisible();
  await goTo(page, 'Wearer');
  await setWaist(page, '29 1/8');
  await expect(page.getByText('Kept on this device')).toBeVisible();
});

test('a garment that is worked on in another window is not taken off the shelf under it', async ({ page, context }) => {
  await openDemo(page);
  const other = await context.newPage();
  await other.goto('/');
  await toShelf(other);
  await takeOff(other);
  await expect(other.getByText(/is open in another window and being worked on there/).first()).toBeVisible();
  await goTo(page, 'Diagram');
  await expect(page.getByText(/picture of this diagram is not on this device/)).toBeHidden();
  await page.close();
  await takeOff(other);
  await expect(other.getByRole('heading', { name: 'On the shelf' })).toBeHidden();
});

async function goOnHere(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Go on here instead' }).click();
  await expect(page.getByText(/open in another window/)).toBeHidden();
}

async function toShelf(page: Page): Promise<void> {
  await expect(page.getByRole('navigation')).toBeVisible();
  await page.getByRole('banner').getByRole('button').first().click();
  await expect(page.getByRole('heading', { name: 'On the shelf' })).toBeVisible();
}

async function takeOff(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Take Linden petticoat off the shelf' }).click();
  await page.getByRole('button', { name: 'Take it off for good' }).click();
}

/** In the page: what is kept of the copy is no garment any more. */
async function spoilTheCopy(): Promise<void> {
  await new Promise<void>((done) => {
    const opening = indexedDB.open('inchsquare');
    opening.onsuccess = () => {
      const change = opening.result.transaction(['shelf', 'snapshots'], 'readwrite');
      const rows = change.objectStore('shelf').getAll();
      rows.onsuccess = () => {
        const { id } = rows.result.find(({ name }: { name: string }) => name.endsWith('copy'));
        change.objectStore('snapshots').put({ garmentId: id, seq: 0, garment: { spoilt: 1 }, past: [], future: [] });
      };
      change.oncomplete = () => {
        opening.result.close();
        done();
      };
    };
  });
}
