import { expect, test } from '@playwright/test';
import { canAbortWrites } from './aborted-writes';
import { openDemo } from './demo';
import { goTo } from './room';
import { savedWaist, setWaist, waist } from './waist';

test('a transaction that the browser aborts is said at once, and done again', async ({ page }) => {
  await canAbortWrites(page);
  await openDemo(page);
  await goTo(page, 'Wearer');
  await page.evaluate(() => Object.assign(window, { aborts: true }));
  await setWaist(page, '31 1/8');
  await expect(page.getByText(/not yet kept: the browser would not write/)).toBeVisible();
  await expect(page.getByText('Not kept', { exact: true })).toBeVisible();
  await setWaist(page, '32 1/4');
  expect(await savedWaist(page)).toBeCloseTo(32.25 * 25.4, 9);
  await page.evaluate(() => Reflect.deleteProperty(window, 'aborts'));
  await expect(page.getByText(/not yet kept/)).toBeHidden();
  await page.reload();
  await goTo(page, 'Wearer');
  await expect(waist(page)).toHaveValue('32 1/4 in');
  await page.getByRole('button', { name: 'Undo: waist' }).click();
  await expect(waist(page)).toHaveValue('31 1/8 in');
});

test('an old program that will not let go of the store is named, and when it is closed all is kept', async ({
  page,
  context,
}) => {
  const old = await context.newPage();
  await old.goto('/icon.svg');
  await old.evaluate(
    () =>
      new Promise<void>((done) => {
        const opening = indexedDB.open('inchsquare', 10);
        opening.onupgradeneeded = () => {
          const store = opening.result;
          store.createObjectStore('shelf', { keyPath: 'id' }).createIndex('changed', 'changed');
          for (const name of ['snapshots', 'journal']) {
            const keyPath = ['garmentId', 'seq'];
            store.createObjectStore(name, { keyPath }).createIndex('garmentId', 'garmentId');
          }
          store.createObjectStore('photos', { keyPath: 'id' });
        };
        // Held open, and deaf to those who want to bring it up.
        opening.onsuccess = () => {
          Object.assign(window, { held: opening.result });
          done();
        };
      }),
  );
  await page.goto('/');
  await expect(page.getByText(/An older Inchsquare, open in another window/)).toBeVisible();
  await page.getByRole('button', { name: /Try the demo garment/ }).click();
  await goTo(page, 'Wearer');
  await setWaist(page, '33 1/8');
  await expect(page.getByText(/not yet kept: an older Inchsquare/)).toBeVisible();
  expect(await savedWaist(page)).toBeCloseTo(33.125 * 25.4, 9);
  await old.close();
  await expect(page.getByText(/older Inchsquare/)).toBeHidden();
  await expect(page.getByText('Kept on this device')).toBeVisible();
  await page.reload();
  await goTo(page, 'Wearer');
  await expect(waist(page)).toHaveValue('33 1/8 in');
});

test('what a newer program keeps is looked at and saved, and nothing is written into it', async ({ page, context }) => {
  await openDemo(page);
  await goTo(page, 'Wearer');
  await setWaist(page, '29 1/8');
  await expect(page.getByText('Kept on this device')).toBeVisible();
  const newer = await context.newPage();
  await newer.goto('/icon.svg');
  await page.close();
  const count = () =>
    newer.evaluate(
      () =>
        new Promise<number>((done, failed) => {
          const opening = indexedDB.open('inchsquare', 990);
          opening.onerror = () => failed(opening.error);
          opening.onupgradeneeded = () => opening.result.createObjectStore('unheard-of', { keyPath: 'id' });
          opening.onsuccess = () => {
            const counting = opening.result.transaction('journal').objectStore('journal').count();
            counting.onsuccess = () => {
              opening.result.close();
              done(counting.result);
            };
          };
        }),
    );
  const before = await count();
  const again = await context.newPage();
  await again.goto('/');
  await expect(again.getByText(/A newer Inchsquare has kept garments in this browser/)).toBeVisible();
  await goTo(again, 'Wearer');
  await expect(waist(again)).toHaveValue('29 1/8 in');
  await setWaist(again, '35');
  await expect(waist(again)).toHaveValue('29 1/8 in');
  expect(await savedWaist(again)).toBeCloseTo(29.125 * 25.4, 9);
  await again.close();
  expect(await count()).toBe(before);
});

const bans = {
  'has no store at all': () => Object.defineProperty(window, 'indexedDB', { value: undefined }),
  'forbids the store': () =>
    Object.defineProperty(window, 'indexedDB', {
      get: () => {
        throw new DOMException('The operation is insecure.', 'SecurityError');
      },
    }),
  'opens no store, as in some private windows': () => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('A mutation operation was attempted', 'InvalidStateError');
    };
  },
};
for (const [name, ban] of Object.entries(bans)) {
  test(`in a browser that ${name} she can work, is told, and saves to a file`, async ({ page }) => {
    await page.addInitScript(ban);
    await page.goto('/');
    await expect(page.getByText(/This browser lets the page keep nothing/)).toBeVisible();
    await page.getByRole('button', { name: /Try the demo garment/ }).click();
    await goTo(page, 'Wearer');
    await setWaist(page, '34 1/2');
    await expect(page.getByText(/not yet kept: /)).toBeVisible();
    expect(await savedWaist(page)).toBeCloseTo(34.5 * 25.4, 9);
  });
}
