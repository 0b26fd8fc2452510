import { expect, type Page, test } from '@playwright/test';
import { openDemo } from './demo';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

const notebook = (page: Page) => page.getByRole('complementary', { name: 'Notebook' });

/** A number the notebook shows of the change being tried. */
const figure = (page: Page, words: string) =>
  notebook(page)
    .locator('dl div')
    .filter({ has: page.getByText(words, { exact: true }) })
    .locator('dd');

async function begin(page: Page, change: RegExp): Promise<void> {
  await notebook(page).getByRole('button', { name: change }).click();
}

const take = (page: Page) => notebook(page).getByRole('button', { name: 'Take it' });

test.beforeEach(async ({ page }) => {
  await openDemo(page);
  await goTo(page, 'Reshape');
});

test('a panel is lengthened across by an inch, seen before it is taken, and shortened back to what it was', async ({
  page,
}) => {
  const heard = listenForTrouble(page);
  await begin(page, /^Lengthen or shorten/);
  await expect(figure(page, 'Panel: centre fold')).toHaveText('28 in → 29 in');
  await notebook(page).getByLabel('By', { exact: true }).fill('1 1/2');
  await notebook(page).getByLabel('By', { exact: true }).press('Enter');
  await expect(figure(page, 'Panel: centre fold')).toHaveText('28 in → 29 1/2 in');
  await expect(notebook(page).getByText('Nothing new would be open after this.')).toBeVisible();
  await take(page).click();
  await expect(page.getByRole('status')).toContainText('Done: lengthen');

  await begin(page, /^Lengthen or shorten/);
  await notebook(page).getByRole('radio', { name: 'shorter' }).check();
  await notebook(page).getByLabel('By', { exact: true }).fill('1 1/2');
  await notebook(page).getByLabel('By', { exact: true }).press('Enter');
  await expect(figure(page, 'Panel: centre fold')).toHaveText('29 1/2 in → 28 in');
  await take(page).click();
  const { garment } = await savedGarment(page);
  const ends = garment.pieces[0]?.corners.map(({ at }) => [at.x / 25.4, at.y / 25.4]) ?? [];
  [
    [0, 0],
    [7, 0],
    [13, 27],
    [0, 28],
  ].forEach(([x, y], i) => {
    expect(ends[i]?.[0]).toBeCloseTo(x ?? 0, 3);
    expect(ends[i]?.[1]).toBeCloseTo(y ?? 0, 3);
  });
  expect(heard).toEqual([]);
});

test('a curved waist is tried in three ways, checked before it is taken, and undone', async ({ page }) => {
  await begin(page, /^Curve the waist/);
  await expect(figure(page, 'Rise at the side')).toHaveText('1 1/4 in');
  await expect(figure(page, 'The waist, as sewn')).toHaveText('7 in → 7 1/8 in');
  await expect(figure(page, 'Angles at its ends')).toHaveText('90.0° and 90.0°');
  await expect(notebook(page).getByText(/This settles: 1\/2\sin short of the ease wanted at the waist/)).toBeVisible();

  await notebook(page).getByRole('radio', { name: 'by its rise and dip' }).check();
  await notebook(page).getByLabel('Rise at the side').fill('3/4');
  await notebook(page).getByLabel('Rise at the side').press('Enter');
  await expect(figure(page, 'Rise at the side')).toHaveText('3/4 in');

  await notebook(page).getByRole('radio', { name: 'from the cone of the body' }).check();
  await take(page).click();
  await goTo(page, 'Fit');
  await expect(notebook(page).getByText('28 1/2 in').first()).toBeVisible();
  await page.getByRole('button', { name: 'Undo: curve the waist from the cone' }).click();
  await goTo(page, 'Reshape');
  await begin(page, /^Curve the waist/);
  await expect(figure(page, 'The waist, as sewn')).toHaveText('7 in → 7 1/8 in');
});

test('undo leaves a change that is only tried, and the garment stays as it is', async ({ page }) => {
  await begin(page, /^Slash and spread/);
  await expect(figure(page, 'Panel: hem')).toHaveText('13 1/16 in → 15 1/16 in');
  await page.keyboard.press('Control+z');
  await expect(notebook(page).getByRole('heading', { name: 'Width and fullness' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();
});

test('a dart is added, moved to the side, where its angle is kept, and closed into the hem', async ({ page }) => {
  await begin(page, /^Add a dart/);
  await expect(figure(page, 'Round the waist')).toHaveText('28 in → 25 in');
  await expect(
    notebook(page)
      .getByText(/After this: .* the waist/)
      .first(),
  ).toBeVisible();
  await take(page).click();

  await begin(page, /^Move a dart/);
  await notebook(page).getByLabel('To the edge').selectOption({ label: 'Panel: side seam' });
  await expect(figure(page, 'Width at its mouth')).toHaveText(/^3\/4\sin → 2\s\d/);
  await take(page).click();
  const angle = (await savedAngle(page)) * (180 / Math.PI);
  // A mouth of 3/4 in, 4 in from its point.
  expect(angle).toBeCloseTo(2 * Math.atan2(0.375, 4) * (180 / Math.PI), 1);

  await goTo(page, 'Reshape');
  await begin(page, /^Turn a dart/);
  await notebook(page).getByLabel('Opening at, or running to').selectOption({ label: 'Panel: hem' });
  await take(page).click();
  await begin(page, /^Move a dart/);
  await expect(notebook(page).getByText('There is no dart yet. Add one first.')).toBeVisible();
});

/** The angle of the only dart, from the garment as it is saved. */
async function savedAngle(page: Page): Promise<number> {
  const { outlineOf } = await import('../core/garment/outline');
  const { pathAtLength } = await import('../core/geometry/path');
  const { garment } = await savedGarment(page);
  const piece = garment.pieces[0];
  const dart = piece?.darts[0];
  if (!piece || !dart) throw new Error('there is no dart');
  const path = outlineOf(piece).edges[piece.edges.findIndex(({ id }) => id === dart.edgeId)] ?? [];
  const [from, to] = [-1, 1].map((side) => pathAtLength(path, dart.along + (side * dart.width) / 2).point);
  const way = (to: { x: number; y: number } | undefined) =>
    Math.atan2((to?.y ?? 0) - dart.point.y, (to?.x ?? 0) - dart.point.x);
  const turn = Math.abs(way(to) - way(from));
  return Math.min(turn, 2 * Math.PI - turn);
}

test('a base pattern of her own size is laid under the draft and is neither counted nor cut', async ({ page }) => {
  await begin(page, /^Draft a base pattern/);
  await expect(figure(page, 'New piece: Front')).toHaveText('cut 1 on the fold');
  await expect(notebook(page).getByText('Nothing new would be open after this.')).toBeVisible();
  await take(page).click();
  const { garment } = await savedGarment(page);
  expect(garment.pieces.map(({ name, use }) => [name, use])).toEqual([
    ['Panel', undefined],
    ['Front', 'guide'],
    ['Back', 'guide'],
  ]);
});
