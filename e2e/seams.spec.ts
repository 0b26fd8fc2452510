import { expect, type Page, test } from '@playwright/test';
import { writeProject } from '../app/storage/project-file';
import type { Point } from '../core/geometry/point';
import { inches } from '../core/units/inch';
import { readLength } from '../core/units/read-length';
import { skirtAndBand } from '../tests/seams-room/skirt-and-band';
import { drag, fittedCanvas } from './canvas';
import { openDemo } from './demo';
import { openToAll } from './open-to-all';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

const notebookOf = (page: Page) => page.getByRole('complementary', { name: 'Notebook' });
const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true }).click();
const slider = (page: Page) => page.getByRole('slider', { name: 'How far the walk has come' });

/** Puts the skirt on the shelf from its file and goes to its seams. */
async function openSkirt(page: Page): Promise<void> {
  const file = Buffer.from(writeProject({ garment: skirtAndBand(), versions: [], photos: [] }));
  await page.goto('/');
  await page
    .getByLabel('Open a file')
    .setInputFiles({ name: 'skirt.inchsquare.zip', mimeType: 'application/zip', buffer: file });
  await expect(page.getByRole('navigation')).toBeVisible();
  await goTo(page, 'Seams');
}

/** Everything on the table lies in this box, with the room the table leaves round it. */
const ALL = { minX: -60, minY: inches(-8) - 60, maxX: inches(38.346) + 60, maxY: inches(25) + 60 };

test('two edges pressed one after another are paired, walked, trued and their notches matched', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await openSkirt(page);
  const notebook = notebookOf(page);

  await test.step('pair them on the table', async () => {
    const seen = await fittedCanvas(page, ALL);
    // A place of either side: eleven inches down the front's, five sevenths down the back's.
    const front = seen({ x: inches(7 + (7 * 11) / 25), y: inches((24 * 11) / 25) });
    const slant = Math.sqrt(25.25 ** 2 - 24 ** 2);
    const back = seen({ x: inches(24 + (slant * 2) / 7), y: inches(24 * (5 / 7)) });
    await page.mouse.click(front.x, front.y);
    await expect(page.getByRole('status')).toContainText('Front: side. Now press the edge it is sewn to,');
    await page.mouse.click(back.x, back.y);
    await expect(notebook.getByText('Back: side is 1/4 in longer than Front: side; 1 notch misses')).toBeVisible();
    await press(page, 'Pair them');
    await expect(notebook.getByRole('heading', { name: 'Front: side to Back: side' })).toBeVisible();
  });

  await test.step('walk one along the other', async () => {
    await expect(
      notebook.getByText('From 8 in to 16 in they part: Back: side is 1/4 in too long there.'),
    ).toBeVisible();
    await expect(notebook.getByText('Notch 2 lies 1/4 in before its partner on Back: side.')).toBeVisible();
    await press(page, '1/2 in on');
    await press(page, '1/2 in on');
    await expect(page.getByText('1 in meets 1 in', { exact: true })).toBeVisible();
    await slider(page).press('End');
    await expect(slider(page)).toHaveAttribute('aria-valuetext', /^25\sin along Front: side, 25\sin along Back: side$/);
    await expect(page.getByRole('button', { name: '1/2 in on' })).toBeDisabled();
    await slider(page).press('Home');
    await expect(slider(page)).toHaveAttribute('aria-valuetext', /^0\sin along Front: side, 0\sin along Back: side$/);
  });

  await test.step('and by dragging along the edge', async () => {
    const at = await onTheSide(page);
    const along: number[] = [];
    // The side falls 24 for every 7 across, so these lie on it, 25, 125 and 175 pixels on.
    for (const pixels of [25, 125, 175]) {
      await drag(page, at, { x: at.x + (7 / 25) * pixels, y: at.y + (24 / 25) * pixels });
      along.push(await walkedSoFar(page));
    }
    const [first = 0, second = 0, third = 0] = along;
    expect(first).toBeGreaterThan(inches(2));
    expect(second).toBeGreaterThan(first);
    expect(Math.abs((second - first) / 2 - (third - second))).toBeLessThan(inches(1 / 8));
  });

  await test.step('true the back, seeing first what would newly be open', async () => {
    await press(page, 'True the lengths');
    await page.getByRole('radio', { name: 'Back: side' }).check();
    await page.getByRole('radio', { name: 'at the end (at the hem)' }).check();
    await expect(notebook.getByText('25 1/4 in → 25 in')).toBeVisible();
    await expect(notebook.getByText(/This settles: Front, side: 1\/4\sin too short/)).toBeVisible();
    await press(page, 'Leave it as it was');
    await expect(page.getByRole('button', { name: 'Undo: pair edges' })).toBeEnabled();
    await press(page, 'True the lengths');
    await press(page, 'Take it');
    await expect(notebook.getByText(/^(In order: )?agree$/)).toBeVisible();
  });

  await test.step('put the notches across', async () => {
    await press(page, 'Match the notches');
    await press(page, 'Take it');
    await expect(notebook.getByText('All 2 notches meet.')).toBeVisible();
    await expect(notebook.getByText('They lie on one another all the way.')).toBeVisible();
  });

  await test.step('true the corners at the waist', async () => {
    await press(page, 'True the corners');
    await expect(notebook.getByText(/ = 214\.4°$/)).toBeVisible();
    await expect(notebook.getByText(/ = 180\.0°$/)).toBeVisible();
    await press(page, 'Take it');
    await expect(notebook.getByText(/ = 180\.0°$/)).toBeVisible();
  });

  await test.step('it is kept so, and undo goes back step by step', async () => {
    for (const label of ['true the corners of a seam', 'match notches', 'true a seam', 'pair edges']) {
      await press(page, `Undo: ${label}`);
    }
    await expect(notebook.getByText('No seam is paired yet.')).toBeVisible();
    await press(page, 'Do again: pair edges');
    const { garment } = await savedGarment(page);
    expect(garment.seams).toMatchObject([{ ease: 0, way: 'opposite' }]);
  });
  expect.soft(trouble, 'nothing on the console').toEqual([]);
});

test('a waist and its band are proposed, and the lap is said', async ({ page }) => {
  await openSkirt(page);
  const notebook = notebookOf(page);
  await expect(notebook.getByText('a waist and its band: agree, with a lap of 1 in')).toBeVisible();
  await press(page, 'Pair all 3');
  const seams = notebook.getByRole('listitem');
  await expect(seams.first()).toContainText('25 in and 25 1/4 in');
  const band = seams.filter({ hasText: 'agree, with a lap of 1 in' });
  await expect(band).toContainText('27 in and 27 in');
  await expect(seams.filter({ hasText: 'agrees with its mirror image' })).toHaveCount(1);
  await band.getByRole('button').click();
  const lap = notebook.getByLabel('Lap of the band');
  await expect(lap).toHaveValue('1 in');
  await expect(notebook.getByRole('group', { name: 'The lap lies' })).toBeVisible();
  await lap.fill('3/4');
  await lap.press('Enter');
  await expect(
    notebook.getByText(/1\/4\sin longer than Front: waist and 1 more, beside a lap of 3\/4\sin/),
  ).toBeVisible();
  await lap.fill('1 1/2');
  await lap.press('Enter');
  await test.step('the waist eased in as well', async () => {
    const ease = notebook.getByLabel('Front: waist and 1 more is eased in by');
    await ease.fill('1/2');
    await ease.press('Enter');
    await expect(lap).toHaveValue('1 1/2 in');
    await expect(notebook.getByText(/eased in by 1\/2\sin, beside a lap of 1\s1\/2\sin/)).toBeVisible();
  });
  await test.step('unpaired, it is proposed again', async () => {
    await press(page, 'Unpair');
    await expect(notebook.getByRole('button', { name: 'Pair it, with a lap of 1 in' })).toBeVisible();
  });
});

test('what is found in a seam leads to that seam', async ({ page }) => {
  await openSkirt(page);
  await press(page, 'Pair all 3');
  await goTo(page, 'Before you cut');
  await page
    .getByRole('listitem')
    .filter({ hasText: /Front, side: 1\/4\sin too short/ })
    .getByRole('button', { name: 'Mend it: Seams' })
    .first()
    .click();
  await expect(page.getByText('0 in meets 0 in')).toBeVisible();
  await expect(notebookOf(page).getByRole('heading', { name: 'side', exact: true })).toBeVisible();
});

test('with one piece and nothing paired the room says what to do, and an edge can be sewn to its like', async ({
  page,
}) => {
  await openDemo(page);
  await goTo(page, 'Seams');
  const notebook = notebookOf(page);
  await expect(notebook.getByText('No seam is paired yet.')).toBeVisible();
  await test.step('a panel cut twice on the fold is proposed to be sewn to its like', async () => {
    await press(page, 'Pair Panel: side seam to that of the next piece like it');
    await expect(notebook.getByRole('listitem').filter({ hasText: 'agrees with its mirror image' })).toHaveCount(1);
    await press(page, 'Undo: pair edges');
  });
  await notebook.getByRole('button', { name: 'Pair Panel: side seam', exact: true }).click();
  await notebook.getByLabel('is sewn to').selectOption({ label: 'Panel: side seam' });
  await press(page, 'Pair them');
  await expect(
    notebook.getByText('Both sides are the same edge of two pieces cut alike, so they always agree.'),
  ).toBeVisible();
});

for (const size of [
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
] as const) {
  test.describe(`at ${size.width} × ${size.height}`, () => {
    test.use({ viewport: size });
    test('a seam in hand and a change being tried are open to all', async ({ page }) => {
      await openSkirt(page);
      await expect(page.getByRole('application')).toBeVisible();
      const folded = page.getByRole('button', { name: 'Open the notebook' });
      if (await folded.isVisible()) await folded.click();
      await press(page, 'Pair all 3');
      await page.getByRole('button', { name: /^side/ }).click();
      await expect(slider(page)).toBeInViewport();
      await openToAll(page, 'a seam in hand');
      await press(page, 'True the lengths');
      await expect(page.getByRole('button', { name: 'Take it' })).toBeVisible();
      await openToAll(page, 'a change being tried');
    });
  });
}

/** A place of the screen on the side of the front, found as a hand finds it: from the left, until the pointer says so. */
async function onTheSide(page: Page): Promise<Point> {
  const table = page.getByRole('application');
  const box = await table.boundingBox();
  if (!box) throw new Error('there is no table');
  const y = box.y + box.height / 3;
  for (let x = box.x + 40; x < box.x + box.width; x += 4) {
    await page.mouse.move(x, y);
    if ((await table.evaluate((element) => element.style.cursor)) === 'pointer') return { x, y };
  }
  throw new Error('no edge was found');
}

/** How far along the front's side the walk is said to have come, in mm. */
async function walkedSoFar(page: Page): Promise<number> {
  const said = (await slider(page).getAttribute('aria-valuetext')) ?? '';
  const read = readLength(said.slice(0, said.indexOf(' along')), { bare: 'in' });
  if (read.kind === 'refused') throw new Error(`the slider says ${said}`);
  return read.length;
}
