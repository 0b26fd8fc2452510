import { expect, test } from '@playwright/test';
import { layStanding } from '../core/cloth/lay-standing';
import { inches } from '../core/units/inch';
import { fittedCanvas } from './canvas';
import { layAll, notebook, strip, write } from './cloth-room';
import { openDemo } from './demo';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

test('a piece is chosen, moved, turned and pinned by keys alone, and each time its place is said', async ({ page }) => {
  await openDemo(page);
  await goTo(page, 'Cloth');
  await layAll(page);
  const said = page.getByRole('status');
  await page.getByRole('application').focus();
  await page.keyboard.press('PageDown');
  await expect(
    said.filter({ hasText: /^Panel, 1 of 2, on the fold 0\sin from the cut end, 0\sin from the fold/ }),
  ).toBeAttached();
  await page.keyboard.press('PageDown');
  await expect(said.filter({ hasText: /^Panel, 2 of 2, on the fold 30\s1\/2\sin from/ })).toBeAttached();
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('ArrowRight');
  await expect(said.filter({ hasText: /31\s5\/8\sin from the cut end, .* No overlaps\./ })).toBeAttached();
  await page.keyboard.press('t');
  await expect(said.filter({ hasText: /turned over.* No overlaps\./ })).toBeAttached();
  await page.keyboard.press('p');
  await expect(said.filter({ hasText: /pinned/ })).toBeAttached();
  await expect(strip(page).getByRole('button', { name: 'Take the pin out' })).toBeVisible();
  // What is pinned stays.
  await page.keyboard.press('Shift+ArrowLeft');
  await expect(strip(page)).toContainText(/pinned 31\s5\/8\sin from the cut end/);
  await page.keyboard.press('p');
  await page.keyboard.press('Shift+ArrowLeft');
  await page.keyboard.press('Shift+ArrowLeft');
  await expect(said.filter({ hasText: /1 fault in the lay\./ })).toBeAttached();
  await page.keyboard.press('Escape');
  await expect(strip(page).getByRole('button', { name: 'Pin it here' })).toBeHidden();
});

test('a remnant is drawn on the table, corner by corner, and a strip is laid inside it', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  await goTo(page, 'Cloth');
  await notebook(page).getByRole('button', { name: 'Remnant' }).first().click();
  await notebook(page).getByRole('button', { name: 'Placket strip' }).click();
  await notebook(page).getByRole('button', { name: 'Draw it on the cloth' }).click();
  const onScreen = await fittedCanvas(page, { minX: -70, minY: -70, maxX: inches(36) + 70, maxY: inches(18) + 112 });
  const corners = [
    [1, 1],
    [33, 3],
    [35, 17],
    [14, 16],
    [12, 9],
  ] as const;
  for (const [x, y] of corners) {
    const at = onScreen({ x: inches(x), y: inches(y) });
    await page.mouse.click(at.x, at.y);
  }
  await expect(page.getByText('5 corners')).toBeVisible();
  await page.getByRole('button', { name: 'Done' }).click();
  await layAll(page);
  await expect(strip(page)).toContainText('No overlaps');
  const { garment } = await savedGarment(page);
  const remnant = garment.cloths?.find(({ shape }) => shape);
  expect(remnant?.shape).toHaveLength(5);
  remnant?.shape?.forEach(({ x, y }, i) => {
    expect(Math.abs(x - inches(corners[i]?.[0] ?? 0))).toBeLessThan(3);
    expect(Math.abs(y - inches(corners[i]?.[1] ?? 0))).toBeLessThan(3);
  });
  expect(remnant && layStanding(garment, remnant)?.faults).toEqual([]);
  expect(trouble).toEqual([]);
});

test('bias strips: the square for a length, the length from a square, and the strip in the lay, in lengths that go', async ({
  page,
}) => {
  await openDemo(page);
  await goTo(page, 'Cloth');
  await notebook(page).getByText('Bias strips', { exact: true }).click();
  // 250 in of 2 in: √500 = 22.36, cut 23; 36 x 36 over 2 is 648 in (bias binding charts: mydecozo.com, sew-whats-new.com).
  await write(page, 'Strip wanted', '250 in');
  await write(page, 'Cut as wide as', '2 in');
  await expect(notebook(page).getByText(/A square of 22\s3\/8\sin is enough; cut it 23\sin\./)).toBeVisible();
  await write(page, 'Side of a square at hand', '36 in');
  await expect(notebook(page).getByText(/A square of 36\sin gives 648\sin of it\./)).toBeVisible();
  await notebook(page).getByRole('radio', { name: 'opened out' }).check();
  await notebook(page).getByRole('button', { name: 'Put this strip into the lay' }).click();
  await expect(
    notebook(page).getByText(/Bias binding takes .* across, and the cloth has 38\sin as it lies\./),
  ).toBeVisible();
  await notebook(page)
    .getByRole('button', { name: /^Cut Bias binding in \d lengths$/ })
    .click();
  await layAll(page);
  await expect(strip(page)).toContainText('No overlaps');
});
