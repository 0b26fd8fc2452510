import { expect, type Page, test } from '@playwright/test';
import { outlineOf } from '../core/garment/outline';
import type { Piece } from '../core/garment/piece';
import { pathLength } from '../core/geometry/path';
import { openDemo } from './demo';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

const notebook = (page: Page) => page.getByRole('complementary', { name: 'Notebook' });

async function inHand(page: Page, edge: string): Promise<void> {
  await notebook(page)
    .getByRole('button', { name: new RegExp(`^Edge ${edge}|^${edge}`, 'i') })
    .first()
    .click();
  await expect(notebook(page).getByRole('heading', { name: new RegExp(`^Edge: ${edge}`) })).toBeVisible();
}

function lengthsOf(piece: Piece | undefined): Map<string, number> {
  if (!piece) throw new Error('the panel is there');
  return new Map(piece.edges.map(({ name }, k) => [name, pathLength(outlineOf(piece).edges[k] ?? []) / 25.4]));
}

test('figures in nails and in feet are typed onto edges and pull the outline to them, one without losing the other', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  await goTo(page, 'Draft');
  await notebook(page)
    .getByRole('button', { name: /^Panel/ })
    .first()
    .click();
  await notebook(page).locator('summary').filter({ hasText: 'Points and edges' }).click();
  for (const [edge, figure] of [
    ['hem', '6 nails'],
    ['side seam', '2 ft 5 1/4 in'],
  ] as const) {
    await inHand(page, edge);
    await page.getByLabel('Figure printed on the source').fill(figure);
    await page.keyboard.press('Enter');
    await expect(notebook(page).getByText(/The drawing is .* (longer|shorter) than the figure/)).toBeVisible();
    await page.getByRole('button', { name: 'Make the drawing obey' }).click();
    await expect(notebook(page).getByText('The drawing and the figure agree.')).toBeVisible();
  }
  const { garment } = await savedGarment(page);
  const lengths = lengthsOf(garment.pieces[0]);
  expect(lengths.get('hem')).toBeCloseTo(13.5, 3);
  expect(lengths.get('side seam')).toBeCloseTo(29.25, 3);

  await test.step('the hem of the whole skirt is printed too, and the clash is shown with its sum', async () => {
    await goTo(page, 'Draft');
    await notebook(page).locator('summary').filter({ hasText: 'Printed sums' }).click();
    await page.getByRole('button', { name: 'Add a printed sum' }).click();
    await page.getByLabel('What it is').fill('Hem');
    await page.keyboard.press('Enter');
    await page.getByLabel('The whole says').fill('4 ft 7 in');
    await page.keyboard.press('Enter');
    await page.getByLabel('Add an edge').selectOption({ label: 'Panel: hem' });
    await page.getByLabel('Count each edge as often').check();
    await expect(notebook(page).getByText(/54\sin, the whole says 55\sin: 1\sin apart\./)).toBeVisible();
    await goTo(page, 'Before you cut');
    await expect(
      page.getByText(/Hem: the printed figures add to 54\sin \(4 × 13\s1\/2\sin\), the whole says 55\sin: 1\sin apart/),
    ).toBeVisible();
  });

  await test.step('the whole rules: the hem is brought to it, and the side seam keeps its figure', async () => {
    await goTo(page, 'Draft');
    await notebook(page).locator('summary').filter({ hasText: 'Printed sums' }).click();
    await page.getByRole('button', { name: 'Bring the edges to the whole' }).click();
    await expect(notebook(page).getByText(/55\sin, as the whole says\./)).toBeVisible();
    const after = lengthsOf((await savedGarment(page)).garment.pieces[0]);
    expect(after.get('hem')).toBeCloseTo(13.75, 3);
    expect(after.get('side seam')).toBeCloseTo(29.25, 3);
  });
  expect(trouble).toEqual([]);
});
