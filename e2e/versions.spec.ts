import AxeBuilder from '@axe-core/playwright';
import { type Download, expect, type Page, test } from '@playwright/test';
import { writeProject } from '../app/storage/project-file';
import { longHistory } from '../bench/long-history';
import { openDemo } from './demo';
import { readPages } from './read-pages';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

const notebookOf = (page: Page) => page.getByRole('complementary', { name: 'Notebook' });
const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click();

/** Keeps what is on the table as a version of that name. */
async function keepAs(page: Page, name: string): Promise<void> {
  await goTo(page, 'Versions');
  await notebookOf(page).getByLabel('Name').fill(name);
  await press(page, 'Keep as a version');
  await expect(page.getByText(new RegExp(`The draft is version \\d+, ${name}`))).toBeVisible();
}

async function takeCurvedWaist(page: Page): Promise<void> {
  await goTo(page, 'Fit');
  await press(page, 'Take the curved waist');
  await expect(page.getByText(/already the one the body needs/)).toBeVisible();
}

/** Presses a button that makes a PDF. */
async function made(page: Page, name: string): Promise<Download> {
  const [file] = await Promise.all([page.waitForEvent('download'), press(page, name)]);
  return file;
}

test('a version is kept, looked at, brought back and undone, and nothing is lost on the way', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  const notebook = notebookOf(page);
  await goTo(page, 'Versions');
  await expect(notebook.getByText('The draft is not kept as a version yet.')).toBeVisible();
  await keepAs(page, 'as drafted');
  const before = (await savedGarment(page)).garment;
  await takeCurvedWaist(page);
  await goTo(page, 'Versions');
  await expect(notebook.getByText('The draft has been changed since version 1.')).toBeVisible();

  await test.step('what was done can be read', async () => {
    await notebook.locator('summary', { hasText: 'Step by step' }).click();
    await expect(notebook.getByRole('list').getByText('curved waist')).toBeVisible();
  });

  await test.step('looked at, with what differs in numbers', async () => {
    await press(page, /^Version 1, as drafted/);
    const figures = notebook.getByLabel('What is different now');
    await expect(figures.getByText('Panel: waist')).toBeVisible();
    await expect(figures).toContainText('7 in → 7 1/8 in');
    await expect(figures.getByText('Panel: hem')).toBeHidden();
    const found = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag22aa']).analyze();
    expect(found.violations.map(({ id, nodes }) => [id, nodes.map(({ target }) => target)])).toEqual([]);
    await notebook.getByRole('textbox', { name: 'Note' }).fill('hip still snug');
    await notebook.getByRole('textbox', { name: 'Note' }).blur();
    await expect(notebook.getByRole('button', { name: /Version 1, as drafted.*hip still snug/ })).toBeVisible();
  });

  await test.step('what was traced lies at the foot of the list, and never changes', async () => {
    await press(page, /^As traced/);
    await expect(notebook.getByLabel('What is different now')).toContainText('7 in → 7 1/8 in');
    await press(page, 'Back to the draft');
  });

  await test.step('brought back: what there was is kept as version 2 first', async () => {
    await press(page, /^Version 1, as drafted/);
    await press(page, 'Bring it back');
    await expect(page.getByText('What you had is kept as version 2; version 1 is on the table again.')).toBeVisible();
    await expect(notebook.getByText('The draft is version 1, as drafted.')).toBeVisible();
    const back = (await savedGarment(page)).garment;
    expect(back.pieces).toEqual(before.pieces);
    expect(back.traced).toEqual(before.traced);
  });

  await test.step('undo, also after a reload', async () => {
    await page.reload();
    await goTo(page, 'Versions');
    await press(page, 'Undo: version 1 brought back');
    await expect(notebook.getByText(/The draft is version 2, before version 1 was brought back/)).toBeVisible();
    const undone = (await savedGarment(page)).garment;
    expect(undone.steps?.map(({ label }) => label)).toEqual(['curved waist']);
  });

  await test.step('cloth cut from a version, and changed since, is said before cutting', async () => {
    await goTo(page, 'Versions');
    await press(page, /^Version 2/);
    await page.getByRole('radio', { name: 'the cloth' }).check();
    await press(page, 'Note that it was cut');
    await expect(notebook.getByText(/The draft is still as it was cut/)).toBeVisible();
    await press(page, /^Version 1, as drafted/);
    await press(page, 'Bring it back');
    await goTo(page, 'Before you cut');
    await expect(page.getByText(/The cloth was cut from version 2 .* Panel has been changed since/)).toBeVisible();
  });
  expect(trouble).toEqual([]);
});

test('pages say their version; after a change she is told which are stale, and prints only those', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  const notebook = notebookOf(page);
  await keepAs(page, 'Fitted');
  await goTo(page, 'Paper');
  await expect(notebook.getByText(/On every page will stand: version 1, Fitted \([2-9A-Z]{5}\)/)).toBeVisible();
  const all = await made(page, 'Make the pages (PDF)');
  expect(all.suggestedFilename()).toBe('linden-petticoat-version-1-fitted-pages-a4.pdf');
  await expect(
    notebook.getByText(
      'The newest pages of every piece are as the draft is now. Older ones, with another mark, are not to be used.',
    ),
  ).toBeVisible();
  await expect(notebook.getByText('Panel: pages A1, A2, B1, B2, C1, C2, D1', { exact: true })).toBeVisible();

  await takeCurvedWaist(page);
  await test.step('told which, in the list and in the Paper room', async () => {
    await goTo(page, 'Before you cut');
    const line = page.getByText(/Pages .* of Panel are out of date/);
    await expect(line).toBeVisible();
    await page.getByRole('listitem').filter({ has: line }).getByRole('button', { name: 'Mend it: Paper' }).click();
    await expect(notebook.getByText(/Pages .* of Panel are out of date/)).toBeVisible();
  });

  await test.step('undoing the change makes them current again', async () => {
    await press(page, 'Undo: curved waist');
    await expect(
      notebook.getByText(
        'The newest pages of every piece are as the draft is now. Older ones, with another mark, are not to be used.',
      ),
    ).toBeVisible();
    await press(page, 'Do again: curved waist');
  });

  const line = (await notebook.getByText(/Pages .* of Panel are out of date/).textContent()) ?? '';
  const said = line.match(/0*[A-Z]\d+/g);
  const only = await made(page, 'Make only the pages out of date (PDF)');
  expect(only.suggestedFilename()).toMatch(/changed-since-version-1-pages-out-of-date-a4\.pdf$/);
  const [whole, part] = [readPages(await all.path()), readPages(await only.path())];
  expect(part).not.toBe('no-readers');
  if (whole === 'no-readers' || part === 'no-readers') return;
  // The first page and seven of the panel.
  expect([whole.count, part.count]).toEqual([8, 6]);
  // The waist and the upper part of the side seam, which ends a little below a join, and above them the peak at the side.
  expect(said).toEqual(['A1', 'A2', 'B2', 'C2', '0A1', '0A2']);
  for (const { across, down } of part.squares) {
    expect(across).toBeCloseTo(4, 1);
    expect(down).toBeCloseTo(4, 1);
  }
  await expect(
    notebook.getByText(
      'The newest pages of every piece are as the draft is now. Older ones, with another mark, are not to be used.',
    ),
  ).toBeVisible();

  await test.step('a printing that is not used any more is not asked after', async () => {
    await notebook.getByRole('checkbox', { name: 'Not used any more' }).last().check();
    await press(page, 'Undo: pages not used any more');
    await press(page, 'Undo: pages made');
    await expect(notebook.getByText(/Pages .* of Panel are out of date/)).toBeVisible();
    await notebook.getByRole('checkbox', { name: 'Not used any more' }).check();
    await expect(notebook.getByText(/Pages .* of Panel are out of date/)).toBeHidden();
  });
  expect(trouble).toEqual([]);
});

test('a history of 200 versions with photos opens after a reload, and undo goes on', async ({ page }) => {
  test.slow();
  const { garment, versions, photos, garments } = longHistory(200, 40_000);
  const buffer = Buffer.from(writeProject({ garment, versions, photos }));
  await page.goto('/');
  await page
    .getByLabel('Open a file')
    .setInputFiles({ name: 'long.inchsquare.zip', mimeType: 'application/zip', buffer });
  await expect(page.getByRole('radio', { name: 'Trace a piece' })).toBeVisible({ timeout: 60_000 });
  await goTo(page, 'Paper');
  await page.getByRole('radio', { name: 'A3', exact: true }).check();
  await expect(page.getByText('Kept on this device')).toBeVisible();
  await page.reload();
  await goTo(page, 'Versions');
  const notebook = notebookOf(page);
  await expect(notebook.getByText('The draft is version 200, fitting 200.')).toBeVisible();
  await expect(notebook.getByRole('button', { name: /^Version \d+/ })).toHaveCount(200);
  await press(page, /^Version 57, fitting 57/);
  await press(page, 'Bring it back');
  await expect(page.getByText('Version 57 is on the table again.')).toBeVisible();
  const saved = await savedGarment(page);
  expect(saved.garment.pieces).toEqual(garments[56]?.pieces);
  await page.reload();
  await press(page, 'Undo: version 57 brought back');
  await press(page, 'Undo: paper');
  const undone = await savedGarment(page);
  expect(undone.garment.pieces).toEqual(garment.pieces);
  expect(undone.garment.paper).toEqual(garment.paper);
});
