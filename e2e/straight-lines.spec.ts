import { expect, type Page, test } from '@playwright/test';
import type { Point } from '../core/geometry/point';
import { type DrawnLine, drawnPage } from '../tests/picture/drawn-page';
import { fittedCanvas, wholePixel } from './canvas';
import { openDemo } from './demo';
import { pictureFile } from './drawn-picture';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

const SIZE = { width: 1200, height: 900 };

/** A bar of 1000 px that is 25 in; a hem bowed by 8 px, that is 0.1 in each way; a waist, and a side 10 in 700 off square. */
const bar = [
  { x: 100, y: 850 },
  { x: 1100, y: 850 },
] as const;
const hem = Array.from({ length: 41 }, (_, k) => ({ x: 150 + 22 * k, y: 700 + 8 * (1 - (k / 20 - 1) ** 2) }));
const waist = [
  { x: 150, y: 80 },
  { x: 1050, y: 80 },
] as const;
const side = [
  { x: 300, y: 40 },
  { x: 310, y: 740 },
] as const;

async function press(page: Page, places: readonly (Point | undefined)[]): Promise<void> {
  const seen = await fittedCanvas(page, { minX: 0, minY: 0, maxX: SIZE.width, maxY: SIZE.height });
  for (const place of places) {
    if (!place) throw new Error('a line has two ends');
    const { x, y } = wholePixel(seen(place));
    await page.mouse.click(x, y);
  }
}

test('lines that should be straight and square are marked, and told by how much they are off at full size', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  await goTo(page, 'Diagram');
  const lines: DrawnLine[] = [bar, hem, waist, side].map((run) => ({ run, width: 3 }));
  const picture = pictureFile('breadth.png', drawnPage({ ...SIZE, lines, shadow: 0.1, noise: 0.01 }));
  await page.getByLabel('Add another diagram').setInputFiles(picture);
  await expect(page.getByRole('status')).toContainText('1,200 by 900 pixels', { timeout: 30_000 });
  await page.getByRole('radio', { name: 'It is flat already' }).check();

  const marked = page.getByRole('region', { name: 'Lines that should be straight' });
  const mark = async (run: readonly Point[]) => {
    await marked.getByRole('button', { name: 'Mark a straight line' }).click();
    await press(page, [run[0], run.at(-1)]);
    await expect(page.getByText('Following the printed line…')).toBeHidden({ timeout: 20_000 });
  };
  await mark(hem);
  await expect(marked.getByText('can be said once there is a known length')).toBeVisible();

  await page.getByRole('button', { name: 'Draw a known length' }).click();
  await press(page, bar);
  await page.getByLabel('At full size').fill('25');
  await page.keyboard.press('Enter');
  // Half of 8 px at 40 px to the inch.
  await expect(marked.getByText(/^Straight to 3\/32\sin over 22/)).toBeVisible();
  await expect(page.getByText(/^The page is good to 1\/8\sin over 30/)).toBeVisible();

  await mark(waist);
  await mark(side);
  await expect(marked.getByText(/^Straight to 0\s?in over 22/)).toBeVisible();
  const third = marked.getByRole('listitem').filter({ has: page.getByRole('heading', { name: 'Line c' }) });
  await third.getByLabel('Square to').selectOption({ label: 'Line b' });
  // 10 in 700 over the 22 1/2 in of the longer one is 0.32 in.
  await expect(third.getByText(/^Square to line b to 5\/16\sin over 22/)).toBeVisible();
  await expect(page.getByText(/lines that should be straight .* off/i).first()).toBeVisible();

  await test.step('it is kept, and undo takes it back a step at a time', async () => {
    const kept = (await savedGarment(page)).garment.diagrams.at(-1)?.ruled;
    expect(kept?.map(({ places, squareTo }) => [places.length, squareTo === kept[1]?.id])).toEqual([
      [48, false],
      [48, false],
      [48, true],
    ]);
    await goTo(page, 'Diagram');
    await page.getByLabel('Diagram on the table').selectOption({ label: 'breadth' });
    await page.keyboard.press('Control+z');
    await expect(third.getByText(/^Square to line b to/)).toBeHidden();
    await page.keyboard.press('Control+z');
    await expect(third).toBeHidden();
    await marked.getByRole('button', { name: 'Remove line a' }).click();
    await expect(marked.getByRole('listitem')).toHaveCount(1);
  });
  expect(trouble).toEqual([]);
});
