import { expect, type Page, test } from '@playwright/test';
import { distance, type Point } from '../core/geometry/point';
import { settingsOf } from '../tests/picture/generated-photo';
import { seenPage } from '../tests/picture/photo-view';
import { openDemo } from './demo';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

/** `tilted-page.jpg` is photo 0 of the generated set at this size: where its page and its frame are seen is known. */
const SIZE = { width: 600, height: 800 };
const { page: printed, view } = settingsOf(0, SIZE);
const seen = seenPage(printed.across, printed.down, view);

const cornersOf = ({ left, top, right, bottom }: Record<'left' | 'top' | 'right' | 'bottom', number>) =>
  [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ].map((corner) => seen.toPhoto(corner));
const paper = cornersOf({ left: 0, top: 0, right: printed.across, bottom: printed.down });
const frame = cornersOf(printed.frame as NonNullable<typeof printed.frame>);

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const notebook = (page: Page) => page.getByRole('complementary', { name: 'Notebook' });
const names = ['Top left', 'Top right', 'Bottom right', 'Bottom left'];

async function bringIn(page: Page): Promise<void> {
  await openDemo(page);
  await goTo(page, 'Diagram');
  await page.getByLabel('Add another diagram').setInputFiles('e2e/formats/tilted-page.jpg');
  await expect(page.getByRole('status')).toContainText('600 by 800 pixels');
  await page.getByText('The corners as numbers').click();
}

/** How far the corners lie from where they should, at most, in pixels of the photo. */
async function off(page: Page, wanted: readonly Point[]): Promise<number> {
  const corners = await cornersNow(page);
  return Math.max(...corners.map((corner, k) => distance(corner, wanted[k] as Point)));
}

async function cornersNow(page: Page): Promise<Point[]> {
  const at = async (name: string, way: string) => Number(await page.getByLabel(`${name}, pixels ${way}`).inputValue());
  const all: Point[] = [];
  for (const name of names) all.push({ x: await at(name, 'across'), y: await at(name, 'down') });
  return all;
}

/** One per cent of the photo's long side. */
const ONE_PER_CENT = 8;

test('a new photo starts from the page it shows; the frame is the other proposal', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await bringIn(page);
  expect(await off(page, paper)).toBeLessThan(ONE_PER_CENT);
  await expect(notebook(page).getByText('The corners lie on the edge of the paper, proposal 1 of 2.')).toBeVisible();

  await press(page, 'Another proposal');
  expect(await off(page, frame)).toBeLessThan(ONE_PER_CENT);
  await expect(notebook(page).getByText('The corners lie on a printed frame, proposal 2 of 2.')).toBeVisible();

  await press(page, 'Undo: set the corners');
  expect(await off(page, paper)).toBeLessThan(ONE_PER_CENT);
  await press(page, 'Undo: bring in a diagram');
  await expect(page.getByRole('button', { name: 'Do again: bring in a diagram' })).toBeEnabled();
  expect(trouble).toEqual([]);
});

test('corners she set stay until she asks, and are drawn to the edges to part of a pixel', async ({ page }) => {
  await bringIn(page);
  await press(page, 'Start again');
  expect((await cornersNow(page))[0]).toEqual({ x: 60, y: 80 });

  await test.step('nothing that meets is near', async () => {
    await press(page, 'Draw them to the edges');
    await expect(notebook(page).getByText(/No (edge or printed line|four edges)/)).toBeVisible();
    expect((await cornersNow(page))[0]).toEqual({ x: 60, y: 80 });
  });

  await test.step('found again by the button', async () => {
    await press(page, 'Find the corners');
    await expect(notebook(page).getByText('The corners lie on the edge of the paper, proposal 1 of 2.')).toBeVisible();
    expect(await off(page, paper)).toBeLessThan(ONE_PER_CENT);
    await press(page, 'Undo: set the corners');
    expect((await cornersNow(page))[0]).toEqual({ x: 60, y: 80 });
  });

  await test.step('stopped half way', async () => {
    await page.evaluate(pressThenStop, 'Find the corners');
    await expect(notebook(page).getByText('Stopped. The corners are left as they are.')).toBeVisible();
    expect((await cornersNow(page))[0]).toEqual({ x: 60, y: 80 });
  });

  await test.step('placed by hand some pixels off the frame, then drawn to it', async () => {
    for (const [k, name] of names.entries()) {
      const at = frame[k] as Point;
      for (const [way, value] of [
        ['across', at.x + (k % 2 ? 3 : -4)],
        ['down', at.y + (k > 1 ? 2 : -3)],
      ] as const) {
        const field = page.getByLabel(`${name}, pixels ${way}`);
        await field.fill(value.toFixed(1));
        await field.press('Enter');
      }
    }
    await page.getByRole('button', { name: 'Draw them to the edges' }).focus();
    await page.keyboard.press('Enter');
    await expect(notebook(page).getByText(/Each corner moved, in pixels: top left [45]/)).toBeVisible();
    await expect.poll(() => off(page, frame)).toBeLessThan(1);
    await press(page, 'Undo: draw the corners to the edges');
    expect(await off(page, frame)).toBeGreaterThan(3);
    await press(page, 'Do again: draw the corners to the edges');
  });
  const { garment } = await savedGarment(page);
  const { squareUp } = garment.diagrams.at(-1) ?? {};
  if (squareUp?.kind !== 'rectangle') throw new Error('the corners were not kept');
  for (const [k, corner] of squareUp.corners.entries()) expect(distance(corner, frame[k] as Point)).toBeLessThan(1);
});

/** In the page itself: no test is as quick as what it wants to stop. */
async function pressThenStop(name: string): Promise<void> {
  const button = (words: string) => [...document.querySelectorAll('button')].find((one) => one.textContent === words);
  button(name)?.click();
  while (!button('Stop')) await new Promise((resolve) => setTimeout(resolve, 1));
  button('Stop')?.click();
}

test('the picture shown is cleaned up to black and white, and what is stored stays', async ({ page }) => {
  await openDemo(page);
  await goTo(page, 'Diagram');
  // The page is cream as it was taken, and no part of it is quite white.
  await expect.poll(() => whiteShare(page)).toBeLessThan(0.02);
  await page.getByLabel('Clean up the picture').selectOption({ label: 'Black and white' });
  await expect.poll(() => whiteShare(page), { timeout: 15_000 }).toBeGreaterThan(0.2);
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();
  await page.getByLabel('Clean up the picture').selectOption({ label: 'As it is' });
  await expect.poll(() => whiteShare(page)).toBeLessThan(0.02);
});

/** The share of the canvases' pixels that is pure white. */
async function whiteShare(page: Page): Promise<number> {
  return page.evaluate(() => {
    let [white, all] = [0, 0];
    for (const canvas of document.querySelectorAll('main canvas')) {
      if (!(canvas instanceof HTMLCanvasElement)) continue;
      const { data } = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height) ?? { data: [] };
      for (let i = 0; i < data.length; i += 4) {
        all += 1;
        if (data[i] === 255 && data[i + 1] === 255 && data[i + 2] === 255 && data[i + 3] === 255) white += 1;
      }
    }
    return white / all;
  });
}
