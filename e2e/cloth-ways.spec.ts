import { expect, type Page, test } from '@playwright/test';
import { layingOf } from '../core/cloth/garment-laying';
import { layStanding } from '../core/cloth/lay-standing';
import { inches } from '../core/units/inch';
import { readLength } from '../core/units/read-length';
import { wrongs } from '../tests/cloth/seen-from-outside';
import { layAll, notebook, strip, withCloth, write } from './cloth-room';
import { savedGarment } from './room';
import { listenForTrouble } from './trouble';

/** The cloth of a name as it is kept, and everything wrong with its lay as it comes off the roll. */
async function clothKept(page: Page, name?: string) {
  const { garment } = await savedGarment(page);
  const cloth = (garment.cloths ?? []).find((one) => name === undefined || one.name === name);
  if (!cloth) throw new Error('there is no such cloth');
  const lay = layStanding(garment, cloth)?.lay;
  const { made, cloth: washed } = layingOf(garment, cloth);
  if (!lay || made.kind !== 'task') throw new Error('nothing is laid');
  return { cloth, lay, said: wrongs(washed, made.task, lay) };
}

test('the usual widths side by side, one of them taken; what the wash takes is added; the cost in money', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  await withCloth(page, '39');
  await layAll(page);
  await expect(strip(page)).toContainText(/Takes\s61\sin/);

  await test.step('36, 39, 45, 54 and 60 in', async () => {
    await notebook(page).getByRole('button', { name: 'Lay them beside one another' }).nth(1).click();
    const row = (width: number) =>
      notebook(page)
        .getByRole('row')
        .filter({ has: page.getByRole('rowheader', { name: new RegExp(`^${width}\\sin$`) }) });
    for (const width of [36, 39, 45, 54, 60]) {
      await expect(row(width)).toContainText(/\d\sin\d.*yd, \d\.\d\d\sm/, { timeout: 60_000 });
    }
    await expect(row(39)).toContainText('as laid');
    const took = async (width: number) => {
      const said = (await row(width).getByRole('cell').first().textContent()) ?? '';
      const read = readLength(/^(.*?)\sin/.exec(said)?.[1] ?? '', { bare: 'in' });
      return read.kind === 'length' ? read.length : Number.NaN;
    };
    expect(await took(39)).toBe(inches(61));
    expect(await took(60)).toBeLessThanOrEqual(await took(36));
    await notebook(page)
      .getByRole('button', { name: /^Take 60\sin$/ })
      .click();
    await expect(notebook(page).getByLabel('Width, selvedges counted')).toHaveValue(/^60\sin$/);
    await expect(strip(page)).toContainText('No overlaps');
    await page.getByRole('banner').getByRole('button', { name: /^Undo/ }).click();
    await expect(strip(page)).toContainText(/Takes\s61\sin/);
  });

  await test.step('5 in 100 lost in the wash: 61 in are cut from 64 1/4 (61 / 0.95 = 64.21)', async () => {
    await notebook(page).getByText('Stripes, flaws, shrinking, odd shapes').click();
    await write(page, 'Shrinks in length, in %', '5');
    await layAll(page);
    await expect(strip(page)).toContainText(/Takes\s64\s1\/4\sin\s=\s1\s7\/8\syd/);
    await expect(notebook(page).getByText(/After washing the lay takes 61\sin/)).toBeVisible();
  });

  await test.step('1 7/8 yd at 4.40 a yard is 8.25', async () => {
    await notebook(page).getByText('Budget', { exact: true }).click();
    await write(page, 'Price', '4.4');
    await write(page, 'Counted in', 'francs');
    await expect(notebook(page).getByText('8.25 francs').first()).toBeVisible();
  });
  expect((await clothKept(page)).said).toEqual([]);
  expect(trouble).toEqual([]);
});

test('stripes, a flaw and a nap are kept to, and cloth folded crosswise refuses the nap', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await withCloth(page, '45');
  await write(page, 'Length at hand', '150 in');
  await notebook(page).getByRole('radio', { name: 'opened out' }).check();
  await notebook(page).getByText('Stripes, flaws, shrinking, odd shapes').click();
  await write(page, 'Repeat along the cloth', '4 in');
  await notebook(page).getByRole('button', { name: 'Add a flaw by its size' }).click();
  await notebook(page).getByRole('checkbox', { name: 'Nap or one-way figure' }).check();
  await notebook(page).getByRole('radio', { name: 'folded crosswise' }).check();
  await expect(notebook(page).getByText(/the nap of one layer runs against the other/)).toBeVisible();
  await notebook(page).getByRole('radio', { name: 'opened out' }).check();
  await layAll(page);
  await expect(strip(page)).toContainText('No overlaps');
  const { cloth, lay, said } = await clothKept(page);
  expect(cloth).toMatchObject({ nap: 'one-way', repeat: { along: inches(4) }, folded: 'open' });
  expect(cloth.flaws).toHaveLength(1);
  expect(said).toEqual([]);
  const panels = lay.placed.filter(({ id }) => !cloth.strips.some((one) => one.id === id));
  expect(panels.length).toBeGreaterThan(1);
  expect(new Set(panels.map(({ stance }) => stance)).size, 'all tops the same way').toBe(1);
  expect(trouble).toEqual([]);
});

test('a lining is a further cloth with a width, pieces and a lay of its own', async ({ page }) => {
  await withCloth(page, '39');
  await layAll(page);
  await notebook(page).getByRole('button', { name: 'Lining', exact: true }).click();
  await write(page, 'Width, selvedges counted', '54 in');
  await notebook(page).getByRole('checkbox', { name: 'Panel' }).check();
  await notebook(page).getByRole('radio', { name: 'opened out' }).check();
  await layAll(page);
  await expect(strip(page)).toContainText('No overlaps');
  const lining = await clothKept(page, 'Lining');
  expect(lining.said).toEqual([]);
  expect(lining.cloth.width).toBe(inches(54));
  const first = await clothKept(page);
  expect(first.said).toEqual([]);
  expect(Math.abs(first.lay.length - inches(61))).toBeLessThan(inches(1 / 8));
});
