import { expect, type Page, test } from '@playwright/test';
import { diagramMap, photoToTable } from '../core/diagram/diagram-map';
import type { Diagram } from '../core/garment/diagram';
import { currentSet } from '../core/garment/measure-value';
import { distance, type Point } from '../core/geometry/point';
import { inches } from '../core/units/inch';
import { settingsOf } from '../tests/picture/generated-photo';
import { seenPage } from '../tests/picture/photo-view';
import { openDemo } from './demo';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

/** The pictures are photos 4 and 6 of the generated set at this size; the pages bend, and are a fifth of full size. */
const SIZE = { width: 750, height: 1000 };
const FULL_SIZE = 5;

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const notebook = (page: Page) => page.getByRole('complementary', { name: 'Notebook' });
const way = (page: Page, name: string) => page.getByRole('radio', { name, exact: true });

async function bringIn(page: Page, file: string): Promise<void> {
  await openDemo(page);
  await goTo(page, 'Diagram');
  await page.getByLabel('Add another diagram').setInputFiles(`e2e/formats/${file}`);
  await expect(page.getByRole('status')).toContainText('750 by 1,000 pixels', { timeout: 30_000 });
}

async function kept(page: Page) {
  const { garment } = await savedGarment(page);
  await goTo(page, 'Diagram');
  const diagram = garment.diagrams.at(-1);
  if (!diagram) throw new Error('the diagram was kept');
  return { garment, diagram };
}

async function lastDiagram(page: Page): Promise<Diagram> {
  const { diagram } = await kept(page);
  return diagram;
}

/** How wrong distances between the corners of the 26 in piece are at full size, with the page's own size as known lengths. */
function worstError(diagram: Diagram, index: number, garment: Parameters<typeof currentSet>[0]): number {
  const { page, view } = settingsOf(index, SIZE);
  const seen = seenPage(page.across, page.down, view);
  const known = (id: string, from: Point, to: Point) =>
    ({
      id,
      from: seen.toPhoto(from),
      to: seen.toPhoto(to),
      says: { kind: 'length', length: FULL_SIZE * distance(from, to) },
    }) as const;
  const [right, bottom] = [page.across - 17, page.down - 19];
  const knownLengths = [
    known('across', { x: 16, y: bottom }, { x: right, y: bottom }),
    known('down', { x: right, y: 18 }, { x: right, y: bottom }),
  ];
  const map = diagramMap({ ...diagram, knownLengths }, currentSet(garment));
  if (map.kind !== 'map') throw new Error(map.why);
  const at = (corner: Point) => photoToTable(map, seen.toPhoto(corner)) ?? { x: Number.NaN, y: Number.NaN };
  const errors = page.piece.flatMap((a) =>
    page.piece.map((b) => Math.abs(distance(at(a), at(b)) - FULL_SIZE * distance(a, b))),
  );
  return Math.max(...errors);
}

test('a bent page comes in with its curved sides followed; she moves a ring, takes straight sides, and follows anew', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  await bringIn(page, 'curled-page.jpg');
  await expect(way(page, 'Curved sides')).toBeChecked();
  const { garment, diagram: followed } = await kept(page);
  expect(worstError(followed, 4, garment)).toBeLessThan(inches(1 / 8));

  await test.step('a ring is moved with the arrow keys, and the step undone', async () => {
    await page.getByText('The rings as numbers').click();
    const field = page.getByLabel('Top side, ring 2, pixels down');
    const before = Number(await field.inputValue());
    await field.focus();
    await page.keyboard.press('Shift+ArrowDown');
    await expect(field).toHaveValue(String(Math.round((before + 10) * 10) / 10));
    await press(page, 'Undo: move top side');
    await expect(field).toHaveValue(String(before));
  });

  await test.step('straight sides by her choice', async () => {
    await way(page, 'Four corners').check();
    const straight = await lastDiagram(page);
    expect(straight.squareUp).not.toHaveProperty('followed');
    expect(worstError(straight, 4, garment)).toBeGreaterThan(inches(1 / 4));
  });

  await test.step('followed again', async () => {
    await way(page, 'Curved sides').click();
    await expect(notebook(page).getByText(/Each corner moved|lie on the edges already/)).toBeVisible({
      timeout: 20_000,
    });
    expect(worstError(await lastDiagram(page), 4, garment)).toBeLessThan(inches(1 / 8));
  });

  await test.step('how true it lies is said once the scale is known', async () => {
    await press(page, 'Draw a known length');
    await press(page, 'Place it by numbers');
    await page.getByLabel('At full size').last().fill('20');
    await page.keyboard.press('Enter');
    await expect(notebook(page).getByText(/The page is good to .* over /)).toBeVisible();
    await way(page, 'Four corners').check();
    await expect(notebook(page).getByText(/Lines that should be straight or square are .* off over /)).toBeVisible();
  });
  expect(trouble).toEqual([]);
});

test('the printed squares of a bent page lay it flat, and the size of one is its known length', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await bringIn(page, 'curled-squares.jpg');
  await way(page, 'Printed squares').click();
  await expect(notebook(page).getByText(/\d+ by \d+ printed squares are followed/)).toBeVisible({ timeout: 20_000 });
  const { garment, diagram: bySquares } = await kept(page);
  expect(worstError(bySquares, 6, garment)).toBeLessThan(inches(1 / 8));

  const { page: printed } = settingsOf(6, SIZE);
  const square = inches(2);
  await page.getByLabel('One square is').fill('2');
  await page.keyboard.press('Enter');
  await press(page, 'Take it as known lengths');
  const diagram = await lastDiagram(page);
  expect(diagram.knownLengths).toHaveLength(2);
  const map = diagramMap(diagram, currentSet(garment));
  if (map.kind !== 'map') throw new Error(map.why);
  // The piece is so many squares long, whatever the photo.
  const seen = seenPage(printed.across, printed.down, settingsOf(6, SIZE).view);
  const [a, b] = [printed.piece[0] as Point, printed.piece[2] as Point];
  const wanted = (distance(a, b) / (printed.squares as number)) * square;
  const [p, q] = [photoToTable(map, seen.toPhoto(a)), photoToTable(map, seen.toPhoto(b))];
  if (!p || !q) throw new Error('the piece is in front of the camera');
  expect(Math.abs(distance(p, q) - wanted)).toBeLessThan(wanted * (1 / 8 / 26));
  expect(trouble).toEqual([]);
});

test('a page without printed squares says so and stays as it was', async ({ page }) => {
  await bringIn(page, 'curled-page.jpg');
  const before = await lastDiagram(page);
  await way(page, 'Printed squares').click();
  await expect(notebook(page).getByText(/printed squares are seen within the corners/)).toBeVisible({
    timeout: 20_000,
  });
  expect((await lastDiagram(page)).squareUp).toEqual(before.squareUp);
});
