import { expect, type Page, test } from '@playwright/test';
import { diagramMap, photoToTable } from '../core/diagram/diagram-map';
import { currentSet } from '../core/garment/measure-value';
import { distance, type Point } from '../core/geometry/point';
import { type DrawnLine, drawnPage } from '../tests/picture/drawn-page';
import { fittedCanvas, wholePixel } from './canvas';
import { openDemo } from './demo';
import { pictureFile } from './drawn-picture';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

const SIZE = { width: 1200, height: 900 };
/** Pixels of the picture to a nail. */
const NAIL_PX = 47;
const BAR: Point = { x: 180, y: 770 };

/** A breadth of 14 by 15 nails, and a scale bar of six nails with a plain tail. */
const truth = {
  corners: [
    { x: 150, y: 40 },
    { x: 150 + 14 * NAIL_PX, y: 40 },
    { x: 150 + 14 * NAIL_PX, y: 40 + 15 * NAIL_PX },
    { x: 150, y: 40 + 15 * NAIL_PX },
  ],
  barEnd: { x: BAR.x + 6 * NAIL_PX, y: BAR.y },
};

function breadth(): DrawnLine[] {
  const { corners } = truth;
  const strokes = Array.from({ length: 7 }, (_, i) => {
    const x = BAR.x + i * NAIL_PX;
    return { run: [BAR, { x, y: BAR.y }, { x, y: BAR.y - 14 }], width: 2 };
  });
  const tail = { run: [BAR, { x: truth.barEnd.x + 70, y: BAR.y }], width: 2 };
  return [{ run: [...corners, corners[0] as Point], width: 3 }, ...strokes, tail];
}

async function bringIn(page: Page): Promise<void> {
  await openDemo(page);
  await goTo(page, 'Diagram');
  const picture = pictureFile('breadth.png', drawnPage({ ...SIZE, lines: breadth(), shadow: 0.1, noise: 0.01 }));
  await page.getByLabel('Add another diagram').setInputFiles(picture);
  await expect(page.getByRole('status')).toContainText('1,200 by 900 pixels', { timeout: 30_000 });
  await page.getByRole('radio', { name: 'It is flat already' }).check();
}

test('a scale bar in nails: its two ends are pressed, its intervals counted, its tail left out, and one is worth a nail', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  await bringIn(page);
  const seen = await fittedCanvas(page, { minX: 0, minY: 0, maxX: SIZE.width, maxY: SIZE.height });
  await page.getByRole('button', { name: 'Draw a known length' }).click();
  for (const place of [BAR, { x: truth.barEnd.x + 70, y: BAR.y }]) {
    const { x, y } = wholePixel(seen(place));
    await page.mouse.click(x, y);
  }
  await page.getByRole('radio', { name: 'a scale bar' }).check();
  await expect(page.getByText(/6 intervals are seen, and beyond the last stroke/)).toBeVisible({ timeout: 20_000 });
  await page.getByRole('button', { name: 'Bring the ends to the strokes' }).click();
  await expect(page.getByText('6 intervals are seen between the ends.')).toBeVisible();
  await expect(page.getByLabel('Intervals')).toHaveValue('6');
  await page.getByLabel('One is worth').fill('1 nail');
  await page.keyboard.press('Enter');
  await expect(page.getByLabel('All together')).toHaveValue('13 1/2 in');
  await page.getByRole('button', { name: 'Take it' }).click();

  const { garment } = await savedGarment(page);
  const diagram = garment.diagrams.at(-1);
  if (!diagram) throw new Error('the diagram was kept');
  expect(diagram.knownLengths).toMatchObject([{ says: { kind: 'bar', intervals: 6, each: 57.15 } }]);
  const map = diagramMap(diagram, currentSet(garment));
  if (map.kind !== 'map') throw new Error(map.why);
  const at = truth.corners.map((corner) => photoToTable(map, corner) as Point);
  // 14 nails are 31 1/2 in and 15 are 33 3/4 in.
  expect(Math.abs(distance(at[0] as Point, at[1] as Point) - 31.5 * 25.4)).toBeLessThan(25.4 / 8);
  expect(Math.abs(distance(at[1] as Point, at[2] as Point) - 33.75 * 25.4)).toBeLessThan(25.4 / 8);

  await test.step('she corrects the count, and says what the whole is in feet and inches', async () => {
    await goTo(page, 'Diagram');
    await page.getByLabel('Diagram on the table').selectOption({ label: 'breadth' });
    await page.getByLabel('Intervals').fill('3');
    await page.keyboard.press('Enter');
    await page.getByLabel('All together').fill('1 ft 1 1/2 in');
    await page.keyboard.press('Enter');
    await expect(page.getByLabel('One is worth')).toHaveValue('4 1/2 in');
  });
  expect(trouble).toEqual([]);
});
