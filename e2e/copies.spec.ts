import { expect, type Page, test } from '@playwright/test';
import { openDemo } from './demo';
import { goTo } from './room';
import { setWaist } from './waist';

const NAME = 'linden-petticoat.inchsquare.zip';

test('files go to a folder of her choosing, and no file of others is written over there', async ({ page }) => {
  // The browser's own dialogue cannot be worked by a test; a folder in its private files stands in for hers.
  await page.addInitScript(() => {
    Object.assign(window, {
      showDirectoryPicker: async () =>
        (await navigator.storage.getDirectory()).getDirectoryHandle('Patterns', { create: true }),
    });
  });
  await openDemo(page);
  await toShelf(page);
  await page.getByRole('button', { name: 'Choose a folder for them' }).click();
  await expect(page.getByText(/^Files go to the folder “Patterns”/)).toBeVisible();
  await save(page);
  await expect(page.getByText(`Saved in the folder “Patterns” as ${NAME}`)).toBeVisible();
  const first = await filesIn(page);
  expect(first.map(({ name }) => name)).toEqual([NAME]);

  await test.step('the next copy takes the place of the last, also after a reload', async () => {
    await page.reload();
    await goTo(page, 'Wearer');
    await setWaist(page, '29 1/8');
    await toShelf(page);
    await save(page);
    await expect(page.getByText(`Saved in the folder “Patterns” as ${NAME}`)).toBeVisible();
    const second = await filesIn(page);
    expect(second.map(({ name }) => name)).toEqual([NAME]);
    expect(second[0]?.modified).toBeGreaterThan(first[0]?.modified ?? 0);
  });

  await test.step('a file that another wrote meanwhile stays as it is', async () => {
    await page.evaluate(async (name) => {
      const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle('Patterns');
      const stream = await (await folder.getFileHandle(name)).createWritable();
      await stream.write('hers');
      await stream.close();
    }, NAME);
    await save(page);
    await expect(page.getByText('as linden-petticoat-2.inchsquare.zip')).toBeVisible();
    const files = await filesIn(page);
    expect(files.find(({ name }) => name === NAME)?.size).toBe(4);
  });

  await test.step('the whole shelf goes there too', async () => {
    await page.getByRole('button', { name: 'Save the whole shelf to one file' }).click();
    await expect(page.getByText('1 garment is in the file.')).toBeVisible();
    expect((await filesIn(page)).map(({ name }) => name)).toContain('shelf.inchsquare-shelf.zip');
  });

  await test.step('where the folder is gone the file is downloaded, and that is said', async () => {
    await page.evaluate(async () =>
      (await navigator.storage.getDirectory()).removeEntry('Patterns', { recursive: true }),
    );
    const [file] = await Promise.all([page.waitForEvent('download'), save(page)]);
    expect(file.suggestedFilename()).toBe(NAME);
    await expect(page.getByText(/The folder could not be written to/)).toBeVisible();
    await page.getByRole('button', { name: 'Use the downloads again' }).click();
    await expect(page.getByText('Files go where the browser puts its downloads.')).toBeVisible();
  });
});

test('when the last copy in a file is old, the strip and the shelf say so, and one press saves one', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const now = Date.now.bind(Date);
    Date.now = () => now() + Number(sessionStorage.getItem('days ahead') ?? 0) * 86_400_000;
  });
  await openDemo(page);
  await toShelf(page);
  await expect(page.getByText('no copy in a file', { exact: true })).toBeVisible();
  await goTo(page, 'Wearer');
  for (let change = 0; change < 30; change++) await setWaist(page, change % 2 ? '29' : '30');
  const reminder = page.getByRole('banner').getByRole('button', { name: /No copy in a file yet/ });
  await expect(reminder).toBeVisible();
  const [first] = await Promise.all([page.waitForEvent('download'), reminder.click()]);
  expect(first.suggestedFilename()).toBe(NAME);
  await expect(page.getByText('Saved to a file, among the downloads of this browser.')).toBeVisible();
  await expect(reminder).toBeHidden();

  await page.evaluate(() => sessionStorage.setItem('days ahead', '9'));
  await page.reload();
  await goTo(page, 'Wearer');
  await page.waitForTimeout(2500);
  await expect(page.getByRole('banner').getByText(/days old/)).toBeHidden();
  await setWaist(page, '31 1/8');
  await expect(page.getByRole('banner').getByRole('button', { name: /Last copy 9 days old/ })).toBeVisible();
  await toShelf(page);
  await expect(page.getByText('copied to a file 9 days ago, 1 change since')).toBeVisible();
  await Promise.all([page.waitForEvent('download'), save(page)]);
  await expect(page.getByText('copied to a file as it is')).toBeVisible();
});

async function toShelf(page: Page): Promise<void> {
  await page.getByRole('banner').getByRole('button').first().click();
  await expect(page.getByRole('heading', { name: 'On the shelf' })).toBeVisible();
}

async function save(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Save Linden petticoat to a file' }).click();
}

/** What lies in the folder. */
function filesIn(page: Page): Promise<readonly { name: string; size: number; modified: number }[]> {
  return page.evaluate(async () => {
    const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle('Patterns');
    const files: { name: string; size: number; modified: number }[] = [];
    const entries = (folder as unknown as { values(): AsyncIterable<FileSystemFileHandle> }).values();
    for await (const handle of entries) {
      const { name, size, lastModified } = await handle.getFile();
      files.push({ name, size, modified: lastModified });
    }
    return files;
  });
}
