import { expect, type Page, test } from '@playwright/test';
import { layingOf } from '../core/cloth/garment-laying';
import { layStanding } from '../core/cloth/lay-standing';
import type { LayTask } from '../core/cloth/lay-task';
import type { Garment } from '../core/garment/garment';
import type { GarmentCloth } from '../core/garment/garment-cloth';
import { boxOfPoints } from '../core/geometry/bounds';
import { DEGREE } from '../core/units/degree';
import { inches } from '../core/units/inch';
import { readLength } from '../core/units/read-length';
import { wrongs } from '../tests/cloth/seen-from-outside';
import { layAll, notebook, strip, withCloth, write } from './cloth-room';
import { openDemo } from './demo';
import { openToAll } from './open-to-all';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

/** How much the remnant slants, for pieces that may tilt by 4° at most. */
const SLANT = 4 * DEGREE;

function taskOf(garment: Garment, cloth: GarmentCloth): LayTask {
  const { made } = layingOf(garment, cloth);
  if (made.kind !== 'task') throw new Error('it cannot be laid');
  return made.task;
}

/** The cloth of a name as it is kept, and everything wrong with its lay as it comes off the roll. */
async function clothKept(page: Page, name?: string) {
  const { garment } = await savedGarment(page);
  const cloth = (garment.cloths ?? []).find((one) => name === undefined || one.name === name);
  if (!cloth) throw new Error('there is no such cloth');
  const lay = layStanding(garment, cloth)?.lay;
  const { made, cloth: washed } = layingOf(garment, cloth);
  if (!lay || made.kind !== 'task') throw new Error('nothing is laid');
  return { garment, cloth, lay, said: wrongs(washed, made.task, lay) };
}

test('the usual widths side by side, one of them taken; what the wash takes is added; the cost in money', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  await withCloth(page, '39');
  await layAll(page);
  await expect(strip(page)).toContainText(/Takes\s61\sin/);

  await test.step('36, 39, 45, 54 and 60 in', async () => {
    await notebook(page).getByRole('button', { name: 'Lay each and compare' }).nth(1).click();
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
    await expect(strip(page)).toContainText(/Takes\s64\s1\/4\sin: buy\s1\s7\/8\syd/);
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

test('an interfacing is narrow cloth of its own, and before cutting both cloths are asked for', async ({ page }) => {
  await withCloth(page, '39');
  await layAll(page);
  await notebook(page).getByRole('button', { name: 'Interfacing', exact: true }).click();
  await write(page, 'Width, selvedges counted', '22 in');
  await notebook(page).getByRole('radio', { name: 'opened out' }).check();
  await notebook(page).getByRole('button', { name: 'Waistband', exact: true }).click();
  await openToAll(page, 'the Cloth room with an interfacing');
  await goTo(page, 'Before you cut');
  await expect(page.getByText(/Interfacing/).first()).toBeVisible();
  await goTo(page, 'Cloth');
  await layAll(page);
  await expect(strip(page)).toContainText('No overlaps');
  const interfacing = await clothKept(page, 'Interfacing');
  expect(interfacing.said).toEqual([]);
  expect(interfacing.lay.placed).toHaveLength(1);
  expect(interfacing.lay.length).toBeCloseTo(inches(30), 3);
});

test('two panels that go on a slanting remnant only tilted are tilted when she permits it, and by no more', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  await goTo(page, 'Cloth');
  await notebook(page).getByRole('button', { name: 'Remnant' }).first().click();
  await notebook(page).getByRole('checkbox', { name: 'Panel' }).check();

  await test.step('a slip that slants, a little longer and wider than the two of them end to end', async () => {
    const { garment } = await savedGarment(page);
    await goTo(page, 'Cloth');
    const [remnant] = garment.cloths?.filter(({ shape }) => shape) ?? [];
    if (!remnant) throw new Error('there is no remnant');
    const { shape: _, ...straight } = remnant;
    const [panel] = taskOf(garment, { ...straight, width: inches(99) }).toLay;
    const box = boxOfPoints(panel?.outline ?? []);
    if (!box) throw new Error('there is no panel to lay');
    const size = { along: 2 * (box.maxX - box.minX) + inches(3 / 8), across: box.maxY - box.minY + inches(3 / 8) };
    const sin = Math.sin(SLANT);
    const cos = Math.cos(SLANT);
    const corners = [
      { x: size.across * sin, y: 0 },
      { x: size.across * sin + size.along * cos, y: size.along * sin },
      { x: size.along * cos, y: size.along * sin + size.across * cos },
      { x: 0, y: size.across * cos },
    ];
    for (const [i, { x, y }] of corners.entries()) {
      const corner = notebook(page).getByRole('group', { name: `Corner ${i + 1}`, exact: true });
      for (const [name, value] of [
        ['Along', x],
        ['Across', y],
      ] as const) {
        const field = corner.getByLabel(name, { exact: true });
        await field.fill(`${value / 10} cm`);
        await field.press('Enter');
      }
    }
  });

  await layAll(page);
  await expect(strip(page)).toContainText(/It does not all go on the remnant: .*\sin lie beyond its end\./);

  await write(page, 'May lie off the grain, degrees each way', '4');
  await expect(notebook(page).getByText(/Up to 4° off the grain either way\./)).toBeVisible();
  await strip(page).getByRole('button', { name: /^Lay/ }).click();
  await expect(strip(page)).toContainText('It all goes on the remnant.', { timeout: 40_000 });
  await expect(strip(page)).toContainText('No overlaps');
  const { garment, cloth, lay, said } = await clothKept(page, 'Remnant');
  expect(said).toEqual([]);
  const { toLay } = taskOf(garment, cloth);
  for (const { id, stance } of lay.placed) {
    const turn = toLay.find((one) => one.id === id)?.stances[stance]?.turn ?? Number.NaN;
    expect(Math.abs(turn - Math.PI * Math.round(turn / Math.PI))).toBeLessThanOrEqual(4 * DEGREE + 1e-9);
  }
  expect(trouble).toEqual([]);
});
