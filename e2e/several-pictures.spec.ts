import { expect, type Page, test } from '@playwright/test';
import { diagramMap, photoToTable } from '../core/diagram/diagram-map';
import { halvesOf } from '../core/diagram/halves';
import { boxAround } from '../core/diagram/squared-picture';
import type { Garment } from '../core/garment/garment';
import { currentSet } from '../core/garment/measure-value';
import { outlineOf } from '../core/garment/outline';
import { rotationAbout, transformPoint } from '../core/geometry/affine';
import { unionBox } from '../core/geometry/bounds';
import { pathBounds } from '../core/geometry/path';
import { distance, type Point } from '../core/geometry/point';
import { type DrawnLine, drawnPage } from '../tests/picture/drawn-page';
import { fittedCanvas, wholePixel } from './canvas';
import { openDemo } from './demo';
import { pictureFile } from './drawn-picture';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

const SIZE = { width: 900, height: 800 };
/** A sheet of 1600 pixels, 50 to the inch, with a gore that runs over the gutter at 850, and crosses along it. */
const PER_INCH = 50;
const gore: readonly Point[] = [
  { x: 300, y: 150 },
  { x: 1350, y: 210 },
  { x: 1400, y: 640 },
  { x: 260, y: 600 },
];
const crosses: readonly Point[] = [
  { x: 830, y: 60 },
  { x: 845, y: 740 },
  { x: 815, y: 400 },
];
const ruler = { from: { x: 100, y: 720 }, to: { x: 700, y: 720 } };

function sheet(): DrawnLine[] {
  const marks = crosses.flatMap(({ x, y }) => [
    {
      run: [
        { x: x - 9, y },
        { x: x + 9, y },
      ],
      width: 2,
    },
    {
      run: [
        { x, y: y - 9 },
        { x, y: y + 9 },
      ],
      width: 2,
    },
  ]);
  return [{ run: [...gore, gore[0] as Point], width: 3 }, { run: [ruler.from, ruler.to], width: 2 }, ...marks];
}

/** The second page was photographed a tenth nearer, and aslant. */
const turn = rotationAbout({ x: 400, y: 400 }, 0.035);
const inSecond = ({ x, y }: Point): Point => transformPoint(turn, { x: 1.1 * (x - 790), y: 1.1 * (y - 40) });

const page = (lines: readonly DrawnLine[]) => drawnPage({ ...SIZE, lines, shadow: 0.1, noise: 0.01 });
const left = pictureFile('left.png', page(sheet()));
const right = pictureFile('right.png', page(sheet().map((line) => ({ ...line, run: line.run.map(inSecond) }))));

async function bringIn(page: Page, file: typeof left): Promise<void> {
  await page.getByLabel('Add another diagram').setInputFiles(file);
  await expect(page.getByRole('status')).toContainText(`${file.name.replace('.png', '')} is in`, { timeout: 30_000 });
  await page.getByRole('radio', { name: 'It is flat already' }).check();
}

const whole = { minX: 0, minY: 0, maxX: SIZE.width, maxY: SIZE.height };

async function pressAt(page: Page, place: Point): Promise<void> {
  const seen = await fittedCanvas(page, whole);
  const { x, y } = wholePixel(seen(place));
  await page.mouse.click(x, y);
}

async function twoPictures(page: Page): Promise<void> {
  await openDemo(page);
  await goTo(page, 'Draft');
  await page
    .getByRole('button', { name: /^Panel/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'Remove the piece' }).click();
  await goTo(page, 'Diagram');
  await bringIn(page, left);
  await page.getByRole('button', { name: 'Draw a known length' }).click();
  await pressAt(page, ruler.from);
  await pressAt(page, ruler.to);
  await page.getByLabel('At full size').fill('1 ft');
  await page.keyboard.press('Enter');
  await bringIn(page, right);
}

function mapOf(garment: Garment, name: string) {
  const diagram = garment.diagrams.find((one) => one.name === name);
  const map = diagram && diagramMap(diagram, currentSet(garment), garment.diagrams);
  if (!diagram || map?.kind !== 'map') throw new Error(`${name} is squared up`);
  return { diagram, map };
}

test('two halves over a gutter are laid together by three places, seen as one, traced as one, and follow the scale of the first', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  await twoPictures(page);
  await page.getByLabel('It goes on from').selectOption({ label: 'left' });
  for (const cross of crosses) {
    await page.getByRole('button', { name: 'Give a matching place' }).click();
    await expect(page.getByText('Press on a place that is seen in both pictures')).toBeVisible();
    await pressAt(page, inSecond(cross));
    await expect(page.getByText('Now press on the same place in left.')).toBeVisible();
    await pressAt(page, cross);
  }
  await expect(page.getByText(/Laid together: the places lie .* apart at most\./)).toBeVisible();

  const { garment } = await savedGarment(page);
  const { diagram: first, map: sheetMap } = mapOf(garment, 'left');
  const { map } = mapOf(garment, 'right');
  expect(Math.max(...(map.joint?.apart ?? [99]))).toBeLessThan(25.4 / 16);
  const full = (place: Point) => photoToTable(sheetMap, place) as Point;
  // Over the whole gore, half of which is seen in each picture.
  for (const place of gore) {
    expect(distance(photoToTable(map, inSecond(place)) as Point, full(place))).toBeLessThan(25.4 / 8);
  }

  await test.step('the gore is traced over both', async () => {
    await goTo(page, 'Draft');
    await page.getByRole('radio', { name: 'Trace a piece' }).check();
    await page.getByLabel('Snap to the squares').uncheck();
    const boxes = halvesOf(garment.diagrams, first.id).map(({ name }) => boxAround(mapOf(garment, name).map, 0));
    const pieces = garment.pieces.map((piece) => pathBounds(outlineOf(piece).whole));
    const seen = await fittedCanvas(page, [...boxes, ...pieces].reduce(unionBox));
    for (const place of [...gore, gore[0] as Point]) {
      const { x, y } = wholePixel(seen(full(place)));
      await page.mouse.click(x, y);
    }
    const { garment: traced } = await savedGarment(page);
    const [piece] = traced.pieces;
    expect(piece?.diagramId).toBe(first.id);
    const corners = piece?.corners.map(({ at }) => at) ?? [];
    const side = (a: number, b: number, points: readonly Point[]) => distance(points[a] as Point, points[b] as Point);
    expect(Math.abs(side(0, 1, corners) - (side(0, 1, gore) / PER_INCH) * 25.4)).toBeLessThan(25.4 / 8);
    expect(Math.abs(side(1, 2, corners) - (side(1, 2, gore) / PER_INCH) * 25.4)).toBeLessThan(25.4 / 8);

    await goTo(page, 'Diagram');
    await page.getByLabel('Diagram on the table').selectOption({ label: 'left' });
    await page.getByLabel('At full size').fill('1 ft 1 in');
    await page.keyboard.press('Enter');
    const { garment: mended } = await savedGarment(page);
    const grown = mended.pieces[0]?.corners.map(({ at }) => at) ?? [];
    expect(side(1, 2, grown) / side(1, 2, corners)).toBeCloseTo(13 / 12, 4);
    expect(side(0, 1, grown) / side(0, 1, corners)).toBeCloseTo(13 / 12, 4);
  });
  expect(trouble).toEqual([]);
});

test('an outline that goes on over the gutter is followed in one half and then in the other', async ({ page }) => {
  await twoPictures(page);
  await page.getByLabel('It goes on from').selectOption({ label: 'left' });
  for (const cross of crosses) {
    await page.getByRole('button', { name: 'Give a matching place' }).click();
    await pressAt(page, inSecond(cross));
    await expect(page.getByText('Now press on the same place in left.')).toBeVisible();
    await pressAt(page, cross);
  }
  const { garment } = await savedGarment(page);
  const { diagram: first, map: sheetMap } = mapOf(garment, 'left');
  await goTo(page, 'Draft');
  await page.getByRole('radio', { name: 'Trace a piece' }).check();
  await page.getByLabel('Follow the printed line').check();
  const pictures = page.getByLabel('Picture in hand');
  const boxes = halvesOf(garment.diagrams, first.id).map(({ name }) => boxAround(mapOf(garment, name).map, 0));
  const pieces = garment.pieces.map((piece) => pathBounds(outlineOf(piece).whole));
  const seen = await fittedCanvas(page, [...boxes, ...pieces].reduce(unionBox));
  const press = async (place: Point, count: number) => {
    const { x, y } = wholePixel(seen(photoToTable(sheetMap, place) as Point));
    await page.mouse.click(x, y);
    if (count === 0) return;
    await expect(page.getByText(count === 1 ? '1 point' : `${count} points`).first()).toBeVisible({ timeout: 20_000 });
  };
  const along = (from: Point, to: Point, x: number) => ({
    x,
    y: from.y + ((to.y - from.y) * (x - from.x)) / (to.x - from.x),
  });
  const [a, b, c, d] = gore as [Point, Point, Point, Point];
  const half = async (name: string) => {
    await pictures.selectOption({ index: garment.diagrams.findIndex((one) => one.name === name) });
    await expect(page.getByText(/^Lines are followed in one half at a time/)).toContainText(name, { timeout: 20_000 });
  };
  await half('left');
  await press(d, 1);
  await press(a, 2);
  await press(along(a, b, 845), 3);
  await half('right');
  await press(b, 4);
  await press(c, 5);
  await press(along(d, c, 845), 6);
  await half('left');
  await press(d, 0);
  await expect(page.getByText(/is closed, with 6 corners/)).toBeAttached({ timeout: 20_000 });
  const [piece] = (await savedGarment(page)).garment.pieces;
  const corners = piece?.corners.map(({ at }) => at) ?? [];
  for (const [j, k] of [
    [0, 1],
    [1, 3],
    [3, 4],
    [4, 0],
  ] as const) {
    const drawn = [d, a, undefined, b, c];
    const wanted = distance(drawn[j] as Point, drawn[k] as Point) / PER_INCH;
    expect(Math.abs(distance(corners[j] as Point, corners[k] as Point) / 25.4 - wanted)).toBeLessThan(1 / 8);
  }
});

test('a second page has the scale of the first, follows it, tells a clash, and keeps it when the first is taken off', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  await twoPictures(page);
  const notebook = page.getByRole('complementary', { name: 'Notebook' });
  await expect(notebook.getByText('Nothing says yet how large the diagram is.')).toBeVisible();
  await page.getByLabel('Its scale is').selectOption({ label: 'that of left' });
  await expect(notebook.getByText('Because both have pixels of one size')).toBeVisible();
  await expect(notebook.getByText('Good enough to trace.')).toBeVisible();
  const before = (await savedGarment(page)).garment;
  expect(mapOf(before, 'right').map.across * PER_INCH).toBeCloseTo(25.4, 0);

  await goTo(page, 'Diagram');
  await page.getByRole('button', { name: 'Draw a known length' }).click();
  await page.getByRole('button', { name: 'Place it by numbers' }).click();
  await page.getByLabel('At full size').fill('10 in');
  await page.keyboard.press('Enter');
  await expect(notebook.getByText(/The line said to be 10\sin measures 9\s.*here/)).toBeVisible();

  await page.getByLabel('Diagram on the table').selectOption({ label: 'left' });
  await page.getByLabel('At full size').fill('1 ft 1 in');
  await page.keyboard.press('Enter');
  const after = (await savedGarment(page)).garment;
  expect(mapOf(after, 'right').map.across / mapOf(before, 'right').map.across).toBeCloseTo(13 / 12, 6);

  await goTo(page, 'Diagram');
  await page.getByRole('button', { name: 'Take this diagram off the table' }).click();
  const left = (await savedGarment(page)).garment;
  expect(left.diagrams.map(({ name }) => name)).not.toContain('left');
  expect(mapOf(left, 'right').diagram.knownLengths).toHaveLength(3);
  expect(trouble).toEqual([]);
});
